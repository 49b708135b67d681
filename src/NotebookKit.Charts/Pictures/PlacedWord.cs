using NotebookKit.Charts.Drawings;
using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Theme;

namespace NotebookKit.Charts.Pictures;

/// <summary>A word of a chart in its place.</summary>
/// <param name="Lines">Its lines.</param>
/// <param name="Box">The room that it takes at most [px].</param>
/// <param name="Colour">Colour of its letters.</param>
internal sealed record PlacedWord(IReadOnlyList<string> Lines, LabelBox Box, string Colour)
{
    /// <summary>Whether it is turned by a quarter.</summary>
    public bool Upright { get; init; }

    /// <summary>The edge of the box, left to right, from which it runs.</summary>
    public Edge Across { get; init; } = Edge.Middle;

    /// <summary>The edge of the box, top to bottom, from which it runs.</summary>
    public Edge Down { get; init; } = Edge.Middle;

    /// <summary>The place that a remark points to [px].</summary>
    public (double X, double Y)? Point { get; init; }

    /// <summary>The word for which a letter stands; empty where the word itself is here.</summary>
    public string StandsFor { get; init; } = "";

    /// <summary>The mark whose point it names.</summary>
    public (Points Points, int Index)? Names { get; init; }

    /// <summary>Draws it on a still picture.</summary>
    /// <param name="sheet">What is drawn on.</param>
    /// <param name="size">Height of the letters [px].</param>
    public void Paint(SvgSheet sheet, double size)
    {
        var middle = (Box.Left + Box.Right) / 2;
        if (Upright) sheet.Text(Box.Right - (0.3 * size), Box.Top, Lines[0], "end", size, upright: true, colour: Colour);
        else if (StandsFor.Length > 0) sheet.Text(middle, Box.Bottom - (0.22 * size), Lines[0], "middle", size, bold: true, colour: Colour);
        else for (var i = 0; i < Lines.Count; i++)
            sheet.Text(middle, Box.Top + (1.25 * size * (i + 0.76)), Lines[i], "middle", size, colour: Colour);
        if (Point is not { } at) return;
        sheet.Line(at.X, at.Y, Math.Clamp(at.X, Box.Left, Box.Right), Math.Clamp(at.Y, Box.Top, Box.Bottom), 1.2);
        sheet.Circle(at.X, at.Y, 3, 0, Palette.Ink);
    }
}

/// <summary>An edge of a word's box.</summary>
internal enum Edge
{
    /// <summary>Left, or top.</summary>
    Low,

    /// <summary>Halfway.</summary>
    Middle,

    /// <summary>Right, or bottom.</summary>
    High,
}

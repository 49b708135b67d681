using System.Globalization;
using System.Text;
using NotebookKit.Charts.Theme;

namespace NotebookKit.Charts.Drawings;

/// <summary>
/// A sheet of paper in millimetres that collects SVG. Line widths follow the two-to-one rule of technical drawing (thick outlines, thin
/// everything else). Every text is escaped; numbers are written with two decimals, so that one drawing is always the same text.
/// </summary>
internal sealed class SvgSheet(double letters = SvgSheet.TextSize)
{
    public const double Thick = 0.5;
    public const double Thin = 0.22;
    public const double TextSize = 3.1;
    public const string CentreLine = "7 1.2 1 1.2";
    public const string Hidden = "2 1";

    /// <summary>Height of letters where none is asked for [mm].</summary>
    public double Letters { get; } = letters;

    private readonly StringBuilder _body = new();
    private readonly HashSet<string> _clips = [];

    public void Line(double x1, double y1, double x2, double y2, double width = Thin, string colour = Palette.Ink, string dash = "") =>
        _body.Append(CultureInfo.InvariantCulture, $"<line x1=\"{N(x1)}\" y1=\"{N(y1)}\" x2=\"{N(x2)}\" "
            + $"y2=\"{N(y2)}\"{Stroke(width, colour, dash)}/>\n");

    public void Path(IEnumerable<(double X, double Y)> points, bool closed, double width = Thick, string colour = Palette.Ink,
        string fill = "none", string dash = "")
    {
        var list = string.Join(' ', points.Select(p => $"{N(p.X)},{N(p.Y)}"));
        _body.Append(CultureInfo.InvariantCulture, $"<{(closed ? "polygon" : "polyline")} points=\"{list}\" "
            + $"fill=\"{fill}\"{Stroke(width, colour, dash)}/>\n");
    }

    public void Rectangle(double x, double y, double width, double height, string fill, double stroke = Thin,
        string colour = Palette.Ink) =>
        _body.Append(CultureInfo.InvariantCulture, $"<rect x=\"{N(x)}\" y=\"{N(y)}\" width=\"{N(width)}\" height=\"{N(height)}\" "
            + $"fill=\"{fill}\"{Stroke(stroke, colour, "")}/>\n");

    public void Circle(double x, double y, double radius, double width = Thick, string fill = "none", string colour = Palette.Ink,
        string dash = "") =>
        _body.Append(CultureInfo.InvariantCulture, $"<circle cx=\"{N(x)}\" cy=\"{N(y)}\" r=\"{N(radius)}\" "
            + $"fill=\"{fill}\"{Stroke(width, colour, dash)}/>\n");

    /// <summary>Text; anchor start, middle or end; turned by a quarter when it stands upright.</summary>
    public void Text(double x, double y, string text, string anchor = "start", double size = 0, bool bold = false,
        bool upright = false, string colour = Palette.Ink, bool halo = true)
    {
        if (size <= 0) size = Letters;
        var turn = upright ? string.Create(CultureInfo.InvariantCulture, $" transform=\"rotate(-90 {N(x)} {N(y)})\"") : "";
        // A halo in the colour of the paper keeps the text readable where a thin line runs behind it.
        var paper = halo ? " paint-order=\"stroke\" stroke=\"" + Palette.Paper + "\" stroke-width=\"0.9\"" : "";
        var weight = bold ? " font-weight=\"600\"" : "";
        _body.Append(CultureInfo.InvariantCulture, $"<text x=\"{N(x)}\" y=\"{N(y)}\" font-size=\"{N(size)}\" "
            + $"text-anchor=\"{anchor}\"{weight}{paper} fill=\"{colour}\"{turn}>{Escape.Text(text)}</text>\n");
    }

    /// <summary>A heading that fits its paper: long ones are set smaller, down to the size of plain text.</summary>
    public void Title(string text, double paper) =>
        Text(4, 7, text, size: Math.Clamp((paper - 8) / (0.64 * text.Length), TextSize, 4.4), bold: true);

    /// <summary>Text broken between words to a width, line below line; gives the place of the next line.</summary>
    public double Paragraph(double x, double y, string text, double width, double size = TextSize, string colour = Palette.Ink)
    {
        var line = "";
        foreach (var word in text.Split(' '))
        {
            if (line.Length > 0 && WidthOf($"{line} {word}", size) > width)
            {
                Text(x, y, line, size: size, colour: colour);
                (line, y) = ("", y + (1.35 * size));
            }

            line = line.Length == 0 ? word : $"{line} {word}";
        }

        Text(x, y, line, size: size, colour: colour);
        return y + (1.35 * size);
    }

    /// <summary>A smooth closed or open curve through points, as a polyline of many.</summary>
    public static IEnumerable<(double X, double Y)> Ellipse(double cx, double cy, double major, double minor, double angle) =>
        Enumerable.Range(0, 97).Select(i =>
        {
            var (sin, cos) = Math.SinCos(2 * Math.PI * i / 96);
            var (s, c) = Math.SinCos(angle);
            return (cx + (major * cos * c) - (minor * sin * s), cy + (major * cos * s) + (minor * sin * c));
        });

    /// <summary>Whatever is drawn until <see cref="Close"/> is cut off at a rectangle. The name must be the same for the same rectangle
    /// only.</summary>
    public void Clip(double x, double y, double width, double height)
    {
        // The name is made from the rectangle: two drawings on one page that share it also share the rectangle.
        var id = string.Create(CultureInfo.InvariantCulture, $"nk-clip-{N(x)}-{N(y)}-{N(width)}-{N(height)}").Replace('.', '_');
        if (_clips.Add(id)) _body.Append(CultureInfo.InvariantCulture,
            $"<clipPath id=\"{id}\"><rect x=\"{N(x)}\" y=\"{N(y)}\" width=\"{N(width)}\" height=\"{N(height)}\"/></clipPath>\n");
        _body.Append(CultureInfo.InvariantCulture, $"<g clip-path=\"url(#{id})\">\n");
    }

    /// <summary>Starts a named part of the drawing; its data attributes carry true sizes, so that they can be read back.</summary>
    public void Open(string name, params ReadOnlySpan<(string Name, double Value)> data)
    {
        _body.Append(CultureInfo.InvariantCulture, $"<g class=\"{name}\"");
        foreach (var (key, value) in data) _body.Append(CultureInfo.InvariantCulture, $" data-{key}=\"{value:0.####}\"");
        _body.Append(">\n");
    }

    public void Close() => _body.Append("</g>\n");

    public string Finish(double width, double height, string title, string description, string unit = "mm") => string.Create(
        CultureInfo.InvariantCulture,
        $"""
        <svg xmlns="http://www.w3.org/2000/svg" role="img" width="{N(width)}{unit}" height="{N(height)}{unit}" viewBox="0 0 {N(width)} {N(height)}" font-family="system-ui, -apple-system, 'Segoe UI', 'DejaVu Sans', sans-serif" style="background:{Palette.Paper}">
        <title>{Escape.Text(title)}</title>
        <desc>{Escape.Text(description)}</desc>
        {_body}</svg>
        """);

    /// <summary>Rough width of a text [mm]; enough to keep labels apart.</summary>
    public static double WidthOf(string text, double size = TextSize) => 0.56 * size * text.Length;

    /// <summary>Rough width of a text in the sheet's own letters [mm].</summary>
    public double Wide(string text) => WidthOf(text, Letters);

    private static string Stroke(double width, string colour, string dash) =>
        width <= 0 ? "" : $" stroke=\"{colour}\" stroke-width=\"{N(width)}\" "
            + $"stroke-linejoin=\"round\"{(dash.Length > 0 ? $" stroke-dasharray=\"{dash}\"" : "")}";

    private static string N(double value) => (Math.Round(value, 2) + 0.0).ToString("0.##", CultureInfo.InvariantCulture);
}

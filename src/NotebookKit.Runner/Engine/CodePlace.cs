using Microsoft.DotNet.Interactive;

namespace NotebookKit.Runner.Engine;

/// <summary>Places in a piece of code: as one number, and as line and column.</summary>
internal static class CodePlace
{
    /// <summary>Line and column of a place.</summary>
    /// <param name="code">Code.</param>
    /// <param name="position">Place, from 0; outside is moved to the nearest end.</param>
    public static LinePosition ToLine(string code, int position)
    {
        var before = code.AsSpan(0, Math.Clamp(position, 0, code.Length));
        var line = before.Count('\n');
        return new LinePosition(line, before.Length - (before.LastIndexOf('\n') + 1));
    }

    /// <summary>The place of a line and column.</summary>
    /// <param name="code">Code.</param>
    /// <param name="place">Line and column, from 0.</param>
    public static int ToPosition(string code, LinePosition place)
    {
        var start = 0;
        for (var line = 0; line < place.Line; line++)
        {
            var end = code.IndexOf('\n', start);
            if (end < 0) return code.Length;
            start = end + 1;
        }

        return Math.Min(start + place.Character, code.Length);
    }

    /// <summary>Where the name that ends at a place begins.</summary>
    /// <param name="code">Code.</param>
    /// <param name="position">Place, from 0.</param>
    public static int StartOfName(string code, int position)
    {
        var start = Math.Clamp(position, 0, code.Length);
        while (start > 0 && (char.IsLetterOrDigit(code[start - 1]) || code[start - 1] == '_')) start--;
        return start;
    }
}

using System.Globalization;
using System.Text;
using NotebookKit.Charts;
using NotebookKit.Charts.Theme;
using NotebookKit.Quantities;

namespace NotebookKit.Live;

/// <summary>One curve on axes, as SVG with its text alternative.</summary>
internal static class LineChart
{
    private const double Width = 360, Height = 210, Left = 46, Right = 10, Top = 18, Bottom = 34;

    /// <summary>Draws a column against another; rows that aren't numbers are left out.</summary>
    /// <param name="title">What it shows.</param>
    /// <param name="x">Along.</param>
    /// <param name="y">Up.</param>
    /// <param name="limit">A limit to draw, with what it is called; none where there is none.</param>
    public static string Draw(string title, Series x, Series y, (double At, string Name)? limit = null)
    {
        List<(double X, double Y)> points = [];
        for (var i = 0; i < x.Count; i++)
            if (double.IsFinite(x[i]) && double.IsFinite(y[i])) points.Add((x[i], y[i]));
        if (points.Count < 2) return "";
        var (left, right) = (points.Min(p => p.X), points.Max(p => p.X));
        var (low, high) = (Math.Min(0, points.Min(p => p.Y)), Math.Max(points.Max(p => p.Y), limit?.At ?? 0));
        if (right <= left || high <= low) return "";
        high += 0.05 * (high - low);
        double X(double at) => Left + ((at - left) / (right - left) * (Width - Left - Right));
        double Y(double at) => Height - Bottom - ((at - low) / (high - low) * (Height - Top - Bottom));
        var svg = new StringBuilder();
        var top = points.MaxBy(p => p.Y);
        var told = $"{title}: {y.Name} [{y.Unit}] against {x.Name} [{x.Unit}]; largest {Digits.Round(top.Y)} {y.Unit} at "
            + $"{Digits.Round(top.X)} {x.Unit}, at the end {Digits.Round(points[^1].Y)} {y.Unit}"
            + (limit is { } l ? $"; {l.Name} {Digits.Round(l.At)} {y.Unit}." : ".");
        svg.Append(CultureInfo.InvariantCulture, $"<svg viewBox=\"0 0 {Width} {Height}\" role=\"img\" font-size=\"11\">")
            .Append($"<title>{Escape.Text(title)}</title><desc>{Escape.Text(told)}</desc>");
        foreach (var at in Ticks(low, high))
            Line(svg, Left, Y(at), Width - Right, Y(at), Palette.Grid).Append(Words(Left - 4, Y(at) + 4, "end", Digits.Round(at)));
        foreach (var at in Ticks(left, right))
            Line(svg, X(at), Height - Bottom, X(at), Height - Bottom + 4, Palette.Frame)
                .Append(Words(X(at), Height - Bottom + 15, "middle", Digits.Round(at)));
        Line(svg, Left, Y(Math.Max(0, low)), Width - Right, Y(Math.Max(0, low)), Palette.Frame);
        if (limit is { } drawn)
            Line(svg, Left, Y(drawn.At), Width - Right, Y(drawn.At), Palette.Danger, " stroke-dasharray=\"6 3\"")
                .Append(Words(Width - Right - 2, Y(drawn.At) - 4, "end", drawn.Name));
        svg.Append("<polyline fill=\"none\" stroke-width=\"2\" stroke=\"").Append(Palette.At(0)).Append("\" points=\"");
        // A screen has some four hundred columns; more rows than that only weigh.
        var step = Math.Max(1, points.Count / 300);
        for (var i = 0; i < points.Count; i += step) Point(svg, X(points[i].X), Y(points[i].Y));
        Point(svg, X(points[^1].X), Y(points[^1].Y));
        svg.Append("\"/>").Append(Words(2, 9, "start", $"{y.Name} [{y.Unit}]"))
            .Append(Words((Left + Width - Right) / 2, Height - 4, "middle", $"{x.Name} [{x.Unit}]"));
        return svg.Append("</svg>").ToString();
    }

    private static void Point(StringBuilder svg, double x, double y) =>
        svg.Append(CultureInfo.InvariantCulture, $"{x:0.#},{y:0.#} ");

    private static StringBuilder Line(StringBuilder svg, double x1, double y1, double x2, double y2, string colour, string more = "") =>
        svg.Append(CultureInfo.InvariantCulture, $"<line x1=\"{x1:0.#}\" y1=\"{y1:0.#}\" x2=\"{x2:0.#}\" y2=\"{y2:0.#}\" ")
            .Append(CultureInfo.InvariantCulture, $"stroke=\"{colour}\"{more}/>");

    private static string Words(double x, double y, string anchor, string text) => string.Create(CultureInfo.InvariantCulture,
        $"<text x=\"{x:0.#}\" y=\"{y:0.#}\" text-anchor=\"{anchor}\" fill=\"{Palette.Ink}\">{Escape.Text(text)}</text>");

    private static IEnumerable<double> Ticks(double low, double high)
    {
        var raw = (high - low) / 4;
        var power = Math.Pow(10, Math.Floor(Math.Log10(raw)));
        var step = new[] { 1.0, 2, 5, 10 }.First(f => f * power >= raw) * power;
        for (var at = Math.Ceiling(low / step) * step; at <= high; at += step) yield return Math.Abs(at) < step / 1e6 ? 0 : at;
    }
}

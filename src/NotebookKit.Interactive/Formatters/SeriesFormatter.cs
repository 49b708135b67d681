using NotebookKit.Interactive.Html;
using NotebookKit.Quantities;

namespace NotebookKit.Interactive.Formatters;

/// <summary>A column of numbers: its name, its extent and its first values.</summary>
internal static class SeriesFormatter
{
    private const int Shown = 8;

    public static void Html(Series series, TextWriter writer) => Fragment.Write(writer, "series", w =>
        w.Write($"<b>{Escape.Text(series.Name)}</b> [{Escape.Text(series.Unit)}] <span "
            + $"class=\"nk-note\">{Escape.Text(Extent(series))}</span><br>{Escape.Text(First(series))}"));

    public static void Plain(Series series, TextWriter writer) =>
        writer.WriteLine($"{series.Name} [{series.Unit}] {Extent(series)}: {First(series)}");

    private static string Extent(Series series)
    {
        var finite = series.Values.Where(double.IsFinite).ToList();
        var gaps = series.Count - finite.Count;
        var range = finite.Count == 0 ? "" : $", {Digits.Round(finite.Min(), 4)} to {Digits.Round(finite.Max(), 4)}";
        return $"{series.Count} {(series.Count == 1 ? "value" : "values")}{range}{(gaps > 0 ? $", {gaps} missing" : "")}";
    }

    private static string First(Series series) =>
        string.Join(", ", series.Values.Take(Shown).Select(v => double.IsFinite(v) ? Digits.Round(v, 5) : "missing"))
            + (series.Count > Shown ? $" and {series.Count - Shown} more values" : "");
}

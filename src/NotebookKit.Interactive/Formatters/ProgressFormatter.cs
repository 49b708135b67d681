using NotebookKit.Interactive.Html;
using NotebookKit.Interactive.Live;

namespace NotebookKit.Interactive.Formatters;

/// <summary>A bar that grows.</summary>
internal static class ProgressFormatter
{
    public static void Html(ProgressState state, TextWriter writer) => Fragment.Write(writer, "progress", w =>
        w.Write($"<progress value=\"{Text(state.Done)}\" max=\"{Text(state.Of)}\"></progress> {Escape.Text(Words(state))}"));

    public static void Plain(ProgressState state, TextWriter writer) => writer.Write(Words(state));

    private static string Words(ProgressState state) => $"{state.What}: {Text(state.Done)} of {Text(state.Of)}";

    private static string Text(int number) => number.ToString(System.Globalization.CultureInfo.InvariantCulture);
}

using Microsoft.DotNet.Interactive.Formatting;

namespace NotebookKit.Interactive.Formatters;

/// <summary>
/// Registers how a type shows itself. The forms and the list of preferred forms are always set together: the engine runs out of stack where a
/// preferred form has no formatter.
/// </summary>
internal static class Registry
{
    public const string Html = "text/html";
    public const string Plain = "text/plain";

    public static void Add<T>(params (string Mime, Action<T, TextWriter> Write)[] forms)
    {
        foreach (var (mime, write) in forms) Formatter.Register(write, mime);
        Formatter.SetPreferredMimeTypesFor(typeof(T), [.. forms.Select(f => f.Mime)]);
    }

    public static void Add<T>(Action<T, TextWriter> html, Action<T, TextWriter> plain) => Add((Html, html), (Plain, plain));
}

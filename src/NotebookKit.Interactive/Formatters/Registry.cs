using System.Reflection;
using Microsoft.DotNet.Interactive.Formatting;
using NotebookKit.Provenance;

namespace NotebookKit.Interactive.Formatters;

/// <summary>
/// Registers how a type shows itself. The forms and the list of preferred forms are always set together: the engine runs out of stack where
/// a preferred form has no formatter.
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

    /// <summary>Whether an assembly's type is something that a cell could show.</summary>
    public static bool Shows(Type type) =>
        type is { IsAbstract: false, IsEnum: false } && !typeof(Delegate).IsAssignableFrom(type)
            && !typeof(Attribute).IsAssignableFrom(type) && !typeof(Exception).IsAssignableFrom(type);

    /// <summary>Registers one form for everything public of an assembly, results apart.</summary>
    public static void AddAll(Assembly assembly, Action<object, TextWriter> html, Action<object, TextWriter> plain)
    {
        foreach (var type in assembly.GetExportedTypes().Where(t => Shows(t) && !typeof(IResult).IsAssignableFrom(t)))
        {
            Formatter.Register(type, html, Html);
            Formatter.Register(type, plain, Plain);
            Formatter.SetPreferredMimeTypesFor(type, Html, Plain);
        }
    }

    public static void Add<T>(Action<T, TextWriter> html, Action<T, TextWriter> plain) => Add((Html, html), (Plain, plain));
}

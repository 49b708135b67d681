using System.Reflection;
using NotebookKit.Interactive.Html;
using NotebookKit.Provenance;

namespace NotebookKit.Interactive.Formatters;

/// <summary>
/// Anything of ours that is no result and has no form of its own: a design, a part, a material, a row. What it is made of as a table, one
/// line a property, and what
/// is wrong with it.
/// </summary>
internal static class DesignFormatter
{
    public static void Html(object design, TextWriter writer) => Fragment.Write(writer, "design", w =>
    {
        w.Write($"<h4>{Escape.Text(Heading(design))}</h4>");
        LinesFormatter.Html(Lines(design), w);
        FindingFormatter.Html(Findings(design), w);
    });

    public static void Plain(object design, TextWriter writer)
    {
        writer.WriteLine(Heading(design));
        LinesFormatter.Plain(Lines(design), writer);
        FindingFormatter.Plain(Findings(design), writer);
    }

    private static string Heading(object design)
    {
        if (Words.SaysItself(design.GetType())) return design.ToString() ?? "";
        var kind = Words.Sentence(Words.NameOf(design.GetType()));
        return Words.OwnName(design) is { Length: > 0 } name ? $"{kind}: {name}" : kind;
    }

    private static IEnumerable<ResultLine> Lines(object design) => ShownProperties.Of(design.GetType())
        .Select(p => ShownProperties.Value(p, design) is { } value && Words.Of(value) is { Length: > 0 } text
            ? new ResultLine(Words.Sentence(p.Name), text) : null)
        .OfType<ResultLine>();

    // A design's Validate may be its own, or an extension method beside the models that it needs.
    private static IReadOnlyList<Finding> Findings(object design)
    {
        var type = design.GetType();
        if (type.GetMethod("Validate", BindingFlags.Public | BindingFlags.Instance, Type.EmptyTypes) is { } own)
            return own.Invoke(design, null) as IReadOnlyList<Finding> ?? [];
        return Verbs(type)?.Invoke(null, [design]) as IReadOnlyList<Finding> ?? [];
    }

    private static MethodInfo? Verbs(Type design) => design.Assembly.GetExportedTypes()
        .Where(t => t is { IsAbstract: true, IsSealed: true })
        .SelectMany(t => t.GetMethods(BindingFlags.Public | BindingFlags.Static))
        .FirstOrDefault(m => m.Name == "Validate" && m.IsDefined(typeof(System.Runtime.CompilerServices.ExtensionAttribute), false)
            && m.GetParameters() is [var only] && only.ParameterType == design);
}

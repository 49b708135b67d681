using System.Text.RegularExpressions;
using System.Xml;
using System.Xml.Linq;
using NotebookKit.Charts;
using NotebookKit.Logs;
using NotebookKit.Numerics;
using NotebookKit.Provenance;

namespace NotebookKit.Interactive.Help;

/// <summary>What the library documents about its verbs and types, read from the files beside its assemblies; empty where they are not
/// there.</summary>
internal static partial class LibraryDocs
{
    private static readonly Lazy<ILookup<string, DocumentedName>> Names = new(() =>
        new[] { typeof(IResult), typeof(EngineeringChart), typeof(LogReader), typeof(KitHelp) }
            .Select(t => Path.ChangeExtension(t.Assembly.Location, ".xml")).Where(File.Exists).SelectMany(Read)
            .ToLookup(n => n.Name, StringComparer.OrdinalIgnoreCase));

    /// <summary>Everything of a name, upper and lower case alike.</summary>
    public static IReadOnlyList<DocumentedName> Named(string name) => [.. Names.Value[name]];

    /// <summary>The names nearest to one.</summary>
    public static IReadOnlyList<string> Nearest(string name, int count) =>
        [.. Names.Value.Select(g => g.Key).OrderBy(n => EditDistance.Between(name, n)).ThenBy(n => n, StringComparer.Ordinal).Take(count)];

    private static IEnumerable<DocumentedName> Read(string file)
    {
        XDocument document;
        try
        {
            document = XDocument.Load(file);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or XmlException)
        {
            yield break;
        }

        foreach (var member in document.Descendants("member"))
        {
            var match = Member().Match((string?)member.Attribute("name") ?? "");
            if (!match.Success) continue;
            var path = match.Groups["path"].Value.Split('.');
            var own = path[^1] == "#ctor" ? path[^2] : path[^1];
            var owner = match.Groups["kind"].Value == "T" || path[^1] == "#ctor" || path.Length < 2 ? own : path[^2];
            yield return new(Bare(own), Bare(owner), Text(member.Element("summary")),
                [.. member.Elements("param").Select(p => ((string?)p.Attribute("name") ?? "", Text(p)))]);
        }
    }

    private static string Bare(string name) => name.Split('`')[0];

    private static string Text(XElement? element) =>
        element is null ? "" : Spaces().Replace(string.Concat(element.Nodes().Select(Text)), " ").Trim();

    private static string Text(XNode node) => node switch
    {
        XText text => text.Value,
        XElement { Name.LocalName: "see" or "paramref" } see =>
            ((string?)see.Attribute("cref") ?? (string?)see.Attribute("name") ?? "").Split('.', ':')[^1],
        XElement inner => inner.Value,
        _ => "",
    };

    [GeneratedRegex(@"^(?<kind>[TMP]):(?<path>[^(]+)")]
    private static partial Regex Member();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}

/// <summary>A verb, type or property with its documentation.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Owner">The type that it belongs to.</param>
/// <param name="Summary">What it is.</param>
/// <param name="Parameters">Its inputs with what, unit and range.</param>
internal sealed record DocumentedName(string Name, string Owner, string Summary, IReadOnlyList<(string Name, string Text)> Parameters);

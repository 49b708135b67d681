using System.Text.RegularExpressions;
using NotebookKit.Clearance;
using NotebookKit.Clearance.Service;
using NotebookKit.DesignFiles;
using NotebookKit.Logs;
using NotebookKit.Materials.Solids;
using NotebookKit.Record;
using NotebookKit.Runner.Engine;

namespace NotebookKit.Runner.Wording;

/// <summary>Completes what the compiler can't know: names inside strings, and properties after "with {".</summary>
/// <param name="valueOf">The value of a variable; none where there is no such variable.</param>
internal sealed partial class NameCompletion(Func<string, object?> valueOf)
{
    private const string Name = "text";

    /// <summary>What could stand at a place; none where the compiler is to be asked.</summary>
    /// <param name="code">The cell's source.</param>
    /// <param name="position">Place in it, from 0.</param>
    public CompletionList? At(string code, int position)
    {
        var before = code[..position];
        if (InString().Match(before) is { Success: true } text)
        {
            var begun = text.Groups["begun"].Value;
            var names = NamesFor(text.Groups["receiver"].Value, text.Groups["verb"].Value);
            return names.Count == 0 ? null : List(position, begun, names, Name);
        }

        if (AfterWith().Match(before) is not { Success: true } with || TypeOf(with.Groups["receiver"].Value) is not { } type) return null;
        var set = Set().Matches(with.Groups["inside"].Value).Select(m => m.Groups["name"].Value).ToHashSet(StringComparer.Ordinal);
        return List(position, with.Groups["begun"].Value, [.. LibraryTypes.SettableOf(type).Where(p => !set.Contains(p))], "property");
    }

    // Names that begin so come first, then those that hold it anywhere.
    private static CompletionList List(int position, string begun, IReadOnlyList<string> names, string kind) => new(
        position - begun.Length, position,
        [
            .. names.Where(n => n.Contains(begun, StringComparison.OrdinalIgnoreCase))
                .OrderBy(n => n.StartsWith(begun, StringComparison.OrdinalIgnoreCase) ? 0 : 1).ThenBy(n => n, StringComparer.Ordinal)
                .Select(n => new CompletionEntry(n, kind)),
        ]);

    private IReadOnlyList<string> NamesFor(string receiver, string verb)
    {
        var value = valueOf(receiver);
        if (value is DesignRecordBuilder design)
        {
            var record = design.Build();
            return verb switch
            {
                nameof(DesignRecordBuilder.Given) => [.. record.Givens.Select(g => g.Name)],
                nameof(DesignRecordBuilder.Require) => [.. record.Requirements.Select(r => r.Name)],
                nameof(DesignRecordBuilder.Decide) => [.. record.Decisions.Select(d => d.Name)],
                nameof(DesignRecordBuilder.Evidence) => [.. record.Evidence.Select(e => e.Name)],
                _ => [],
            };
        }

        if (value is Design file)
            return verb is nameof(Design.With) or nameof(Design.Has) or nameof(Design.Without) or nameof(DesignVerbs.Sweep)
                ? [.. file.Givens.Select(g => g.Name).Distinct()] : [];
        if (value is ClubFolder folder)
            return verb == nameof(ClubFolder.Vessel) ? [.. folder.Vessels.Select(v => v.Serial).Distinct()] : [];
        if (receiver == nameof(ServiceFile)) return FilesOf("*.service.jsonl");
        if (receiver == nameof(Design)) return FilesOf("*.json");
        var stock = value as MaterialLibrary ?? MaterialLibrary.Typical;
        return verb switch
        {
            nameof(MaterialLibrary.Fibre) => Named<Fibre>(stock),
            nameof(MaterialLibrary.Resin) => Named<Resin>(stock),
            nameof(MaterialLibrary.Braid) => Named<Braid>(stock),
            nameof(MaterialLibrary.Cloth) => Named<Cloth>(stock),
            nameof(MaterialLibrary.Veil) => Named<Veil>(stock),
            nameof(MaterialLibrary.Solid) => Named<IsotropicMaterial>(stock),
            nameof(MaterialLibrary.Adhesive) => Named<Adhesive>(stock),
            _ => [],
        };
    }

    // Beside the notebook and one folder below: a club's vessels lie there.
    private static IReadOnlyList<string> FilesOf(string pattern) =>
        [.. Directory.EnumerateFiles(".", pattern, new EnumerationOptions
        {
            RecurseSubdirectories = true, MaxRecursionDepth = 1, IgnoreInaccessible = true,
        }).Take(200).Select(f => Path.GetRelativePath(".", f).Replace('\\', '/'))];

    private static IReadOnlyList<string> Named<T>(MaterialLibrary stock) where T : class, IMaterial =>
        [.. stock.AllOf<T>().Select(m => m.Name)];

    // Property by property by their types: reading them could compute something.
    private Type? TypeOf(string path)
    {
        var parts = path.Split('.');
        var type = valueOf(parts[0])?.GetType();
        foreach (var part in parts.Skip(1)) type = type?.GetProperty(part)?.PropertyType;
        return type;
    }

    [GeneratedRegex("""(?<receiver>\w+)\.(?<verb>\w+)\(\s*"(?<begun>[^"\n]*)$""")]
    private static partial Regex InString();

    [GeneratedRegex(@"(?<receiver>[A-Za-z_][\w.]*)\s+with\s*\{(?<inside>(?:[^{}]*,)?)\s*(?<begun>\w*)$")]
    private static partial Regex AfterWith();

    [GeneratedRegex(@"(?<name>\w+)\s*=")]
    private static partial Regex Set();
}

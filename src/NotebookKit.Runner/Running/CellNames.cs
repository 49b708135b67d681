using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using NotebookKit.Record;

namespace NotebookKit.Runner.Running;

/// <summary>
/// What the code of a cell makes and needs, by the compiler's reading of it and of the files that it loads; nothing is run. It errs towards
/// needing more and making less.
/// </summary>
internal sealed partial class CellNames
{
    private static readonly CSharpParseOptions Script = new(LanguageVersion.Latest, kind: SourceCodeKind.Script);

    private readonly List<CellPart> _parts = [];
    private readonly HashSet<string> _needs = new(StringComparer.Ordinal);
    private readonly HashSet<string> _made = new(StringComparer.Ordinal);
    private readonly List<string> _requirements = [];
    private readonly HashSet<string> _read = new(StringComparer.Ordinal);
    private readonly string _folder;
    private bool _loads;

    private CellNames(string folder) => this._folder = folder;

    /// <summary>Its statements and declarations in order.</summary>
    public IReadOnlyList<CellPart> Parts => _parts;

    /// <summary>Names that have to be there before the cell runs.</summary>
    public IReadOnlyCollection<string> Needs => _needs;

    /// <summary>Names that the cell makes anew when it runs to its end.</summary>
    public IEnumerable<string> Makes => _parts.SelectMany(p => p.Makes);

    /// <summary>Names whose values the cell makes or may change.</summary>
    public IEnumerable<string> Touches => _parts.SelectMany(p => p.Touches);

    /// <summary>Names of the requirements that the cell's code states.</summary>
    public IReadOnlyList<string> Requirements => _requirements;

    /// <summary>Reads a cell.</summary>
    /// <param name="code">Its source.</param>
    /// <param name="folder">Folder of the notebook.</param>
    public static CellNames Of(string code, string folder)
    {
        var names = new CellNames(folder);
        names.ReadCode(code, folder);
        return names;
    }

    /// <summary>The parts that ran to their end before the cell stopped.</summary>
    /// <param name="line">Line where it stopped, from 1; none where that isn't known or nothing ran.</param>
    public IReadOnlyList<CellPart> DoneBefore(int? line)
    {
        // The line of a loaded file, or of a method, says nothing on how far the cell came.
        if (line is not { } at || _loads || _parts.Any(p => p.IsDeclaration && p.First <= at && at <= p.Last)) return [];
        return [.. _parts.TakeWhile(p => p.Last < at)];
    }

    private void ReadCode(string code, string from)
    {
        foreach (Match import in Import().Matches(code)) ReadFile(import.Groups["file"].Value, from);
        var root = CSharpSyntaxTree.ParseText(Command().Replace(code, ""), Script).GetCompilationUnitRoot();
        foreach (var load in root.DescendantNodes(descendIntoTrivia: true).OfType<LoadDirectiveTriviaSyntax>().Where(l => l.IsActive))
            ReadFile(load.File.ValueText, from);
        foreach (var call in root.DescendantNodes().OfType<InvocationExpressionSyntax>())
            if (NameOfRequirement(call) is { } requirement) _requirements.Add(requirement);
        // Methods and types may be used above the place where they stand.
        foreach (var member in root.Members.Where(CellPart.Declares)) _made.UnionWith(CellPart.Of(member).Makes);
        foreach (var member in root.Members)
        {
            var part = CellPart.Of(member);
            _needs.UnionWith(NeededNames.Of(member).Where(n => !_made.Contains(n)));
            _made.UnionWith(part.Makes);
            _parts.Add(part);
        }
    }

    // As the engine looks: beside the file that loads it, then beside the notebook. What can't be read makes its cell fail by itself.
    private void ReadFile(string file, string from)
    {
        _loads = true;
        if (file.Length == 0 || Path.GetExtension(file).Equals(".ipynb", StringComparison.OrdinalIgnoreCase)) return;
        var path = new[] { from, _folder }.Select(f => Path.GetFullPath(Path.Combine(f, file))).FirstOrDefault(File.Exists);
        if (path is null || !_read.Add(path)) return;
        try
        {
            ReadCode(File.ReadAllText(path), Path.GetDirectoryName(path)!);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return;
        }
    }

    private static string? NameOfRequirement(InvocationExpressionSyntax call) =>
        call.Expression is MemberAccessExpressionSyntax { Name.Identifier.Text: nameof(DesignRecordBuilder.Require) }
        && call.ArgumentList.Arguments.FirstOrDefault(a => a.NameColon?.Name.Identifier.Text is null or "name")?.Expression
            is LiteralExpressionSyntax { Token.Value: string name } ? name : null;

    // Commands stand among the lines of a cell; the compiler never sees them.
    [GeneratedRegex(@"^#!.*$", RegexOptions.Multiline)]
    private static partial Regex Command();

    [GeneratedRegex("""^#!import[ \t]+"?(?<file>[^"\r\n]+?)"?[ \t\r]*$""", RegexOptions.Multiline)]
    private static partial Regex Import();
}

using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using NotebookKit.Interactive.Help;
using NotebookKit.Runner.Engine;
using NotebookKit.Runner.Running;
using Diagnostic = Microsoft.DotNet.Interactive.Diagnostic;

namespace NotebookKit.Runner.Wording;

/// <summary>Says what the compiler refuses in the builder's words: what is there, and what to write instead.</summary>
/// <param name="code">The cell's source.</param>
/// <param name="variables">Names of the session's variables.</param>
internal sealed partial class BuilderWords(string code, IReadOnlyCollection<string> variables)
{
    private static readonly CSharpParseOptions Script = new(Microsoft.CodeAnalysis.CSharp.LanguageVersion.Latest,
        kind: Microsoft.CodeAnalysis.SourceCodeKind.Script);

    /// <summary>A line and a sentence for each thing that is wrong, in order and each once.</summary>
    /// <param name="diagnostics">What the compiler said.</param>
    public IReadOnlyList<(int Line, string Sentence)> Of(IReadOnlyList<Diagnostic> diagnostics)
    {
        if (ChangedCopy() is { } copy) return [copy];
        var said = new HashSet<(int, string)>();
        return [.. diagnostics.OrderBy(d => d.LinePositionSpan.Start.Line).ThenBy(d => d.LinePositionSpan.Start.Character)
           .Select(d => (d.LinePositionSpan.Start.Line + 1, Sentence(d)))
            .Where(said.Add)];
    }

    // "vessel with { ... }" at the start of a statement is read as the declaration of a property named "with".
    private (int Line, string Sentence)? ChangedCopy()
    {
        var tree = CSharpSyntaxTree.ParseText(Command().Replace(code, ""), Script);
        if (tree.GetRoot().DescendantNodes().OfType<PropertyDeclarationSyntax>().FirstOrDefault(p => p.Identifier.Text == "with")
            is not { } wrong) return null;
        var name = wrong.Type.ToString();
        return (wrong.GetLocation().GetLineSpan().StartLinePosition.Line + 1,
            $"A changed copy needs a name: write var changed = {name} with {{ ... }}; or, to see it only, ({name} with {{ ... }}).");
    }

    private string Sentence(Diagnostic diagnostic)
    {
        var quoted = Quoted().Matches(diagnostic.Message).Select(m => m.Groups["text"].Value).ToList();
        return (diagnostic.Code, quoted) switch
        {
            ("CS0103", [var name, ..]) => Unknown(name),
            ("CS0246", [var name, ..]) => Unknown(name.TrimEnd('(', ')', '<', '>')),
            ("CS1061", [var type, var member, ..]) => NoMember(type, member, isStatic: false),
            ("CS0117", [var type, var member, ..]) => NoMember(type, member, isStatic: true),
            ("CS1503" or "CS0029" or "CS0266", [.., var from, var to])
                => UnitWords.Of(from, to, Written(diagnostic)) ?? Plain(from, to),
            ("CS0019", [_, var one, var other]) => UnlikeSides(one, other) ?? diagnostic.Message,
            ("CS7036", [var parameter, var method]) => Missing(parameter, method),
            ("CS1739", [var method, var parameter]) => NoParameter(method, parameter),
            ("CS8852" or "CS0200", [var property, ..]) => $"A finished value isn't changed in place: write var changed = vessel with "
                + $"{{ {property.Split('.')[^1]} = ... }}; with the name of your own value.",
            ("CS8858", [var type]) => $"A {UnitWords.Simple(type)} can't be copied with changes; make a new one.",
            ("CS0120", [var member]) => $"{member} belongs to a value: write the value's name and a dot before it.",
            _ => diagnostic.Message,
        };
    }

    private string Unknown(string name)
    {
        var own = CellNames.Of(code, ".").Makes;
        var nearest = NearestName.Of(name, own.Concat(variables)) ?? NearestName.Of(name, LibraryTypes.Names);
        return nearest is null
            ? $"There is no {name} here. Run the cell that makes {name} first, or correct the name; Help() lists what is here."
            : $"There is no {name} here{NearestName.Clause(nearest)}.";
    }

    private static string NoMember(string typeName, string member, bool isStatic)
    {
        var type = LibraryTypes.Find(typeName);
        var members = type is null ? [] : LibraryTypes.MembersOf(type, isStatic).Distinct().ToList();
        var nearest = NearestName.Of(member, members.Select(m => m.TrimEnd('(', ')')));
        var shown = members.FirstOrDefault(m => m.TrimEnd('(', ')') == nearest) ?? nearest;
        var simple = UnitWords.Simple(typeName);
        if (nearest is not null) return $"{UnitWords.Noun(simple)} has no {member}{NearestName.Clause(shown)}.";
        return simple is "int" or "double"
            ? $"There is no unit {member}{NearestName.Clause(NearestName.Of(member, LibraryTypes.AllLiterals))}; #!units lists them."
            : $"{UnitWords.Noun(simple)} has no {member}. Type a dot after the value and press Tab to see what it has.";
    }

    private static string Plain(string from, string to) =>
        $"{UnitWords.Noun(UnitWords.Simple(to))} is wanted here, and "
            + $"{UnitWords.Noun(UnitWords.Simple(from)).ToLowerInvariant()} was given.";

    private static string? UnlikeSides(string one, string other)
    {
        var sides = new[] { UnitWords.Simple(one), UnitWords.Simple(other) };
        if (!sides.Any(s => LibraryTypes.LiteralsOf(s).Count > 0)) return null;
        if (sides.Contains("Pressure") && sides.Any(s => s is "GaugePressure" or "AbsolutePressure"))
            return UnitWords.Of("Pressure", sides.First(s => s != "Pressure"), "");
        var wanted = sides.FirstOrDefault(s => LibraryTypes.LiteralsOf(s).Count > 0)!;
        return UnitWords.Of(sides[0] == wanted ? sides[1] : sides[0], wanted, "");
    }

    private static string Missing(string parameter, string method)
    {
        var verb = method.Split('(')[0].Split('.')[^1];
        var text = LibraryDocs.Named(verb).SelectMany(n => n.Parameters).FirstOrDefault(p => p.Name == parameter).Text;
        return string.IsNullOrEmpty(text) ? $"{verb} needs {parameter} as well." : $"{verb} needs {parameter} as well: {text}";
    }

    private static string NoParameter(string method, string parameter)
    {
        var known = LibraryDocs.Named(method).SelectMany(n => n.Parameters).Select(p => p.Name).Distinct().ToList();
        return $"{method} has no input {parameter}{NearestName.Clause(NearestName.Of(parameter, known))}"
            + (known.Count > 0 ? $"; its inputs are {string.Join(", ", known)}." : ".");
    }

    private string Written(Diagnostic diagnostic)
    {
        var span = diagnostic.LinePositionSpan;
        var (start, end) = (CodePlace.ToPosition(code, span.Start), CodePlace.ToPosition(code, span.End));
        return end > start ? code[start..end].Trim() : "";
    }

    [GeneratedRegex("'(?<text>[^']+)'")]
    private static partial Regex Quoted();

    [GeneratedRegex(@"^#!.*$", RegexOptions.Multiline)]
    private static partial Regex Command();
}

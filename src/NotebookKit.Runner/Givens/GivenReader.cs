using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using NotebookKit.DesignFiles;
using NotebookKit.DesignFiles.Shapes;
using NotebookKit.DesignFiles.Trees;
using NotebookKit.Record.Givens;
using NotebookKit.Runner.Notebooks;

namespace NotebookKit.Runner.Givens;

/// <summary>Finds the givens of a notebook by the compiler's reading of its code and of the files that it loads; nothing is run.</summary>
internal sealed partial class GivenReader
{
    private const int Arguments = 5;

    private static readonly CSharpParseOptions Script = new(LanguageVersion.Latest, kind: SourceCodeKind.Script);

    private readonly string _folder;
    private readonly List<StatedGiven> _givens = [];
    private readonly List<string> _unreadable = [];
    private readonly List<Design> _designs = [];
    private readonly HashSet<string> _read = new(StringComparer.Ordinal);

    private GivenReader(string folder) => this._folder = folder;

    /// <summary>The givens of a notebook.</summary>
    /// <param name="file">Notebook.</param>
    public static NotebookGivens Read(NotebookFile file)
    {
        var reader = new GivenReader(Path.GetDirectoryName(Path.GetFullPath(file.Path))!);
        foreach (var cell in file.CodeCells) reader.ReadCode(cell.Source, reader._folder, $"cell {cell.Number}");
        return new(file.Name, reader._givens, reader._unreadable) { Designs = reader._designs };
    }

    private void ReadCode(string code, string from, string place)
    {
        foreach (Match import in Import().Matches(code)) ReadFile(import.Groups["file"].Value, from, place);
        var root = CSharpSyntaxTree.ParseText(Command().Replace(code, ""), Script).GetRoot();
        foreach (var load in root.DescendantNodes(descendIntoTrivia: true).OfType<LoadDirectiveTriviaSyntax>().Where(l => l.IsActive))
            ReadFile(load.File.ValueText, from, place);
        foreach (var call in root.DescendantNodes().OfType<InvocationExpressionSyntax>())
        {
            if (MethodOf(call) is { Identifier.Text: "Given" } method) ReadCall(call, method, place);
            else if (call is
            {
                Expression: MemberAccessExpressionSyntax { Name.Identifier.Text: "Read", Expression: IdentifierNameSyntax
                { Identifier.Text: nameof(Design) } },
                ArgumentList.Arguments: [{ Expression: var named }],
            }) ReadDesign(named, place);
        }
    }

    // As the worker looks: beside the notebook.
    private void ReadDesign(ExpressionSyntax named, string place)
    {
        if (named is not LiteralExpressionSyntax { Token.Value: string file })
        {
            _unreadable.Add($"{place} makes the name of a design's file while it runs");
            return;
        }

        var path = Path.GetFullPath(Path.Combine(_folder, file));
        if (!_read.Add(path)) return;
        try
        {
            var design = Design.Read(path);
            _designs.Add(design);
            foreach (var given in design.Givens.Where(g => g.HasReason && g.State == GivenState.Stated))
                _givens.Add(new(given.Name, null, null, null, null, given.Range, given.Why) { Of = design, Noun = given.Kind });
        }
        catch (DesignFileException error)
        {
            _unreadable.Add($"{place} reads the design {file}, which can't be read ({error.Message.TrimEnd('.')})");
        }
    }

    private void ReadFile(string file, string from, string place)
    {
        if (file.Length == 0) return;
        // As the engine looks: beside the file that loads it, then beside the notebook.
        var path = new[] { from, _folder }.Select(f => Path.GetFullPath(Path.Combine(f, file))).FirstOrDefault(File.Exists);
        if (path is null)
        {
            _unreadable.Add($"{place} loads {file}, which isn't there");
            return;
        }

        if (!_read.Add(path)) return;
        var below = Path.GetDirectoryName(path)!;
        try
        {
            if (!string.Equals(Path.GetExtension(path), ".ipynb", StringComparison.OrdinalIgnoreCase)) ReadCode(File.ReadAllText(path),
                below, Path.GetFileName(path));
            else foreach (var cell in NotebookFile.Read(path).CodeCells) ReadCode(cell.Source, below, Path.GetFileName(path));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or NotebookFormatException)
        {
            _unreadable.Add($"{place} loads {file}, which can't be read");
        }
    }

    private void ReadCall(InvocationExpressionSyntax call, SimpleNameSyntax method, string place)
    {
        var arguments = call.ArgumentList.Arguments;
        if (arguments.Count != Arguments) return;
        if (Argument(0, "name") is not LiteralExpressionSyntax literal || !literal.IsKind(SyntaxKind.StringLiteralExpression))
        {
            _unreadable.Add($"{place} makes the name of a given while it runs");
            return;
        }

        ExpressionSyntax?[] numbers = [Argument(1, "value"), Argument(2, "minimum"), Argument(3, "maximum")];
        var values = numbers.Select(WrittenValue.Read).ToList();
        var type = method is GenericNameSyntax { TypeArgumentList.Arguments: [var named] } ? WrittenValue.TypeNamed(named)
            : CommonType([.. values.Select(v => v.Type).OfType<Type>().Distinct()]);
        var (own, minimum, maximum) = (As(values[0].Value, type), As(values[1].Value, type), As(values[2].Value, type));
        _givens.Add(new(
            literal.Token.ValueText.Trim(), type is null ? null : GivenKind.Of(type), own, minimum, maximum,
            minimum is not null && maximum is not null ? GivenKind.Range(minimum, maximum) : $"{numbers[1]} to {numbers[2]}",
            Argument(4, "why") is LiteralExpressionSyntax { Token.Value: string why } ? why : ""));

        ExpressionSyntax? Argument(int place, string name) =>
            arguments.FirstOrDefault(a => a.NameColon?.Name.Identifier.Text == name)?.Expression
            ?? (arguments[place].NameColon is null ? arguments[place].Expression : null);
    }

    // Whole numbers beside others are read as the compiler reads them.
    private static Type? CommonType(IReadOnlyList<Type> types) => types switch
    {
        [var one] => one,
        [var one, var other] when (one == typeof(int) && other == typeof(double)) || (one == typeof(double) && other == typeof(int))
            => typeof(double),
        _ => null,
    };

    private static object? As(object? value, Type? type) => value is int number && type == typeof(double) ? (double)number
        : value?.GetType() == type ? value : null;

    private static SimpleNameSyntax? MethodOf(InvocationExpressionSyntax call) => call.Expression switch
    {
        MemberAccessExpressionSyntax member => member.Name,
        MemberBindingExpressionSyntax member => member.Name,
        _ => null,
    };

    // Commands stand among the lines of a cell; the compiler never sees them.
    [GeneratedRegex(@"^#!.*$", RegexOptions.Multiline)]
    private static partial Regex Command();

    [GeneratedRegex("""^#!import[ \t]+"?(?<file>[^"\r\n]+?)"?[ \t\r]*$""", RegexOptions.Multiline)]
    private static partial Regex Import();
}

using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using NotebookKit.Record;

namespace NotebookKit.Runner.Running;

/// <summary>One statement or declaration at the outermost level of a cell.</summary>
/// <param name="First">First line, from 1.</param>
/// <param name="Last">Last line.</param>
/// <param name="IsDeclaration">Whether it declares a method or a type, which runs elsewhere.</param>
/// <param name="Makes">Names it certainly makes anew.</param>
/// <param name="Touches">Names whose values it makes or may change.</param>
internal sealed record CellPart(int First, int Last, bool IsDeclaration, IReadOnlyCollection<string> Makes,
    IReadOnlyCollection<string> Touches)
{
    // A record's builder takes one entry a call: an entry that is missing is told by its name, and the others stand.
    private static readonly HashSet<string> BuilderVerbs = new(StringComparer.Ordinal)
    {
        nameof(DesignRecordBuilder.Given), nameof(DesignRecordBuilder.Require), nameof(DesignRecordBuilder.Decide),
        nameof(DesignRecordBuilder.Evidence),
    };

    private static readonly string[] ChangingVerbs = ["Add", "Insert", "Remove", "Clear", "Push", "Pop", "Enqueue", "Dequeue", "Set",
        "Append", "Sort", "Union", "Except"];

    /// <summary>Whether a member is a method or a type.</summary>
    /// <param name="member">Member of a script.</param>
    public static bool Declares(MemberDeclarationSyntax member) =>
        member is BaseMethodDeclarationSyntax or BaseTypeDeclarationSyntax or DelegateDeclarationSyntax or PropertyDeclarationSyntax
            or GlobalStatementSyntax { Statement: LocalFunctionStatementSyntax };

    /// <summary>Reads one.</summary>
    /// <param name="member">Member of a script.</param>
    public static CellPart Of(MemberDeclarationSyntax member)
    {
        var lines = member.GetLocation().GetLineSpan();
        var makes = new HashSet<string>(Declared(member), StringComparer.Ordinal);
        if (member is GlobalStatementSyntax { Statement: ExpressionStatementSyntax { Expression: AssignmentExpressionSyntax set } }
            && set.IsKind(SyntaxKind.SimpleAssignmentExpression)) makes.UnionWith(Whole(set.Left));
        var touches = new HashSet<string>(makes, StringComparer.Ordinal);
        touches.UnionWith(member.DescendantNodes().SelectMany(Changed));
        return new(lines.StartLinePosition.Line + 1, lines.EndLinePosition.Line + 1, Declares(member), makes, touches);
    }

    private static IEnumerable<string> Declared(MemberDeclarationSyntax member) => member switch
    {
        MethodDeclarationSyntax method => [method.Identifier.Text],
        BaseTypeDeclarationSyntax type => [type.Identifier.Text],
        DelegateDeclarationSyntax type => [type.Identifier.Text],
        PropertyDeclarationSyntax property => [property.Identifier.Text],
        GlobalStatementSyntax { Statement: LocalFunctionStatementSyntax function } => [function.Identifier.Text],
        _ => member.DescendantNodes(n => n is not (BlockSyntax or AnonymousFunctionExpressionSyntax or ForStatementSyntax
                or CommonForEachStatementSyntax or UsingStatementSyntax or SwitchSectionSyntax or SwitchExpressionArmSyntax))
            .Select(n => n switch
            {
                VariableDeclaratorSyntax variable => variable.Identifier.Text,
                SingleVariableDesignationSyntax variable => variable.Identifier.Text,
                _ => "",
            }).Where(n => n.Length > 0),
    };

    private static IEnumerable<string> Whole(ExpressionSyntax target) => target switch
    {
        IdentifierNameSyntax name => [name.Identifier.Text],
        TupleExpressionSyntax tuple => tuple.Arguments.SelectMany(a => Whole(a.Expression)),
        _ => [],
    };

    private static IEnumerable<string> Changed(SyntaxNode node) => node switch
    {
        AssignmentExpressionSyntax { Parent: not InitializerExpressionSyntax } set => Roots(set.Left),
        PrefixUnaryExpressionSyntax step when step.IsKind(SyntaxKind.PreIncrementExpression)
            || step.IsKind(SyntaxKind.PreDecrementExpression) => Roots(step.Operand),
        PostfixUnaryExpressionSyntax step when step.IsKind(SyntaxKind.PostIncrementExpression)
            || step.IsKind(SyntaxKind.PostDecrementExpression) => Roots(step.Operand),
        ArgumentSyntax { RefOrOutKeyword.RawKind: not 0 } argument => Roots(argument.Expression),
        InvocationExpressionSyntax { Parent: ExpressionStatementSyntax, Expression: MemberAccessExpressionSyntax call }
            when Changes(call.Name.Identifier.Text) => Roots(call.Expression),
        _ => [],
    };

    private static bool Changes(string verb) =>
        !BuilderVerbs.Contains(verb) && ChangingVerbs.Any(v => verb.StartsWith(v, StringComparison.Ordinal));

    // The variable at the beginning of "vessel.Parts[2].Mass".
    private static IEnumerable<string> Roots(ExpressionSyntax target) => target switch
    {
        IdentifierNameSyntax name => [name.Identifier.Text],
        MemberAccessExpressionSyntax member => Roots(member.Expression),
        ElementAccessExpressionSyntax element => Roots(element.Expression),
        TupleExpressionSyntax tuple => tuple.Arguments.SelectMany(a => Roots(a.Expression)),
        _ => [],
    };
}

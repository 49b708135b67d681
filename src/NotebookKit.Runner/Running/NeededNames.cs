using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace NotebookKit.Runner.Running;

/// <summary>Finds the names that a piece of a cell takes from outside itself.</summary>
internal static class NeededNames
{
    /// <summary>The names, those of types and of the library included.</summary>
    /// <param name="member">Statement or declaration.</param>
    public static IEnumerable<string> Of(MemberDeclarationSyntax member) => member.DescendantNodes().OfType<SimpleNameSyntax>()
        .Where(n => !IsMemberOfSomething(n) && !IsTarget(n, member) && !IsBound(n, member)).Select(n => n.Identifier.Text);

    private static bool IsMemberOfSomething(SimpleNameSyntax name) => name.Parent switch
    {
        MemberAccessExpressionSyntax access => access.Name == name,
        MemberBindingExpressionSyntax or NameColonSyntax or NameEqualsSyntax or UsingDirectiveSyntax => true,
        QualifiedNameSyntax qualified => qualified.Right == name,
        AssignmentExpressionSyntax { Parent: InitializerExpressionSyntax } set => set.Left == name,
        _ => false,
    };

    // "vessel = ..." at the outermost level needs no vessel beforehand.
    private static bool IsTarget(SimpleNameSyntax name, MemberDeclarationSyntax member) =>
        member is GlobalStatementSyntax { Statement: ExpressionStatementSyntax { Expression: AssignmentExpressionSyntax set } }
        && set.IsKind(SyntaxKind.SimpleAssignmentExpression)
        && (set.Left == name || (set.Left is TupleExpressionSyntax && name.Parent is ArgumentSyntax { Parent.Parent: var tuple }
            && tuple == set.Left));

    private static bool IsBound(SimpleNameSyntax name, MemberDeclarationSyntax member)
    {
        var text = name.Identifier.Text;
        for (var at = name.Parent; at is not null; at = at.Parent)
        {
            if (Binds(at, text)) return true;
            if (at == member) return false;
        }

        return false;
    }

    private static bool Binds(SyntaxNode scope, string text) => scope switch
    {
        SimpleLambdaExpressionSyntax lambda => lambda.Parameter.Identifier.Text == text,
        ParenthesizedLambdaExpressionSyntax lambda => Has(lambda.ParameterList, text),
        AnonymousMethodExpressionSyntax method => Has(method.ParameterList, text),
        BaseMethodDeclarationSyntax method => Has(method.ParameterList, text),
        LocalFunctionStatementSyntax method => Has(method.ParameterList, text),
        TypeDeclarationSyntax type => Has(type.ParameterList, text) || type.Members.Any(m => Names(m, text)),
        ForEachStatementSyntax each => each.Identifier.Text == text,
        CatchClauseSyntax clause => clause.Declaration?.Identifier.Text == text,
        QueryExpressionSyntax query => query.DescendantNodesAndTokens().Any(n => n.IsToken && n.AsToken() is var token
            && token.IsKind(SyntaxKind.IdentifierToken) && token.Text == text
            && n.Parent is FromClauseSyntax or LetClauseSyntax or JoinClauseSyntax or QueryContinuationSyntax),
        BlockSyntax or ForStatementSyntax or UsingStatementSyntax or SwitchSectionSyntax or SwitchExpressionArmSyntax
            => scope.DescendantNodes().Any(n => n switch
            {
                VariableDeclaratorSyntax variable => variable.Identifier.Text == text,
                SingleVariableDesignationSyntax variable => variable.Identifier.Text == text,
                LocalFunctionStatementSyntax function => function.Identifier.Text == text,
                _ => false,
            }),
        _ => false,
    };

    private static bool Has(ParameterListSyntax? list, string text) => list?.Parameters.Any(p => p.Identifier.Text == text) == true;

    private static bool Names(MemberDeclarationSyntax member, string text) => member switch
    {
        MethodDeclarationSyntax method => method.Identifier.Text == text,
        PropertyDeclarationSyntax property => property.Identifier.Text == text,
        BaseTypeDeclarationSyntax type => type.Identifier.Text == text,
        FieldDeclarationSyntax field => field.Declaration.Variables.Any(v => v.Identifier.Text == text),
        _ => false,
    };
}

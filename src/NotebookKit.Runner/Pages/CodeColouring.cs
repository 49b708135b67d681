using System.Text;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Text;

namespace NotebookKit.Runner.Pages;

/// <summary>Colours C# by the compiler's own reading of it, without resolving names.</summary>
internal static class CodeColouring
{
    private static readonly CSharpParseOptions Script = new(LanguageVersion.Latest, kind: SourceCodeKind.Script);

    /// <summary>The code as html, its parts marked with one-letter classes that the style sheet colours.</summary>
    /// <param name="code">C# source.</param>
    public static string ToHtml(string code)
    {
        var html = new StringBuilder(code.Length * 2);
        var position = 0;
        foreach (var (span, mark) in Marks(CSharpSyntaxTree.ParseText(code, Script).GetRoot()))
        {
            if (span.Start < position || span.IsEmpty) continue;
            html.Append(Escape.Text(code[position..span.Start]));
            html.Append("<span class=\"").Append(mark).Append("\">").Append(Escape.Text(code[span.Start..span.End])).Append("</span>");
            position = span.End;
        }

        return html.Append(Escape.Text(code[position..])).ToString();
    }

    private static IEnumerable<(TextSpan Span, char Mark)> Marks(SyntaxNode root)
    {
        foreach (var token in root.DescendantTokens())
        {
            foreach (var trivia in token.LeadingTrivia) if (IsRemark(trivia)) yield return (trivia.Span, 'c');
            if (MarkOf(token) is { } mark) yield return (token.Span, mark);
            foreach (var trivia in token.TrailingTrivia) if (IsRemark(trivia)) yield return (trivia.Span, 'c');
        }
    }

    private static bool IsRemark(SyntaxTrivia trivia) =>
        trivia.IsDirective || trivia.Kind() is SyntaxKind.SingleLineCommentTrivia or SyntaxKind.MultiLineCommentTrivia
            or SyntaxKind.SingleLineDocumentationCommentTrivia or SyntaxKind.MultiLineDocumentationCommentTrivia;

    private static char? MarkOf(SyntaxToken token) => token.Kind() switch
    {
        SyntaxKind.StringLiteralToken or SyntaxKind.CharacterLiteralToken or SyntaxKind.InterpolatedStringTextToken
            or SyntaxKind.InterpolatedStringStartToken or SyntaxKind.InterpolatedStringEndToken
                or SyntaxKind.InterpolatedVerbatimStringStartToken
            or SyntaxKind.InterpolatedSingleLineRawStringStartToken or SyntaxKind.InterpolatedMultiLineRawStringStartToken
                or SyntaxKind.InterpolatedRawStringEndToken
            or SyntaxKind.SingleLineRawStringLiteralToken or SyntaxKind.MultiLineRawStringLiteralToken => 's',
        SyntaxKind.NumericLiteralToken => 'n',
        SyntaxKind.IdentifierToken => MarkOfName(token),
        _ => SyntaxFacts.IsKeywordKind(token.Kind()) ? 'k' : null,
    };

    private static char? MarkOfName(SyntaxToken token) => token.Parent switch
    {
        IdentifierNameSyntax { IsVar: true } => 'k',
        BaseTypeDeclarationSyntax or TypeParameterSyntax => 't',
        MethodDeclarationSyntax or LocalFunctionStatementSyntax => 'm',
        SimpleNameSyntax name when IsCalled(name) => 'm',
        SimpleNameSyntax name when IsType(name) => 't',
        _ => null,
    };

    private static bool IsCalled(SimpleNameSyntax name) =>
        name.Parent is InvocationExpressionSyntax
        || (name.Parent is MemberAccessExpressionSyntax access && access.Name == name && access.Parent is InvocationExpressionSyntax)
        || (name.Parent is MemberBindingExpressionSyntax { Parent: InvocationExpressionSyntax });

    private static bool IsType(SimpleNameSyntax name) => name.Parent switch
    {
        ObjectCreationExpressionSyntax or VariableDeclarationSyntax or ParameterSyntax or TypeArgumentListSyntax or BaseTypeSyntax
            or CastExpressionSyntax or ArrayTypeSyntax or NullableTypeSyntax or MethodDeclarationSyntax or LocalFunctionStatementSyntax =>
                true,
        MemberAccessExpressionSyntax access => access.Expression == name && name.Identifier.Text is [var first, ..] && char.IsUpper(first),
        _ => false,
    };
}

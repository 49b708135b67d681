using System.Globalization;
using System.Reflection;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Runner.Givens;

/// <summary>A value that the code writes out: a number, a number with a literal's ending, or one made from a number by its type.</summary>
/// <param name="Type">Its type; none where the code computes it.</param>
/// <param name="Value">The value; none where only the type can be told.</param>
internal sealed record WrittenValue(Type? Type, object? Value)
{
    private static readonly ILookup<string, MethodInfo> Literals = typeof(GaugePressureLiterals).Assembly.GetExportedTypes()
        .Where(t => t is { IsAbstract: true, IsSealed: true } && t.Namespace == typeof(GaugePressureLiterals).Namespace)
        .SelectMany(t => t.GetMethods(BindingFlags.Public | BindingFlags.Static))
        .Where(m => m.GetParameters().Length == 1 && m.ReturnType.IsValueType)
        .ToLookup(m => m.Name, StringComparer.Ordinal);

    private static WrittenValue Computed { get; } = new(null, null);

    /// <summary>Reads an expression.</summary>
    /// <param name="expression">For example <c>36.BarGauge()</c>.</param>
    public static WrittenValue Read(ExpressionSyntax? expression) => expression switch
    {
        ParenthesizedExpressionSyntax inner => Read(inner.Expression),
        LiteralExpressionSyntax { Token.Value: int or double } number => new(number.Token.Value!.GetType(), number.Token.Value),
        PrefixUnaryExpressionSyntax minus when minus.IsKind(SyntaxKind.UnaryMinusExpression) => Negative(Read(minus.Operand)),
        MemberAccessExpressionSyntax member when TypeNamed(member.Expression) is { } type => Constant(type, member.Name.Identifier.Text),
        InvocationExpressionSyntax { Expression: MemberAccessExpressionSyntax call, ArgumentList.Arguments: [] }
            => Suffixed(Read(call.Expression), call.Name.Identifier.Text),
        InvocationExpressionSyntax { Expression: MemberAccessExpressionSyntax call,
            ArgumentList.Arguments: [var argument] } when TypeNamed(call.Expression) is { } type =>
            Made(type, call.Name.Identifier.Text, Read(argument.Expression)),
        _ => Computed,
    };

    /// <summary>The type that a name in the code means; none where it is no type that a given can have.</summary>
    /// <param name="name">Name.</param>
    public static Type? TypeNamed(SyntaxNode? name) => name switch
    {
        PredefinedTypeSyntax { Keyword.ValueText: "double" } => typeof(double),
        PredefinedTypeSyntax { Keyword.ValueText: "int" } => typeof(int),
        SimpleNameSyntax simple => typeof(Length).Assembly.GetType($"{typeof(Length).Namespace}.{simple.Identifier.Text}")
            is { IsValueType: true } unit ? unit
            : typeof(GaugePressure).Assembly.GetType($"{typeof(GaugePressure).Namespace}.{simple.Identifier.Text}")
                is { IsValueType: true } ours ? ours
            : null,
        MemberAccessExpressionSyntax qualified => TypeNamed(qualified.Name),
        QualifiedNameSyntax qualified => TypeNamed(qualified.Right),
        _ => null,
    };

    private static WrittenValue Negative(WrittenValue of) => of.Value switch
    {
        int number => of with { Value = -number },
        double number => of with { Value = -number },
        _ => of with { Value = null },
    };

    private static WrittenValue Suffixed(WrittenValue before, string suffix)
    {
        // Every ending makes one type, whatever the number before it is.
        var named = Literals[suffix].ToList();
        if (named.Select(m => m.ReturnType).Distinct().ToList() is not [var type]) return Computed;
        if (named is not [var method] || before.Value is not { } value) return new(type, null);
        return new(type, method.IsGenericMethodDefinition ? Call(method.MakeGenericMethod(typeof(double)), Number(value))
            : method.GetParameters()[0].ParameterType == value.GetType() ? Call(method, value)
            : null);
    }

    private static WrittenValue Made(Type type, string maker, WrittenValue from)
    {
        var method = type.GetMethods(BindingFlags.Public | BindingFlags.Static).FirstOrDefault(m => m.Name == maker
            && m.GetParameters().Length == 1);
        if (method?.ReturnType != type) return Computed;
        var wanted = method.GetParameters()[0].ParameterType;
        return new(type, from.Value is not { } value ? null
            : wanted == value.GetType() ? Call(method, value)
            : Number(value) is not { } number ? null
            : wanted == typeof(double) ? Call(method, number)
            : wanted == typeof(QuantityValue) ? Call(method, (QuantityValue)number)
            : null);
    }

    private static WrittenValue Constant(Type type, string name) =>
        type.GetProperty(name, BindingFlags.Public | BindingFlags.Static) is { } property && property.PropertyType == type
            ? new(type, property.GetValue(null)) : Computed;

    private static double? Number(object value) => value is int or double ? Convert.ToDouble(value, CultureInfo.InvariantCulture) : null;

    // What the library refuses, the notebook's own cell says when it runs.
    private static object? Call(MethodInfo method, object? argument)
    {
        try
        {
            return argument is null ? null : method.Invoke(null, [argument]);
        }
        catch (TargetInvocationException)
        {
            return null;
        }
    }
}

using System.Collections;
using System.Reflection;
using System.Runtime.CompilerServices;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Interactive.Formatters;

/// <summary>Values and names of the library in words.</summary>
internal static class Words
{
    private const int Listed = 4, Numbers = 8, Endless = 1000;

    /// <summary>A value in a few words; empty where it says nothing.</summary>
    public static string Of(object value) => value switch
    {
        string text => text,
        bool flag => flag ? "yes" : "no",
        Enum choice => Plain(choice.ToString()),
        double number => double.IsFinite(number) ? Digits.Round(number, 5) : "–",
        IFormattable number when number.GetType().IsPrimitive => number.ToString(null, System.Globalization.CultureInfo.InvariantCulture),
        IQuantity quantity => quantity.Show(),
        _ when SaysItself(value.GetType()) => value.ToString() ?? "",
        IEnumerable items => List(items),
        _ => OwnName(value) is { Length: > 0 } name ? name : Parts(value),
    };

    /// <summary>Whether a type has words of its own, not those that the compiler gives every record.</summary>
    public static bool SaysItself(Type type) =>
        type.GetMethod(nameof(ToString), Type.EmptyTypes) is { } say && say.DeclaringType != typeof(object)
            && say.DeclaringType != typeof(ValueType) && !say.IsDefined(typeof(CompilerGeneratedAttribute));

    /// <summary>The name that a design was given; empty where it has none.</summary>
    public static string OwnName(object value) =>
        value.GetType().GetProperty("Name", BindingFlags.Public | BindingFlags.Instance) is { } property
            && property.PropertyType == typeof(string) ? property.GetValue(value) as string ?? "" : "";

    /// <summary>A type's name without the mark of its type parameters.</summary>
    public static string NameOf(Type type) => type.Name.Split('`')[0];

    /// <summary>EmptyMass becomes "Empty mass".</summary>
    public static string Sentence(string name) => name.Length == 0 ? "" : name[..1] + Plain(name)[1..];

    // FlatCircular becomes "flat circular"; capitals that belong together stay.
    private static string Plain(string name) => string.Concat(name.Select((c, i) =>
        i > 0 && char.IsUpper(c) && !char.IsUpper(name[i - 1]) ? " " + (Stands(name, i) ? c : char.ToLowerInvariant(c)) : i == 0
            && !Stands(name, i) ? char.ToLowerInvariant(c).ToString() : c.ToString()));

    private static bool Stands(string name, int at) => at + 1 == name.Length ? at > 0 : char.IsUpper(name[at + 1]);

    // A part without a name, by the first things that can be said of it: "bore 66 mm, thickness 0.5 mm".
    private static string Parts(object value)
    {
        var said = ShownProperties.Of(value.GetType()).Where(p => IsShort(p.PropertyType))
            .Select(p => ShownProperties.Value(p, value) is { } part && Of(part) is { Length: > 0 } text ? $"{Plain(p.Name)} {text}" : "")
            .Where(t => t.Length > 0).Take(Listed);
        return string.Join(", ", said) is { Length: > 0 } all ? all : Plain(NameOf(value.GetType()));
    }

    private static bool IsShort(Type type) =>
        Nullable.GetUnderlyingType(type) is { } inner ? IsShort(inner) : type.IsEnum || type.IsPrimitive
            || typeof(IQuantity).IsAssignableFrom(type) || (type.IsValueType && SaysItself(type));

    // Every name is said; of a long column of numbers its count and its extent.
    private static string List(IEnumerable items)
    {
        var all = items.Cast<object>().Take(Endless + 1).ToList();
        if (all.Count <= Numbers || !all.All(i => i is double or IQuantity)) return string.Join(", ", all.Take(Endless).Select(Of));
        var count = all.Count > Endless ? $"over {Endless}" : all.Count.ToString(System.Globalization.CultureInfo.InvariantCulture);
        return $"{count} values, the first {Of(all[0])}, the last {Of(all[^1])}";
    }
}

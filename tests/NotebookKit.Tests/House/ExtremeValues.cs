using System.Collections;
using System.Globalization;
using System.Linq.Expressions;
using System.Reflection;
using System.Runtime.CompilerServices;
using NotebookKit.Numerics;
using NotebookKit.Provenance;
using UnitsNet;

namespace NotebookKit.Tests.House;

/// <summary>Makes values of any public type out of nothing, of the edge of what a number holds, and of sound ones with one thing
/// changed.</summary>
/// <param name="sound">Sound objects to begin with, by type.</param>
internal sealed class ExtremeValues(IReadOnlyList<object> sound)
{
    private const int Deepest = 4;

    private static readonly double[] Numbers = [0, 1, -1, 0.5, 2, 10, 1e-300, -1e-300, double.Epsilon, 1e300, -1e300, 1e12, -1e12, 1e-9,
        double.MaxValue, double.MinValue, double.NaN, double.PositiveInfinity, double.NegativeInfinity];

    private static readonly int[] Counts = [0, 1, 2, 3, 5, -1, 17, int.MaxValue, int.MinValue];

    private static readonly string[] Texts = ["", " ", "a", "Curlew", "wall", "1 mm", "55 bar gauge", "NaN", "{}", "[]", "\0", "é\u0301",
        new string('x', 5000)];

    private static readonly Type[] Every = [.. typeof(WorkRun).Assembly.GetExportedTypes()];

    /// <summary>Whether anything of a type can be made.</summary>
    public bool Knows(Type type, int depth = 0)
    {
        if (type.IsByRef || type.IsPointer || type.ContainsGenericParameters) return false;
        if (Nullable.GetUnderlyingType(type) is { } inner) return Knows(inner, depth);
        if (type.IsEnum || type.IsPrimitive || type == typeof(string) || type == typeof(decimal) || typeof(IQuantity).IsAssignableFrom(type)
            || type == typeof(DateOnly) || type == typeof(DateTime) || type == typeof(TimeSpan) || type == typeof(CancellationToken))
            return true;
        if (ElementOf(type) is { } element) return Knows(element, depth + 1);
        if (typeof(Delegate).IsAssignableFrom(type)) return true;
        if (depth > Deepest || type.Assembly != typeof(WorkRun).Assembly) return false;
        return sound.Any(type.IsInstanceOfType) || Every.Any(t => type.IsAssignableFrom(t) && !t.IsAbstract);
    }

    /// <summary>A value; none only where none is allowed or nothing can be made.</summary>
    /// <param name="type">Its type.</param>
    /// <param name="chance">Chooses.</param>
    /// <param name="depth">How many objects it stands in.</param>
    public object? Make(Type type, Random chance, int depth = 0)
    {
        if (Nullable.GetUnderlyingType(type) is { } inner) return chance.Next(3) == 0 ? null : Make(inner, chance, depth);
        if (type == typeof(double)) return Numbers[chance.Next(Numbers.Length)];
        if (type == typeof(float)) return (float)Numbers[chance.Next(Numbers.Length)];
        if (type == typeof(bool)) return chance.Next(2) == 0;
        if (type == typeof(string)) return Texts[chance.Next(Texts.Length)];
        if (type == typeof(CancellationToken)) return CancellationToken.None;
        if (type == typeof(DateOnly)) return chance.Next(3) switch
        {
            0 => DateOnly.MinValue, 1 => DateOnly.MaxValue, _ => new(2026, 3, 14),
        };
        if (type == typeof(DateTime)) return chance.Next(3) switch
        {
            0 => DateTime.MinValue, 1 => DateTime.MaxValue, _ => new(2026, 3, 14),
        };
        if (type == typeof(TimeSpan)) return TimeSpan.FromSeconds(chance.Next(-10, 10));
        if (type == typeof(char)) return 'x';
        if (type == typeof(decimal)) return (decimal)chance.Next(-3, 4);
        if (type.IsEnum) return Enum.ToObject(type, chance.Next(6) == 0 ? 99 : Enum.GetValues(type) is { Length: > 0 } all
            ? Convert.ToInt64(all.GetValue(chance.Next(all.Length)), CultureInfo.InvariantCulture) : 0);
        if (type.IsPrimitive) return Whole(type, chance);
        if (typeof(IQuantity).IsAssignableFrom(type)) return QuantityOf(type, chance);
        if (ElementOf(type) is { } element) return ListOf(type, element, chance, depth);
        if (typeof(Delegate).IsAssignableFrom(type)) return DelegateOf(type, chance, depth);
        return ObjectOf(type, chance, depth);
    }

    /// <summary>A sound object with some of what can be set of it changed to something extreme.</summary>
    public object Changed(object from, Random chance, int depth)
    {
        var type = from.GetType();
        if (type.GetMethod("<Clone>$") is not { } clone) return from;
        var settable = type.GetProperties().Where(p => p.SetMethod is { IsPublic: true } && p.GetIndexParameters().Length == 0
            && Knows(p.PropertyType)).ToList();
        if (settable.Count == 0) return from;
        var copy = clone.Invoke(from, null)!;
        for (var change = chance.Next(1, 3); change > 0; change--)
        {
            var property = settable[chance.Next(settable.Count)];
            try
            {
                if (Make(property.PropertyType, chance, depth + 1) is { } value) property.SetValue(copy, value);
            }
            catch (TargetInvocationException)
            {
                // What refuses to be set stays as it is.
            }
        }

        return copy;
    }

    /// <summary>Values for a call; none where one can't be made that may not be null.</summary>
    public object?[]? Arguments(MethodBase verb, Random chance, int depth = 0)
    {
        var parameters = verb.GetParameters();
        object?[] made = [.. parameters.Select(p => Make(p.ParameterType, chance, depth))];
        for (var i = 0; i < made.Length; i++)
            if (made[i] is null && !parameters[i].ParameterType.IsValueType
                && new NullabilityInfoContext().Create(parameters[i]).WriteState == NullabilityState.NotNull) return null;
        return made;
    }

    private static object Whole(Type type, Random chance)
    {
        var count = Counts[chance.Next(Counts.Length)];
        return type == typeof(int) ? count : type == typeof(long) ? (long)count : type == typeof(ulong) ? (ulong)(uint)count
            : type == typeof(uint) ? (uint)count : type == typeof(byte) ? (byte)count : Convert.ChangeType(chance.Next(0, 100), type,
                CultureInfo.InvariantCulture);
    }

    // The library's units refuse what is no finite number themselves.
    private static object QuantityOf(Type type, Random chance)
    {
        var info = type == typeof(IQuantity) ? Quantity.Infos[chance.Next(Quantity.Infos.Length)]
            : Quantity.Infos.First(i => i.ValueType == type);
        var number = Numbers[chance.Next(Numbers.Length)];
        if (chance.Next(2) == 0) number = Math.Round(Math.Pow(10, (chance.NextDouble() * 12) - 6), 6);
        if (!double.IsFinite(number)) number = 0;
        // A quantity is tried up to 10³⁰ of its units and down to 10⁻³⁰: beyond, the units' own library refuses what overflows.
        number = Math.Clamp(number, -1e30, 1e30);
        if (number != 0 && Math.Abs(number) < 1e-30) number = 1e-30;
        return Quantity.From(number, info.UnitInfos[chance.Next(info.UnitInfos.Length)].Value);
    }

    private object? ListOf(Type type, Type element, Random chance, int depth)
    {
        var list = (IList)Activator.CreateInstance(typeof(List<>).MakeGenericType(element))!;
        for (var n = chance.Next(4) is var few && few == 3 ? chance.Next(3, 12) : few; n > 0; n--)
            if (Make(element, chance, depth + 1) is { } value) list.Add(value);
        if (list.Count > 0 && chance.Next(4) == 0) list.Add(list[0]);
        if (type.IsAssignableFrom(list.GetType())) return list;
        var array = Array.CreateInstance(element, list.Count);
        list.CopyTo(array, 0);
        return array;
    }

    private Delegate DelegateOf(Type type, Random chance, int depth)
    {
        var invoke = type.GetMethod("Invoke")!;
        var parameters = invoke.GetParameters().Select(p => Expression.Parameter(p.ParameterType)).ToArray();
        Expression body = invoke.ReturnType == typeof(void) ? Expression.Empty()
            : Array.Find(parameters, p => p.Type == invoke.ReturnType && chance.Next(2) == 0) is { } same ? same
            : Expression.Constant(Knows(invoke.ReturnType, depth + 1) ? Make(invoke.ReturnType, chance, depth + 1) : null,
                invoke.ReturnType);
        return Expression.Lambda(type, body, parameters).Compile();
    }

    private object? ObjectOf(Type type, Random chance, int depth)
    {
        var known = sound.Where(type.IsInstanceOfType).ToList();
        if (known.Count > 0 && (depth > Deepest || chance.Next(3) > 0))
        {
            var one = known[chance.Next(known.Count)];
            return chance.Next(2) == 0 || depth > Deepest ? one : Changed(one, chance, depth);
        }

        // What a model hands back is made by the model alone.
        if (depth > Deepest || typeof(IResult).IsAssignableFrom(type)) return known.FirstOrDefault();
        var kinds = Every.Where(t => type.IsAssignableFrom(t) && !t.IsAbstract && !t.ContainsGenericParameters).ToList();
        if (kinds.Count == 0) return known.FirstOrDefault();
        var kind = kinds[chance.Next(kinds.Count)];
        var makers = new List<MethodBase>([.. kind.GetConstructors(), .. kind.GetMethods(BindingFlags.Public | BindingFlags.Static)
            .Where(m => m.ReturnType == kind && !m.ContainsGenericParameters)]);
        makers.RemoveAll(m => !m.GetParameters().All(p => Knows(p.ParameterType, depth + 1)));
        if (makers.Count == 0) return known.FirstOrDefault();
        var maker = makers[chance.Next(makers.Count)];
        if (Arguments(maker, chance, depth + 1) is not { } arguments) return known.FirstOrDefault();
        try
        {
            var made = maker is ConstructorInfo constructor ? constructor.Invoke(arguments) : maker.Invoke(null, arguments);
            foreach (var property in kind.GetProperties().Where(p => p.GetCustomAttribute<RequiredMemberAttribute>() is not null))
            {
                if (Make(property.PropertyType, chance, depth + 1) is not { } value) return known.FirstOrDefault();
                property.SetValue(made, value);
            }

            return made;
        }
        catch (TargetInvocationException)
        {
            // What can't be made is tried as a verb of its own.
            return known.FirstOrDefault();
        }
    }

    private static Type? ElementOf(Type type)
    {
        if (type == typeof(string)) return null;
        if (type.IsArray) return type.GetElementType();
        return type.IsGenericType && type.GetGenericTypeDefinition() is var open && (open == typeof(IReadOnlyList<>)
            || open == typeof(IEnumerable<>) || open == typeof(IReadOnlyCollection<>) || open == typeof(IList<>) || open == typeof(List<>)
            || open == typeof(ICollection<>)) ? type.GetGenericArguments()[0] : null;
    }
}

using System.Collections;
using System.Reflection;
using System.Runtime.CompilerServices;
using NotebookKit.Numerics;
using NotebookKit.Provenance;
using UnitsNet;

namespace NotebookKit.Tests.House;

/// <summary>Calls the library's public verbs with extreme values: each answers, refuses with an exception of the library's own, or
/// hears that it is to stop.</summary>
internal sealed class VerbFuzz
{
    private const int MostSound = 30;

    private readonly List<object> _sound = [];
    private readonly ExtremeValues _values;

    /// <summary>Begins with what sound designs hold.</summary>
    /// <param name="roots">Sound objects; what they hold is found by their properties.</param>
    public VerbFuzz(params IEnumerable<object> roots)
    {
        foreach (var root in roots) Gather(root, 0);
        _values = new(_sound);
        Verbs = [.. typeof(WorkRun).Assembly.GetExportedTypes()
            .Where(t => !t.ContainsGenericParameters && !typeof(Delegate).IsAssignableFrom(t))
            .SelectMany(VerbsOf).Where(v => v.GetParameters().All(p => _values.Knows(p.ParameterType))
                && (v.IsStatic || v is ConstructorInfo || _values.Knows(v.DeclaringType!))).OrderBy(NameOf, StringComparer.Ordinal)];
    }

    /// <summary>The verbs that can be called, by name.</summary>
    public IReadOnlyList<MethodBase> Verbs { get; }

    /// <summary>Calls one verb once.</summary>
    /// <param name="verb">Verb.</param>
    /// <param name="seed">Chooses the values.</param>
    /// <param name="looks">After so many looks at whether it is to stop, it is asked to.</param>
    /// <returns>What is wrong with what it did; none where nothing is.</returns>
    public string? Call(MethodBase verb, int seed, int looks = 2000)
    {
        var chance = new Random(seed);
        using var stop = new CancellationTokenSource();
        var looked = 0;
        using var run = WorkRun.Watch(() =>
        {
            if (Interlocked.Increment(ref looked) > looks) stop.Cancel();
        }, stop.Token);
        object? on = null;
        object?[]? arguments;
        try
        {
            if (verb is { IsStatic: false } and not ConstructorInfo
                && (on = _values.Make(verb.DeclaringType!, chance)) is null) return null;
            if ((arguments = _values.Arguments(verb, chance)) is null) return null;
        }
        catch (Exception e) when (IsOwn(e is TargetInvocationException { InnerException: { } inner } ? inner : e))
        {
            return null;
        }

        try
        {
            var answer = verb is ConstructorInfo made ? made.Invoke(arguments) : verb.Invoke(on, arguments);
            return answer is double number && double.IsNaN(number) && !HoldsNaN(arguments) && !HoldsNaN([on]) ? "answers with no number"
                : null;
        }
        catch (TargetInvocationException e) when (IsOwn(e.InnerException!))
        {
            return null;
        }
        catch (TargetInvocationException e)
        {
            return $"{e.InnerException!.GetType().Name}: {e.InnerException.Message.Split('\n')[0]} @ {PlaceOf(e.InnerException)}";
        }
    }

    /// <summary>A verb as one reads it.</summary>
    public static string NameOf(MethodBase verb) =>
        $"{verb.DeclaringType!.Name}.{verb.Name}({string.Join(", ", verb.GetParameters().Select(p => p.ParameterType.Name))})";

    // A refusal of the library's own: its exceptions, and an argument that it refuses itself in a sentence.
    private static bool IsOwn(Exception error) => error switch
    {
        OperationCanceledException or FormatException or ArgumentNullException => true,
        ArgumentException => error.GetType().Assembly == typeof(WorkRun).Assembly
            || error.TargetSite?.Module.Assembly == typeof(WorkRun).Assembly
            || (error.TargetSite?.Name.StartsWith("Throw", StringComparison.Ordinal) == true
                && error.TargetSite.DeclaringType == typeof(ArgumentOutOfRangeException)),
        IOException => error.TargetSite?.Module.Assembly == typeof(WorkRun).Assembly,
        _ => error.GetType().Assembly == typeof(WorkRun).Assembly,
    };

    private static string PlaceOf(Exception error) => (error is AggregateException { InnerException: { } inner } ? inner : error)
        .StackTrace?.Split('\n').FirstOrDefault(l => l.Contains("NotebookKit.", StringComparison.Ordinal)
            && !l.Contains(".Tests.", StringComparison.Ordinal))?.Trim() ?? "";

    private static bool HoldsNaN(IEnumerable<object?> values) => values.Any(v => v is double d ? !double.IsFinite(d)
        : v is string or null ? false
        : v is IEnumerable list ? HoldsNaN(list.Cast<object?>().Take(50))
        : v.GetType().Assembly == typeof(WorkRun).Assembly && v.GetType().GetProperties().Any(p => p.PropertyType == typeof(double)
            && p.GetIndexParameters().Length == 0 && Read(p, v) is double of && !double.IsFinite(of)));

    private static object? Read(PropertyInfo property, object of)
    {
        try
        {
            return property.GetValue(of);
        }
        catch (TargetInvocationException)
        {
            return null;
        }
    }

    private static IEnumerable<MethodBase> VerbsOf(Type type)
    {
        const BindingFlags every = BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly;
        if (type.IsEnum) return [];
        if (typeof(IResult).IsAssignableFrom(type)) return [.. type.GetMethods(every | BindingFlags.Static).Where(m => m.IsStatic
            && !m.IsSpecialName && !m.ContainsGenericParameters)];
        return [.. type.IsAbstract ? [] : type.GetConstructors(), .. type.GetMethods(every).Where(m => !m.ContainsGenericParameters
            && m.GetCustomAttribute<CompilerGeneratedAttribute>() is null
            && m.Name is not ("ToString" or "Equals" or "GetHashCode" or "<Clone>$" or "Deconstruct" or "Dispose" or "WriteTo" or "Write")
            && !m.Name.StartsWith("set_", StringComparison.Ordinal) && !m.Name.StartsWith("get_", StringComparison.Ordinal))];
    }

    private void Gather(object? of, int depth)
    {
        if (of is null or string || depth > 7) return;
        if (of is IEnumerable list and not IQuantity)
        {
            foreach (var item in list.Cast<object?>().Take(4)) Gather(item, depth + 1);
            if (of.GetType().Assembly != typeof(WorkRun).Assembly) return;
        }

        var type = of.GetType();
        if (type.Assembly != typeof(WorkRun).Assembly || type.IsEnum || _sound.Any(s => ReferenceEquals(s, of))
            || _sound.Count(s => s.GetType() == type) >= MostSound / (depth + 1) + 1) return;
        _sound.Add(of);
        foreach (var property in type.GetProperties().Where(p => p.GetIndexParameters().Length == 0)) Gather(Read(property, of), depth + 1);
    }
}

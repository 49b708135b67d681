using System.Globalization;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Record;

/// <summary>Collects givens, requirements and decisions while a notebook runs, next to the computation they belong to.</summary>
/// <param name="title">What the record is about.</param>
/// <param name="overrides">Values to use instead of the notebook's own; none: those of the environment.</param>
public sealed class DesignRecordBuilder(string title, GivenOverrides? overrides = null)
{
    private readonly GivenOverrides _overrides = overrides ?? GivenOverrides.FromEnvironment();
    private readonly List<Given> _givens = [];
    private readonly List<Requirement> _requirements = [];
    private readonly List<Decision> _decisions = [];

    /// <summary>States an input and returns the value to compute with: the notebook's own, or the one this run overrides it with.</summary>
    /// <typeparam name="T">A quantity, a gauge or absolute pressure, or a plain number.</typeparam>
    /// <param name="name">Name; stating it again replaces it, so that a cell can be run twice.</param>
    /// <param name="value">Value; within the range.</param>
    /// <param name="minimum">Smallest value allowed; at most <paramref name="maximum"/>.</param>
    /// <param name="maximum">Largest value allowed; at least <paramref name="minimum"/>.</param>
    /// <param name="why">Why it has this value.</param>
    /// <exception cref="OutOfRangeException">The value is outside its range.</exception>
    /// <exception cref="FormatException">The overriding text can't be read.</exception>
    public T Given<T>(string name, T value, T minimum, T maximum, string why) where T : struct, IComparable<T>
    {
        var replacement = _overrides.Find<T>(name);
        var range = new ValidRange<T>(minimum, maximum);
        var used = range.Check(replacement ?? value, name, why);
        Put(_givens, new Given(name, Exact(used), range.ToString(), why, replacement is not null), g => g.Name);
        return used;
    }

    /// <summary>States a condition and notes whether the value meets it.</summary>
    /// <typeparam name="T">A quantity, a gauge or absolute pressure, or a plain number.</typeparam>
    /// <param name="name">Name; stating it again replaces it.</param>
    /// <param name="value">The computed value; any.</param>
    /// <param name="side">Which side of the limit is right.</param>
    /// <param name="limit">The limit; any.</param>
    /// <param name="why">Why it is required.</param>
    public Requirement Require<T>(string name, T value, Limit side, T limit, string why) where T : struct, IComparable<T>
    {
        var requirement = Condition(name, value, side, limit, why);
        Put(_requirements, requirement, r => r.Name);
        return requirement;
    }

    /// <summary>States a choice and the condition under which it stays right.</summary>
    /// <param name="name">What was to be decided; stating it again replaces it.</param>
    /// <param name="chosen">What was chosen.</param>
    /// <param name="beat">What was turned down, each with its reason.</param>
    /// <param name="why">Why it was chosen.</param>
    /// <param name="staysRightWhile">The condition, from <see cref="Require{T}"/> or <see cref="Condition{T}"/>.</param>
    public Decision Decide(string name, string chosen, IReadOnlyList<string> beat, string why, Requirement staysRightWhile)
    {
        var decision = new Decision(name, chosen, beat, why, staysRightWhile);
        Put(_decisions, decision, d => d.Name);
        return decision;
    }

    /// <summary>A condition for a decision, not itself a requirement of the design.</summary>
    /// <typeparam name="T">A quantity, a gauge or absolute pressure, or a plain number.</typeparam>
    /// <param name="name">Name.</param>
    /// <param name="value">The computed value; any.</param>
    /// <param name="side">Which side of the limit is right.</param>
    /// <param name="limit">The limit; any.</param>
    /// <param name="why">Why it matters.</param>
    public static Requirement Condition<T>(string name, T value, Limit side, T limit, string why) where T : struct, IComparable<T>
    {
        var order = value.CompareTo(limit);
        var holds = value is not double.NaN && (side == Limit.AtMost ? order <= 0 : order >= 0);
        return new(name, Text(value), $"{(side == Limit.AtMost ? "at most" : "at least")} {Text(limit)}", holds, why);
    }

    /// <summary>The record as it stands.</summary>
    public DesignRecord Build() => new(title, [.. _givens], [.. _requirements], [.. _decisions]);

    private static void Put<T>(List<T> list, T item, Func<T, string> name)
    {
        var at = list.FindIndex(x => name(x) == name(item));
        if (at >= 0) list[at] = item;
        else list.Add(item);
    }

    private static string Text<T>(T value) => value switch
    {
        IQuantity quantity => quantity.Show(4),
        double number => Digits.Round(number, 4),
        _ => value!.ToString()!,
    };

    private static string Exact<T>(T value) => value switch
    {
        IQuantity quantity => quantity.Show(15),
        GaugePressure gauge => $"{Digits.Round(gauge.Bar, 15)} bar gauge",
        AbsolutePressure absolute => $"{Digits.Round(absolute.Bar, 15)} bar absolute",
        double number => number.ToString("R", CultureInfo.InvariantCulture),
        _ => value!.ToString()!,
    };
}

using System.Globalization;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Quantities.Texts;
using UnitsNet;

namespace NotebookKit.Record.Givens;

/// <summary>The kind of value that a given takes, and how such a value is written: told before a notebook runs as well as by its own
/// cell.</summary>
public sealed class GivenKind
{
    private GivenKind(Type type) => Type = type;

    /// <summary>Type of the value.</summary>
    public Type Type { get; }

    /// <summary>What it is called: "gauge pressure", "length", "plain number".</summary>
    public string Noun => Type.Name switch
    {
        nameof(Double) => "plain number",
        nameof(Int32) => "whole number",
        nameof(TemperatureDelta) => "temperature difference",
        nameof(AreaDensity) => "areal weight",
        var name => string.Concat(name.Select((c, i) => i > 0 && char.IsUpper(c) ? $" {char.ToLowerInvariant(c)}"
            : $"{char.ToLowerInvariant(c)}")),
    };

    /// <summary>The kind that a type of value is.</summary>
    /// <param name="type">A quantity, a gauge or absolute pressure, or a plain number; every other type can't be read from text.</param>
    public static GivenKind Of(Type type)
    {
        ArgumentNullException.ThrowIfNull(type);
        return new(type);
    }

    /// <summary>The range of a given in words: "5 bar gauge to 60 bar gauge".</summary>
    /// <param name="minimum">Smallest value allowed.</param>
    /// <param name="maximum">Largest value allowed.</param>
    public static string Range(object minimum, object maximum) => $"{GivenText.Short(minimum)} to {GivenText.Short(maximum)}";

    /// <summary>The value that a text means; nothing where it means none of this kind.</summary>
    /// <param name="text">For example "36 bar gauge"; decimals with a point.</param>
    public object? Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        // A comma would be read over, as one between thousands: 3,5 bar as 35 bar.
        if (text.Contains(',', StringComparison.Ordinal)) return null;
        if (Type == typeof(GaugePressure)) return Pressure(text, UnitText.Gauge) is { } gauge ? GaugePressure.FromDifference(gauge) : null;
        if (Type == typeof(AbsolutePressure)) return Pressure(text, UnitText.Absolute) is { Pascals: >= 0 } absolute
            ? AbsolutePressure.FromDifference(absolute) : null;
        if (Type == typeof(double)) return UnitText.Number(text);
        if (Type == typeof(int)) return int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var whole)
            ? whole : null;
        return IsQuantity ? UnitText.Read(Type, text) : null;
    }

    /// <summary>Why a text is no value of this kind and how one is written, a sentence; nothing where it is one.</summary>
    /// <param name="name">Name of the given.</param>
    /// <param name="text">The text.</param>
    /// <param name="own">The notebook's own value, to take the example from; none where it isn't known.</param>
    public string? Refusal(string name, string text, object? own = null) =>
        Read(text) is not null ? null : $"The given \"{name}\" can't be \"{text}\": {Reason(text)}. {Wanted(own)}.";

    /// <summary>Why a value may not be used, a sentence; nothing where it is within the range.</summary>
    /// <param name="name">Name of the given.</param>
    /// <param name="value">Value of this kind.</param>
    /// <param name="minimum">Smallest value allowed.</param>
    /// <param name="maximum">Largest value allowed.</param>
    /// <param name="why">Why the given is what it is.</param>
    public string? OutOfRange(string name, object value, object minimum, object maximum, string why)
    {
        if (Type != value?.GetType() || Type != minimum?.GetType() || Type != maximum?.GetType()) return null;
        return value is not double.NaN && Compare(value, minimum) >= 0 && Compare(value, maximum) <= 0
            ? null
            : OutOfRangeException.Sentence(name, GivenText.Short(value), GivenText.Short(minimum), GivenText.Short(maximum), why);
    }

    private bool IsQuantity => Type.IsValueType && typeof(IQuantity).IsAssignableFrom(Type);

    private bool IsPressure => Type == typeof(GaugePressure) || Type == typeof(AbsolutePressure);

    private static int Compare(object one, object other) => (one, other) switch
    {
        (GaugePressure a, GaugePressure b) => a.CompareTo(b),
        (AbsolutePressure a, AbsolutePressure b) => a.CompareTo(b),
        _ => ((IComparable)one).CompareTo(other),
    };

    private static Pressure? Pressure(string text, string word) => UnitText.Without(text, word) is { } bare
        ? (Pressure?)UnitText.Read(typeof(Pressure), bare) : null;

    private string Reason(string text)
    {
        if (text.Contains(',', StringComparison.Ordinal)) return "decimals are written with a point, and nothing stands between thousands";
        if (!IsQuantity && !IsPressure) return $"that isn't {Article(Noun)}";
        if (UnitText.Number(UnitText.Without(text, UnitText.Gauge) ?? UnitText.Without(text, UnitText.Absolute) ?? text)
            is not null) return "the unit is missing";
        if (!IsPressure) return $"that isn't {Article(Noun)}";
        if (Pressure($"{text} {UnitText.Gauge}", UnitText.Gauge)
            is not null) return "a pressure has to say whether it is gauge or absolute";
        if (Pressure(text, UnitText.Gauge) is not null) return "that is a gauge pressure, and an absolute one is wanted";
        return Pressure(text, UnitText.Absolute) is not { } absolute ? "that isn't a pressure"
            : absolute.Pascals < 0 ? "that is below vacuum"
            : "that is an absolute pressure, and a gauge pressure is wanted";
    }

    private string Wanted(object? own) =>
        IsPressure ? "Write a pressure with its unit and the word "
            + $"{(Type == typeof(GaugePressure) ? UnitText.Gauge : UnitText.Absolute)}, for example \"{Example(own)}\""
        : IsQuantity ? $"Write {Article(Noun)} with its unit, for example \"{Example(own)}\""
        : Type == typeof(double) || Type == typeof(int) ? $"Write {Article(Noun)}, for example \"{Example(own)}\""
        : "Change this value in the notebook itself; a value of this kind can't be given from outside";

    // The notebook's own value where it can be read back, so that the example is in its unit and its size.
    private string Example(object? own)
    {
        if (own is not null && GivenText.Exact(own) is var text && Read(text) is not null) return text;
        if (Type == typeof(GaugePressure)) return "30 bar gauge";
        if (Type == typeof(AbsolutePressure)) return "1 bar absolute";
        if (Type == typeof(Ratio)) return "32 %";
        return Activator.CreateInstance(Type) is IQuantity zero ? $"1 {zero.UnitSymbol()}".TrimEnd() : "1";
    }

    private static string Article(string noun) => $"{("aeiou".Contains(noun[0], StringComparison.Ordinal) ? "an" : "a")} {noun}";
}

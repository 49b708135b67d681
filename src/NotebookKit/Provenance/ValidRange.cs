using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Provenance;

/// <summary>The range a model or an input holds in, ends included.</summary>
/// <typeparam name="T">A quantity, a gauge or absolute pressure, or a plain number.</typeparam>
/// <param name="Minimum">Smallest value allowed.</param>
/// <param name="Maximum">Largest value allowed.</param>
public readonly record struct ValidRange<T>(T Minimum, T Maximum)
    where T : struct, IComparable<T>
{
    /// <summary>Whether the value is inside; NaN is not.</summary>
    /// <param name="value">Value to test.</param>
    public bool Contains(T value)
    {
        if (value is double) return value is not double.NaN && value.CompareTo(Minimum) >= 0 && value.CompareTo(Maximum) <= 0;
        try
        {
            return value.CompareTo(Minimum) >= 0 && value.CompareTo(Maximum) <= 0;
        }
        catch (ArgumentException)
        {
            // A height of air or the sine of an angle has no value for everything that the range's own unit has one for.
            return false;
        }
    }

    /// <summary>The value, or an exception that says what, why and the range.</summary>
    /// <param name="value">Value to test.</param>
    /// <param name="name">What it is, in the trade's words.</param>
    /// <param name="why">Why the range is what it is, or what to do; a short sentence.</param>
    /// <exception cref="OutOfRangeException">The value is outside.</exception>
    public T Check(T value, string name, string why) =>
        Contains(value) ? value : throw new OutOfRangeException(name, Text(value), Text(Minimum), Text(Maximum), why);

    /// <summary>An error finding where the value is outside, nothing where it is inside.</summary>
    /// <param name="value">Value to test.</param>
    /// <param name="name">What it is, in the trade's words.</param>
    /// <param name="why">Why the range is what it is, or what to do; a short sentence.</param>
    public Finding? Find(T value, string name, string why) =>
        Contains(value) ? null : Finding.Error(OutOfRangeException.Sentence(name, Text(value), Text(Minimum), Text(Maximum), why));

    /// <summary>For example "5 mm to 500 mm".</summary>
    public override string ToString() => $"{Text(Minimum)} to {Text(Maximum)}";

    private static string Text(T value) => value switch
    {
        IQuantity quantity => quantity.Show(4),
        double number => Digits.Round(number, 4),
        _ => value.ToString() ?? "",
    };
}

using System.Globalization;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Materials.Solids;

/// <summary>One property of a material: its value, how much it scatters, and where it comes from.</summary>
/// <typeparam name="T">A quantity, or a plain number for a dimensionless property.</typeparam>
/// <param name="Value">Mean value.</param>
/// <param name="Spread">Coefficient of variation: standard deviation over mean [-]; 0 to 0.6.</param>
/// <param name="Source">Where the value comes from, and how far that carries.</param>
/// <param name="Origin">Where a user's value was read ("club.json, line 12"); empty for the library's own values.</param>
public sealed record Property<T>(T Value, double Spread, Source Source, string Origin = "")
    where T : struct, IComparable<T>
{
    /// <summary>Typical, measured by the user, from a standard, unverified.</summary>
    public SourceKind Kind => Source.Kind;

    /// <summary>Whether a user's value stands here in place of the library's.</summary>
    public bool IsOverride => Origin.Length > 0;

    /// <summary>For example "4 900 MPa ± 5 %".</summary>
    public override string ToString()
    {
        var value = Value switch
        {
            IQuantity quantity => quantity.Show(),
            double number => Digits.Round(number),
            _ => Value.ToString() ?? "",
        };
        return Spread > 0 ? string.Create(CultureInfo.InvariantCulture, $"{value} ± {Digits.Round(100 * Spread, 2)} %") : value;
    }

    /// <summary>Error findings where the value or its spread is outside the range.</summary>
    /// <param name="material">Name of the material, for the message.</param>
    /// <param name="name">Name of the property, for the message.</param>
    /// <param name="range">Range the value has to lie in.</param>
    /// <param name="why">Why, or what to do.</param>
    internal IReadOnlyList<Finding> Find(string material, string name, ValidRange<T> range, string why)
    {
        // Asked of every material at every step of a search: no text is made where all is well.
        if (range.Contains(Value) && SpreadRange.Contains(Spread)) return [];
        var findings = new List<Finding>();
        if (range.Find(Value, $"{material}: {name}", why) is { } value) findings.Add(value);
        if (SpreadRange.Find(Spread, $"{material}: spread of {name}", "It is the coefficient of variation, 0.05 for 5 %.")
            is { } spread) findings.Add(spread);
        return findings;
    }

    private static ValidRange<double> SpreadRange => new(0, 0.6);
}

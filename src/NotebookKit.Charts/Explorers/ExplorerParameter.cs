using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Explorers;

/// <summary>Something the reader drags: a range that is computed at equal steps.</summary>
/// <param name="Name">What it is: "Water fraction".</param>
/// <param name="Unit">Its unit; "-" for a plain ratio.</param>
/// <param name="From">Least value [the parameter's own unit]; any finite value.</param>
/// <param name="To">Greatest value [the parameter's own unit]; above the least.</param>
/// <param name="Points">How many values are computed; 2 to 41.</param>
/// <param name="Start">Where the reader starts [the parameter's own unit]; between least and greatest.</param>
public sealed record ExplorerParameter(string Name, string Unit, double From, double To, int Points, double Start)
{
    /// <summary>Whether the computed values rise in equal ratios instead of equal steps: a size whose effect is a ratio.</summary>
    public bool Logarithmic { get; init; }

    /// <summary>The value at a place counted in steps from the first [the parameter's own unit].</summary>
    internal double At(double place) =>
        place >= Points - 1 ? To : Logarithmic ? From * Math.Pow(To / From, place / (Points - 1)) : From + (place * (To - From) / (Points - 1));

    /// <summary>The place of a value, counted in steps from the first [-].</summary>
    internal double PlaceOf(double value) =>
        Logarithmic ? Math.Log(value / From) / Math.Log(To / From) * (Points - 1) : (value - From) / (To - From) * (Points - 1);

    internal IEnumerable<Finding> Validate()
    {
        if (string.IsNullOrWhiteSpace(Name)) yield return Finding.Error("A parameter has no name; say what is dragged.");
        if (string.IsNullOrWhiteSpace(Unit)) yield return Finding.Error($"Parameter '{Name}' has no unit. Give one; \"-\" says that it is a plain ratio.");
        if (!double.IsFinite(From) || !double.IsFinite(To) || From >= To)
            yield return Finding.Error($"Parameter '{Name}' runs from {Digits.Round(From)} to {Digits.Round(To)} {Unit}; it must rise, between finite values.");
        if (Logarithmic && From <= 0) yield return Finding.Error($"Parameter '{Name}' rises in equal ratios from {Digits.Round(From)} {Unit}; it must start above 0.");
        if (Points is < 2 or > 41) yield return Finding.Error($"Parameter '{Name}' has {Points} values; it must be 2 to 41.");
        if (!(Start >= From && Start <= To)) yield return Finding.Error($"Parameter '{Name}' starts at {Digits.Round(Start)} {Unit}; it must lie between {Digits.Round(From)} and {Digits.Round(To)} {Unit}.");
    }
}

using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Explorers;

/// <summary>Something the reader drags: a range that is computed at equal steps. Or something the reader picks: one of named
/// alternatives.</summary>
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

    /// <summary>Names of the alternatives where the reader picks one instead of dragging; its value is then the place in this list [-].
    /// Empty for a range.</summary>
    public IReadOnlyList<string> Choices { get; init; } = [];

    /// <summary>Something the reader picks from a list.</summary>
    /// <param name="name">What it is: "Sleeve".</param>
    /// <param name="choices">Names of the alternatives; 2 to 41, all different.</param>
    /// <param name="start">Place in the list of the one the reader starts with, from 0.</param>
    public static ExplorerParameter Choice(string name, IReadOnlyList<string> choices, int start = 0)
    {
        ArgumentNullException.ThrowIfNull(choices);
        return new(name, "-", 0, choices.Count - 1, choices.Count, start) { Choices = choices };
    }

    /// <summary>A value as the reader sees it: with its unit, or the name of the alternative.</summary>
    /// <param name="value">Value [the parameter's own unit]; inside its range.</param>
    public string Show(double value) => IsChoice ? Choices[Nearest(value)] : Unit == "-" ? Digits.Round(value)
        : $"{Digits.Round(value)} {Unit}";

    /// <summary>Whether the reader picks it: nothing lies between two alternatives.</summary>
    internal bool IsChoice => Choices.Count > 0;

    /// <summary>Cells of the grid along it: between two values of a range, at each alternative.</summary>
    internal int Cells => IsChoice ? Points : Points - 1;

    /// <summary>Place of the alternative that a value means.</summary>
    internal int Nearest(double value) => (int)Math.Clamp(Math.Round(value), 0, Choices.Count - 1);

    /// <summary>The computed values that count at a value, with their weights.</summary>
    internal (int Index, double Weight)[] WeightsAt(double place, bool linear) => IsChoice ? [(Nearest(place), 1)]
        : GridWeights.At(place, Points, linear);

    /// <summary>The value at a place counted in steps from the first [the parameter's own unit].</summary>
    internal double At(double place) =>
        place >= Points - 1 ? To : Logarithmic ? From * Math.Pow(To / From, place / (Points - 1)) : From
            + (place * (To - From) / (Points - 1));

    /// <summary>The place of a value, counted in steps from the first [-].</summary>
    internal double PlaceOf(double value) =>
        Logarithmic ? Math.Log(value / From) / Math.Log(To / From) * (Points - 1) : (value - From) / (To - From) * (Points - 1);

    internal IEnumerable<Finding> Validate()
    {
        if (string.IsNullOrWhiteSpace(Name)) yield return Finding.Error("A parameter has no name; say what is dragged.");
        if (IsChoice)
        {
            if (Choices.Count is < 2 or > 41) yield return Finding.Error($"'{Name}' has {Choices.Count} alternatives; it must be 2 to 41.");
            if (Choices.Any(string.IsNullOrWhiteSpace)) yield return Finding.Error($"An alternative of '{Name}' has no name.");
            foreach (var twice in Choices.GroupBy(c => c).Where(g => g.Count() > 1)) yield return
                Finding.Error($"Two alternatives of '{Name}' are called '{twice.Key}'; the reader couldn't tell them apart.");
            if (From != 0 || To != Choices.Count - 1 || Points != Choices.Count
                || Logarithmic) yield return Finding.Error($"'{Name}' is picked from a list; make it with ExplorerParameter.Choice.");
            if (!(Start >= 0 && Start <= To)) yield return Finding.Error($"'{Name}' starts with alternative {Digits.Round(Start)}; it "
                + $"must be 0 to {Choices.Count - 1}.");
            yield break;
        }
        if (string.IsNullOrWhiteSpace(Unit)) yield return Finding.Error($"Parameter '{Name}' has no unit. Give one; \"-\" says that it "
            + "is a plain ratio.");
        if (!double.IsFinite(From) || !double.IsFinite(To) || From >= To)
            yield return Finding.Error($"Parameter '{Name}' runs from {Digits.Round(From)} to {Digits.Round(To)} {Unit}; it must rise, "
                + "between finite values.");
        if (Logarithmic && From <= 0) yield return Finding.Error($"Parameter '{Name}' rises in equal ratios from {Digits.Round(From)} "
            + $"{Unit}; it must start above 0.");
        if (Points is < 2 or > 41) yield return Finding.Error($"Parameter '{Name}' has {Points} values; it must be 2 to 41.");
        if (!(Start >= From && Start <= To)) yield return Finding.Error($"Parameter '{Name}' starts at {Digits.Round(Start)} {Unit}; it "
            + $"must lie between {Digits.Round(From)} and {Digits.Round(To)} {Unit}.");
    }
}

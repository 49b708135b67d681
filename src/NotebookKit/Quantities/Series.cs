namespace NotebookKit.Quantities;

/// <summary>A named column of numbers with one unit: time, height, pressure along a record.</summary>
/// <param name="Name">What it is, as an axis title says it: "Height above pad".</param>
/// <param name="Unit">Its unit, as an axis title says it: "m", "bar gauge", "-".</param>
/// <param name="Values">The numbers in that unit; any length.</param>
public sealed record Series(string Name, string Unit, IReadOnlyList<double> Values)
{
    /// <summary>How many numbers there are.</summary>
    public int Count => Values.Count;

    /// <summary>One number of the column [the series' own unit].</summary>
    /// <param name="index">Position; 0 to Count - 1.</param>
    public double this[int index] => Values[index];

    /// <summary>For example "Height above pad [m], 240 points".</summary>
    public override string ToString() => $"{Name} [{Unit}], {Count} points";
}

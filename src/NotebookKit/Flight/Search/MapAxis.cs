using NotebookKit.Flight.Vertical;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight.Search;

/// <summary>One axis of a map: what changes, and its values.</summary>
public sealed record MapAxis
{
    private MapAxis(MapVariable variable, string name, string unit, double from, double to, int points)
    {
        new ValidRange<double>(2, 500).Check(points, "points along a map's axis", "Sixty make a smooth map.");
        if (!(to > from)) throw new OutOfRangeException(name, $"{from:0.###} to {to:0.###} {unit}", "the lower end", "a higher one",
            "Give the lower end first.");
        Variable = variable;
        Values = new(name, unit, [.. Enumerable.Range(0, points).Select(i => from + (to - from) * i / (points - 1))]);
    }

    /// <summary>What changes.</summary>
    public MapVariable Variable { get; }

    /// <summary>Its values, rising.</summary>
    public Series Values { get; }

    /// <summary>Water fractions.</summary>
    /// <param name="from">Least; 0 % to 95 %.</param>
    /// <param name="to">Greatest; above the least.</param>
    /// <param name="points">How many; 2 to 500.</param>
    /// <exception cref="OutOfRangeException">The ends aren't in order, or the number of points is outside.</exception>
    public static MapAxis WaterFraction(Ratio from, Ratio to, int points = 60) =>
        new(MapVariable.WaterFraction, "Water fraction", "%", from.Percent, to.Percent, points);

    /// <summary>Nozzle throats.</summary>
    /// <param name="from">Narrowest; above 0.5 mm.</param>
    /// <param name="to">Widest; above the narrowest, below the vessel's bore.</param>
    /// <param name="points">How many; 2 to 500.</param>
    /// <exception cref="OutOfRangeException">The ends aren't in order, or the number of points is outside.</exception>
    public static MapAxis Throat(Length from, Length to, int points = 60) =>
        new(MapVariable.Throat, "Nozzle throat", "mm", from.Millimeters, to.Millimeters, points);

    /// <summary>Charge pressures; cells above the vessel's rating stay empty.</summary>
    /// <param name="from">Lowest; above 0.1 bar gauge.</param>
    /// <param name="to">Highest; above the lowest.</param>
    /// <param name="points">How many; 2 to 500.</param>
    /// <exception cref="OutOfRangeException">The ends aren't in order, or the number of points is outside.</exception>
    public static MapAxis Pressure(GaugePressure from, GaugePressure to, int points = 60) =>
        new(MapVariable.Pressure, "Fill pressure", "bar gauge", from.Bar, to.Bar, points);

    /// <summary>Dry masses.</summary>
    /// <param name="from">Lightest; above 1 g.</param>
    /// <param name="to">Heaviest; above the lightest.</param>
    /// <param name="points">How many; 2 to 500.</param>
    /// <exception cref="OutOfRangeException">The ends aren't in order, or the number of points is outside.</exception>
    public static MapAxis DryMass(Mass from, Mass to, int points = 60) =>
        new(MapVariable.DryMass, "Dry mass", "g", from.Grams, to.Grams, points);

    /// <summary>The flight with one value of the axis.</summary>
    internal VerticalFlight Apply(VerticalFlight flight, int index)
    {
        var value = Values[index];
        return Variable switch
        {
            MapVariable.WaterFraction => flight with { Charge = flight.Charge with { WaterFraction = Ratio.FromPercent(value) } },
            MapVariable.Throat => flight with { Nozzle = flight.Nozzle with { Throat = value.Millimetres() } },
            MapVariable.Pressure => flight with { Charge = flight.Charge with { Pressure = value.BarGauge() } },
            _ => flight with { DryMass = value.Grams() },
        };
    }
}

using NotebookKit.Materials.Fluids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.Balances;

/// <summary>Gas that has bubbled through water, or stands over it, between two bounds: it has exchanged nothing with the water, or it has
/// come to the water's temperature and is full of vapour.</summary>
/// <remarks>
/// The true state lies between the bounds; where flow and depth are given, how near a bubble comes to the second one is said
/// (<see cref="BubbleRise"/>). The water is a bath that keeps its temperature, and by how much it would cool or warm is said. Source: ideal
/// gas at constant volume; vapour of saturated water as <see cref="Water"/>.
/// </remarks>
public sealed record GasThroughWater
{
    /// <summary>Pressure of the gas before it has exchanged anything; 0.1 to 300 bar absolute.</summary>
    public required AbsolutePressure Pressure { get; init; }

    /// <summary>Temperature of the gas then; −150 to 250 °C.</summary>
    public required Temperature Temperature { get; init; }

    /// <summary>Volume of the gas; 0.1 mL to 1 m³.</summary>
    public required Volume GasSpace { get; init; }

    /// <summary>Mass of the water; 0.1 g to 1000 kg.</summary>
    public required Mass Water { get; init; }

    /// <summary>Temperature of the water; 0 to 60 °C.</summary>
    public Temperature WaterTemperature { get; init; } = 20.Celsius();

    /// <summary>Flow of the gas that comes up through the water; 1 mg/s to 1 kg/s, not known unless given.</summary>
    public MassFlow? Flow { get; init; }

    /// <summary>Depth of the port under the water; 1 mm to 10 m, not known unless given.</summary>
    public Length? Depth { get; init; }

    /// <summary>The gas.</summary>
    public Gas Gas { get; init; } = Gas.Air;

    /// <summary>Everything wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() =>
    [
        .. new[]
        {
            new ValidRange<AbsolutePressure>(0.1.BarAbsolute(), 300.BarAbsolute()).Find(Pressure, "pressure of the gas",
                "It is absolute, above vacuum."),
            new ValidRange<Temperature>((-150).Celsius(), 250.Celsius()).Find(
                Temperature.ToUnit(UnitsNet.Units.TemperatureUnit.DegreeCelsius), "temperature of the gas",
                    "Check the unit it was given in."),
            new ValidRange<Volume>(0.0001.Litres(), 1.CubicMetres()).Find(GasSpace, "volume of the gas", "Check the unit it was given in."),
            new ValidRange<Mass>(0.1.Grams(), 1000.Kilograms()).Find(Water, "mass of the water", "Without water there is nothing to bubble "
                + "through."),
            Materials.Fluids.Water.Range.Find(WaterTemperature.ToUnit(UnitsNet.Units.TemperatureUnit.DegreeCelsius), "water temperature",
                "Water freezes below 0 °C; above 60 °C a laminating resin has lost its strength."),
            Flow is { } flow ? new ValidRange<MassFlow>(MassFlow.FromGramsPerSecond(0.001), MassFlow.FromGramsPerSecond(1000)).Find(
                flow.ToUnit(UnitsNet.Units.MassFlowUnit.GramPerSecond), "flow of the gas", "Check the unit it was given in.") : null,
            Depth is { } depth ? new ValidRange<Length>(1.Millimetres(), 10.Metres()).Find(depth, "depth of the port",
                "It is counted from the water's surface.") : null,
        }.OfType<Finding>(), .. GasChecks.FindConstants(Gas),
    ];

    /// <summary>Both bounds. Source: as the type.</summary>
    /// <exception cref="InvalidDesignException">Something is refused; all reasons are in it.</exception>
    public GasThroughWaterResult Run()
    {
        var findings = Validate();
        InvalidDesignException.ThrowIfAny("Gas through water", findings);
        return new GasThroughWaterResult(this, findings);
    }
}

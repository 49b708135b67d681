using NotebookKit.Materials.Fluids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.Balances;

/// <summary>Gas that has bubbled through water, or stands over it, between two bounds: it has exchanged nothing with the water, or it has
/// come to the water's temperature and is full of vapour.</summary>
/// <remarks>
/// What bubbles of a given size exchange on their way isn't computed: size and rise aren't known at a pad. The true state lies between the
/// bounds; the water is a bath that keeps its temperature, and by how much it would cool or warm is said. Source: ideal gas at constant
/// volume; vapour of saturated water as <see cref="Water"/>.
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

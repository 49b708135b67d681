using NotebookKit.Materials.Fluids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Life.Weather;

/// <summary>A vessel that is filled and shut: gas, with or without water, in a volume that stays the same.</summary>
/// <param name="Pressure">Pressure it was filled to; 0 to 300 bar gauge.</param>
/// <param name="FilledAt">Temperature of the gas when the pressure was read; −40 to 150 °C, with water 0 to 60 °C.</param>
/// <remarks>
/// The gas follows T in absolute pressure; water swells and gives off vapour. The wall's own growth is left out, which errs high.
/// Source: ideal gas at constant volume; water by <see cref="Water"/>.
/// </remarks>
public sealed record ClosedVessel(GaugePressure Pressure, Temperature FilledAt)
{
    /// <summary>Surrounding air pressure; 0.5 to 1.1 bar absolute, standard sea level unless given.</summary>
    public AbsolutePressure Ambient { get; init; } = AbsolutePressure.StandardSeaLevel;

    /// <summary>Water volume over internal volume when filled; 0 to 90 %, 0 unless given.</summary>
    public Ratio WaterFraction { get; init; } = 0.Percent();

    /// <summary>Everything that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() =>
        [.. new[]
        {
            new ValidRange<GaugePressure>(GaugePressure.Zero, 300.BarGauge()).Find(Pressure, "pressure it was filled to",
                "Check bar against psi."),
            Temperatures.Find(FilledAt.ToUnit(TemperatureUnit.DegreeCelsius), "temperature when filled", WhyTemperature),
            new ValidRange<AbsolutePressure>(0.5.BarAbsolute(), 1.1.BarAbsolute()).Find(Ambient, "surrounding air pressure",
                "Sea level is 1.013 bar absolute."),
            new ValidRange<Ratio>(0.Percent(), 90.Percent()).Find(WaterFraction.ToUnit(RatioUnit.Percent), "water fraction",
                "A third is usual for a flight."),
        }.OfType<Finding>()];

    /// <summary>Pressure at another temperature of all that is inside. Source: ideal gas at constant volume, reckoned in absolute
    /// pressure.</summary>
    /// <param name="temperature">The other temperature; −40 to 150 °C, with water 0 to 60 °C.</param>
    /// <exception cref="InvalidDesignException">A value is out of range.</exception>
    /// <exception cref="OutOfRangeException">The temperature is out of range, or the water swells to fill the vessel.</exception>
    public GaugePressure PressureAt(Temperature temperature)
    {
        InvalidDesignException.ThrowIfAny("Closed vessel", Validate());
        Temperatures.Check(temperature.ToUnit(TemperatureUnit.DegreeCelsius), "temperature of the vessel", WhyTemperature);
        var absolutePa = Pressure.Pascals + Ambient.Pascals;
        var ratio = temperature.Kelvins / FilledAt.Kelvins;
        if (!HasWater) return GaugePressure.FromPascals(absolutePa * ratio - Ambient.Pascals);
        Water cold = new(FilledAt), warm = new(temperature);
        var share = WaterFraction.DecimalFractions;
        var gasBefore = 1 - share;
        var gasAfter = 1 - share * (cold.Density / warm.Density);
        var dryPa = (absolutePa - cold.VapourPressure.Pascals) * ratio * gasBefore / gasAfter;
        return GaugePressure.FromPascals(dryPa + warm.VapourPressure.Pascals - Ambient.Pascals);
    }

    internal bool HasWater => WaterFraction > Ratio.Zero;

    private string WhyTemperature => HasWater
        ? "With water inside, water's own table holds: above 60 °C a laminating resin has lost its strength. Shade and vent the vessel."
        : "Check its unit.";

    private ValidRange<Temperature> Temperatures => HasWater ? Water.Range : new((-40).Celsius(), 150.Celsius());
}

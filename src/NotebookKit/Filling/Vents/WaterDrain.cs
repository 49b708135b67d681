using NotebookKit.Filling.Balances;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Filling.Vents;

/// <summary>Water driven out of a vessel through a small opening by the gas trapped above it.</summary>
/// <remarks>
/// dV/dt = Cd A √(2 (p − pa)/ρ + 2 g h), p V^n constant; speed inside the vessel and the inertia of the water are left out, which holds for
/// an opening below a tenth of the bore. Source: E. Torricelli's and D. Bernoulli's laws, any text on fluid mechanics; Encyclopaedia
/// Britannica 1911, Hydraulics.
/// </remarks>
public sealed record WaterDrain
{
    /// <summary>Pressure of the gas at the start; 0 to 300 bar gauge.</summary>
    public required GaugePressure From { get; init; }

    /// <summary>Volume of the gas at the start; 0.1 mL to 10 m³.</summary>
    public required Volume GasVolume { get; init; }

    /// <summary>Volume of the water; 0.1 mL to 10 m³.</summary>
    public required Volume WaterVolume { get; init; }

    /// <summary>Area of the opening times its discharge coefficient in water; 0.0001 to 2000 mm².</summary>
    public required Area EffectiveArea { get; init; }

    /// <summary>Exponent n of the gas, p V^n constant [-]; 0 to 1.67: 0 at constant pressure, 1 at constant temperature, its ratio of heat
    /// capacities without heat.</summary>
    public double Exponent { get; init; } = 1;

    /// <summary>Pressure of the gas at which it is no longer watched; 0 to below the start.</summary>
    public GaugePressure StopAt { get; init; }

    /// <summary>Surrounding air pressure.</summary>
    public AbsolutePressure Ambient { get; init; } = AbsolutePressure.StandardSeaLevel;

    /// <summary>Density of the water; 950 to 1050 kg/m³. 1000 kg/m³ unless given: its heaviest, which errs long.</summary>
    public Density WaterDensity { get; init; } = 1000.KilogramsPerCubicMetre();

    /// <summary>Bore of a vessel that stands on its opening, so that the head of the water helps; not counted unless given, which errs
    /// long.</summary>
    public Length? StandingBore { get; init; }

    /// <summary>Everything wrong with it.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        var volumes = new ValidRange<Volume>(0.0001.Litres(), Volume.FromCubicMeters(10));
        List<Finding?> findings =
        [
            new ValidRange<GaugePressure>(GaugePressure.Zero, 300.BarGauge()).Find(From, "pressure at the start",
                "It is gauge, above the air outside."),
            volumes.Find(GasVolume, "volume of the gas", "Check the unit it was given in."),
            volumes.Find(WaterVolume, "volume of the water", "Without water there is nothing to drain."),
            new ValidRange<Area>(Area.FromSquareMillimeters(1e-4), Area.FromSquareMillimeters(2000)).Find(EffectiveArea,
                "effective area of the opening", "A 1 mm hole has about 0.5 mm²."),
            new ValidRange<double>(0, 1.67).Find(Exponent, "exponent of the gas", "1 at constant temperature, 1.4 for air without heat."),
            new ValidRange<GaugePressure>(GaugePressure.Zero, 300.BarGauge()).Find(StopAt, "pressure at which it is no longer watched",
                "It is gauge, above the air outside."),
            new ValidRange<AbsolutePressure>(0.5.BarAbsolute(), 1.2.BarAbsolute()).Find(Ambient, "ambient pressure",
                "Was a gauge pressure meant?"),
            new ValidRange<Density>(950.KilogramsPerCubicMetre(), 1050.KilogramsPerCubicMetre()).Find(WaterDensity, "density of the water",
                "Plain water has 1000 kg/m³."),
            StandingBore is { } bore ? new ValidRange<Length>(5.Millimetres(), 5000.Millimetres()).Find(bore,
                "bore of the standing vessel", "Check the unit it was given in.") : null,
        ];
        if (findings.All(f => f is null) && From <= StopAt && !(Exponent == 0 && StandingBore is not null && From == StopAt))
            findings.Add(FillingFindings.StartBelowSafePressure(From, StopAt));
        return findings.OfType<Finding>().ToList();
    }

    /// <summary>How long the water takes, and where that leaves the gas. Source: as the type says; summed over the volume.</summary>
    /// <exception cref="InvalidDesignException">Something is refused; all reasons are in it.</exception>
    public WaterDrainResult Run()
    {
        var findings = Validate();
        InvalidDesignException.ThrowIfAny("Water driven out", findings);
        double gasM3 = GasVolume.CubicMeters, waterM3 = WaterVolume.CubicMeters, startPa = From.ToAbsolute(Ambient).Pascals,
            stopPa = StopAt.ToAbsolute(Ambient).Pascals;
        double areaM2 = EffectiveArea.SquareMeters, density = WaterDensity.KilogramsPerCubicMeter, ambientPa = Ambient.Pascals;
        var headPerM3 = StandingBore is { } bore ? 2 * StandardConstants.Gravity / (Math.PI / 4 * bore.Meters * bore.Meters) : 0;
        var outM3 = Exponent > 0 ? Math.Min(waterM3, gasM3 * (Math.Pow(startPa / stopPa, 1 / Exponent) - 1)) : waterM3;
        double PascalsAt(double x) => startPa * Math.Pow(gasM3 / (gasM3 + x), Exponent);

        var (volumes, seconds) = PressureClock.Run(
            x => 1 / (areaM2 * Math.Sqrt(2 * (PascalsAt(x) - ambientPa) / density + headPerM3 * (waterM3 - x))), 0, outM3, outM3,
                double.NaN, 40);
        return new WaterDrainResult(this, seconds, Array.ConvertAll(volumes, PascalsAt), outM3, findings);
    }
}

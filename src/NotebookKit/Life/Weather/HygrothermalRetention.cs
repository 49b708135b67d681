using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Life.Weather;

/// <summary>How much of its dry strength and stiffness a resin keeps when it is warm and wet.</summary>
/// <param name="DryGlass">Glass temperature of the dry, cured resin; 40 to 300 °C.</param>
/// <param name="Moisture">Water taken up, as a share of the resin's mass; 0 to 10 %.</param>
/// <param name="Service">Temperature of the resin at work; −60 °C to below the wet glass temperature.</param>
/// <remarks>Source: C. C. Chamis, NASA TM-83320, 1983 (equations unverified: confirm before relying on them).</remarks>
public sealed record HygrothermalRetention(Temperature DryGlass, Ratio Moisture, Temperature Service)
{
    // Common practice, no source: closer than this to the wet glass temperature a resin creeps.
    private const double ComfortableMarginK = 20;

    /// <summary>Temperature at which the dry resin's strength was measured; −60 °C to below the dry glass temperature, 20 °C unless
    /// given.</summary>
    public Temperature Reference { get; init; } = 20.Celsius();

    /// <summary>Wet over dry glass temperature, both in °F [-]: 0.005 M² − 0.10 M + 1. Source: Chamis 1983.</summary>
    /// <param name="moisture">Water taken up, as a share of the mass; 0 to 10 %.</param>
    /// <exception cref="OutOfRangeException">The moisture is out of range.</exception>
    public static double WetGlassRatio(Ratio moisture) => RatioAt(Wet.Check(InPercent(moisture), "moisture", TooWet).Percent);

    /// <summary>Glass temperature of the wet resin. Source: Chamis 1983; the report works in °F, and so does the ratio.</summary>
    public Temperature WetGlass => Temperature.FromDegreesFahrenheit(RatioAt(Moisture.Percent) *
        DryGlass.DegreesFahrenheit).ToUnit(TemperatureUnit.DegreeCelsius);

    /// <summary>Everything that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        List<Finding> findings = [.. new[]
        {
            new ValidRange<Temperature>(40.Celsius(), 300.Celsius()).Find(InCelsius(DryGlass), "dry glass temperature",
                "Room-cured epoxy is 50 to 80 °C."),
            Wet.Find(InPercent(Moisture), "moisture", TooWet),
        }.OfType<Finding>()];
        if (findings.Count > 0) return findings;
        var cold = (-60).Celsius();
        if (!(InCelsius(Reference) >= cold && Reference < DryGlass))
            findings.Add(LifeFindings.ReferenceTemperatureOutOfRange(InCelsius(Reference), InCelsius(DryGlass)));
        if (!(InCelsius(Service) >= cold && Service < WetGlass))
            findings.Add(LifeFindings.ServiceTemperatureOutOfRange(InCelsius(Service), WetGlass));
        return findings;
    }

    /// <summary>The share that is kept, never more than 1. Source: Chamis 1983.</summary>
    /// <exception cref="InvalidDesignException">A value is out of range, or the resin is at or above its wet glass temperature.</exception>
    public HygrothermalResult Evaluate()
    {
        var findings = Validate();
        InvalidDesignException.ThrowIfAny("Warm and wet resin", findings);
        var formula = Math.Sqrt((WetGlass.Kelvins - Service.Kelvins) / (DryGlass.Kelvins - Reference.Kelvins));
        var margin = WetGlass.Kelvins - Service.Kelvins;
        List<Finding> all = [.. findings];
        if (margin < ComfortableMarginK)
            all.Add(LifeFindings.ResinTooNearWetGlassTemperature(margin, ComfortableMarginK));
        if (formula > 1)
            all.Add(LifeFindings.RetentionIsCappedAtOne(formula));
        return new HygrothermalResult(this, Math.Min(1, formula), all);
    }

    private const string TooWet = "The equation was fitted to about 10 %; epoxy takes up 1 to 6 %.";

    private static ValidRange<Ratio> Wet => new(0.Percent(), 10.Percent());

    private static double RatioAt(double percent) => 0.005 * percent * percent - 0.10 * percent + 1;

    private static Ratio InPercent(Ratio ratio) => ratio.ToUnit(RatioUnit.Percent);

    private static Temperature InCelsius(Temperature temperature) => temperature.ToUnit(TemperatureUnit.DegreeCelsius);
}

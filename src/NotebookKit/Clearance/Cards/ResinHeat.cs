using NotebookKit.Life.Weather;
using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Design;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Clearance.Cards;

/// <summary>What heat and water leave of a vessel's resin on the day. Source: Chamis 1983, as <see cref="HygrothermalRetention"/> has
/// it.</summary>
internal sealed class ResinHeat
{
    // Not verified: sold epoxies are said to take up 1 to 6 %.
    private static readonly Property<Ratio> Saturated = Property.Unverified(2.Percent(), 0,
        "water in a saturated laminating epoxy, by weight");

    private readonly Temperature? _temperature;

    public ResinHeat(PressureVessel vessel, Temperature? temperature, Property<Ratio>? moisture)
    {
        _temperature = temperature?.ToUnit(TemperatureUnit.DegreeCelsius);
        if (_temperature is not { } wall)
        {
            NotGiven = "the temperature of the vessel, which isn't given,";
            Findings = [ClearanceFindings.EvidenceIsNotShown([Evidence], Remedy)];
        }
        else if (vessel.Resin.GlassTemperature is not { } glass)
        {
            NotGiven = "the resin's glass temperature, which isn't given,";
            Findings = [ClearanceFindings.ResinGlassTemperatureIsNotGiven(vessel.Resin.Name)];
        }
        else
        {
            var counts = moisture is { } given && (given.Source.Kind == SourceKind.Measured || given.Value > Saturated.Value);
            var water = counts ? moisture! : Saturated;
            HygrothermalRetention asked = new(glass.Value, water.Value, wall);
            List<Finding> findings = [.. asked.Validate().Select(f => f with { Message = $"{vessel.Resin.Name}: {f.Message}" }),
                .. TooHot(vessel, wall)];
            if (findings.Count == 0) findings.AddRange((Kept = asked.Evaluate()).Findings);
            Retention = Kept?.Retention ?? 0;
            if (!IsKnown(glass.Source))
                findings.Add(ClearanceFindings.ResinGlassTemperatureIsNotMeasured(glass.Value, glass.Source.ToString()));
            Most = LeastOf(vessel, asked.WetGlass);
            if (!counts && moisture is { } claimed)
                findings.Add(ClearanceFindings.MoistureIsNotCounted(claimed.Value, claimed.Source.Title, Saturated.Value));
            else if (!IsKnown(water.Source))
                findings.Add(ClearanceFindings.WaterInResinIsReckoned(water.Value, water.Source.ToString()));
            Findings = findings;
        }
    }

    /// <summary>What the piece of evidence is called.</summary>
    public const string Evidence = "temperature of the vessel";

    /// <summary>What to do where it isn't handed over.</summary>
    public const string Remedy = "Give the warmest place that its wall may have on the day: measured, or computed for air and sun with "
        + "SunHeating; the air's own temperature isn't taken for it.";

    /// <summary>What isn't given; none where heat is judged.</summary>
    public string? NotGiven { get; }

    /// <summary>Strength that is kept [-]; 0 where the vessel is too hot; none where heat can't be judged.</summary>
    public double? Retention { get; }

    /// <summary>The reckoning; none where there is none.</summary>
    public HygrothermalResult? Kept { get; }

    /// <summary>Where the wall may not go, and which part sets it: the least of what resin and liner may be used up to and of the glass
    /// temperature of the wet resin; none where heat can't be judged.</summary>
    public (Temperature Temperature, string Of)? Most { get; }

    /// <summary>What has to be said.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>For example "the resin at 45 °C".</summary>
    public string Name => $"the resin at {_temperature?.Show()}";

    /// <summary>What the line of the allowance says of it.</summary>
    public string Note => NotGiven is not null ? Findings[0].Message
        : Kept is null ? $"too hot at {_temperature?.Show()}"
        : $"the resin keeps {Digits.Round(100 * Kept.Retention)} % of its strength at {_temperature?.Show()} with "
            + $"{Kept.Input.Moisture.Show()} of water";

    private static IEnumerable<Finding> TooHot(PressureVessel vessel, Temperature wall) => Parts(vessel).Where(p => wall > p.Most)
        .Select(p => ClearanceFindings.VesselTooWarm(wall, p.Name, p.Most));

    private static (Temperature Temperature, string Of) LeastOf(PressureVessel vessel, Temperature wetGlass) =>
        Parts(vessel).Append(("wet resin's glass temperature", wetGlass)).MinBy(p => p.Item2.Kelvins) is var (name, least)
            ? (least.ToUnit(TemperatureUnit.DegreeCelsius), name) : default;

    private static IEnumerable<(string Name, Temperature Most)> Parts(PressureVessel vessel)
    {
        yield return ("resin", vessel.Resin.ServiceTemperature.Value);
        if (vessel.Liner.Material is { } liner) yield return ("liner", liner.ServiceTemperature.Value);
    }

    private static bool IsKnown(Source source) => source.Kind
        is not (SourceKind.Unverified or SourceKind.Typical or SourceKind.CommonPractice);
}

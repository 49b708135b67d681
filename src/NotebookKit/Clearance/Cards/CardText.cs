using NotebookKit.Clearance.Service;
using NotebookKit.Flight.Design;
using NotebookKit.Flight.Dispersion;
using NotebookKit.Flight.Flights;
using NotebookKit.Flight.Site;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Clearance.Cards;

/// <summary>Lines and checks that cards of one and of two stages share.</summary>
internal static class CardText
{
    private static readonly Ratio Ninety = 90.Percent();

    /// <summary>What a card rests on where the vehicle can't be flown as it is.</summary>
    public static ModelCard NoFlight { get; } = new("No flight", ["The vehicle can't be flown as it is; the reasons stand on the card."],
        "None.", []);

    public static string SiteCheck => "Site permission, ceiling and airspace confirmed for today; sky and field clear downwind.";

    public static string VentCheck => "Remote vent tried before the first bar.";

    public static IReadOnlyList<string> Last { get; } =
    [
        "On any doubt: vent from afar, wait, then approach.",
        "Count down aloud; all eyes on the vehicle until it is down.",
        "After landing: make sure that no vessel holds pressure before anybody touches it; inspect; write the flight into the "
            + "service record.",
    ];

    public static ResultLine Verdict(IFlightCard card)
    {
        var reasons = card.Findings.Count(f => f.Severity == FindingSeverity.Error);
        var warnings = card.Findings.Count(f => f.Severity == FindingSeverity.Warning);
        var note = card.IsGo
            ? warnings switch { 0 => "", 1 => "1 warning below; ", _ => $"{warnings} warnings below; " }
            : $"{reasons} {(reasons == 1 ? "reason" : "reasons")} below; ";
        return new("Verdict", card.IsGo ? "GO" : "NO-GO", note + "range safety officer decides");
    }

    public static IEnumerable<ResultLine> Stage(string own, Vehicle vehicle, FillAllowance? allowance, StageEvidence evidence) =>
    [
        new(Name(own, "Dry mass"), vehicle.MassProperties().Mass.Show(MassUnit.Gram)),
        new(Name(own, "Fill"), $"{vehicle.Charge.Pressure}, {vehicle.Charge.Water.Show(VolumeUnit.Milliliter)} of water",
            allowance is null ? "the vessel's maximum fill pressure is not shown"
                : $"maximum fill pressure {allowance.Pressure}; {allowance.SetBy} sets it"),
        .. Vessel(own, evidence),
        .. evidence.Fill is { } fill ? [new ResultLine(Name(own, "Fill time"), fill.Duration.Show(),
            $"settles at {fill.SettledPressure}; then top up")]
            : Array.Empty<ResultLine>(),
    ];

    public static IEnumerable<ResultLine> Vessel(string own, StageEvidence evidence) =>
    [
        new(Name(own, "Vessel"), evidence.Vessel is { } vessel ? $"{vessel.Vessel} {vessel.Serial}" : "not shown",
            evidence.Vessel is { } of ? $"held {of.Held} on "
                + $"{of.Day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture)}, record {of.Fingerprint[..12]}" :
                ""),
        .. evidence.Label is { } label ? [new ResultLine(Name(own, "Label"), label, label == evidence.Service?.EndMark
            ? "the mark of the service record's end" : "not the mark of the service record's end")] : Array.Empty<ResultLine>(),
        .. evidence.ResinMoisture is { } water ? [new ResultLine(Name(own, "Water in the resin"), water.Value.Show(),
            water.Kind == SourceKind.Measured ? $"measured: {water.Source.Title}" : $"not counted as measured: {water.Source.Title}")]
            : Array.Empty<ResultLine>(),
    ];

    public static ResultLine Crew(LaunchStandOff? standOff) =>
        new("Crew, behind cover", standOff?.Crew.Show() ?? "not shown", standOff?.CrewSetBy ?? "");

    public static ResultLine Spectators(LaunchStandOff? standOff) =>
        new("Spectators", standOff?.Spectators.Show() ?? "not shown", standOff?.SpectatorsSetBy ?? "");

    public static IEnumerable<ResultLine> OfRail(LaunchSite site, FlightFigures f, WindLimits? wind) =>
    [
        new("Rail", site.Rail.Guided.Show(), $"{site.Rail.Elevation.Show()} above the horizon, towards {site.Rail.Towards.Show()}"),
        new("Speed off the rail", f.RailExitSpeed.Show(SpeedUnit.MeterPerSecond)),
        new("Wind limit at the rail", wind?.Limit.Show(SpeedUnit.MeterPerSecond) ?? "not shown",
            $"{wind?.SetBy} sets it; planned for {(site.Wind.IsGiven ? f.RailWind.Show(SpeedUnit.MeterPerSecond) :
                "a wind that isn't given")}"),
    ];

    public static IEnumerable<ResultLine> Scatter(DispersionResult? scatter, string own)
    {
        if (scatter?.Landings is { } landings)
            yield return new(Name(own, "90 % of landings"), $"{landings.Axes(Ninety).Major.Show()} by "
                + $"{landings.Axes(Ninety).Minor.Show()}", $"semi-axes about {landings.MeanEast.Show()} east, "
                + $"{landings.MeanNorth.Show()} north");
        if (scatter?.AboveCeiling is { } above) yield return new("Above the ceiling", above.ToString());
        if (scatter?.OffField is { } off) yield return new(Name(own, "Off the field"), off.ToString(),
            OfFlights(scatter));
    }

    public static string OfFlights(DispersionResult scatter) => $"95 % interval of {scatter.Plan.Flights} computed flights";

    public static string WindCheck(LaunchSite site, WindLimits? wind) => wind is null
        ? "Wind measured at the rail: the limit is not shown."
        : $"Wind measured at the rail: at most {wind.Limit.Show(SpeedUnit.MeterPerSecond)}{(WindLimitSearch.IsAboutToday(site) ?
            ", from within 30° of the side planned for" : "")} ({wind.SetBy} sets it). Measured: ____ m/s.";

    public static string RailCheck(LaunchSite site) => $"Rail at {site.Rail.Elevation.Show()} above the horizon, towards "
        + $"{site.Rail.Towards.Show()}, clamped.";

    public static string DistanceCheck(LaunchStandOff? standOff) => standOff is null
        ? "Distances of crew and spectators: not shown."
        : $"Crew beyond {standOff.Crew.Show()} and behind cover, spectators beyond {standOff.Spectators.Show()}; nobody in line of a "
            + "closure or under the flight path.";

    public static IEnumerable<string> StageChecks(string own, Vehicle vehicle, FillAllowance? allowance, StageEvidence evidence) =>
    [
        Sentence(own, $"vessel {(evidence.Vessel is { } v ? $"{v.Vessel} {v.Serial}" : "not shown")} inspected: no cracks, white spots, "
            + $"dents or loose fibres; {(allowance?.Service is { Standing: ServiceStanding.InService } ? "in service" :
                "not shown to be in service")}."),
        Sentence(own, "nozzle, seals and closures inspected; nothing hand-tight that should be tight."),
        Sentence(own, $"centre of gravity checked: {vehicle.MassProperties().CentreOfGravity.Show(LengthUnit.Millimeter)} aft of the "
            + "tip, empty. Mass: ____ g."),
        Sentence(own, $"{vehicle.Charge.Water.Show(VolumeUnit.Milliliter)} of water measured in."),
    ];

    public static string FillCheck(string own, Vehicle vehicle, FillAllowance? allowance) =>
        Sentence(own, $"fill from afar to {vehicle.Charge.Pressure}, wait until the gauge has stopped falling, top up to the same; "
            + $"{(allowance is null ? "the vessel's maximum fill pressure is not shown" : $"never above {allowance.Pressure}")}. "
            + "Gauge: ____ bar.");

    private static string Name(string own, string name) => own.Length == 0 ? name
        : $"{own.TrimEnd(':', ' ')}: {char.ToLowerInvariant(name[0])}{name[1..]}" is var text ? char.ToUpperInvariant(text[0]) + text[1..] :
        name;

    private static string Sentence(string own, string text) => own.Length == 0 ? char.ToUpperInvariant(text[0]) + text[1..]
        : char.ToUpperInvariant(own[0]) + own[1..] + text;
}

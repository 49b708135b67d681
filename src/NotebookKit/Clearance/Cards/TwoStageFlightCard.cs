using NotebookKit.Flight.Design;
using NotebookKit.Flight.Dispersion;
using NotebookKit.Flight.Flights;
using NotebookKit.Flight.Site;
using NotebookKit.Flight.Staging;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Clearance.Cards;

/// <summary>
/// One page for the range safety officer for a flight of two stages: both vessels, the order of filling, the separation, both landings.
/// Source: the evidence handed over and the flights it is made from.
/// </summary>
public sealed record TwoStageFlightCard : Result, IFlightCard
{
    private const string OfBooster = "booster: ", OfSustainer = "sustainer: ";

    internal TwoStageFlightCard(TwoStageVehicle vehicle, LaunchSite site, TwoStageEvidence evidence)
    {
        (Vehicle, Site, Evidence) = (vehicle, site, evidence);
        var card = new CardJudgement(evidence.Missing);
        card.Day(evidence.Day);
        card.Site(site);
        Flight = CardJudgement.Try(card, () => vehicle.Fly(site));
        var isFlown = Flight is { Status: ResultStatus.Completed };
        card.Shown("separation", isFlown, isFlown ? $"{vehicle.Separation}, at {Flight!.SeparationTime.Show()}" : "",
            "The stages must separate in order; do what the findings of the flight name.");
        card.Shown("order of filling", evidence.FillOrder != FillOrder.NotGiven, Order(evidence.FillOrder),
            "Say which vessel is filled first.");
        var booster = new StageJudge(card, vehicle.Booster, site, evidence.Day, evidence.Life, OfBooster);
        var sustainer = new StageJudge(card, vehicle.Sustainer, site, evidence.Day, evidence.Life, OfSustainer);
        var light = isFlown ? CardJudgement.Try(card, () => LaunchStandOff.WithLightDrag(vehicle).Fly(site)) : null;
        var isLightFlown = light is { Status: ResultStatus.Completed };
        if (isFlown && !isLightFlown)
            card.Add(ClearanceFindings.LightFlightHasNoAnswer());
        booster.Judge(evidence.Booster, isFlown ? Flight!.Booster.Figures : null, isLightFlown ? light!.Booster.Figures : null,
            isAirborneAlone: false);
        sustainer.Judge(evidence.Sustainer, isFlown ? Flight!.Sustainer.Figures : null, isLightFlown ? light!.Sustainer.Figures : null);
        if (vehicle.MeasuredStackDrag is { } curve) StageJudge.OwnDrag(card, curve, "stack: ");
        (BoosterAllowance, SustainerAllowance) = (booster.Allowance, sustainer.Allowance);
        SameVessel(card, evidence);
        if (evidence.FillOrder == FillOrder.Together && vehicle.Booster.Charge.Pressure != vehicle.Sustainer.Charge.Pressure)
            card.Add(ClearanceFindings.OneLineForTwoPressures(vehicle.Booster.Charge.Pressure, vehicle.Sustainer.Charge.Pressure));
        var stack = vehicle.Stack(site);
        if (card.Shown("stability of the stack", evidence.StackStability is not null,
            evidence.StackStability is { } shown ? $"minimum margin {Digits.Round(shown.MinimumMargin)} calibres" : "",
            "Compute the margin of both together: vehicle.Stack(site).Stability()."))
            StageJudge.Margin(card, stack, evidence.StackStability!, "stack: ");
        if (isFlown)
        {
            MaximumApogee = isLightFlown && light!.Apogee > Flight!.Apogee ? light.Apogee : Flight!.Apogee;
            var wind = WindLimitSearch.Of(vehicle, site, Flight, evidence.Booster.Recovery, evidence.Sustainer.Recovery);
            card.Wind(wind, Flight.Sustainer.Figures.RailWind);
            Wind = sustainer.Gust(evidence.Sustainer, booster.Gust(evidence.Booster, wind));
            if (site.Ceiling is { } ceiling && Flight.Apogee > ceiling)
                card.Add(ClearanceFindings.ApogeeAboveCeiling(Flight.Apogee, ceiling));
            else if (site.Ceiling is { } above && MaximumApogee > above)
                card.Add(ClearanceFindings.ApogeeAboveCeilingAtLightDrag(MaximumApogee, above));
        }

        card.StandOff(evidence.StandOff, vehicle.Name, [vehicle.Booster.Charge, vehicle.Sustainer.Charge], MaximumApogee);
        card.Scatter(evidence.Scatter, Flight is null ? "" : DispersionSubject.Of(vehicle, site), vehicle.Name, site, stages: 2);
        card.AddRange(Flight?.Findings ?? []);
card.AddRange(evidence.Against);
                (Shown, Findings) = (card.Items, card.Findings);
    }

    /// <summary>What flies.</summary>
    public TwoStageVehicle Vehicle { get; }

    /// <inheritdoc/>
    public LaunchSite Site { get; }

    /// <summary>What was handed over.</summary>
    public TwoStageEvidence Evidence { get; }

    /// <summary>The flight as expected; none where the vehicle can't be flown as it is.</summary>
    public TwoStageResult? Flight { get; }

    /// <summary>What the booster's vessel may be filled to; none where no proved vessel was handed over.</summary>
    public FillAllowance? BoosterAllowance { get; }

    /// <summary>What the sustainer's vessel may be filled to; none where no proved vessel was handed over.</summary>
    public FillAllowance? SustainerAllowance { get; }

    /// <summary>The wind limits; none where the flight has no answer.</summary>
    public WindLimits? Wind { get; }

    /// <summary>Highest apogee reckoned with.</summary>
    public Length MaximumApogee { get; }

    /// <inheritdoc/>
    public IReadOnlyList<EvidenceItem> Shown { get; }

    /// <inheritdoc/>
    public bool IsGo => !HasError;

    /// <inheritdoc/>
    public override string Title => $"Flight card of two stages, {Vehicle.Name} at "
        + $"{Site.Name}{(Evidence.Flight.Length > 0 ? $", {Evidence.Flight}" : "")}";

    /// <inheritdoc/>
    public override ModelCard Model => Flight?.Model ?? CardText.NoFlight;

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => [.. Provenance.Cautions.ForFlight, Provenance.Cautions.Composite];

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        .. BoosterAllowance?.Working.Steps ?? [], .. SustainerAllowance?.Working.Steps ?? [], .. Wind?.Working.Steps ?? [],
            .. Evidence.StandOff?.Working.Steps ?? [],
        .. Flight?.Working.Steps ?? [],
    ]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        CardText.Verdict(this),
        .. CardText.Stage(OfBooster, Vehicle.Booster, BoosterAllowance, Evidence.Booster),
        .. CardText.Stage(OfSustainer, Vehicle.Sustainer, SustainerAllowance, Evidence.Sustainer),
        new("Order of filling", Order(Evidence.FillOrder)),
        CardText.Crew(Evidence.StandOff),
        CardText.Spectators(Evidence.StandOff),
        .. Flight is { Status: ResultStatus.Completed } ? OfFlight(Flight, Flight.Sustainer.Figures, Flight.Booster.Figures) : [],
    ];

    /// <inheritdoc/>
    public IReadOnlyList<string> Checklist =>
    [
        CardText.SiteCheck, CardText.WindCheck(Site, Wind),
        .. CardText.StageChecks(OfBooster, Vehicle.Booster, BoosterAllowance, Evidence.Booster),
        .. CardText.StageChecks(OfSustainer, Vehicle.Sustainer, SustainerAllowance, Evidence.Sustainer),
        $"Separation tried on the ground: {Vehicle.Separation}.",
        $"Booster: {Vehicle.Booster.Deployment}. Sustainer: {Vehicle.Sustainer.Deployment}. Canopies packed, cords and pins checked.",
        CardText.RailCheck(Site), CardText.DistanceCheck(Evidence.StandOff), CardText.VentCheck,
        .. Fills(),
        "One person watches the booster alone until it is down. If the stages don't separate, everybody stays in cover: what comes down "
            + "is under pressure.",
        .. CardText.Last,
    ];

    private IEnumerable<string> Fills()
    {
        var booster = CardText.FillCheck(OfBooster, Vehicle.Booster, BoosterAllowance);
        var sustainer = CardText.FillCheck(OfSustainer, Vehicle.Sustainer, SustainerAllowance);
        return Evidence.FillOrder == FillOrder.SustainerFirst ? [sustainer, booster] : [booster, sustainer];
    }

    private IEnumerable<ResultLine> OfFlight(TwoStageResult flight, FlightFigures top, FlightFigures spent) =>
    [
        .. CardText.OfRail(Site, top, Wind),
        new("Stages separate", flight.SeparationTime.Show(),
            $"at {flight.SeparationHeight.Show()} and {flight.SeparationSpeed.Show()}; {Vehicle.Separation}"),
        new("Apogee", top.Apogee.Show(LengthUnit.Meter), $"up to {MaximumApogee.Show(LengthUnit.Meter)} over the drag band; ceiling "
            + $"{Site.Ceiling?.Show(LengthUnit.Meter) ?? "not given"}"),
        new("Time of apogee", top.ApogeeTime.Show(DurationUnit.Second), $"canopy: {Vehicle.Sustainer.Deployment}"),
        new("Maximum speed", top.MaximumSpeed.Show(SpeedUnit.MeterPerSecond)),
        new("Sustainer lands", top.Drift.Show(LengthUnit.Meter),
            $"{top.LandingEast.Show(LengthUnit.Meter)} east, {top.LandingNorth.Show(LengthUnit.Meter)} north, at "
            + $"{top.DescentSpeed.Show()} after {top.LandingTime.Show()}"),
        new("Booster lands", spent.Drift.Show(LengthUnit.Meter),
            $"{spent.LandingEast.Show(LengthUnit.Meter)} east, {spent.LandingNorth.Show(LengthUnit.Meter)} north, at "
            + $"{spent.DescentSpeed.Show()} after {spent.LandingTime.Show()}"),
        .. CardText.Scatter(Evidence.Scatter, OfSustainer),
        .. Evidence.Scatter?.Booster?.OffField is { } off ? [new ResultLine("Booster: off the field", off.ToString(),
            CardText.OfFlights(Evidence.Scatter))]
            : Array.Empty<ResultLine>(),
    ];

    private static void SameVessel(CardJudgement card, TwoStageEvidence evidence)
    {
        if (evidence.Booster.Vessel is { } booster && evidence.Sustainer.Vessel is { } sustainer
            && (booster.Fingerprint == sustainer.Fingerprint
            || (Same(booster.Vessel, sustainer.Vessel) && Same(booster.Serial, sustainer.Serial))))
            card.Add(ClearanceFindings.OneVesselInBothStages(booster.ToString()));
    }

    private static bool Same(string one, string other) => string.Equals(one.Trim(), other.Trim(), StringComparison.OrdinalIgnoreCase);

    private static string Order(FillOrder order) => order switch
    {
        FillOrder.BoosterFirst => "booster first, then sustainer",
        FillOrder.SustainerFirst => "sustainer first, then booster",
        FillOrder.Together => "both through one line",
        _ => "not given",
    };
}

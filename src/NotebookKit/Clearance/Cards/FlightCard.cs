using NotebookKit.Flight.Design;
using NotebookKit.Flight.Dispersion;
using NotebookKit.Flight.Flights;
using NotebookKit.Flight.Site;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Clearance.Cards;

/// <summary>
/// One page for the range safety officer: GO or NO-GO with reasons, what was shown and what wasn't, what flies, how high, where it comes
/// down, what must be so before it does. Source: the evidence handed over and the flights it is made from.
/// </summary>
public sealed record FlightCard : Result, IFlightCard
{
    internal FlightCard(Vehicle vehicle, LaunchSite site, FlightEvidence evidence)
    {
        (Vehicle, Site, Evidence) = (vehicle, site, evidence);
        var card = new CardJudgement(evidence.Missing);
        var stage = new StageJudge(card, vehicle, site, evidence.Day, evidence.Life, "");
        card.Day(evidence.Day);
        card.Site(site);
        Flight = CardJudgement.Try(card, () => vehicle.Fly(site));
        Figures = Flight is { Status: ResultStatus.Completed } ? Flight.Figures : null;
        var light = CardJudgement.Band(card, Figures, () => LaunchStandOff.WithLightDrag(vehicle).Fly(site), "light");
        stage.Judge(evidence, Figures, light);
        Allowance = stage.Allowance;
        if (Figures is { } figures)
        {
            var heavy = vehicle.MeasuredDrag is null ? CardJudgement.Band(card, figures,
                () => (vehicle with { DragEnd = DragEnd.High }).Fly(site), "heavy") : figures;
            (MinimumApogee, MaximumApogee) = ((heavy ?? figures).Apogee, (light ?? figures).Apogee);
            var wind = WindLimitSearch.Of(vehicle, site, Flight!, evidence.Recovery);
            card.Wind(wind, figures.RailWind);
            Wind = stage.Gust(evidence, wind);
            var margin = Flight!.Stability();
            MinimumMargin = margin.MinimumMargin;
            if (!margin.Holds)
                card.Add(ClearanceFindings.MarginInFlightIsLow(margin.MinimumMargin, margin.Limits.Minimum));
            card.AddRange(margin.Findings);
            if (site.Ceiling is { } ceiling && figures.Apogee > ceiling)
                card.Add(ClearanceFindings.ApogeeAboveCeiling(figures.Apogee, ceiling));
            else if (site.Ceiling is { } above && MaximumApogee > above)
                card.Add(ClearanceFindings.ApogeeAboveCeilingAtLightDrag(MaximumApogee, above));
        }

        card.StandOff(evidence.StandOff, vehicle.Name, [vehicle.Charge], MaximumApogee);
        card.Scatter(evidence.Scatter, Flight is null ? "" : DispersionSubject.Of(vehicle, site), vehicle.Name, site, stages: 1);
        card.AddRange(evidence.Against);
        card.AddRange(Flight?.Findings ?? []);
        (Shown, Findings) = (card.Items, card.Findings);
    }

    /// <summary>What flies.</summary>
    public Vehicle Vehicle { get; }

    /// <inheritdoc/>
    public LaunchSite Site { get; }

    /// <summary>What was handed over.</summary>
    public FlightEvidence Evidence { get; }

    /// <summary>The flight as expected; none where the vehicle can't be flown as it is.</summary>
    public FlightResult? Flight { get; }

    /// <summary>What the vessel may be filled to; none where no proved vessel was handed over.</summary>
    public FillAllowance? Allowance { get; }

    /// <summary>The wind limits; none where the flight has no answer.</summary>
    public WindLimits? Wind { get; }

    /// <summary>Apogee at the heavy end of the drag band; as expected where the drag was measured.</summary>
    public Length MinimumApogee { get; }

    /// <summary>Apogee at the light end of the drag band, the one to hold against the ceiling.</summary>
    public Length MaximumApogee { get; }

    /// <summary>Minimum static margin of the whole flight [calibres]; not a number where the flight has no answer.</summary>
    public double MinimumMargin { get; } = double.NaN;

    /// <inheritdoc/>
    public IReadOnlyList<EvidenceItem> Shown { get; }

    /// <inheritdoc/>
    public bool IsGo => !HasError;

    /// <inheritdoc/>
    public override string Title =>
        $"Flight card, {Vehicle.Name} at {Site.Name}{(Evidence.Flight.Length > 0 ? $", {Evidence.Flight}" : "")}";

    /// <inheritdoc/>
    public override ModelCard Model => Flight?.Model ?? CardText.NoFlight;

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => [.. Provenance.Cautions.ForFlight, Provenance.Cautions.Composite];

    /// <inheritdoc/>
    public override Working Working => new(Title, [.. Allowance?.Working.Steps ?? [], .. Wind?.Working.Steps ?? [],
        .. Evidence.StandOff?.Working.Steps ?? [], .. Flight?.Working.Steps ?? []]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        CardText.Verdict(this),
        .. CardText.Stage("", Vehicle, Allowance, Evidence),
        CardText.Crew(Evidence.StandOff),
        CardText.Spectators(Evidence.StandOff),
        .. Figures is { } f ? OfFlight(f) : [],
    ];

    /// <inheritdoc/>
    public IReadOnlyList<string> Checklist
    {
        get
        {
            var apogee = Vehicle.Deployment.Trigger == DeploymentTrigger.Timer && Figures is { } f
                ? $"; apogee expected at {f.ApogeeTime.Show()}" : "";
            return
            [
                CardText.SiteCheck, CardText.WindCheck(Site, Wind),
                .. CardText.StageChecks("", Vehicle, Allowance, Evidence),
                $"Canopy packed, cord and pins checked; {Vehicle.Deployment}{apogee}.",
                CardText.RailCheck(Site), CardText.DistanceCheck(Evidence.StandOff), CardText.VentCheck,
                CardText.FillCheck("", Vehicle, Allowance), .. CardText.Last,
            ];
        }
    }

    private FlightFigures? Figures { get; }

    private IEnumerable<ResultLine> OfFlight(FlightFigures f) =>
    [
        new("Mass at release", $"{Digits.Round(Flight!.Mass[0])} kg"),
        new("Minimum static margin", $"{Digits.Round(MinimumMargin)} calibres", "0° angle of attack, over the whole flight"),
        .. CardText.OfRail(Site, f, Wind),
        new("Apogee", f.Apogee.Show(LengthUnit.Meter), $"{MinimumApogee.Show(LengthUnit.Meter)} to "
            + $"{MaximumApogee.Show(LengthUnit.Meter)} over the drag band; ceiling {Site.Ceiling?.Show(LengthUnit.Meter) ?? "not given"}"),
        new("Time of apogee", f.ApogeeTime.Show(DurationUnit.Second), $"canopy: {Vehicle.Deployment}"),
        new("Maximum speed", f.MaximumSpeed.Show(SpeedUnit.MeterPerSecond)),
        new("Descent", f.DescentSpeed.Show(SpeedUnit.MeterPerSecond),
            $"{f.LandingEnergy.Show()} at the ground after {f.LandingTime.Show()}"),
        new("Drift", Site.Wind.IsGiven ? f.Drift.Show(LengthUnit.Meter) : "not shown",
            Site.Wind.IsGiven ? $"{f.LandingEast.Show(LengthUnit.Meter)} east, {f.LandingNorth.Show(LengthUnit.Meter)} north"
            : "no wind is given"),
        .. CardText.Scatter(Evidence.Scatter, ""),
    ];
}

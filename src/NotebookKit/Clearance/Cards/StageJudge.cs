using NotebookKit.Aerodynamics.FinStructures;
using NotebookKit.Clearance.Service;
using NotebookKit.Filling.Fills;
using NotebookKit.Filling.Networks;
using NotebookKit.Flight.Design;
using NotebookKit.Flight.Flights;
using NotebookKit.Flight.Site;
using NotebookKit.Flight.Stability;
using NotebookKit.Propulsion.Charges;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Record.Givens;
using UnitsNet;

namespace NotebookKit.Clearance.Cards;

/// <summary>Holds the evidence of one stage against the stage itself: vessel, service record, fill, fins, recovery, stability.</summary>
internal sealed class StageJudge(CardJudgement card, Vehicle vehicle, LaunchSite site, DateOnly? day, LifeLimits life, string own)
{
    /// <summary>Name of the parts on the pad among the pieces of evidence.</summary>
    public const string GearToday = "gear on the pad";

    private const double MassTolerance = 0.05;

    // Under a canopy the vehicle comes down no faster than this. Common practice, no source.
    private static readonly Speed FastestDescent = 12.MetresPerSecond();

    // What a fill may pass the target by in the sums, not at the gauge.
    private static readonly Pressure FillRounding = 0.01.Bar();

    private static readonly Pressure PressureTolerance = 0.05.Bar();

    /// <summary>What the vessel may be filled to; none where no proved vessel was handed over.</summary>
    public FillAllowance? Allowance { get; private set; }

    /// <summary>Judges all of it.</summary>
    /// <param name="evidence">What was handed over.</param>
    /// <param name="figures">The flight's numbers; none where it has no answer.</param>
    /// <param name="light">The numbers of the flight at the light end of the drag band, which is the fastest; none where it has no
    /// answer.</param>
    /// <param name="isAirborneAlone">Whether the stage drives itself alone in the air; a booster's margin is that of the stack.</param>
    public void Judge(StageEvidence evidence, FlightFigures? figures, FlightFigures? light, bool isAirborneAlone = true)
    {
        Vessel(evidence);
        Gear(evidence);
        Fill(evidence);
        Fins(evidence, figures, light);
        Recovery(evidence, figures);
        if (isAirborneAlone) Stability(evidence);
        if (vehicle.MeasuredDrag is { } curve) OwnDrag(card, curve, own);
        if (vehicle.DragCalibration is { } calibration && calibration.Origin.Kind != SourceKind.Measured)
            card.Add(ClearanceFindings.DragFactorIsNotMeasured(own, calibration.Factor, calibration.Origin.ToString()));
    }

    /// <summary>A drag curve of one's own carries neither flights nor a band: heavy drag written in would keep any flight low and
    /// near.</summary>
    public static void OwnDrag(CardJudgement card, Aerodynamics.Drag.DragCurve curve, string own) =>
        card.Add(ClearanceFindings.DragCurveIsByHand(own, curve.Name));

    /// <summary>The wind limits with the gust that the fins were judged with among them.</summary>
    public WindLimits Gust(StageEvidence evidence, WindLimits limits)
    {
        if (evidence.Fins?.MinBy(f => f.Gust) is not { } weakest || weakest.Gust >= limits.Limit) return limits;
        card.Add(ClearanceFindings.FinsWereJudgedWithGustBelowWindLimit(own, weakest.Gust, limits.Limit));
        return limits.WithGust(weakest.Gust, $"{own.TrimEnd(':', ' ')} fins".TrimStart());
    }

    private void Vessel(StageEvidence evidence)
    {
        var papers = new VesselJudge(card, day, life, own);
        papers.Judge(evidence);
        if (evidence.Vessel is not { } vessel) return;
        if (vehicle.Charge.Chamber != vessel.Chamber)
        {
            card.Add(vehicle.Charge.Chamber.Basis == Vessels.PressureBasis.Proved
                ? ClearanceFindings.VehicleFliesOnAnotherVessel(own, vehicle.Charge.Chamber.Reference, vessel.ToString())
                : ClearanceFindings.VehicleFliesOnUnprovedVessel(own, vehicle.Charge.Chamber.RestsOn));
        }

        Allowance = FillAllowance.Of(vessel, evidence.Service is { } service && day is { } on ? papers.Standing(service, on) : null,
            evidence.VesselTemperature, evidence.ResinMoisture);
        if (evidence.VesselTemperature is not null)
            card.AddRange(Allowance.HeatFindings.Select(f => f with { Message = own + f.Message }));
        card.Add(Allowance.SustainedLoad);
        if (Allowance.IsShown && vehicle.Charge.Pressure > Allowance.Pressure)
            card.Add(ClearanceFindings.FillIsAboveAllowance(own, GivenText.Result(vehicle.Charge.Pressure, Allowance.Pressure),
                GivenText.Result(Allowance.Pressure, vehicle.Charge.Pressure), Allowance.SetBy, Allowance.Pressure.Pascals <= 0));
    }

    private void Fill(StageEvidence evidence)
    {
        if (!card.Shown($"{own}fill or its plan", evidence.Fill is not null,
            evidence.Fill is { } shown ? $"to {shown.Fill.Target} in {shown.Duration.Show()}" : "",
            "Plan the fill of this vessel: new PadFill { ... }.Run().")) return;
        var (fill, charge) = (evidence.Fill!, vehicle.Charge);
        if (fill.Fill.Trace is { } trace) card.Add(ClearanceFindings.FillIsPublishedTrace(own, trace.Source.ToString()));
        if (fill.Fill.Chamber != charge.Chamber)
            card.Add(ClearanceFindings.FillIsOfAnotherChamber(own, fill.Fill.Chamber.Volume, fill.Fill.Chamber.RestsOn));
        if (Math.Abs((fill.Fill.Target - charge.Pressure).Bars) > PressureTolerance.Bars)
            card.Add(ClearanceFindings.FillGoesElsewhere(own, fill.Fill.Target, charge.Pressure));
        if (Math.Abs(fill.Fill.WaterFraction.Percent - charge.WaterFraction.Percent) > 0.5)
            card.Add(ClearanceFindings.FillHasOtherWater(own, fill.Fill.WaterFraction, charge.WaterFraction));
        if (fill.Fill.Gas != charge.Gas)
            card.Add(ClearanceFindings.FillHasOtherGas(own, fill.Fill.Gas.Name, charge.Gas.Name));
        if (Allowance is { IsShown: true } allowed && fill.MaximumPressure > allowed.Pressure + FillRounding)
            card.Add(ClearanceFindings.FillPeaksAboveAllowance(own, GivenText.Result(fill.MaximumPressure, allowed.Pressure),
                GivenText.Result(allowed.Pressure, fill.MaximumPressure), allowed.SetBy, allowed.Pressure.Pascals <= 0));
        card.AddRange(fill.Findings.Select(f => f with { Message = own + f.Message }));
        if (evidence.Vessel is { } filled && FillWarmth.Find(fill, filled.Rating.Vessel, evidence.VesselTemperature,
            evidence.ResinMoisture, own) is { } tooWarm) card.Add(tooWarm);
        if (evidence.Network is { } network) Network(network, charge);
        if (evidence.Pad is null) return;
        card.AddRange(PadPlumbing.Of(fill.Fill, evidence.Pad).Findings.Select(f => f with
        {
            // A part without a rating, or one that isn't there, is never taken for a sufficient one.
            Severity = FindingSeverity.Error, Message = own + f.Message,
        }));
        // A valve that isn't shut in time lets the vessel have all that the regulator gives.
        if (evidence.Vessel is { } vessel && vessel.Allowed * vessel.Rating.Rules.Overshoot is var most && fill.Fill.Supply > most)
            card.Add(ClearanceFindings.RegulatorIsAboveVessel(own, fill.Fill.Supply, most));
    }

    // What the plan asks for is one thing, what stands on the pad another: the hose of another vehicle may lie there.
    private void Gear(StageEvidence evidence)
    {
        var parts = evidence.Gear ?? [];
        if (parts.Count == 0 && !card.Misses($"{own}{GearToday}")) return;
        if (!card.Shown($"{own}{GearToday}", parts.Count > 0, string.Join(", ", parts.Select(p => $"{p.Name} "
            + $"{(p.Serial.Length > 0 ? p.Serial : "without a serial")}, {p.RatingText}")),
            "Name the parts that stand on the pad.")) return;
        card.AddRange(parts.Where(p => p.Serial.Length == 0).Select(p => ClearanceFindings.PartHasNoSerial(own, p.Name)));
        card.AddRange(parts.GroupBy(p => p.Kind).Where(g => g.Count() > 1)
            .Select(g => ClearanceFindings.PartOfDayTwice(own, g.First().Name)));
        card.AddRange(parts.Where(p => p.Serial.Length > 0).GroupBy(p => p.Serial.Trim(), StringComparer.OrdinalIgnoreCase)
            .Where(g => g.Count() > 1).Select(g => ClearanceFindings.PartsShareSerial(own, g.Key, [.. g.Select(p => p.Name)])));
        card.AddRange((evidence.Pad?.Parts ?? []).Where(p => p.IsGiven && !parts.Any(d => d.Kind == p.Kind))
            .Select(p => ClearanceFindings.PartOfPlanIsNotOnPad(own, p.Name)));
        if (evidence.Fill?.Fill is not { } fill) return;
        card.AddRange(PadPlumbing.Of(fill, (evidence.Pad ?? new()) with { Parts = parts }).Findings.Select(f => f with
        {
            Severity = FindingSeverity.Error, Message = $"{own}on the pad today: {f.Message}",
        }));
    }

    // Its own findings forbid where a rating is passed or isn't given; a network that this vessel isn't part of shows nothing of it.
    private void Network(PadNetworkResult network, Charge charge)
    {
        if (!network.Pad.Nodes.OfType<VesselNode>().Any(v => v.Chamber == charge.Chamber))
            card.Add(ClearanceFindings.NetworkLacksVessel(own, charge.Chamber.Volume, charge.Chamber.RestsOn));
        card.AddRange(network.Findings.Select(f => f with { Message = own + f.Message }));
        if (!network.IsWithinRatings) card.Add(ClearanceFindings.NetworkIsNotWithinRatings(own, network.Weakest?.Name));
    }

    private void Fins(StageEvidence evidence, FlightFigures? figures, FlightFigures? light)
    {
        var sets = vehicle.Body.Fins;
        var judged = evidence.Fins;
        if (!card.Shown($"{own}fins judged", judged is { Count: > 0 }, $"{judged?.Count} of {sets.Count} sets",
            "Judge the fins as structure: body.FinStructure(...).")) return;
        if (figures is null) return;
        var fast = light is not null && light.MaximumSpeed > figures.MaximumSpeed ? light : figures;
        for (var i = 0; i < sets.Count; i++)
        {
            if (judged!.FirstOrDefault(f => f.Fins == sets[i]) is not { } given)
            {
                card.Add(ClearanceFindings.FinsJudgedAreOthers(own, sets[i].Name));
                continue;
            }

            if (fast.MaximumMach > Aerodynamics.FinStructures.FlutterResult.MaximumMach)
            {
                card.Add(ClearanceFindings.TooFastForFlutter(own, fast.MaximumMach, FlutterResult.MaximumMach));
                continue;
            }

            if (given.Gust < figures.RailWind)
                card.Add(ClearanceFindings.FinsJudgedWithLessGust(own, given.Gust, figures.RailWind));
            // The sums are done anew from sheet, bond and gust, at this flight's own speed at the light end of the drag band.
            var fins = vehicle.Body.FinStructure(given.Sheet, given.Bond, fast.MaximumSpeed, given.Gust,
                new(site.Pressure, site.Temperature), i);
            if (!fins.Holds) card.Add(ClearanceFindings.FinsDoNotHold(own, fins.Fins.Name, fast.MaximumSpeed));
            card.AddRange(fins.Findings.Select(f => f with { Message = own + f.Message }));
        }
    }

    private void Recovery(StageEvidence evidence, FlightFigures? figures)
    {
        if (!card.Shown($"{own}recovery gear", evidence.Recovery is not null,
            evidence.Recovery is { } shown ? $"takes {shown.AllowedLoad.Show()}" : "",
            "Judge canopy, cord, anchor and pins: new RecoveryGear { ... }.Check().")) return;
        var check = evidence.Recovery!;
        if (vehicle.Canopy is { } canopy && canopy != check.Gear.Canopy)
            card.Add(ClearanceFindings.RecoveryIsOfAnotherCanopy(own, check.Gear.Canopy.NominalDiameter, canopy.NominalDiameter));
        var (halves, whole) = (check.Gear.Front + check.Gear.Rear, vehicle.MassProperties().Mass);
        if (Math.Abs(halves / whole - 1) > MassTolerance)
            card.Add(ClearanceFindings.HalvesWeighOtherwise(own, halves, whole, MassTolerance));
        card.AddRange(check.Findings.Select(f => f with { Message = own + f.Message }));
        if (figures is null) return;
        if (figures.OpeningTime is null)
            card.Add(ClearanceFindings.ComesDownWithoutCanopy(own, figures.LandingSpeed));
        else if (figures.OpeningSpeed is { MetersPerSecond: >= 1 } speed && figures.Opening is null)
            card.Add(ClearanceFindings.OpensFasterThanPublished(own, speed));
        else if ((figures.Opening ?? SlowOpening(vehicle, site, whole)) is { } opening && opening.DesignLoad > check.AllowedLoad)
            card.Add(ClearanceFindings.OpeningLoadIsAboveGear(own, opening.DesignLoad, check.AllowedLoad));
        if (figures.OpeningTime is not null && !(figures.DescentSpeed <= FastestDescent))
            card.Add(ClearanceFindings.DescentIsTooFast(own, figures.DescentSpeed, FastestDescent));
    }

    // At the top the air may stand still: the gear carries the weight and the least opening that has a load.
    internal static NotebookKit.Recovery.OpeningResult? SlowOpening(Vehicle vehicle, LaunchSite site, Mass whole)
        => vehicle.Canopy?.Open(whole, 1.MetresPerSecond(), FlightReport.Density(site, 0).KilogramsPerCubicMetre());

    private void Stability(StageEvidence evidence)
    {
        if (!card.Shown($"{own}stability", evidence.Stability is not null,
            evidence.Stability is { } shown ? $"minimum margin {Digits.Round(shown.MinimumMargin)} calibres" : "",
            "Compute the margin as the water leaves: vehicle.Stability().")) return;
        Margin(card, vehicle, evidence.Stability!, own);
    }

    /// <summary>The margin handed over against the vehicle's own, computed anew.</summary>
    public static void Margin(CardJudgement card, Vehicle vehicle, StabilityResult given, string own)
    {
        if (given.Limits.Minimum < 1)
            card.Add(ClearanceFindings.MarginWasHeldToTooLittle(own, given.Limits.Minimum));
        var margin = vehicle.Stability();
        if (!(Math.Abs(margin.MinimumMargin - given.MinimumMargin) <= 1e-9))
            card.Add(ClearanceFindings.StabilityIsOfAnotherVehicle(own, given.MinimumMargin, margin.MinimumMargin));
        if (!margin.Holds)
            card.Add(ClearanceFindings.MarginIsLow(own, margin.MinimumMargin, margin.Limits.Minimum));
        card.AddRange(margin.Findings.Select(f => f with { Message = own + f.Message }));
    }
}

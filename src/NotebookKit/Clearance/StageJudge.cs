using System.Globalization;
using NotebookKit.Aerodynamics.FinStructures;
using NotebookKit.Clearance.Service;
using NotebookKit.Flight.Design;
using NotebookKit.Flight.Flights;
using NotebookKit.Flight.Site;
using NotebookKit.Flight.Stability;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Clearance;

/// <summary>Holds the evidence of one stage against the stage itself: vessel, service record, fill, fins, recovery, stability.</summary>
internal sealed class StageJudge(CardJudgement card, Vehicle vehicle, LaunchSite site, DateOnly? day, LifeLimits life, string own)
{
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
        Fill(evidence);
        Fins(evidence, figures, light);
        Recovery(evidence, figures);
        if (isAirborneAlone) Stability(evidence);
        if (vehicle.MeasuredDrag is { } curve) OwnDrag(card, curve, own);
        if (vehicle.DragCalibration is { } calibration && calibration.Origin.Kind != SourceKind.Measured)
            card.Error($"{own}the factor on drag of {Digits.Round(calibration.Factor)} wasn't measured: {calibration.Origin}. Fit the "
                + "factor to a logged flight, or fly on the drag build-up with its band.");
    }

    /// <summary>A drag curve of one's own carries neither flights nor a band: heavy drag written in would keep any flight low and
    /// near.</summary>
    public static void OwnDrag(CardJudgement card, Aerodynamics.Drag.DragCurve curve, string own) =>
        card.Error($"{own}the drag curve \"{curve.Name}\" was given by hand; no flight is shown that it was fitted to. Fit the drag to a "
            + "logged flight (DragCalibration), or fly on the drag build-up with its band.");

    /// <summary>The gust of the fins against the wind limit.</summary>
    public void Gust(StageEvidence evidence, Speed limit)
    {
        if (evidence.Fins?.Where(f => f.Gust < limit).MinBy(f => f.Gust) is { } weakest)
            card.Add(ClearanceFindings.FinsWereJudgedWithGustBelowWindLimit(own, weakest.Gust, limit));
    }

    private void Vessel(StageEvidence evidence)
    {
        var (vessel, service) = (evidence.Vessel, evidence.Service);
        var isProved = card.Shown($"{own}proved vessel", vessel is not null, vessel?.ToString() ?? "",
            "An accepted proof record makes one: record.ToProvedVessel(rating).");
        var hasService = card.Shown($"{own}service record", service is not null,
            service is null ? "" : $"{service.Vessel} {service.Serial}, {service.Events.Count} events, last line "
            + $"{Short(service.HeadFingerprint)}", "Read the service file of the vessel.");
        var hasTemperature = card.Shown($"{own}{ResinHeat.Evidence}", evidence.VesselTemperature is not null,
            evidence.VesselTemperature?.Show(UnitsNet.Units.TemperatureUnit.DegreeCelsius) ?? "", ResinHeat.Remedy);
        if (isProved)
        {
            if (vehicle.Charge.Chamber != vessel!.Chamber)
            {
                card.Error(vehicle.Charge.Chamber.Basis == Vessels.PressureBasis.Proved
                    ? $"{own}the vehicle flies on {vehicle.Charge.Chamber.Reference}; the proof handed over is of {vessel}. Hand over "
                        + "the proof of the vessel that flies."
                    : $"{own}the rated pressure that the vehicle flies on is {vehicle.Charge.Chamber.RestsOn}. Let it fly on the proved "
                        + "vessel: vehicle.On(vessel).");
            }

            if (day is { } today && vessel.Day > today)
                card.Error($"{own}the proof is dated {Iso(vessel.Day)}, after the day of the flight, {Iso(today)}. Check both dates.");
            foreach (var finding in vessel.Findings.Where(f => f.Severity == FindingSeverity.Warning)) card.Add(finding);
        }

        if (hasService) Service(service!, vessel);
        if (isProved)
        {
            Allowance = FillAllowance.Of(vessel!, hasService && day is { } on ? Standing(service!, on) : null, evidence.VesselTemperature,
                evidence.ResinMoisture);
            if (hasTemperature) card.AddRange(Allowance.HeatFindings.Select(f => f with { Message = own + f.Message }));
            card.Add(Allowance.SustainedLoad);
            if (Allowance.IsShown && vehicle.Charge.Pressure > Allowance.Pressure)
                card.Error($"{own}the fill pressure is {vehicle.Charge.Pressure}; the vessel's maximum fill pressure "
                    + $"is {Allowance.Pressure}, "
                    + $"which {Allowance.SetBy} sets. Fill it to less, or mend what sets it.");
        }
    }

    private void Service(ServiceRecord service, Proofing.ProvedVessel? vessel)
    {
        if (!service.IsIntact)
            card.AddRange(service.Findings.Where(f => f.Severity == FindingSeverity.Error).Select(f => f
                with { Message = $"{own}service record: {f.Message}" }));
        if (vessel is not null)
        {
            if (!Same(service.Vessel, vessel.Vessel) || !Same(service.Serial, vessel.Serial))
                card.Error($"{own}the service record is that of {service.Vessel} {service.Serial}, the proof that of {vessel.Vessel} "
                    + $"{vessel.Serial}. Hand over both of one vessel.");
            // By the day of the proof, not by its place in the file: an old proof may be written down late.
            var last = (day is { } asked ? Standing(service, asked).LastProof : null) ?? service.Events.OfType<Proved>().LastOrDefault();
            if (last is null)
                card.Error($"{own}the service record holds no proof. Enter the proof that was held.");
            else if (!string.Equals(last.Record, vessel.Fingerprint, StringComparison.OrdinalIgnoreCase))
                card.Error($"{own}the last proof in the service record is record {Short(last.Record)}, the one handed over is "
                    + $"{Short(vessel.Fingerprint)}. Hand over the last proof of the vessel.");
            else if (last.Day != vessel.Day)
                card.Error($"{own}the service record dates the last proof {Iso(last.Day)}, the proof's own record {Iso(vessel.Day)}; a "
                    + "proof is no younger than its readings. Prove the vessel again, or enter the proof with its own day.");
        }

        if (day is not { } on) return;
        var status = Standing(service, on);
        if (status.InspectionDue)
            card.Error($"{own}{service.Vessel} {service.Serial} has to be inspected on the day, before the first fill; the service "
                + $"record holds no inspection of {Iso(on)}. Inspect it and enter what you find.");
        card.AddRange(status.Findings.Select(f => f with { Message = own + f.Message }));
    }

    // Limits of one's own may be stricter than the club's; looser ones change nothing.
    private ServiceStatus Standing(ServiceRecord service, DateOnly on)
    {
        var given = service.StatusOn(on, life);
        var club = service.StatusOn(on, LifeLimits.Club);
        return given.Standing == ServiceStanding.InService ? club : given;
    }

    private void Fill(StageEvidence evidence)
    {
        if (!card.Shown($"{own}fill or its plan", evidence.Fill is not null,
            evidence.Fill is { } shown ? $"to {shown.Fill.Target} in {shown.Duration.Show()}" : "",
            "Plan the fill of this vessel: new PadFill { ... }.Run().")) return;
        var (fill, charge) = (evidence.Fill!, vehicle.Charge);
        if (fill.Fill.Chamber != charge.Chamber)
            card.Error($"{own}the fill is that of another chamber ({fill.Fill.Chamber.Volume.Show()}, {fill.Fill.Chamber.RestsOn}), not "
                + "of the one that flies. Plan the fill of this vessel.");
        if (Math.Abs((fill.Fill.Target - charge.Pressure).Bars) > PressureTolerance.Bars)
            card.Error($"{own}the fill goes to {fill.Fill.Target}, the flight starts from {charge.Pressure}. Plan the fill that is flown.");
        if (Math.Abs(fill.Fill.WaterFraction.Percent - charge.WaterFraction.Percent) > 0.5)
            card.Error($"{own}the fill is planned with {fill.Fill.WaterFraction.Show()} of water, the flight with "
                + $"{charge.WaterFraction.Show()}. Plan the fill that is flown.");
        if (fill.Fill.Gas != charge.Gas)
            card.Error($"{own}the fill is planned with {fill.Fill.Gas.Name}, the flight with {charge.Gas.Name}, or with other properties "
                + "of the gas. Plan the fill that is flown.");
        if (Allowance is { IsShown: true } allowed && fill.MaximumPressure > allowed.Pressure + FillRounding)
            card.Error($"{own}the fill reaches {fill.MaximumPressure} on its way; the vessel's maximum fill pressure "
                + $"is {allowed.Pressure}, which "
                + $"{allowed.SetBy} sets. Fill more slowly, or to less.");
        card.AddRange(fill.Findings.Select(f => f with { Message = own + f.Message }));
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
                card.Error($"{own}the fins that were judged aren't {sets[i].Name} of this vehicle. Judge the fins that fly.");
                continue;
            }

            if (fast.MaximumMach > Aerodynamics.FinStructures.FlutterResult.MaximumMach)
            {
                card.Error($"{own}the vehicle reaches Mach {Digits.Round(fast.MaximumMach)}; no flutter pass is given above Mach "
                    + $"{Aerodynamics.FinStructures.FlutterResult.MaximumMach}. Fly slower, or have the fins tested.");
                continue;
            }

            if (given.Gust < figures.RailWind)
                card.Error($"{own}the fins were judged with a gust of {given.Gust.Show()}; the wind planned for is "
                    + $"{figures.RailWind.Show()}. Judge them with at least that gust.");
            // The sums are done anew from sheet, bond and gust, at this flight's own speed at the light end of the drag band.
            var fins = vehicle.Body.FinStructure(given.Sheet, given.Bond, fast.MaximumSpeed, given.Gust,
                new(site.Pressure, site.Temperature), i);
            if (!fins.Holds) card.Error($"{own}{fins.Fins.Name}: the fins don't hold at {fast.MaximumSpeed.Show()}. Mend what their own "
                + "check names.");
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
            card.Error($"{own}the recovery gear was judged under {check.Gear.Canopy.NominalDiameter.Show()} of canopy, the vehicle has "
                + $"{canopy.NominalDiameter.Show()}, or of another kind. Judge the gear that flies.");
        var (halves, whole) = (check.Gear.Front + check.Gear.Rear, vehicle.MassProperties().Mass);
        if (Math.Abs(halves / whole - 1) > MassTolerance)
            card.Error($"{own}the halves on the cord weigh {halves.Show()} together, the vehicle {whole.Show()}; they must agree within "
                + $"{Digits.Round(100 * MassTolerance)} %. Weigh both halves.");
        card.AddRange(check.Findings.Select(f => f with { Message = own + f.Message }));
        if (figures is null) return;
        if (figures.OpeningTime is null)
            card.Error($"{own}the stage comes down without a canopy, at {figures.LandingSpeed.Show()}. Give it one, and let it come out.");
        else if (figures.OpeningSpeed is { MetersPerSecond: >= 1 } speed && figures.Opening is null)
            card.Error($"{own}the canopy comes out at {speed.Show()}, faster than any opening load is published for. Deploy it nearer "
                + "to the apogee.");
        else if ((figures.Opening ?? SlowOpening(whole)) is { } opening && opening.DesignLoad > check.AllowedLoad)
            card.Error($"{own}the canopy opens with {opening.DesignLoad.Show()}; the gear takes {check.AllowedLoad.Show()} with its "
                + $"factor of {Digits.Round(NotebookKit.Recovery.RecoveryCheck.RequiredFactor)}. Use stronger gear, or deploy nearer "
                + "to the apogee.");
        if (figures.OpeningTime is not null && !(figures.DescentSpeed <= FastestDescent))
            card.Error($"{own}the stage reaches the ground at {figures.DescentSpeed.Show()} under its canopy; at most "
                + $"{FastestDescent.Show()} is accepted (common practice, no source). Use a larger canopy, or deploy it higher.");
    }

    // At the top the air may stand still: the gear carries the weight and the least opening that has a load.
    private NotebookKit.Recovery.OpeningResult? SlowOpening(Mass whole)
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
            card.Error($"{own}the margin was held to {Digits.Round(given.Limits.Minimum)} calibres; at least 1 calibre is required of a "
                + "flight (common practice, no source). Judge it by that.");
        var margin = vehicle.Stability();
        if (!(Math.Abs(margin.MinimumMargin - given.MinimumMargin) <= 1e-9))
            card.Error($"{own}the stability handed over has a minimum margin of {Digits.Round(given.MinimumMargin)} calibres, this "
                + $"vehicle {Digits.Round(margin.MinimumMargin)}: it is of another vehicle or fill. Compute it for this one.");
        if (!margin.Holds)
            card.Error($"{own}the minimum static margin is {Digits.Round(margin.MinimumMargin)} calibres; at least "
                + $"{Digits.Round(margin.Limits.Minimum)} is wanted throughout. Add ballast in the nose or enlarge the fins.");
        card.AddRange(margin.Findings.Select(f => f with { Message = own + f.Message }));
    }

    private static bool Same(string one, string other) => string.Equals(one.Trim(), other.Trim(), StringComparison.OrdinalIgnoreCase);

    private static string Short(string fingerprint) => fingerprint.Length > 12 ? fingerprint[..12] : fingerprint;

    private static string Iso(DateOnly on) => on.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}

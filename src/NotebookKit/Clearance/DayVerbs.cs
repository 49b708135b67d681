using System.Collections.Frozen;
using System.Text.RegularExpressions;
using NotebookKit.Aerodynamics.FinStructures;
using NotebookKit.Clearance.Cards;
using NotebookKit.Clearance.Designs;
using NotebookKit.Clearance.Service;
using NotebookKit.DesignFiles;
using NotebookKit.DesignFiles.Parts;
using NotebookKit.Filling.Balances;
using NotebookKit.Filling.Fills;
using NotebookKit.Flight.Dispersion;
using NotebookKit.Flight.Flights;
using NotebookKit.Flight.Site;
using NotebookKit.Flight.Staging;
using NotebookKit.Flight.Stability;
using NotebookKit.Proofing.Records;
using NotebookKit.Provenance;

namespace NotebookKit.Clearance;

/// <summary>The flight card of a design on a day, on every piece of evidence that design, proofs and service records give.</summary>
public static partial class DayVerbs
{
    private static readonly string[] OfADay = ["site.wind", "site.atmosphere", "site.rail", "charge", "recovery.deployment"];

    /// <summary>The card of a design on a day. What the design, the proofs and the service records don't give is not shown, with the
    /// reason, and forbids. Source: as the card's.</summary>
    /// <param name="design">The design.</param>
    /// <param name="day">The day: which vessels are filled, how warm they are, what is otherwise than in the design.</param>
    /// <param name="proofs">Records of proofs; of each vessel the last one counts.</param>
    /// <param name="services">Service records.</param>
    /// <param name="seen">What else was seen that stands against the flight; each error forbids.</param>
    /// <exception cref="InvalidDesignException">The day names other vessels than the design has stages, or changes what isn't a
    /// day's.</exception>
    /// <exception cref="DesignFiles.Trees.DesignFileException">A change of the day means no value of the design, or can't be
    /// that.</exception>
    public static IFlightCard Card(this Design design, FlightDay day, IReadOnlyList<ProofRecord> proofs,
        IReadOnlyList<ServiceRecord> services, IReadOnlyList<Finding>? seen = null)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(day);
        ArgumentNullException.ThrowIfNull(proofs);
        ArgumentNullException.ThrowIfNull(services);
        var paths = day.Changes.Select(c => (Change: c, Path: day.PathOf(design, c))).ToList();
        InvalidDesignException.ThrowIfAny(design.Name, [.. paths.Where(p => !IsOfADay(p.Path))
            .Select(p => ClearanceFindings.NotChangedForADay(day.PlaceOf(p.Change), p.Path))]);
        List<Finding> against = [.. seen ?? []];
        against.AddRange(paths.Where((p, i) => paths.Take(i).Any(q => IsWithin(p.Path, q.Path) || IsWithin(q.Path, p.Path)))
            .Select(p => ClearanceFindings.ChangedTwiceForTheDay(day.PlaceOf(p.Change), p.Path)));
        against.AddRange(day.Changes.Select(c => ClearanceFindings.ChangedForTheDay(c.Name, c.Value)));
        var today = day.Applied(design);
        if (day.Vessels.Count != today.Stages.Count)
            throw new InvalidDesignException(today.Name, [ClearanceFindings.DayNamesOtherVessels(day.Vessels.Count, today.Stages.Count)]);
        against.AddRange(Requirements(today));
        var missing = new Dictionary<string, string>(StringComparer.Ordinal);
        if (!TellsWind([.. paths.Select(p => p.Path)], design)) missing[CardJudgement.WindToday] = ClearanceFindings.WindOfDayIsNotGiven();
        against.AddRange(today.Stages.SelectMany((s, i) => Papers(s, day.Vessels[i], i > 0 || day.Gear.Count > 0, services, missing,
            Own(today, i))));
        if (today.Site is not { } site) return Without(today, day, proofs, services, missing, against);
        try
        {
            return today.Stages.Count == 1 ? OfOne(today, site, day, proofs, services, missing, against)
                : OfTwo(today, site, day, proofs, services, missing, against);
        }
        catch (InvalidDesignException refused)
        {
            return Without(today, day, proofs, services, missing, [.. refused.Findings, .. against]);
        }
        catch (Exception refused) when (refused is OutOfRangeException or InvalidOperationException)
        {
            return Without(today, day, proofs, services, missing, [Finding.Error(refused.Message), .. against]);
        }
    }

    /// <summary>The requirements of a design that don't hold, or can't be told, as they stand against a flight.</summary>
    internal static IEnumerable<Finding> Requirements(Design design)
    {
        var outcomes = design.Check().Outcomes;
        return
        [
            .. outcomes.Where(o => o.Verdict == RequirementVerdict.NoLongerHolds).Select(o => ClearanceFindings.RequirementForbids(
                o.Requirement.Name, $"{o.Requirement.Of} {o.Value}")),
            .. outcomes.Where(o => o.Verdict == RequirementVerdict.CannotTell).GroupBy(o => o.Reason, StringComparer.Ordinal)
                .Select(g => ClearanceFindings.RequirementsCannotBeTold([.. g.Select(o => o.Requirement.Name)], g.Key))
                .Select(f => Finding.Error(f.Message)),
        ];
    }

    /// <summary>The vessel as proved, where the design is still the one that was proved.</summary>
    /// <exception cref="InvalidDesignException">The record doesn't prove the vessel, or is of a vessel made otherwise.</exception>
    internal static ProvedVessel Prove(DesignStage stage, ProofRecord record) => record.Readings.MadeAs == stage.Mark
        ? record.ToProvedVessel(stage.Rating) : throw new InvalidDesignException(stage.Name,
            [Finding.Error(ClearanceFindings.ProvedVesselWasChanged(record.Readings.Serial ?? stage.Name, record.Readings.MadeAs,
                stage.Mark))]);

    // A speed means nothing without the height at which it was measured.
    private static bool TellsWind(IReadOnlyList<string> paths, Design design) => paths.Contains("site.wind")
        || paths.Contains("site.wind.layers")
        || (paths.Contains("site.wind.speed")
            && (paths.Contains("site.wind.reference") || !design.HasPart("site.wind.reference")));

    private static bool IsWithin(string path, string part) => path == part || path.StartsWith($"{part}.", StringComparison.Ordinal);

    // Weather, rail, water and pressure are the day's. What was made, tested, required or permitted isn't.
    private static bool IsOfADay(string path)
    {
        var own = StagePath().Replace(path, "");
        return OfADay.Any(p => own == p || own.StartsWith($"{p}.", StringComparison.Ordinal));
    }

    [GeneratedRegex(@"^stages\.(booster|sustainer)\.")]
    private static partial Regex StagePath();

    private static FlightCard OfOne(Design design, LaunchSite site, FlightDay day, IReadOnlyList<ProofRecord> proofs,
        IReadOnlyList<ServiceRecord> services, Dictionary<string, string> missing, IReadOnlyList<Finding> against)
    {
        var (stage, vessel) = (design.Stages[0], day.Vessels[0]);
        var proved = Proved(stage, vessel, proofs, missing, "");
        var vehicle = proved is null ? stage.Vehicle : stage.Vehicle.On(proved);
        var flight = Try(() => vehicle.Fly(site), [], "");
        return vehicle.Card(site, new FlightEvidence
        {
            Day = day.Day, Flight = day.Flight, Vessel = proved, Service = ServiceOf(vessel, services, missing, ""),
            VesselTemperature = vessel.WallTemperature, ResinMoisture = vessel.ResinMoisture, Label = vessel.Label,
            Fill = Fill(stage, proved, missing, ""), Fins = Fins(stage, site, flight?.Figures, missing, ""),
            Recovery = Gear(stage, missing, ""), Stability = Try(() => vehicle.Stability(), missing, "stability"),
            StandOff = Try(() => vehicle.StandOff(site), missing, "stand-off"),
            Scatter = Scatter(design.Scatter, s => vehicle.Disperse(site, s.Spread, s.Flights, s.Seed), missing),
            Pad = stage.Pad, Gear = day.Gear, Against = against,
            Missing = missing.ToFrozenDictionary(StringComparer.Ordinal),
        });
    }

    private static TwoStageFlightCard OfTwo(Design design, LaunchSite site, FlightDay day, IReadOnlyList<ProofRecord> proofs,
        IReadOnlyList<ServiceRecord> services, Dictionary<string, string> missing, IReadOnlyList<Finding> against)
    {
        string[] own = [Own(design, 0), Own(design, 1)];
        var proved = design.Stages.Select((s, i) => Proved(s, day.Vessels[i], proofs, missing, own[i])).ToList();
        var whole = design.TwoStageVehicle;
        if (proved[0] is { } first) whole = whole with { Booster = whole.Booster.On(first) };
        if (proved[1] is { } second) whole = whole with { Sustainer = whole.Sustainer.On(second) };
        var flight = Try(() => whole.Fly(site), [], "");
        FlightFigures?[] figures = [flight?.Booster.Figures, flight?.Sustainer.Figures];
        StackStageEvidence Of(int i, StabilityResult? stability) => new()
        {
            Vessel = proved[i], Service = ServiceOf(day.Vessels[i], services, missing, own[i]),
            VesselTemperature = day.Vessels[i].WallTemperature, ResinMoisture = day.Vessels[i].ResinMoisture,
            Label = day.Vessels[i].Label,
            Fill = Fill(design.Stages[i], proved[i], missing, own[i]),
            Fins = Fins(design.Stages[i], site, figures[i], missing, own[i]), Recovery = Gear(design.Stages[i], missing, own[i]),
            Stability = stability, Pad = design.Stages[i].Pad, Gear = day.Gear,
        };
        var evidence = new TwoStageEvidence
        {
            Day = day.Day, Flight = day.Flight, Against = against, Booster = Of(0, null),
            Sustainer = Of(1, Try(() => whole.Sustainer.Stability(), missing, $"{own[1]}stability")),
            StackStability = Try(() => whole.Stack(site).Stability(), missing, "stability of the stack"),
            StandOff = Try(() => whole.StandOff(site), missing, "stand-off"),
            Scatter = Scatter(design.Scatter, s => whole.Disperse(site, new TwoStageSpread { Both = s.Spread }, s.Flights, s.Seed),
                missing),
            FillOrder = day.FillOrder switch
            {
                "booster first" => FillOrder.BoosterFirst, "sustainer first" => FillOrder.SustainerFirst,
                "together" => FillOrder.Together, _ => FillOrder.NotGiven,
            },
        };
        if (evidence.FillOrder == FillOrder.NotGiven) missing["order of filling"] = ClearanceFindings.DayGivesNoFillOrder();
        return whole.Card(site, evidence with { Missing = missing.ToFrozenDictionary(StringComparer.Ordinal) });
    }

    private static ProvedVessel? Proved(DesignStage stage, VesselOfDay vessel, IReadOnlyList<ProofRecord> proofs,
        Dictionary<string, string> missing, string own)
    {
        if (vessel.WallTemperature is null)
            missing[$"{own}{ResinHeat.Evidence}"] = ClearanceFindings.DayGivesNoWallTemperature(vessel.Serial);
        var last = proofs.Where(p => Same(p.Readings.Serial, vessel.Serial)).MaxBy(p => p.Readings.Day);
        if (proofs.Any(p => Same(p.Readings.Serial, vessel.Serial) && p.Verdict == ProofVerdict.Reject))
        {
            missing[$"{own}proved vessel"] = ClearanceFindings.VesselWasRejected(vessel.Serial);
            return null;
        }

        if (last is not null) return Try(() => Prove(stage, last), missing, $"{own}proved vessel");
        missing[$"{own}proved vessel"] = ClearanceFindings.NoProofOfVessel(vessel.Serial, [.. proofs.Select(p => p.Readings.Serial ?? "")
            .Distinct()]);
        return null;
    }

    private static ServiceRecord? ServiceOf(VesselOfDay vessel, IReadOnlyList<ServiceRecord> services, Dictionary<string, string> missing,
        string own)
    {
        var found = services.Where(s => Same(s.Serial, vessel.Serial)).ToList();
        if (found.Count == 1) return found[0];
        missing[$"{own}service record"] = found.Count > 1 ? ClearanceFindings.TwoServiceRecordsOfVessel(vessel.Serial)
            : ClearanceFindings.NoServiceRecordOfVessel(vessel.Serial, [.. services.Select(s => s.Serial)]);
        return null;
    }

    // As the design fills it, but into this very vessel.
    private static FillResult? Fill(DesignStage stage, ProvedVessel? proved, Dictionary<string, string> missing, string own)
    {
        var name = $"{own}fill or its plan";
        if (proved is null) missing[name] = ClearanceFindings.FillNeedsProvedVessel();
        else if (stage.Pad is null) missing[name] = ClearanceFindings.DesignGivesNo("pad", stage.Name, "what it is filled with");
        else
        {
            return Try(() => (stage.PadFill ?? throw new InvalidDesignException(stage.Name,
                [Finding.Error(ClearanceFindings.DesignGivesNo("pad", stage.Name, "regulator and restrictor"))])) is var fill
                ? (fill with { Chamber = proved.Chamber, Wall = FillWall.Of(proved.Chamber, fill.WaterFraction) }).Run() : null,
                missing, name);
        }

        return null;
    }

    private static List<FinStructureResult>? Fins(DesignStage stage, LaunchSite site, FlightFigures? figures,
        Dictionary<string, string> missing, string own)
    {
        var name = $"{own}fins judged";
        if (stage is not { FinSheet: { } sheet, FinBond: { } bond, FinGust: { } gust, Body: { } body })
            missing[name] = ClearanceFindings.DesignGivesNo("fin structure", stage.Name, "the fins' sheet, bond and gust");
        else if (figures is null) missing[name] = ClearanceFindings.FinsNeedFlight();
        else
        {
            return Try<List<FinStructureResult>>(() => [.. Enumerable.Range(0, body.Fins.Count).Select(i => body.FinStructure(sheet, bond,
                figures.MaximumSpeed, gust, new(site.Pressure, site.Temperature), i))], missing, name);
        }

        return null;
    }

    private static NotebookKit.Recovery.RecoveryCheck? Gear(DesignStage stage, Dictionary<string, string> missing, string own)
    {
        var name = $"{own}recovery gear";
        if (Try(() => stage.RecoveryGear, missing, name) is { } gear) return Try(() => gear.Check(), missing, name);
        missing.TryAdd(name, ClearanceFindings.DesignGivesNo("recovery.gear", stage.Name, "cord, anchor and joint"));
        return null;
    }

    private static DispersionResult? Scatter(DesignScatter? asked, Func<DesignScatter, DispersionResult> disperse,
        Dictionary<string, string> missing)
    {
        if (asked is not null) return Try(() => disperse(asked), missing, "scatter of landings");
        missing["scatter of landings"] = ClearanceFindings.ScatterIsNotGiven();
        return null;
    }

    // What can't be made says why.
    private static T? Try<T>(Func<T?> make, Dictionary<string, string> missing, string name) where T : class
    {
        try
        {
            return make();
        }
        catch (InvalidDesignException wrong)
        {
            missing[name] = wrong.Reasons;
        }
        catch (Exception wrong) when (wrong is OutOfRangeException or InvalidOperationException)
        {
            missing[name] = wrong.Message;
        }

        return null;
    }

    private static bool Same(string? one, string other) => string.Equals(one?.Trim(), other.Trim(), StringComparison.OrdinalIgnoreCase);
}

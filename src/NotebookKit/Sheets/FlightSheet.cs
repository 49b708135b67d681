using System.Globalization;
using NotebookKit.Clearance.Cards;
using NotebookKit.DesignFiles;
using NotebookKit.Filling.Vents;
using NotebookKit.Flight.Dispersion;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Sheets;

/// <summary>The flight card as paper for the range safety officer: the card's own verdict, what flies, boxes for what is read at the pad,
/// who stands where, the checklist whole. Source: the card.</summary>
public sealed record FlightSheet : Result, ISheet
{
    private FlightSheet(IFlightCard card, IReadOnlyList<FlightStage> stages, LaunchStandOff? standOff, WindLimits? wind, Duration? vent,
        string subject, DateOnly? day)
    {
        Card = card;
        Content = Compose(stages, standOff, wind, vent, day) with { Subject = subject };
    }

    /// <summary>The card.</summary>
    public IFlightCard Card { get; }

    /// <inheritdoc/>
    public SheetContent Content { get; }

    /// <inheritdoc/>
    public override string Title => Card.Title;

    /// <inheritdoc/>
    public override ModelCard Model => Card.Model;

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines => Card.Lines;

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings => Card.Findings;

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Card.Cautions;

    /// <inheritdoc/>
    public override Working Working => Card.Working;

    /// <summary>The sheet of a card of one stage. Source: the card's.</summary>
    /// <param name="card">The card.</param>
    /// <param name="vent">How the vessel vents after an abort; without it the sheet says that the time isn't computed.</param>
    public static FlightSheet Of(FlightCard card, VentResult? vent = null)
    {
        ArgumentNullException.ThrowIfNull(card);
        RefusePublished(vent);
        return new(card, [new("", card.Allowance, card.Evidence)], card.Evidence.StandOff, card.Wind, vent?.WorstState,
            card.Flight is null ? "" : DispersionSubject.Of(card.Vehicle, card.Site), card.Evidence.Day);
    }

    /// <summary>The sheet of a card of two stages. Source: the card's.</summary>
    /// <param name="card">The card.</param>
    /// <param name="vent">How the slower of both vessels vents after an abort; without it the sheet says that the time isn't
    /// computed.</param>
    public static FlightSheet Of(TwoStageFlightCard card, VentResult? vent = null)
    {
        ArgumentNullException.ThrowIfNull(card);
        RefusePublished(vent);
        return new(card, [new("Booster: ", card.BoosterAllowance, card.Evidence.Booster),
            new("Sustainer: ", card.SustainerAllowance, card.Evidence.Sustainer)], card.Evidence.StandOff, card.Wind, vent?.WorstState,
            card.Flight is null ? "" : DispersionSubject.Of(card.Vehicle, card.Site), card.Evidence.Day);
    }

    /// <summary>The sheet of a card of one stage or two. Source: the card's.</summary>
    /// <param name="card">The card.</param>
    public static FlightSheet Of(IFlightCard card) => card switch
    {
        FlightCard one => Of(one), TwoStageFlightCard two => Of(two),
        CardWithoutFlight none => new(none, [.. none.Stages.Select(s => new FlightStage(Capital(s.Own), null, s.Evidence))], null, null,
            null, "", none.Day),
        _ => throw new ArgumentException("The card is of no kind that has a sheet.", nameof(card)),
    };

    private static void RefusePublished(VentResult? vent)
    {
        if (vent?.Vent.Trace is { } trace)
            throw new InvalidDesignException("Flight sheet", [SheetsFindings.SheetOfPublishedTrace(trace.Source.ToString())]);
    }

    /// <summary>The mark that the sheet of a design's own flight has; empty where the design can't be flown as it is.</summary>
    /// <param name="design">The design.</param>
    public static string SubjectOf(Design design)
    {
        ArgumentNullException.ThrowIfNull(design);
        if (design.Site is not { } site) return "";
        try
        {
            return design.Stages.Count == 1 ? DispersionSubject.Of(design.Vehicle, site)
                : DispersionSubject.Of(design.TwoStageVehicle, site);
        }
        catch (InvalidDesignException)
        {
            return "";
        }
    }

    private SheetContent Compose(IReadOnlyList<FlightStage> stages, LaunchStandOff? standOff, WindLimits? wind, Duration? vent,
        DateOnly? day)
    {
        var verdict = Card.Lines[0];
        return new(Title, "For the range safety officer. The card computes; the range safety officer decides.",
        [
            new("Read at the pad and write") { Blanks =
            [
                new($"Wind at the rail, at most {wind?.Limit.Show(SpeedUnit.MeterPerSecond) ?? "not shown"}", "m/s"),
                .. stages.SelectMany(s => new[] { new SheetBlank($"{s.Own}gauge after settling", "bar gauge"),
                    new SheetBlank($"{s.Own}mass, dry", "g"), new SheetBlank($"{s.Own}water", "mL") }),
                new("Time of release", ""),
            ] },
            new("Vessel") { Facts = [.. stages.SelectMany(OfVessel)] },
            new("Flight") { Facts = [.. Card.Lines.Skip(1)] },
            new("Who stands where") { Facts =
            [
                new("Crew", standOff is null ? "not shown" : $"{standOff.Crew.Show()}, behind cover", standOff?.CrewSetBy ?? ""),
                new("Spectators", standOff?.Spectators.Show() ?? "not shown", standOff?.SpectatorsSetBy ?? ""),
                new("Nobody", "in line of a closure or under the flight path"),
            ] },
            new("Checklist") { Steps = Card.Checklist },
            new("Misfire") { Rules = SheetRules.Misfire(vent) },
            new("What stands behind this card") { Facts = [.. Card.Shown.Select(i => new ResultLine(Capital(i.Name),
                i.IsShown ? "shown" : "NOT SHOWN", i.IsShown ? i.What : ""))] },
        ])
        {
            Verdict = verdict.Value,
            IsInFavour = Card.IsGo,
            VerdictNote = day is { } on
                ? string.Create(CultureInfo.InvariantCulture, $"for {on:yyyy-MM-dd} and no other day; {verdict.Note}") : verdict.Note,
            Findings = [.. NotShown(), .. Findings.Where(f => f.Severity != FindingSeverity.Note && !IsOfMissing(f))],
            Cautions = Cautions,
            Signatures = ["Range safety officer, date and time", "Pad officer"],
        };
    }

    // The card says of each missing piece which call would make it; on paper the list of what is missing is enough.
    private IEnumerable<Finding> NotShown()
    {
        var missing = Card.Shown.Where(i => !i.IsShown).Select(i => i.Name).ToList();
        if (missing.Count > 0) yield return SheetsFindings.NotShown(missing);
    }

    private bool IsOfMissing(Finding finding) => Card.Shown.Any(i => !i.IsShown
        && finding.Message.Contains($"ot shown: {i.Name}", StringComparison.Ordinal));

    private static IEnumerable<ResultLine> OfVessel(FlightStage stage)
    {
        var (own, service, fill) = (stage.Own, stage.Allowance?.Service, stage.Evidence.Fill);
        yield return new($"{own}serial", stage.Evidence.Vessel is { } v ? $"{v.Vessel} {v.Serial}" : "not shown");
        yield return new($"{own}mark on the label", stage.Evidence.Label ?? "not given",
            stage.Evidence.Service is { } record && stage.Evidence.Label == record.EndMark ? "the mark of the service record's end" : "");
        yield return new($"{own}maximum fill pressure", stage.Allowance?.Pressure.ToString() ?? "not shown",
            stage.Allowance is { } a ? $"{a.SetBy} sets it" : "");
        yield return new($"{own}fills so far", service is null ? "not shown" : $"{service.Fills}",
            service is null ? "no service record" : $"{service.FillsSinceProof} since the last proof; fills left: "
                + $"{(service.FillsLeft is { } left ? Digits.Round(left, 6) : "no limit set")}");
        yield return new($"{own}cycles used, fills and proofs", service is null ? "not shown"
            : $"{service.Pressurisations} of {(service.Limits.Pressurisations is { } most ? Digits.Round(most.Value, 6) : "no limit set")}",
            service?.Limits.Name ?? "");
        yield return new($"{own}time of the fill", fill?.Duration.Show() ?? "not shown",
            fill is null ? "" : $"shut at {fill.ShutPressure}, settles at {fill.SettledPressure}; top up only from behind cover");
    }

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    private sealed record FlightStage(string Own, FillAllowance? Allowance, StageEvidence Evidence);
}

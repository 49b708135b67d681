using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Clearance.Service;

/// <summary>Walks through a record in the order in which things happened and says what still stands against the vessel.</summary>
internal sealed class ServiceJudgement
{
    // A proof that allows 36 bar allows 36 bar however the division rounds.
    private const double Rounding = 1e-9;

    private readonly ServiceRecord _record;
    private readonly DateOnly _on;
    private readonly LifeLimits _limits;
    private readonly List<(string Rule, string What, Recheck Needs, bool Proved, bool Inspected)> _open = [];
    private readonly List<Finding> _findings = [];
    private readonly HashSet<(DateOnly Day, string Record)> _proofs = [];
    private Made? _made;
    private Proved? _proof;
    private bool _inspectedToday;
    private int _fills, _fillsSince, _pressed;
    private Duration _time = Duration.Zero;

    private ServiceJudgement(ServiceRecord record, DateOnly on, LifeLimits limits) => (_record, _on, _limits) = (record, on, limits);

    public static ServiceStatus Of(ServiceRecord record, DateOnly on, LifeLimits limits)
    {
        var judgement = new ServiceJudgement(record, on, limits);
        // A proof may be written down some days after it was done, and what happened meanwhile comes after it.
        foreach (var entry in record.Entries.OrderBy(HappenedOn).ThenBy(e => e.Sequence)) judgement.Take(entry);
        return judgement.Status();
    }

    private static DateOnly HappenedOn(ServiceEntry entry) => entry.Event switch { Proved proof => proof.Day, Made made => made.Day,
        _ => entry.Day };

    private void Take(ServiceEntry entry)
    {
        var what = $"line {entry.Line} of {ServiceText.Of(HappenedOn(entry))}";
        switch (entry.Event)
        {
            case Made made:
                if (_made is not null) _findings.Add(ClearanceFindings.RecordSaysTwiceVesselWasMade(what));
                _made ??= made;
                break;
            case Proved proof:
                TakeProof(proof, what);
                break;
            case Filled fill:
                TakeFill(fill, what);
                break;
            case Inspected { Result: InspectionResult.Sound }:
                _inspectedToday |= entry.Day == _on;
                Clear(o => o with { Inspected = true });
                break;
            case Inspected:
                if (entry.Day == _on) _inspectedToday = false;
                Ground("Failed inspection", $"{what}: an inspection found the vessel not sound", _limits.AfterFailedInspection);
                break;
            case LandedHard:
                Ground("Hard landing", $"{what}: the vessel landed hard", _limits.AfterHardLanding);
                break;
            case Dropped drop:
                Ground("Drop", $"{what}: the vessel fell from {drop.Height.Show()}", _limits.AfterDrop);
                break;
            case Heated heat when _limits.HotAbove is not { } hot || heat.Temperature > hot.Value:
                Ground("Heat", $"{what}: the wall was at {heat.Temperature.Show()} for {ServiceStatus.Hours(heat.Duration)}{Above()}",
                    _limits.AfterHeat);
                break;
            case Repaired repair:
                Ground("Repair", $"{what}: the vessel was repaired ({repair.What})", _limits.AfterRepair);
                break;
        }
    }

    private void TakeProof(Proved proof, string what)
    {
        if (!_proofs.Add((proof.Day, proof.Record.ToUpperInvariant())))
        {
            // Entered again it would clear what happened to the vessel on that day after the proof.
            _findings.Add(ClearanceFindings.RecordHoldsOneProofTwice(what));
            return;
        }

        _pressed++;
        if (_made is null && _record.Events.Any(e => e is Made))
        {
            Ground("Proof before the vessel was made", $"{what}: a proof is dated before the vessel was made",
                new(Recheck.Proof, Source.CommonPractice("A proof is of a vessel that is there")));
            return;
        }

        (_proof, _fillsSince) = (proof, 0);
        Clear(o => o with { Proved = true });
    }

    private void TakeFill(Filled fill, string what)
    {
        _fills++;
        _fillsSince++;
        _pressed++;
        _time += fill.Hold;
        var again = new LifeFigure<Recheck>(Recheck.Proof, Source.CommonPractice("A fill stays within the last proof"));
        if (_open.Count > 0) _findings.Add(ClearanceFindings.VesselWasFilledWhileGrounded(what));
        if (_proof is null) Ground("Filled without a proof", $"{what}: the vessel was filled to {fill.Pressure} without a proof", again);
        else if (fill.Pressure.Pascals > _proof.Allows.Pascals * (1 + Rounding))
            Ground("Filled above its proof", $"{what}: the vessel was filled to {fill.Pressure}, above the {_proof.Allows} that the "
                + $"proof of {ServiceText.Of(_proof.Day)} allows", again);
        if (fill.Temperature is { } wall && _limits.HotAbove is { } hot && wall > hot.Value)
            Ground("Heat", $"{what}: the vessel was filled with its wall at {wall.Show()}{Above()}", _limits.AfterHeat);
    }

    private ServiceStatus Status()
    {
        var status = new ServiceStatus(_record, _on, _limits)
        {
            Made = _made,
            LastProof = _proof,
            Fills = _fills,
            FillsSinceProof = _fillsSince,
            Pressurisations = _pressed,
            TimeAtPressure = _time,
            InspectionDue = _limits.InspectEveryDayOfUse.Value && !_inspectedToday,
        };
        var reasons = Reasons(status).ToList();
        return status with { Reasons = reasons, Findings = [.. reasons.Select(r => Finding.Error(r.Sentence)), .. _record.Findings,
            .. _findings, .. Coming(status)] };
    }

    private IEnumerable<ServiceReason> Reasons(ServiceStatus status)
    {
        foreach (var entry in _record.Entries)
            if (entry.Event is Retired retired) yield return new("Retired",
                $"The vessel was retired on {ServiceText.Of(entry.Day)}: {retired.Reason.TrimEnd('.')}. Cut it up, so that "
                + "nobody fills it.");
        if (!_record.IsIntact) yield return new("Record not intact",
            "The record isn't intact, see its findings, so nobody knows what the vessel went through; go back to a sound copy of the "
            + "file, or retire the vessel.");
        if (_record.Entries.Count > 0 && _record.Entries.Max(e => e.Day) is var last && _on < last)
            yield return new("Day", $"The day asked for, {ServiceText.Of(_on)}, lies before the last event, {ServiceText.Of(last)}; set "
                + "the clock right, or ask for a later day.");
        if (MadeAgain() is { } again) yield return new("Made twice",
            $"Line {again.Line} says again that the vessel was made, after a proof of it; a proof is of the vessel that was "
            + "proved, not of a later one. Give the later vessel a serial of its own, begin a new record for that serial, and proof-test "
            + "the vessel.");
        if (_made is null) yield return new("Not made", "The record doesn't say when the vessel was made, so its age isn't known; write "
            + "down when and of what it was made.");
        if (status.LifeEnds is { } end && _on > end) yield return new("Over age",
            $"The vessel's life ended on {ServiceText.Of(end)}, {_limits.MonthsOfLife!.Value} months after it was made; retire it.");
        if (_proof is null) yield return new("Not proved", "The record has no proof of this vessel; proof-test it with water before "
            + "it is filled.");
        if (status.ProofDue is { } due && _on > due) yield return new("Proof overdue",
            $"The last proof was on {ServiceText.Of(_proof!.Day)} and the next was due on {ServiceText.Of(due)}; proof-test the vessel "
            + "before it is filled again.");
        if (_limits.FillsBetweenProofs is { } between && _fillsSince >= between.Value)
            yield return new("Fills between proofs", $"The vessel was filled {_fillsSince} times since its last proof, and "
                + $"{between.Value} are the maximum; proof-test it again before it is filled.");
        if (_limits.Pressurisations is { } most && _pressed >= most.Value)
            yield return new("Pressurisations in all", $"The vessel was pressed {_pressed} times, proofs among them, and {most.Value} "
                + "are the maximum; retire it.");
        if (_limits.TimeAtPressure is { } time && _time >= time.Value)
            yield return new("Time at pressure", $"The vessel was at pressure for {ServiceStatus.Hours(_time)}, and "
                + $"{ServiceStatus.Hours(time.Value)} are the maximum; retire it.");
        foreach (var (rule, what, needs, proved, inspected) in _open)
            yield return new(rule, $"{char.ToUpperInvariant(what[0])}{what[1..]}; {Remedy(needs, proved, inspected)} before it is filled.");
    }

    // In the order in which the lines were written: a day of making is what somebody says.
    private ServiceEntry? MadeAgain()
    {
        var isProved = false;
        var isMade = false;
        foreach (var entry in _record.Entries)
        {
            if (entry.Event is Made && isMade && isProved) return entry;
            isMade |= entry.Event is Made;
            isProved |= entry.Event is Proved;
        }

        return null;
    }

    private IEnumerable<Finding> Coming(ServiceStatus status)
    {
        if (status.Standing != ServiceStanding.InService) yield break;
        if (status.InspectionDue) yield return ClearanceFindings.NoInspectionIsWrittenDown(ServiceText.Of(_on));
        if (status.ProofDue is { } due && _on.AddDays(30) >= due) yield return ClearanceFindings.NextProofIsDue(ServiceText.Of(due));
        if (status.FillsLeft is { } left and <= 5) yield return ClearanceFindings.FewFillsAreLeft(left);
        if (status.LifeEnds is { } end && _on.AddMonths(6) >= end) yield return ClearanceFindings.VesselLifeEnds(ServiceText.Of(end));
    }

    private void Ground(string rule, string what, LifeFigure<Recheck> needs) => _open.Add((rule, what, needs.Value, false, false));

    private void Clear(Func<(string Rule, string What, Recheck Needs, bool Proved, bool Inspected),
        (string Rule, string What, Recheck Needs, bool Proved, bool Inspected)> mark)
    {
        for (var i = 0; i < _open.Count; i++) _open[i] = mark(_open[i]);
        _open.RemoveAll(o => o.Needs switch
        {
            Recheck.Proof => o.Proved,
            Recheck.Inspection => o.Proved || o.Inspected,
            _ => o is { Proved: true, Inspected: true },
        });
    }

    private string Above() => _limits.HotAbove is { } hot ? $", above {hot.Value.Show()}" : "";

    private static string Remedy(Recheck needs, bool proved, bool inspected) => needs switch
    {
        Recheck.Proof => "proof-test it again",
        Recheck.Inspection => "inspect it",
        _ when proved => "inspect it",
        _ when inspected => "proof-test it again",
        _ => "inspect it and proof-test it again",
    };
}

using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Launching;

/// <summary>The states of a pad: what may follow what, who may stand where, the longest time in each, and the checklists that
/// follow.</summary>
/// <remarks>Source: common practice, no source; times and distances are those given.</remarks>
public sealed record PadProcedure : Result
{
    /// <summary>How long everybody stays behind cover after a misfire, once the gauge reads zero; common practice, no source.</summary>
    public static readonly Duration CoverAfterZero = 60.Seconds();

    /// <summary>Longest time armed; common practice, no source.</summary>
    public static readonly Duration LongestArmed = 60.Seconds();

    private PadProcedure(PadTimes times)
    {
        Times = times;
        Rules = [.. Enum.GetValues<PadState>().Select(Make)];
        List<string> missing = [];
        if (times.Fill is null) missing.Add("fill time");
        if (times.Stand is null) missing.Add("time that the filled vessel may stand");
        if (times.Vent is null) missing.Add("vent time");
        if (times.Crew is null) missing.Add("distance of the crew");
        Findings = missing.Count == 0 ? [] : [LaunchingFindings.ProcedureLacks(missing)];
    }

    /// <summary>What it is written from.</summary>
    public PadTimes Times { get; }

    /// <summary>The rule of each state.</summary>
    public IReadOnlyList<PadStateRule> Rules { get; }

    /// <summary>The procedure of a pad. Source: common practice, no source.</summary>
    /// <param name="times">Times and distances as far as they are known.</param>
    /// <exception cref="InvalidDesignException">A time or a distance is refused; all reasons are in it.</exception>
    public static PadProcedure Of(PadTimes times)
    {
        ArgumentNullException.ThrowIfNull(times);
        InvalidDesignException.ThrowIfAny("Procedure of the pad", times.Validate());
        return new(times);
    }

    /// <summary>The rule of a state.</summary>
    /// <param name="state">The state.</param>
    public PadStateRule Rule(PadState state) => Rules.First(r => r.State == state);

    /// <summary>Whether a state may follow another.</summary>
    /// <param name="from">The state before.</param>
    /// <param name="to">The state after.</param>
    public bool MayFollow(PadState from, PadState to) => Rule(from).Next.Contains(to);

    /// <summary>What is wrong with a course of states and how long each lasted: a step that may not be, a state that lasted too long, an
    /// end
    /// that isn't safe.</summary>
    /// <param name="course">The states in order, each with how long it lasted; 0 or above.</param>
    public IReadOnlyList<Finding> Judge(IReadOnlyList<(PadState State, Duration Lasted)> course)
    {
        ArgumentNullException.ThrowIfNull(course);
        List<Finding> findings = [];
        for (var i = 0; i < course.Count; i++)
        {
            var (state, lasted) = course[i];
            if (i > 0 && !MayFollow(course[i - 1].State, state))
                findings.Add(LaunchingFindings.StateMayNotFollow(Name(course[i - 1].State), Name(state), Rule(course[i
                    - 1].State).Next.Select(Name)));
            if (Rule(state).Longest is { } most && lasted > most)
                findings.Add(LaunchingFindings.StateLastedTooLong(Name(state), lasted, most, Rule(state).WhenOver));
        }

        if (course.Count > 0 && course[^1].State is not (PadState.Safe or PadState.Empty))
            findings.Add(LaunchingFindings.CourseEndsCharged(Name(course[^1].State)));
        return findings;
    }

    /// <summary>The checklist of a state: who stands where, how long, what then.</summary>
    /// <param name="state">The state.</param>
    public IReadOnlyList<string> Checklist(PadState state)
    {
        var rule = Rule(state);
        List<string> lines = [$"{rule.Stand}", .. Steps(state)];
        lines.Add(rule.Longest is { } most ? $"After {most.Show()} at the most ({rule.SetBy}): {rule.WhenOver}"
            : $"Longest time: {rule.SetBy}.");
        return lines;
    }

    /// <summary>What is done when the release or the stage latch fails, one case after the other.</summary>
    public IReadOnlyList<string> Misfires =>
    [
        "Release doesn't open: nobody moves; lock nothing by hand. Shut the fill valve, open the dump valve from afar, watch the gauge.",
        "Vehicle leaves part of the way and sticks on rail or tube: it counts as pressurised; the same, and nobody in line of it.",
        .. Times.HasSecondStage
            ?
            [
                "Stage latch opens on the pad: nobody moves; vent the booster first, for the sustainer stands on its seal. If the "
                    + "sustainer has "
                    + "no vent of its own, the range safety officer decides.",
                "Stage latch doesn't open in flight: the stack comes down charged. Everybody stays behind cover until the officer has "
                    + "seen where "
                    + "it lies; nobody approaches a sustainer whose pressure isn't known to be gone.",
            ]
            : Array.Empty<string>(),
        Times.Vent is { } vent ? $"Venting takes up to {vent.Show()} in the worst state; then wait until the gauge reads zero."
            : "How long venting takes isn't given: wait until the gauge reads zero.",
        $"After the gauge reads zero wait {CoverAfterZero.Show()} more behind cover (common practice, no source); one person approaches "
            + $"from the "
            + "side, out of line of the nozzle, and leaves the dump valve open.",
        "If the dump valve doesn't open or the gauge can't be read, nobody approaches: the range safety officer decides.",
    ];

    /// <inheritdoc/>
    public override string Title => "States of the pad";

    /// <inheritdoc/>
    public override ModelCard Model { get; } = new("States of a pad and what may follow what",
        ["Only the steps listed are allowed; every state under pressure leads to venting.",
            "Times are those given: twice the fill time, the time in the sun, twice the vent time of the worst state."],
        "A pad worked from afar.", [Source.CommonPractice("states of a pad, who stands where, and the waits")]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines => [.. Rules.Select(r => new ResultLine(Capital(Name(r.State)),
        r.Longest?.Show() ?? r.SetBy, $"{(r.Longest is null ? "" : Capital(r.SetBy) + ". ")}{Standing(r)} Then: "
            + $"{string.Join(", ", r.Next.Select(Name))}."))];

    // Where everybody stands under pressure is said once.
    private string Standing(PadStateRule rule) => rule.State != PadState.Filling && rule.Stand == Rule(PadState.Filling).Stand
        ? "Everybody as while filling." : rule.Stand;

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFilling;

    /// <inheritdoc/>
    public override Working Working => new(Title, []);

    /// <summary>A state's name as a sentence has it: "filling".</summary>
    /// <param name="state">The state.</param>
    public static string Name(PadState state) => state.ToString().ToLowerInvariant();

    private PadStateRule Make(PadState state)
    {
        var crew = Times.Crew is { } c ? $"behind cover at {c.Show()} or more" : "behind cover, at a distance that isn't given";
        var away = $"Crew {crew}; spectators "
            + $"{(Times.Spectators is { } s ? $"at {s.Show()} or more" : "at a distance that isn't given")}; nobody in "
            + "line of a closure.";
        return state switch
        {
            PadState.Empty => new(state, [PadState.Filling, PadState.Safe], "Crew at the vehicle; fill valve shut, dump valve open.", null,
                "no limit", ""),
            PadState.Filling => new(state, [PadState.Holding, PadState.Full, PadState.Venting], away, Times.Fill * 2,
                Times.Fill is null ? "not given" : "twice the planned fill time", "shut the fill valve and vent; something leaks or is "
                    + "shut."),
            PadState.Holding => new(state, [PadState.Filling, PadState.Full, PadState.Venting], away, Times.Stand, WhileStanding, "vent."),
            PadState.Full => new(state, [PadState.Holding, PadState.Armed, PadState.Venting], away, Times.Stand, WhileStanding, "vent."),
            PadState.Armed => new(state, [PadState.Released, PadState.Misfire, PadState.Full, PadState.Venting], away, LongestArmed,
                "common practice, no source", "lock the release from afar, or vent."),
            PadState.Released => new(state, Times.HasSecondStage ? [PadState.Misfire, PadState.Safe] : [PadState.Safe, PadState.Misfire],
                "Everybody stays where they are and watches every stage down.", null, "until every stage is down", ""),
            PadState.Misfire => new(state, [PadState.Venting], away, 10.Seconds(),
                "common practice, no source", "vent from afar; nobody waits to see whether it goes after all."),
            PadState.Venting => new(state, [PadState.Safe], away, Times.Vent * 2, Times.Vent is null ? "not given"
                : "twice the vent time of the worst state", "the dump valve is blocked: nobody approaches, the range safety officer "
                    + "decides."),
            _ => new(state, [PadState.Empty], "One person approaches from the side; then the crew.", null, "no limit", ""),
        };
    }

    private string WhileStanding => Times.Stand is null ? "not given" : "what sun and rating leave";

    private static IEnumerable<string> Steps(PadState state) => state switch
    {
        PadState.Empty => ["Water measured in; release locked; hose coupled; dump valve shut from afar; everybody back; counted aloud."],
        PadState.Filling => ["One works the valve, one reads the gauge aloud; shut at the reading of the plan."],
        PadState.Holding => ["Gauge written when shut and at the end of the hold; a fall beyond the plan is a leak: vent."],
        PadState.Full => ["Fill valve shut; range safety officer asked."],
        PadState.Armed => ["Release unlocked from afar; countdown aloud."],
        PadState.Released => ["One person watches each stage and calls out its landing."],
        PadState.Misfire => ["Fill valve shut; dump valve opened from afar."],
        PadState.Venting => [$"Gauge watched to zero; then {CoverAfterZero.Show()} more behind cover."],
        _ => ["Dump valve stays open; vessel inspected before the next fill."],
    };

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}

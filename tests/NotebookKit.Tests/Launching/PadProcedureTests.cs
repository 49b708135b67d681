using NotebookKit.Launching;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Launching;

public class PadProcedureTests
{
    private static readonly PadProcedure Procedure = PadProcedure.Of(new()
    {
        Fill = 40.Seconds(), Stand = 20.Minutes(), Vent = 90.Seconds(), Crew = 30.Metres(), Spectators = 60.Metres(), HasSecondStage = true,
    });

    private static Finding[] Judge(params (PadState, int)[] course) =>
        [.. Procedure.Judge([.. course.Select(c => (c.Item1, c.Item2.Seconds()))])];

    [Fact]
    public void Every_state_under_pressure_leads_to_venting_and_venting_to_safe_alone()
    {
        foreach (var state in (PadState[])[PadState.Filling, PadState.Holding, PadState.Full, PadState.Armed, PadState.Misfire])
            Assert.True(Procedure.MayFollow(state, PadState.Venting), state.ToString());
        Assert.Equal([PadState.Safe], Procedure.Rule(PadState.Venting).Next);
        Assert.Equal([PadState.Venting], Procedure.Rule(PadState.Misfire).Next);
        Assert.All(Procedure.Rules, r => Assert.DoesNotContain(r.State, r.Next));
    }

    // From every state a pad can be brought to safe.
    [Fact]
    public void Safe_can_be_reached_from_everywhere()
    {
        foreach (var from in Enum.GetValues<PadState>())
        {
            HashSet<PadState> reached = [from];
            for (var i = 0; i < 9; i++) reached.UnionWith(reached.SelectMany(s => Procedure.Rule(s).Next).ToList());
            Assert.Contains(PadState.Safe, reached);
        }
    }

    // Never from a state under pressure to one in which people stand at the vehicle without venting or a flight in between.
    [Fact]
    public void Nobody_goes_to_a_vehicle_that_was_neither_vented_nor_flown()
    {
        PadState[] charged = [PadState.Filling, PadState.Holding, PadState.Full, PadState.Armed, PadState.Misfire];
        Assert.All(charged, s => Assert.DoesNotContain(Procedure.Rule(s).Next, n => n is PadState.Safe or PadState.Empty));
        Assert.All(charged, s => Assert.Contains("30 m or more", Procedure.Rule(s).Stand, StringComparison.Ordinal));
    }

    [Fact]
    public void Times_come_from_fill_sun_and_vent()
    {
        Assert.Equal(80, Procedure.Rule(PadState.Filling).Longest!.Value.Seconds, 9);
        Assert.Equal(180, Procedure.Rule(PadState.Venting).Longest!.Value.Seconds, 9);
        Assert.Equal(20, Procedure.Rule(PadState.Full).Longest!.Value.Minutes, 9);
        var bare = PadProcedure.Of(new());
        Assert.Null(bare.Rule(PadState.Filling).Longest);
        Assert.Equal("not given", bare.Rule(PadState.Filling).SetBy);
        Assert.Contains("Not given for the procedure: fill time", Assert.Single(bare.Findings).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_course_is_judged_step_by_step()
    {
        Assert.Empty(Judge((PadState.Empty, 600), (PadState.Filling, 45), (PadState.Holding, 60), (PadState.Filling, 5), (PadState.Full,
            30),
            (PadState.Armed, 10), (PadState.Released, 90), (PadState.Safe, 0)));
        Assert.Empty(Judge((PadState.Empty, 600), (PadState.Filling, 45), (PadState.Venting, 100), (PadState.Safe, 0)));
        Assert.Contains("A pad that is armed may not become safe", Assert.Single(Judge((PadState.Armed, 5), (PadState.Safe, 0))).Message,
            StringComparison.Ordinal);
        Assert.Contains("80 s is the most", Judge((PadState.Filling, 200), (PadState.Venting, 60), (PadState.Safe, 0))[0].Message,
            StringComparison.Ordinal);
        Assert.Contains("has to end safe", Judge((PadState.Empty, 1), (PadState.Filling, 10))[^1].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Checklists_and_misfires_name_times_distances_and_the_stage_latch()
    {
        Assert.Contains(Procedure.Checklist(PadState.Filling), l => l.Contains("80 s", StringComparison.Ordinal));
        Assert.Contains(Procedure.Misfires, l => l.StartsWith("Stage latch opens on the pad", StringComparison.Ordinal));
        Assert.Contains(Procedure.Misfires, l => l.Contains("90 s in the worst state", StringComparison.Ordinal));
        Assert.DoesNotContain(PadProcedure.Of(new()).Misfires, l => l.StartsWith("Stage latch", StringComparison.Ordinal));
        Assert.Equal(9, Procedure.Lines.Count);
    }

    [Fact]
    public void Spectators_nearer_than_the_crew_are_refused() => Assert.Contains("for they have no cover",
        Assert.Throws<InvalidDesignException>(() => PadProcedure.Of(new() { Crew = 30.Metres(), Spectators = 20.Metres() })).Message,
        StringComparison.Ordinal);
}

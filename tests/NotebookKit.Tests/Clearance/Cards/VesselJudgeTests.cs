using NotebookKit.Clearance.Service;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using static NotebookKit.Tests.Clearance.CardFixture;

namespace NotebookKit.Tests.Clearance.Cards;

/// <summary>A vessel's papers against each other, on either side of where they differ.</summary>
public class VesselJudgeTests
{
    private static CardJudgement Judged(StageEvidence evidence, DateOnly day)
    {
        CardJudgement card = new(new Dictionary<string, string>());
        new VesselJudge(card, day, LifeLimits.Club, "").Judge(evidence);
        return card;
    }

    private static bool Says(CardJudgement card, string words) => card.Findings.Any(f => f.Severity == FindingSeverity.Error
        && f.Message.Contains(words, StringComparison.Ordinal));

    [Theory]
    [InlineData(0, false)]
    [InlineData(-1, true)]
    public void A_proof_on_the_day_of_the_flight_counts_and_one_after_it_does_not(int days, bool isRefused) =>
        Assert.Equal(isRefused, Says(Judged(Whole, ProofDay.AddDays(days)), "the proof is dated"));

    // Three lines: made, proved, inspected. The label of the second leaves one line that nobody wrote on the label.
    [Theory]
    [InlineData(0, "for 2 lines")]
    [InlineData(1, "for 1 line")]
    [InlineData(2, "")]
    [InlineData(-1, "no line of its service record has that mark")]
    public void The_label_bears_the_mark_of_the_last_line(int line, string words)
    {
        var label = line < 0 ? "0000-0000" : Whole.Service!.Entries[line].EndMark;
        var card = Judged(Whole with { Label = label }, FlightDay);
        Assert.Equal(words.Length > 0, Says(card, "bears the mark"));
        Assert.True(words.Length == 0 || Says(card, words), string.Join("\n", card.Findings));
    }

    // A record keeps some digits: a hundredth of a bar is rounding, more was never held.
    [Theory]
    [InlineData(0.005, false)]
    [InlineData(0.02, true)]
    public void A_line_that_says_more_than_the_proof_held_is_refused(double more, bool isRefused)
    {
        var events = Usual(TheProved);
        events[1] = new Proved(TheProved.Day, (TheProved.Held.Bar + more).BarGauge(), 1.575, TheProved.RuleSet, TheProved.Fingerprint)
            { At = At(TheProved.Day) };
        var service = ServiceOf(TheProved.Vessel, TheProved.Serial, [.. events, Sound(FlightDay)]);
        Assert.Equal(isRefused, Says(Judged(Whole with { Service = service }, FlightDay), "the service record says that the proof held"));
    }
}

using NotebookKit.Clearance.Cards;
using NotebookKit.Clearance.Designs;
using NotebookKit.Proofing.Records;
using NotebookKit.Record;

namespace NotebookKit.Interactive.Formatters;

/// <summary>What a result decides, for the head of a page. It is made from the result's own decision, never from its words.</summary>
/// <param name="Subject">What is decided on: "Flight card, Curlew at Ferry Flat".</param>
/// <param name="Words">The decision: "GO"; empty where nothing was there to decide.</param>
/// <param name="Holds">Whether it is in favour.</param>
/// <param name="Remark">What has to be said with it; empty where nothing has.</param>
internal sealed record MainVerdict(string Subject, string Words, bool Holds, string Remark)
{
    public static MainVerdict Of(IFlightCard card) =>
        new(card.Title, card.IsGo ? "GO" : "NO-GO", card.IsGo, "The range safety officer decides.");

    public static MainVerdict Of(ProofRecord record) => new(
        $"Proof record, {record.Plan.Proof.Vessel}",
        record.Verdict switch
        {
            ProofVerdict.Accept => "Accepted",
            ProofVerdict.Retest => "To be proof-tested again",
            _ => "Rejected",
        },
        record.Verdict == ProofVerdict.Accept,
        "");

    public static MainVerdict Of(DesignRecord record)
    {
        var broken = record.Requirements.Where(r => !r.Holds).Select(r => r.Name).ToList();
        var unsure = record.Decisions.Where(d => !d.StillRight).Select(d => d.Name).ToList();
        var changed = record.Givens.Where(g => g.Overridden).Select(g => $"{g.Name} is {g.Value}").ToList();
        var count = record.Requirements.Count;
        var words = broken.Count > 0 ? $"{broken.Count} of {Counted(count)} not met"
            : count == 0 ? unsure.Count == 0 ? "" : "To be looked at again"
            : AllHold(count);
        var remarks = new[] { Named("Not met", broken), Named("Decisions to look at again", unsure),
            Named("Set for this run", changed) }.Where(r => r.Length > 0);
        return new($"Design record, {record.Title}", words, broken.Count == 0 && unsure.Count == 0, string.Join(' ', remarks));
    }

    /// <summary>A requirement that a lesson settles by itself.</summary>
    public static MainVerdict Of(Requirement requirement) => new(
        char.ToUpperInvariant(requirement.Name[0]) + requirement.Name[1..],
        requirement.Holds ? "Holds" : "Not met",
        requirement.Holds,
        $"Required: {requirement.Condition}; computed: {requirement.LiveValue}.");

    public static MainVerdict Of(DesignCheck check)
    {
        var count = check.Outcomes.Count;
        var broken = check.Outcomes.Where(o => o.Verdict == RequirementVerdict.NoLongerHolds).Select(o => o.Requirement.Name).ToList();
        var untold = check.Outcomes.Where(o => o.Verdict == RequirementVerdict.CannotTell).Select(o => o.Requirement.Name).ToList();
        var words = count == 0 ? "" : check.Holds ? AllHold(count) : $"{broken.Count + untold.Count} of {Counted(count)} not met";
        var remarks = new[] { Named("Not met", broken), Named("Can't be told", untold) }.Where(r => r.Length > 0);
        return new(check.Title, words, check.Holds, string.Join(' ', remarks));
    }

    private static string AllHold(int count) => count == 1 ? "The 1 requirement holds"
        : count == 2 ? "Both requirements hold" : $"All {count} requirements hold";

    private static string Counted(int count) => count == 1 ? "1 requirement" : $"{count} requirements";

    private static string Named(string what, List<string> names) => names.Count == 0 ? "" : $"{what}: {string.Join(", ", names)}.";
}

using NotebookKit.Clearance.Service;
using NotebookKit.Flight.Site;
using NotebookKit.Provenance;

namespace NotebookKit.Clearance.Cards;

/// <summary>The card of a vehicle that can't be flown as its design has it, such as one whose rating is refused: a no, with the reason,
/// with what the vessels' papers say, and with all that can't be told. Source: none of its own; the evidence handed over.</summary>
public sealed record CardWithoutFlight : Result, IFlightCard
{
    private static readonly string[] Untold = ["fill or its plan", "fins judged", "recovery gear", "stability"];
    private static readonly string[] UntoldOfAll = ["stand-off", "scatter of landings"];

    private readonly string _name;
    private readonly string _flight;

    internal CardWithoutFlight(string name, LaunchSite? site, DateOnly day, string flight, IReadOnlyList<(string Own, StageEvidence
        Evidence)> stages, IReadOnlyDictionary<string, string> missing, IReadOnlyList<Finding> reasons)
    {
        (_name, Site, Day, _flight, Stages) = (name, site, day, flight, stages);
        var card = new CardJudgement(missing);
        card.AddRange(reasons);
        card.Day(day);
        if (site is not null) card.Site(site);
        else card.Shown("site", false, "", ClearanceFindings.SiteIsNotGiven());
        foreach (var (own, evidence) in stages)
        {
            new VesselJudge(card, day, LifeLimits.Club, own).Judge(evidence);
            foreach (var piece in Untold) card.Shown($"{own}{piece}", false, "", ClearanceFindings.CannotTellWithoutFlight());
        }

        foreach (var piece in UntoldOfAll) card.Shown(piece, false, "", ClearanceFindings.CannotTellWithoutFlight());
        (Shown, Findings) = (card.Items, card.Findings);
    }

    /// <inheritdoc/>
    public LaunchSite? Site { get; }

    /// <summary>Day of the flight.</summary>
    public DateOnly Day { get; }

    /// <inheritdoc/>
    public IReadOnlyList<EvidenceItem> Shown { get; }

    /// <summary>Never: nothing was computed that could speak for the flight.</summary>
    public bool IsGo => false;

    /// <inheritdoc/>
    public override string Title => $"Flight card, {_name}{(Site is { } at ? $" at {at.Name}" : "")}"
        + (_flight.Length > 0 ? $", {_flight}" : "");

    /// <inheritdoc/>
    public override ModelCard Model => CardText.NoFlight;

    /// <inheritdoc/>
    public override ResultStatus Status => ResultStatus.Failed;

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        CardText.Verdict(this),
        .. Stages.SelectMany(s => CardText.Vessel(s.Own, s.Evidence)),
        new("Flight", "can't tell", "the vehicle can't be flown as it is; the reasons are below"),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => [.. Provenance.Cautions.ForFlight, Provenance.Cautions.Composite];

    /// <inheritdoc/>
    public override Working Working { get; } = new("Nothing could be worked out; the reasons stand on the card.", []);

    /// <inheritdoc/>
    public IReadOnlyList<string> Checklist { get; } = ["No fill and no flight by this card. Do what its reasons name, and make the card "
        + "again."];

    internal IReadOnlyList<(string Own, StageEvidence Evidence)> Stages { get; }
}

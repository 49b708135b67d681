using NotebookKit.Flight.Site;
using NotebookKit.Provenance;

namespace NotebookKit.Clearance.Cards;

/// <summary>A page for the range safety officer, of one stage or two.</summary>
public interface IFlightCard : IResult
{
    /// <summary>Where it flies; none where the design gives no site.</summary>
    LaunchSite? Site { get; }

    /// <summary>What was handed over and what wasn't; a piece that isn't shown forbids the flight.</summary>
    IReadOnlyList<EvidenceItem> Shown { get; }

    /// <summary>Whether nothing on the card forbids the flight; the range safety officer decides.</summary>
    bool IsGo { get; }

    /// <summary>What is ticked off before, during and after the flight.</summary>
    IReadOnlyList<string> Checklist { get; }
}

/// <summary>One piece of what stands behind a flight card.</summary>
/// <param name="Name">What it is: "proved vessel".</param>
/// <param name="IsShown">Whether it was handed over; what isn't forbids the flight.</param>
/// <param name="What">What it says in a few words, or what would show it.</param>
public sealed record EvidenceItem(string Name, bool IsShown, string What);

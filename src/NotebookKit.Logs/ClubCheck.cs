using System.Globalization;
using NotebookKit.Clearance;
using NotebookKit.Clearance.Designs;
using NotebookKit.Clearance.Service;
using NotebookKit.Provenance;

namespace NotebookKit.Logs;

/// <summary>A club's folder looked through: the design against its requirements, each vessel by its service record, tests, logs,
/// shelf.</summary>
/// <remarks>Source: none of its own; as <see cref="DesignCheck"/> and <see cref="ServiceStatus"/>.</remarks>
public sealed record ClubCheck : Result
{
    private const int MostNamed = 12;

    internal ClubCheck(ClubFolder folder, DateOnly on, LifeLimits limits)
    {
        Folder = folder;
        Design = folder.Design.Check();
        Vessels = [.. folder.Vessels.Select(v => v.StatusOn(on, limits))];
        Findings =
        [
            .. Design.Findings,
            .. Vessels.Where(v => v.Standing == ServiceStanding.Grounded).Select(v => Finding.Warning(
                $"{Name(v)} may not be filled: {string.Join(' ', v.Record.Findings.Where(f => f.Severity == FindingSeverity.Error)
                    .Select(f => f.Message).Take(1).Concat(v.Reasons.Select(r => r.Sentence)))}")),
            .. Vessels.Where(v => v.Standing != ServiceStanding.Retired).SelectMany(Below),
            .. Vessels.Where(v => v.LastProof is { } proof && !folder.Proofs.Any(p => string.Equals(p.Fingerprint, proof.Record,
                StringComparison.OrdinalIgnoreCase))).Select(v => Finding.Warning($"the folder has no record of the proof that the service "
                + $"record of {Name(v)} tells of; the flight card needs it. Let the log of the proof be judged: vessel proved.")),
            .. folder.Logs.Select(l => l.Finding).OfType<Finding>(),
        ];
    }

    /// <summary>The folder.</summary>
    public ClubFolder Folder { get; }

    /// <summary>The design against its requirements.</summary>
    public DesignCheck Design { get; }

    /// <summary>What each vessel's service record says on the day.</summary>
    public IReadOnlyList<ServiceStatus> Vessels { get; }

    /// <summary>Whether every requirement of the design holds. Whether a vessel may be filled is its service record's answer, and the
    /// flight card's.</summary>
    public bool Holds => Design.Holds;

    /// <inheritdoc/>
    public override string Title => Design.Title;

    /// <inheritdoc/>
    public override ModelCard Model => new(
        "Check of a club's folder",
        [.. Design.Model.Assumptions, .. Vessels.Take(1).SelectMany(v => v.Model.Assumptions)],
        Design.Model.ValidRange,
        [.. Design.Model.Sources, .. Vessels.Take(1).SelectMany(v => v.Model.Sources)]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        .. Design.Lines,
        .. Folder.Tests.Count > 0 ? [new ResultLine("Tests of the folder", Count(Folder.Tests.Count), Named(Folder.Tests))]
            : Array.Empty<ResultLine>(),
        // With a value changed for one run it would be the mark of a vessel that nobody made.
        .. Folder.Design.Stages.Where(_ => !Folder.Design.IsChanged).Select(s => new ResultLine(
            Folder.Design.Stages.Count == 1 ? "Mark of the vessel" : $"Mark of the vessel of {s.Name}",
            s.Mark, $"for a test of a vessel that was made as the design says: \"made as\": \"{s.Mark}\"")),
        .. Vessels.Select(v => new ResultLine($"Vessel {Name(v)}", Word(v.Standing), Used(v))),
        .. Folder.Proofs.Select(p => new ResultLine($"Proof of {p.Readings.Serial}", p.Verdict.ToString().ToLowerInvariant(),
            p.HeldAtLeast is { } held ? $"held {held}" : "not held")),
        .. Folder.Logs.Select(l => new ResultLine($"Log {l.File}", l.Kind == LogKind.Unknown ? "not known" : Word(l.Kind), l.Quality)),
        .. Folder.Stock is { Items.Count: > 0 } stock ? [new ResultLine("On the shelf", Count(stock.Items.Count),
            Named([.. stock.Items.Select(i => i.Name)]))] : Array.Empty<ResultLine>(),
        .. Folder.Unused.Count > 0 ? [new ResultLine("Not used here", Count(Folder.Unused.Count), Named(Folder.Unused))]
            : Array.Empty<ResultLine>(),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => [.. Design.Cautions.Concat(Vessels.SelectMany(v => v.Cautions)).Distinct()];

    /// <inheritdoc/>
    public override Working Working => Design.Working;

    // A proof allows what it allows; the design may ask for more.
    private IEnumerable<Finding> Below(ServiceStatus status)
    {
        var stage = Folder.Design.Stages.FirstOrDefault(s => string.Equals(s.Name, status.Record.Vessel.Trim(),
            StringComparison.OrdinalIgnoreCase));
        if (stage is null)
            yield return Finding.Warning($"{Name(status)} is no vessel of this design, whose "
                + $"{(Folder.Design.Stages.Count == 1 ? "vessel is called" : "vessels are called")} "
                + $"{string.Join(" and ", Folder.Design.Stages.Select(s => s.Name))}. Where the name was mistyped, begin the service "
                + "record anew under the right name.");
        else if (status is { Standing: ServiceStanding.InService, AllowedPressure: { } allowed } && stage.FillPressure is { } fill
            && allowed < fill)
            yield return Finding.Warning($"the last proof of {Name(status)} allows {allowed}; the design fills to {fill}. Fill the "
                + "vessel no higher, or proof-test it again.");
    }

    private static string Used(ServiceStatus status) => string.Join("; ", new[]
    {
        status is { Standing: ServiceStanding.Retired, Reasons.Count: > 0 } ? status.Reasons[0].Sentence : "",
        $"{Count(status.Fills)} fills" + (status.FillsLeft is { } left ? $", {Count(left)} left" : ""),
        status.AllowedPressure is { } allowed ? $"the last proof allows {allowed}" : "no proof",
    }.Where(t => t.Length > 0));

    // A record whose first line is spoiled has no name but its file's.
    private string Name(ServiceStatus status) => $"{status.Record.Vessel} {status.Record.Serial}".Trim() is { Length: > 0 } name ? name
        : Folder.VesselFiles[Folder.Vessels.ToList().IndexOf(status.Record)];

    private static string Word(ServiceStanding standing) => standing switch
    {
        ServiceStanding.InService => "in service", ServiceStanding.Retired => "RETIRED", _ => "GROUNDED",
    };

    private static string Word(LogKind kind) => kind.ToString().ToLowerInvariant();

    private static string Named(IReadOnlyList<string> names) => string.Join(", ", names.Take(MostNamed))
        + (names.Count > MostNamed ? $" and {Count(names.Count - MostNamed)} more" : "");

    private static string Count(int count) => count.ToString(CultureInfo.InvariantCulture);
}

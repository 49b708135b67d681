using NotebookKit.Provenance;

namespace NotebookKit.Clearance.Service;

/// <summary>What happened to one vessel, as its file says, with all that is wrong with the file.</summary>
/// <remarks>Source: none; the record states.</remarks>
public sealed record ServiceRecord : Result
{
    internal ServiceRecord(string vessel, string serial, IReadOnlyList<ServiceEntry> entries, IReadOnlyList<Finding> findings,
        string headFingerprint)
    {
        Vessel = vessel;
        Serial = serial;
        Entries = entries;
        Findings = findings;
        HeadFingerprint = headFingerprint;
    }

    /// <summary>Name of the vessel; empty where the first line can't be read.</summary>
    public string Vessel { get; }

    /// <summary>Serial of the vessel; empty where the first line can't be read.</summary>
    public string Serial { get; }

    /// <summary>The events with their places in the file, in its order.</summary>
    public IReadOnlyList<ServiceEntry> Entries { get; }

    /// <summary>The events alone.</summary>
    public IReadOnlyList<ServiceEvent> Events => [.. Entries.Select(e => e.Event)];

    /// <summary>
    /// SHA-256 of the last line, in hexadecimal. Kept outside the file, on a flight card for instance, it shows later that no line at the
    /// end was taken away: the file
    /// alone can't show that.
    /// </summary>
    public string HeadFingerprint { get; }

    /// <summary>The mark of its end, to be written on the vessel's label: the first eight digits of <see cref="HeadFingerprint"/>,
    /// "3f9a-71c2". A label that bears another mark shows that the record was cut, or goes on.</summary>
    public string EndMark => Service.EndMark.Of(HeadFingerprint);

    /// <summary>
    /// Whether every line is there, as it was written, in its order, and was understood. False: the record isn't to be trusted, and the
    /// vessel is grounded.
    /// A last line that was cut off is dropped, said in the findings, and doesn't count: its event was never complete.
    /// </summary>
    public bool IsIntact => Findings.All(f => f.Severity != FindingSeverity.Error);

    /// <inheritdoc/>
    public override string Title => $"Service record, {Vessel} {Serial}";

    /// <inheritdoc/>
    public override ModelCard Model { get; } = new(
        "Service record",
        [
            "An event that nobody wrote down isn't in it.",
            "The chain of fingerprints shows carelessness, a bad disk and single changes; it doesn't stop somebody who writes the "
                + "whole file anew.",
        ],
        "One vessel.",
        []);

    /// <inheritdoc/>
    public override ResultStatus Status => IsIntact ? ResultStatus.Completed : ResultStatus.Failed;

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Events", Entries.Count.ToString(System.Globalization.CultureInfo.InvariantCulture),
            IsIntact ? "every line is in its place" : "not to be trusted, see the findings"),
        .. Entries.Select(e => new ResultLine($"{e.Sequence}, {ServiceText.Of(e.Day)}", e.Event.ToString(), Remark(e.Event))),
        new("Mark for the label", EndMark, "write it on the vessel's label; another mark there shows a record that was cut"),
        new("Head fingerprint", HeadFingerprint, "of the last line; keep it with the flight card"),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions { get; } = [Provenance.Cautions.Composite];

    /// <inheritdoc/>
    public override Working Working { get; } = new("The record states; nothing is worked out.", []);

    /// <summary>What the record says of the vessel on a day. Source: each figure's, as the limits name it.</summary>
    /// <param name="on">Day it is asked for; not before the last event.</param>
    /// <param name="limits">The limits of its life.</param>
    /// <exception cref="InvalidDesignException">The limits make no sense.</exception>
    public ServiceStatus StatusOn(DateOnly on, LifeLimits limits)
    {
        ArgumentNullException.ThrowIfNull(limits);
        InvalidDesignException.ThrowIfAny(limits.Name, limits.Validate());
        return ServiceJudgement.Of(this, on, limits);
    }

    private static string Remark(ServiceEvent happened) => string.Join("; ",
        new[] { happened.By, happened.Notes }.Where(t => t.Length > 0));
}

namespace NotebookKit.Clearance.Service;

/// <summary>One event as a service record holds it.</summary>
/// <param name="Line">Line of the file, from 1; the first line names the vessel.</param>
/// <param name="Sequence">Number of the event, from 1.</param>
/// <param name="At">Day and time in UTC.</param>
/// <param name="Event">The event.</param>
/// <param name="Fingerprint">SHA-256 of the line's bytes, in hexadecimal.</param>
public sealed record ServiceEntry(int Line, int Sequence, DateTimeOffset At, ServiceEvent Event, string Fingerprint)
{
    /// <summary>Day in UTC.</summary>
    public DateOnly Day => DateOnly.FromDateTime(At.UtcDateTime);

    /// <summary>The mark that the vessel's label bears where this is the record's last line: "3f9a-71c2".</summary>
    public string EndMark => Service.EndMark.Of(Fingerprint);

    /// <summary>For example "2026-05-01 filled: pressure 36 bar gauge, ...".</summary>
    public override string ToString() => $"{ServiceText.Of(Day)} {Event}";
}

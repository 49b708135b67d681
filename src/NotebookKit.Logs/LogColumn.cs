namespace NotebookKit.Logs;

/// <summary>Which column of a log is meant, and what its header doesn't say.</summary>
/// <param name="Header">The column as the header names it, with or without its unit: "P1 (psi)" or "P1". Capitals don't matter.</param>
/// <param name="Unit">Its unit, where the header says none or a wrong one: "psi gauge", "ms", "ft".</param>
public sealed record LogColumn(string Header, string? Unit = null)
{
    /// <summary>What the sensor can read, in the column's own unit: "0 to 160". Readings at its ends count as saturated.</summary>
    public string? SensorRange { get; init; }

    /// <summary>A column by its header alone.</summary>
    /// <param name="header">The column as the header names it.</param>
    public static implicit operator LogColumn(string header) => new(header);

    /// <summary>A column by its header alone.</summary>
    /// <param name="header">The column as the header names it.</param>
    public static LogColumn ToLogColumn(string header) => new(header);

    /// <summary>For example "P1, psi gauge".</summary>
    public override string ToString() => Unit is null ? Header : $"{Header}, {Unit}";
}

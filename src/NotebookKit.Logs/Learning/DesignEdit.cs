namespace NotebookKit.Logs.Learning;

/// <summary>A value that a log puts into a design.</summary>
/// <param name="Path">Its path: "drag.calibration".</param>
/// <param name="Json">The value as its file has it; none where what stood there is taken out.</param>
public sealed record DesignEdit(string Path, string? Json);

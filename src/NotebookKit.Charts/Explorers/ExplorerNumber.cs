namespace NotebookKit.Charts.Explorers;

/// <summary>A number that is shown beside the curve.</summary>
/// <param name="Name">What it is: "Apogee".</param>
/// <param name="Unit">Its unit; "-" for a plain ratio.</param>
public sealed record ExplorerNumber(string Name, string Unit);

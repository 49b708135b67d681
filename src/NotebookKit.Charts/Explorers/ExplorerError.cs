namespace NotebookKit.Charts.Explorers;

/// <summary>How far interpolation was found to be from the model, at settings between the computed ones.</summary>
/// <param name="Checked">How many settings were computed to find out.</param>
/// <param name="Numbers">Largest error of each number [unit of the number].</param>
/// <param name="CurvePercent">Largest error of the curve as a share of its peak [%].</param>
public sealed record ExplorerError(int Checked, IReadOnlyList<double> Numbers, double CurvePercent);

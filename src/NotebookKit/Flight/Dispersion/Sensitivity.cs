using UnitsNet;

namespace NotebookKit.Flight.Dispersion;

/// <summary>
/// How far one input sways one output. Source: rank correlation of C. Spearman, 1904; shares by its square, which add up where inputs are
/// independent and the answer is monotone.
/// </summary>
/// <param name="Input">What varies.</param>
/// <param name="Correlation">Rank correlation with the output [-]; −1 to 1.</param>
/// <param name="Share">Its square, as a share of all inputs'.</param>
public sealed record Sensitivity(string Input, double Correlation, Ratio Share);

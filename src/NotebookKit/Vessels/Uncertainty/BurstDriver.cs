using UnitsNet;

namespace NotebookKit.Vessels.Uncertainty;

/// <summary>One thing that scatters, and how much of the burst's scatter is its doing.</summary>
/// <param name="Name">What scatters.</param>
/// <param name="Correlation">Correlation of the burst with it [-].</param>
/// <param name="Share">Share of the burst's variance it explains by itself, the square of the correlation.</param>
/// <remarks>Source: Saltelli et al., Global Sensitivity Analysis: The Primer, 2008, §1.2 (squared correlation for a nearly linear
/// model).</remarks>
public sealed record BurstDriver(string Name, double Correlation, Ratio Share);

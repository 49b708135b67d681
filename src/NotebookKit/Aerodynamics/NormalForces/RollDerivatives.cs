using NotebookKit.Aerodynamics.Airflow;
using NotebookKit.Provenance;

namespace NotebookKit.Aerodynamics.NormalForces;

/// <summary>
/// Roll forcing by fin cant and roll damping by strip theory, on reference area and diameter.
/// Source: J. S. Barrowman, M.S. thesis, 1967 (unverified).
/// </summary>
/// <param name="Forcing">Rolling-moment slope Clδ by cant of all fins together [1/rad].</param>
/// <param name="Damping">Clp by the roll rate as p d / 2V, with the panel's own three-dimensional lift slope [-]; negative damps.</param>
/// <param name="DampingTwoDimensional">Clp with the two-dimensional slope 2π of every strip [-]. It over-damps about threefold: a steady
/// roll rate from it is too low, which isn't safe for a resonance check.</param>
public sealed record RollDerivatives(double Forcing, double Damping, double DampingTwoDimensional)
{
    /// <summary>Where the formulas come from.</summary>
    public static Source Source { get; } = Literature.BarrowmanThesis;
}

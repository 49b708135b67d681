using NotebookKit.Provenance;
using NotebookKit.Quantities.Numbers;

namespace NotebookKit.Filling.Balances;

/// <summary>Whether gas that blows into a vessel stirs the gas that is there, or leaves it in layers.</summary>
/// <remarks>
/// Layers stay where (H/d) Ri^(1/3) (1 + d/(4√2 α H))^(2/3) is above 1, with Ri = g d |Δρ|/(ρ U²), H the height of the gas space, d and U
/// the bore and mean speed of the inlet, Δρ the difference in density, α = 0.05. Source: P. F. Peterson 1994 (unverified). Fast fills of
/// hydrogen are reported to grow layers where the inlet's speed falls below 5 m/s: T. Terada et al., SAE 2008-01-0463 (unverified), and
/// "at lower gas inlet velocities": C. J. B. Dicken, W. Mérida, J. Power Sources 165 (2007) 324 (abstract read).
/// </remarks>
internal static class JetMixing
{
    private const double Entrainment = 0.05;

    public static Source Source { get; } = new(
        "P. F. Peterson", "Scaling and analysis of mixing in large stratified volumes, Int. J. Heat Mass Transfer 37, suppl. 1, 97", 1994,
        "criterion for injected jets", SourceKind.Unverified);

    /// <summary>Number of the criterion [-]: below 1 the jet stirs, above 1 the gas lies in layers.</summary>
    /// <param name="heightM">Height of the gas space [m].</param>
    /// <param name="inletM">Bore of the inlet [m].</param>
    /// <param name="metresPerSecond">Mean speed in the inlet [m/s]; 0 gives infinity.</param>
    /// <param name="difference">|Δρ|/ρ between the gas that comes and the gas that is there [-].</param>
    public static double Number(double heightM, double inletM, double metresPerSecond, double difference)
    {
        if (!(metresPerSecond > 0)) return double.PositiveInfinity;
        var richardson = StandardConstants.Gravity * inletM * Math.Abs(difference) / (metresPerSecond * metresPerSecond);
        return heightM / inletM * Math.Cbrt(richardson)
            * Math.Pow(1 + inletM / (4 * Math.Sqrt(2) * Entrainment * heightM), 2.0 / 3);
    }
}

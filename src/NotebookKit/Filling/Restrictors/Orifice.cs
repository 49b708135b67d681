using NotebookKit.Materials.Fluids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.Restrictors;

/// <summary>A round hole or short nozzle with a discharge coefficient: isentropic flow to the throat, choked or not.</summary>
/// <remarks>
/// ṁ = Cd A p₁/√(R T₁) ψ(p₂/p₁). Range: any pressure ratio; pressures where the gas is near ideal (real air flows 2.4 % more at 60 bar).
/// Source: NACA Report 1135, 1953, one-dimensional isentropic flow.
/// </remarks>
/// <param name="Diameter">Diameter of the hole; 0.05 mm to 50 mm.</param>
/// <param name="DischargeCoefficient">Flow over ideal flow [-]; 0.3 to 1. About 0.6 to 0.85 for a sharp edge in gas, 0.97 for a rounded
/// nozzle.</param>
public sealed record Orifice(Length Diameter, double DischargeCoefficient) : IRestrictor
{
    /// <summary>
    /// Flow of water over ideal flow [-]; 0.3 to 1. Where it isn't given, the lower of that for gas and the 0.60 of a sharp edge: a hole
    /// passes less of water than of choked gas. Source: Encyclopaedia Britannica 1911, Hydraulics, which prints 0.603 under a head of 20
    /// ft. A tube that reaches into the vessel has 0.5 (unverified: source not at hand; confirm before relying on it).
    /// </summary>
    public double? WaterCoefficient { get; init; }

    /// <summary>Downstream over upstream absolute pressure below which the flow of air is choked [-]. Source: NACA Report 1135,
    /// 1953.</summary>
    public double CriticalRatio => Gas.Air.CriticalPressureRatio;

    /// <inheritdoc/>
    public Area EffectiveArea => Area.FromSquareMeters(AreaM2).ToUnit(UnitsNet.Units.AreaUnit.SquareMillimeter);

    /// <inheritdoc/>
    public SonicConductance Conductance => FlowCapacity.ConductanceOf(EffectiveArea);

    /// <inheritdoc/>
    public IReadOnlyList<Finding> Validate() =>
        new[]
        {
            new ValidRange<Length>(0.05.Millimetres(), 50.Millimetres()).Find(Diameter, "diameter of the orifice",
                "Check the unit it was given in."),
            new ValidRange<double>(0.3, 1).Find(DischargeCoefficient, "discharge coefficient",
                "A sharp edge has about 0.6 to 0.85, a rounded nozzle 0.97."),
            WaterCoefficient is { } water ? new ValidRange<double>(0.3, 1).Find(water, "discharge coefficient in water",
                "A sharp edge has 0.60, a rounded nozzle 0.97.") : null,
        }.OfType<Finding>().ToList();

    /// <summary>For example "orifice 1.00 mm, Cd 0.800".</summary>
    public override string ToString() => $"orifice {Digits.Round(Diameter.Millimeters)} mm, Cd {Digits.Round(DischargeCoefficient)}";

    double IRestrictor.CriticalRatioFor(Gas gas) => gas.CriticalPressureRatio;

    double IRestrictor.KilogramsPerSecond(double upstreamPa, double upstreamK, double downstreamPa, Gas gas)
    {
        if (downstreamPa >= upstreamPa) return 0;
        var g = gas.HeatCapacityRatio;
        var scale = AreaM2 * upstreamPa / Math.Sqrt(gas.GasConstant.JoulesPerKilogramKelvin * upstreamK);
        var ratio = downstreamPa / upstreamPa;
        if (ratio <= gas.CriticalPressureRatio) return scale * gas.ChokedFlowFactor;
        return scale * Math.Pow(ratio, 1 / g) * Math.Sqrt(2 * g / (g - 1) * (1 - Math.Pow(ratio, (g - 1) / g)));
    }

    private double AreaM2 => DischargeCoefficient * Math.PI / 4 * Diameter.Meters * Diameter.Meters;
}

using NotebookKit.Materials.Fluids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.Restrictors;

/// <summary>A restrictor by its measured sonic conductance and critical pressure ratio, as a maker's sheet gives them.</summary>
/// <remarks>
/// ṁ = C p₁ ρ₀ √(T₀/T₁), times √(1 − ((p₂/p₁ − b)/(1 − b))²) above the critical ratio. For a gas other than air the conductance is scaled
/// as that of a nozzle of the same area. Source: ISO 6358-1, 2013 (constants unverified: confirm before relying on them).
/// </remarks>
/// <param name="Conductance">Sonic conductance with air; 0.0001 to 100 dm³/(s·bar).</param>
/// <param name="CriticalRatio">Critical pressure ratio b [-]; 0 to 0.7. An ideal nozzle has 0.528, a long or kinked passage less.</param>
public sealed record SonicRestrictor(SonicConductance Conductance, double CriticalRatio) : IRestrictor
{
    /// <inheritdoc/>
    public Area EffectiveArea => FlowCapacity.AreaOf(Conductance);

    /// <inheritdoc/>
    public IReadOnlyList<Finding> Validate() =>
        new[]
        {
            new ValidRange<SonicConductance>(0.0001.LitresPerSecondBar(), 100.LitresPerSecondBar()).Find(Conductance, "sonic conductance",
                "A 1 mm hole has about 0.13 dm³/(s·bar)."),
            new ValidRange<double>(0, 0.7).Find(CriticalRatio, "critical pressure ratio",
                "An ideal nozzle has 0.528, a long passage less."),
        }.OfType<Finding>().ToList();

    /// <summary>For example "restrictor C 0.125 dm³/(s·bar), b 0.300".</summary>
    public override string ToString() => $"restrictor C {Conductance}, b {Digits.Round(CriticalRatio)}";

    double IRestrictor.CriticalRatioFor(Gas gas) => CriticalRatio;

    double IRestrictor.KilogramsPerSecond(double upstreamPa, double upstreamK, double downstreamPa, Gas gas)
    {
        if (downstreamPa >= upstreamPa) return 0;
        var ratio = downstreamPa / upstreamPa;
        var choked = Conductance.CubicMetresPerSecondPascal * upstreamPa * FlowCapacity.ReferenceDensity
            * Math.Sqrt(FlowCapacity.ReferenceTemperatureK / upstreamK)
            * gas.ChokedFlowFactor / Gas.Air.ChokedFlowFactor
            * Math.Sqrt(Gas.Air.GasConstant.JoulesPerKilogramKelvin / gas.GasConstant.JoulesPerKilogramKelvin);
        if (ratio <= CriticalRatio) return choked;
        var past = (ratio - CriticalRatio) / (1 - CriticalRatio);
        return choked * Math.Sqrt(1 - past * past);
    }
}

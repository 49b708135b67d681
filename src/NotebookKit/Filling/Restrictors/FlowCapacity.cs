using NotebookKit.Materials.Fluids;
using NotebookKit.Provenance;
using NotebookKit.Quantities.Numbers;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.Restrictors;

/// <summary>Turns the ways a valve's size is told into each other: throat area, sonic conductance, Kv, Cv.</summary>
/// <remarks>
/// By equal throat area. A real valve recovers pressure, so that Kv and Cv (measured with water) tell its choked gas flow only to about ±20
/// %:
/// measure a fill and fit the conductance. Source: NACA Report 1135, 1953 (choked flow); ISO 6358-1, 2013, and IEC 60534-1, 2005
/// (definitions, unverified).
/// </remarks>
public static class FlowCapacity
{
    // Reference air of ISO 6358: 100 kPa, 293.15 K, 65 % humidity.
    internal const double ReferenceDensity = 1.185;
    internal const double ReferenceTemperatureK = 293.15;

    /// <summary>Sonic conductance of an ideal nozzle. Source: NACA Report 1135, 1953; ISO 6358-1, 2013.</summary>
    /// <param name="effectiveArea">Throat area times discharge coefficient; above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The area is 0 or below.</exception>
    public static SonicConductance ConductanceOf(Area effectiveArea)
        => SonicConductance.FromCubicMetresPerSecondPascal(effectiveArea.SquareMeters * PerSquareMetre);

    /// <summary>Throat area times discharge coefficient of the ideal nozzle with a sonic conductance. Source: as
    /// <see cref="ConductanceOf"/>.</summary>
    /// <param name="conductance">Sonic conductance; above 0.</param>
    public static Area AreaOf(SonicConductance conductance) =>
        Area.FromSquareMeters(Finite.Check(
            conductance.CubicMetresPerSecondPascal / PerSquareMetre, "throat area", "m²")).ToUnit(UnitsNet.Units.AreaUnit.SquareMillimeter);

    /// <summary>Throat area times discharge coefficient for a Kv. Source: IEC 60534-1: flow of water of 1000 kg/m³ at a drop of 1
    /// bar.</summary>
    /// <param name="kv">Flow of water at 1 bar, as <c>VolumeFlow.FromCubicMetersPerHour(0.1)</c>; 1e-6 to 1000 m³/h.</param>
    /// <exception cref="OutOfRangeException">The flow is outside.</exception>
    public static Area AreaOfKv(VolumeFlow kv) =>
        Area.FromSquareMeters(Positive(kv, "Kv").CubicMetersPerSecond / Math.Sqrt(2 * 1e5 /
            1000)).ToUnit(UnitsNet.Units.AreaUnit.SquareMillimeter);

    /// <summary>Sonic conductance by equal area for a Kv; ±20 %. Source: IEC 60534-1, NACA Report 1135.</summary>
    /// <param name="kv">Flow of water at 1 bar, as <c>VolumeFlow.FromCubicMetersPerHour(0.1)</c>; 1e-6 to 1000 m³/h.</param>
    /// <exception cref="OutOfRangeException">The flow is outside.</exception>
    public static SonicConductance ConductanceOfKv(VolumeFlow kv) => ConductanceOf(AreaOfKv(kv));

    /// <summary>Kv for a Cv. Source: IEC 60534-1: both are flows of water, at a drop of 1 bar and of 1 psi.</summary>
    /// <param name="cv">Flow of water at 1 psi, as <c>VolumeFlow.FromUsGallonsPerMinute(0.1)</c>; 1e-6 to 1000 m³/h.</param>
    /// <exception cref="OutOfRangeException">The flow is outside.</exception>
    public static VolumeFlow KvOfCv(VolumeFlow cv) =>
        (Positive(cv, "Cv") * Math.Sqrt(1.Bar() / 1.Psi())).ToUnit(UnitsNet.Units.VolumeFlowUnit.CubicMeterPerHour);

    /// <summary>Hole to drill for a sonic conductance. Source: NACA Report 1135, 1953; ISO 6358-1, 2013.</summary>
    /// <param name="conductance">Sonic conductance; above 0.</param>
    /// <param name="dischargeCoefficient">Flow of the hole over ideal flow [-]; 0.3 to 1. 0.8 for a short drilled hole (typical): measure
    /// it.</param>
    /// <exception cref="OutOfRangeException">The coefficient is outside.</exception>
    public static Length DrillFor(SonicConductance conductance, double dischargeCoefficient = 0.8) =>
        Length.FromMeters(Math.Sqrt(4 / Math.PI * AreaOf(conductance).SquareMeters / new ValidRange<double>(0.3,
            1).Check(dischargeCoefficient, "discharge coefficient",
            "A sharp edge has about 0.6 to 0.85, a rounded nozzle 0.97."))).ToUnit(UnitsNet.Units.LengthUnit.Millimeter);

    private static VolumeFlow Positive(VolumeFlow flow, string name) =>
        new ValidRange<VolumeFlow>(VolumeFlow.FromCubicMetersPerHour(1e-6), VolumeFlow.FromCubicMetersPerHour(1000)).Check(
            flow.ToUnit(UnitsNet.Units.VolumeFlowUnit.CubicMeterPerHour), $"{name} as a flow of water", "Check the unit it was given in.");

    private static double PerSquareMetre =>
        Gas.Air.ChokedFlowFactor / Math.Sqrt(Gas.Air.GasConstant.JoulesPerKilogramKelvin * ReferenceTemperatureK) / ReferenceDensity;
}

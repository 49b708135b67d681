using NotebookKit.Propulsion.Charges;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Propulsion.Flow;

/// <summary>What must hold before anything is fired.</summary>
internal static class FiringChecks
{
    // Beyond a quarter of the bore the column speeds up with its jet and the surface is no longer flat.
    private const double WidestMovingColumn = 0.25;

    /// <summary>What a flight along a curved path can't take: the unsteady jet and heat from the wall belong to vertical flights and
    /// stands.</summary>
    public static IReadOnlyList<Finding> QuasiSteady(FlowModel flow)
    {
        List<Finding> all = [];
        if (flow.Water == WaterFlow.Unsteady)
            all.Add(PropulsionFindings.WaterFlowIsUnsteady());
        if (flow.WallWarming is not null)
            all.Add(PropulsionFindings.WallGivesHeatToGas());
        return all;
    }

    /// <summary>
    /// Largest jet area over bore area [-]. Free in flight, ρ (Loss/2 − ρ A h/M) u² = Δp + ...: with all mass in the water, ρ A h/M is the
    /// area ratio φ, and (1 − φ²)/2 − φ is above zero up to φ = √2 − 1.
    /// </summary>
    public const double MaximumJetShare = 0.41;

    public static double JetShare(Nozzle nozzle, Charge charge) =>
        nozzle.WaterContractionCoefficient * Math.Pow(nozzle.Throat / charge.Chamber.Bore, 2);

    public static IReadOnlyList<Finding> All(Charge charge, Nozzle nozzle, FlowModel flow, AbsolutePressure ambient)
    {
        List<Finding> all = [.. charge.Validate(), .. nozzle.Validate(), .. flow.Validate()];
        if (flow.AirPhase.Kind == ExpansionKind.RealGas && FiringTables.RealGasOf(charge.Gas) is null)
        {
            all.Add(PropulsionFindings.NoEquationOfStateForGas(charge.Gas.Name));
        }

        if (flow.WaterPhase.Kind == ExpansionKind.MoistAir && (charge.Gas != Materials.Fluids.Gas.Air
            || charge.GasTemperature.DegreesCelsius < 0))
            all.Add(PropulsionFindings.MoistAirNeedsAirOverWater(charge.Gas.Name, charge.GasTemperature));
        var jet = nozzle.WaterContractionCoefficient * nozzle.Throat.Meters * nozzle.Throat.Meters / (charge.Chamber.Bore.Meters *
            charge.Chamber.Bore.Meters);
        if (flow.Water != WaterFlow.QuasiSteady && jet > WidestMovingColumn && nozzle.Throat < charge.Chamber.Bore)
        {
            all.Add(PropulsionFindings.JetTooWideForMovingColumn(nozzle.Throat, jet, WidestMovingColumn));
        }

        if (nozzle.Throat >= charge.Chamber.Bore)
        {
            all.Add(PropulsionFindings.NozzleThroatOutOfRange(nozzle.Throat, charge.Chamber.Bore));
        }
        else if (JetShare(nozzle, charge) is var share && share > MaximumJetShare)
        {
            all.Add(PropulsionFindings.JetOutOfRange(share, nozzle.Throat, charge.Chamber.Bore, MaximumJetShare));
        }

        var air = new ValidRange<AbsolutePressure>(0.3.BarAbsolute(), 1.1.BarAbsolute()).Find(
            ambient, "air pressure around the vessel", "It is that of open air, from sea level to 9 km; vacuum is another model.");
        if (air is not null) all.Add(air);
        return all;
    }
}

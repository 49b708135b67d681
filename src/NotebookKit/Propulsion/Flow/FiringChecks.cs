using NotebookKit.Propulsion.Charges;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Propulsion.Flow;

/// <summary>What must hold before anything is fired.</summary>
internal static class FiringChecks
{
    // Beyond a quarter of the bore the column speeds up with its jet and the surface is no longer flat.
    private const double WidestMovingColumn = 0.25;

    /// <summary>What a flight along a curved path can't take: the unsteady jet and heat from the wall belong to vertical flights and stands.</summary>
    public static IReadOnlyList<Finding> QuasiSteady(FlowModel flow)
    {
        List<Finding> all = [];
        if (flow.Water == WaterFlow.Unsteady)
            all.Add(Finding.Error("water flow is unsteady; a flight along a curved path takes the quasi-steady jet. Choose WaterFlow.QuasiSteady or QuasiSteadyWithHead."));
        if (flow.WallWarming is not null)
            all.Add(Finding.Error("the wall gives heat to the gas; a flight along a curved path leaves that out. Set WallWarming to null."));
        return all;
    }

    /// <summary>
    /// Largest jet area over bore area [-]. Free in flight, ρ (Loss/2 − ρ A h/M) u² = Δp + ...: with all mass in the water, ρ A h/M is the area ratio φ,
    /// and (1 − φ²)/2 − φ is above zero up to φ = √2 − 1.
    /// </summary>
    public const double MaximumJetShare = 0.41;

    public static double JetShare(Nozzle nozzle, Charge charge) =>
        nozzle.WaterContractionCoefficient * Math.Pow(nozzle.Throat / charge.Chamber.Bore, 2);

    public static IReadOnlyList<Finding> All(Charge charge, Nozzle nozzle, FlowModel flow, AbsolutePressure ambient)
    {
        List<Finding> all = [.. charge.Validate(), .. nozzle.Validate(), .. flow.Validate()];
        if (flow.AirPhase.Kind == ExpansionKind.RealGas && FiringTables.RealGasOf(charge.Gas) is null)
        {
            all.Add(Finding.Error(
                $"gas is {charge.Gas.Name}; an equation of state is at hand for air, nitrogen and hydrogen only. Choose FlowModel.Plain for another gas."));
        }

        if (flow.WaterPhase.Kind == ExpansionKind.MoistAir && (charge.Gas != Materials.Fluids.Gas.Air || charge.GasTemperature.DegreesCelsius < 0))
            all.Add(Finding.Error($"gas is {charge.Gas.Name} at {charge.GasTemperature.Show()}; moist air is air over water, 0 °C or warmer."));
        var jet = nozzle.WaterContractionCoefficient * nozzle.Throat.Meters * nozzle.Throat.Meters / (charge.Chamber.Bore.Meters * charge.Chamber.Bore.Meters);
        if (flow.Water != WaterFlow.QuasiSteady && jet > WidestMovingColumn && nozzle.Throat < charge.Chamber.Bore)
        {
            all.Add(Finding.Error(
                $"nozzle throat is {nozzle.Throat.Show(4)}: its jet has {Digits.Round(jet)} of the bore's area; with head or inertia of the column it must be at most {WidestMovingColumn}. Choose WaterFlow.QuasiSteady or a narrower nozzle."));
        }

        if (nozzle.Throat >= charge.Chamber.Bore)
        {
            all.Add(Finding.Error(
                $"nozzle throat is {nozzle.Throat.Show(4)}; it must be below the vessel's bore of {charge.Chamber.Bore.Show(4)}. A nozzle narrows."));
        }
        else if (JetShare(nozzle, charge) is var share && share > MaximumJetShare)
        {
            all.Add(Finding.Error(
                $"jet is {Digits.Round(share)} of the vessel's bore in area (nozzle throat {nozzle.Throat.Show(4)}, bore {charge.Chamber.Bore.Show(4)}); it must be at most {MaximumJetShare}. So wide, a vehicle that is light beside its water has no steady jet: the head of its own acceleration outgrows the jet's pressure. Take a smaller nozzle."));
        }

        var air = new ValidRange<AbsolutePressure>(0.3.BarAbsolute(), 1.1.BarAbsolute()).Find(
            ambient, "air pressure around the vessel", "It is that of open air, from sea level to 9 km; vacuum is another model.");
        if (air is not null) all.Add(air);
        return all;
    }
}

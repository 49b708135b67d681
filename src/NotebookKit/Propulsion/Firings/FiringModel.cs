using NotebookKit.Materials.Fluids;
using NotebookKit.Propulsion.Charges;
using NotebookKit.Propulsion.Flow;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Propulsion.Firings;

/// <summary>What a flow model assumes and where it comes from, as result pages print it.</summary>
internal static class FiringModel
{
    public static readonly Source Bernoulli = new("F. M. White",
        "Fluid Mechanics: Bernoulli's equation and the momentum theorem for a jet", null, "", SourceKind.Unverified);

    public static readonly Source Isentropic = new("Ames Research Staff",
        "Equations, Tables, and Charts for Compressible Flow, NACA Report 1135", 1953, "eqs 43-45, 80");

    public static readonly Source GasLaw = new("", "Ideal gas law, closed system expanding as p Vⁿ", null);

    public static readonly Source HeadEffect = new(
        "C. J. Gommes", "A more thorough analysis of water rockets, Am. J. Phys. 78, 236-243", 2010,
            "head under acceleration, unsteady jet");

    public static readonly Source Bolton = new("D. Bolton", "The computation of equivalent potential temperature, Mon. Weather "
        + "Rev. 108, 1046", 1980, "eq. 10");

    public static ModelCard Card(FlowModel flow, Charge charge)
    {
        var real = flow.AirPhase.Kind == ExpansionKind.RealGas ? FiringTables.RealGasOf(charge.Gas) : null;
        List<string> assumptions =
        [
            real is not null
                ? $"The gas is {real.Name} by its reference equation of state; below {real.LowestKelvins:0} K "
                    + $"{(flow.WallWarming is null ? "the last isentropic exponent is held" :
                        "the equation is carried on as if nothing condensed")}. It neither dissolves in the water nor takes up vapour."
                : $"The gas is ideal {charge.Gas.Name}, R = {charge.Gas.GasConstant.JoulesPerKilogramKelvin:0.#####} J/(kg K), γ = "
                    + $"{charge.Gas.HeatCapacityRatio:0.###}; it doesn't dissolve in the water."
                    + (flow.WaterPhase.Kind == ExpansionKind.MoistAir
                        ? " It is saturated with vapour, which condenses while it cools; droplets stay in it, ice is left out."
                        : " It takes up no vapour."),
            $"Expansion while water leaves: {flow.WaterPhase}; of what remains while gas leaves: {flow.AirPhase}.",
            flow.Water switch
            {
                WaterFlow.QuasiSteady => "The water jet is quasi-steady, driven by pressure alone; weight and inertia of the water "
                    + "column are left out.",
                WaterFlow.QuasiSteadyWithHead => "The water jet is quasi-steady; the head of the water column under gravity and the "
                    + "vehicle's acceleration adds to the pressure.",
                _ => "The water jet is unsteady: the column has inertia, weight under the vehicle's acceleration, and momentum of its "
                    + "own; the jet starts from rest.",
            },
            "The vessel is a straight cylinder of its bore; water leaves before gas, with a flat surface between them.",
            flow.WallWarming is { } heat
                ? "While gas leaves, the wall gives it heat by "
                    + $"{(heat.FilmCoefficient is null ? "free convection" : "a constant film coefficient")}; the wall "
                    + $"{(heat.Wall is null ? "keeps its temperature" : "has one temperature through its thickness")}."
                : "While gas leaves, the wall gives it no heat.",
            "Gas leaves through a converging nozzle, isentropic up to the throat, sonic above the critical pressure ratio.",
            string.Create(System.Globalization.CultureInfo.InvariantCulture,
                $"The jet ends at {flow.EndPressureRatio:0.####} times ambient pressure; the gas left stays aboard."),
        ];
        List<Source> sources = [Bernoulli, Isentropic, GasLaw];
        if (flow.Water != WaterFlow.QuasiSteady) sources.Add(HeadEffect);
        if (real is not null) sources.Add(real.Source);
        if (flow.WaterPhase.Kind == ExpansionKind.MoistAir) sources.Add(Bolton);
        if (flow.WallWarming is { FilmCoefficient: null } warming) sources.Add(FreeConvection.SourceOf(warming.Law));
        return new(
            flow.WaterPhase.Name == flow.AirPhase.Name
                ? $"Water and gas expulsion, {flow.WaterPhase}"
                : $"Water and gas expulsion, {flow.WaterPhase}, then {flow.AirPhase}",
            assumptions,
            "0.1 bar gauge to the vessel's rating, water fraction 0 % to 95 %."
                + (real is null ? " As an ideal gas, dry air overstates the pressure late in the water phase by 3 % to 5 "
                    + "% at 60 bar." : ""),
            sources);
    }

    public static IReadOnlyList<Finding> Warnings(Charge charge, FlowModel flow, bool spentEarly, double waterLeftKg)
    {
        List<Finding> findings = [];
        if (charge.Pressure.Bar > 30 && flow.AirPhase.Kind != ExpansionKind.RealGas)
        {
            findings.Add(PropulsionFindings.FillPressureAboveBarAir(charge.Pressure));
        }

        if (charge.WaterFraction > UnitsNet.Ratio.Zero && charge.GasTemperature < 0.Celsius())
        {
            findings.Add(PropulsionFindings.WaterMayFreeze(charge.GasTemperature));
        }

        if (spentEarly)
        {
            findings.Add(PropulsionFindings.PressureIsSpentWithWaterLeft(waterLeftKg * 1e3));
        }

        return findings;
    }
}

using NotebookKit.Provenance;

namespace NotebookKit.Propulsion;

/// <summary>What a flow model assumes and where it comes from, as result pages print it.</summary>
internal static class FiringModel
{
    public static readonly Source Bernoulli = new("F. M. White", "Fluid Mechanics: Bernoulli's equation and the momentum theorem for a jet", null, "", SourceKind.FromMemory);

    public static readonly Source Isentropic = new("Ames Research Staff", "Equations, Tables, and Charts for Compressible Flow, NACA Report 1135", 1953, "eqs 43-45, 80");

    public static readonly Source GasLaw = new("", "Ideal gas law, closed system expanding as p Vⁿ", null);

    public static readonly Source HeadEffect = new(
        "C. J. Gommes", "A more thorough analysis of water rockets, Am. J. Phys. 78, 236-243", 2010, "head under acceleration, unsteady jet");

    public static ModelCard Card(FlowModel flow, Charge charge)
    {
        List<string> assumptions =
        [
            $"The gas is ideal {charge.Gas.Name}, R = {charge.Gas.GasConstant.JoulesPerKilogramKelvin:0.#####} J/(kg K), γ = {charge.Gas.HeatCapacityRatio:0.###}; it neither dissolves in the water nor takes up vapour.",
            $"While water leaves the gas expands {flow.WaterPhase}; what remains expands {flow.AirPhase} while gas leaves.",
            flow.Water switch
            {
                WaterFlow.QuasiSteady => "The water jet is quasi-steady, driven by pressure alone; weight and inertia of the water column are left out.",
                _ => "The water jet is quasi-steady; the head of the water column under gravity and the vehicle's acceleration adds to the pressure.",
            },
            "The vessel is a straight cylinder of its bore; water leaves before gas, with a flat surface between them.",
            "Gas leaves through a converging nozzle, isentropic up to the throat, sonic above the critical pressure ratio.",
            string.Create(System.Globalization.CultureInfo.InvariantCulture, $"The jet ends at {flow.EndPressureRatio:0.####} times ambient pressure; the gas left stays aboard."),
        ];
        List<Source> sources = [Bernoulli, Isentropic, GasLaw];
        if (flow.Water == WaterFlow.QuasiSteadyWithHead) sources.Add(HeadEffect);
        return new(
            $"Water and gas expulsion, {flow.WaterPhase} then {flow.AirPhase}",
            assumptions,
            "0.1 bar gauge to the vessel's rating, water fraction 0 % to 95 %. As an ideal gas, dry air overstates the pressure late in the water phase by 3 % to 5 % at 60 bar.",
            sources);
    }

    public static IReadOnlyList<Finding> Warnings(Charge charge, bool spentEarly, double waterLeftKg)
    {
        List<Finding> findings = [];
        if (charge.Pressure.Bar > 30)
        {
            findings.Add(Finding.Warning(
                $"charge pressure is {charge.Pressure}: above 30 bar air is no ideal gas; with γ = 1.4 the pressure late in the water phase comes out up to 5 % too high."));
        }

        if (spentEarly)
        {
            findings.Add(Finding.Warning(string.Create(System.Globalization.CultureInfo.InvariantCulture,
                $"the pressure is spent with {waterLeftKg * 1e3:0} g of water still aboard; it is carried as dead mass. Use less water or more pressure.")));
        }

        return findings;
    }
}

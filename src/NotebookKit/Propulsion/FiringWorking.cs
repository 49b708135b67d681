using NotebookKit.Propulsion.Phases;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Propulsion;

/// <summary>Shows how the numbers at release are reached.</summary>
internal static class FiringWorking
{
    public static Working For(string title, Charge charge, Nozzle nozzle, FlowModel flow, AbsolutePressure ambient) =>
        new(title, Steps(charge, nozzle, flow, ambient));

    public static IReadOnlyList<WorkingStep> Steps(Charge charge, Nozzle nozzle, FlowModel flow, AbsolutePressure ambient)
    {
        var setup = new FiringSetup(charge, nozzle, flow, ambient.Pascals);
        List<WorkingStep> steps =
        [
            new("Absolute gas pressure", @"p_0 = p_g + p_a", $"{Digits.Round(charge.Pressure.Bar, 4)} bar + {Digits.Round(ambient.Bar, 4)} bar",
                $"{Digits.Round(setup.PressurePa / 1e5, 5)} bar absolute", FiringModel.GasLaw),
            new("Gas mass", @"m_g = \frac{p_0\,V_g}{R\,T}",
                $"{Digits.Round(setup.PressurePa / 1e5, 5)} bar × {Digits.Round(setup.GasM3 * 1e3, 4)} L / ({Digits.Round(setup.GasConstant, 6)} J/(kg K) × {Digits.Round(setup.TemperatureK, 5)} K)",
                $"{Digits.Round(setup.GasKg * 1e3, 4)} g", FiringModel.GasLaw),
        ];
        if (setup.HasWater) AddWater(steps, charge, nozzle, setup);
        else AddGas(steps, setup, ambient.Pascals);
        return steps;
    }

    private static void AddWater(List<WorkingStep> steps, Charge charge, Nozzle nozzle, in FiringSetup setup)
    {
        var jet = setup.WaterJet;
        var difference = charge.Pressure.Pascals;
        var speed = jet.Speed(difference);
        steps.Add(new("Jet area", @"A = C_c\,\frac{\pi}{4}\,d^2", $"{Digits.Round(nozzle.WaterContractionCoefficient)} × π/4 × ({nozzle.Throat.Show(4)})²",
            $"{Digits.Round(jet.JetAreaM2 * 1e6, 4)} mm²", FiringModel.Bernoulli));
        steps.Add(new("Water jet speed", @"u = C_v\,\sqrt{\frac{2\,\Delta p}{\rho\,(1-\varphi^2)}}",
            $"{Digits.Round(nozzle.WaterVelocityCoefficient)} × √(2 × {Digits.Round(difference / 1e5, 4)} bar / ({Digits.Round(jet.Density, 4)} kg/m³ × (1 − {Digits.Round(jet.AreaRatio)}²)))",
            $"{Digits.Round(speed, 4)} m/s", FiringModel.Bernoulli));
        steps.Add(new("Thrust at release, pressure alone", @"F = \rho\,A\,u^2",
            $"{Digits.Round(jet.Density, 4)} kg/m³ × {Digits.Round(jet.JetAreaM2 * 1e6, 4)} mm² × ({Digits.Round(speed, 4)} m/s)²",
            $"{Digits.Round(jet.Density * jet.JetAreaM2 * speed * speed, 4)} N", FiringModel.Bernoulli));
        var end = setup.Polytropic.Pressure(setup.ChamberM3);
        steps.Add(new("Gas pressure when the water is out", @"p_1 = p_0\left(\frac{V_g}{V}\right)^n",
            $"{Digits.Round(setup.PressurePa / 1e5, 5)} bar × ({Digits.Round(setup.GasM3 * 1e3, 4)} L / {Digits.Round(setup.ChamberM3 * 1e3, 4)} L)^{Digits.Round(setup.WaterExponent)}",
            $"{Digits.Round(end / 1e5, 4)} bar absolute", FiringModel.GasLaw));
    }

    private static void AddGas(List<WorkingStep> steps, in FiringSetup setup, double ambientPa)
    {
        var flow = setup.AirJet.MassFlow(setup.PressurePa, setup.TemperatureK, ambientPa, out var thrust);
        var choked = ambientPa <= setup.AirJet.CriticalRatio * setup.PressurePa;
        steps.Add(new("Gas mass flow", choked ? @"\dot m = A\,p_0\,\sqrt{\frac{\gamma}{R\,T}}\left(\frac{2}{\gamma+1}\right)^{\frac{\gamma+1}{2(\gamma-1)}}" : @"\dot m = \rho_e\,A\,u_e",
            $"A = {Digits.Round(setup.AirJet.AreaM2 * 1e6, 4)} mm², p = {Digits.Round(setup.PressurePa / 1e5, 5)} bar", $"{Digits.Round(flow, 4)} kg/s", FiringModel.Isentropic));
        steps.Add(new("Thrust at release", @"F = \dot m\,u_e + (p_e - p_a)\,A", choked ? "sonic exit" : "exit at ambient pressure", $"{Digits.Round(thrust, 4)} N", FiringModel.Isentropic));
    }
}

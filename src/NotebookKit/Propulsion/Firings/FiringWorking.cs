using NotebookKit.Propulsion.Charges;
using NotebookKit.Propulsion.Phases;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Propulsion.Firings;

/// <summary>Shows how the numbers at release are reached.</summary>
internal static class FiringWorking
{
    public static Working For(string title, Charge charge, Nozzle nozzle, AbsolutePressure ambient, in FiringSetup setup) =>
        new(title, Steps(charge, nozzle, ambient, setup));

    public static IReadOnlyList<WorkingStep> Steps(Charge charge, Nozzle nozzle, AbsolutePressure ambient, in FiringSetup setup)
    {
        List<WorkingStep> steps =
        [
            new("Absolute gas pressure", @"p_0 = p_g + p_a",
                $"{Digits.Round(charge.Pressure.Bar, 4)} bar + {Digits.Round(ambient.Bar, 4)} bar",
                $"{Digits.Round(setup.PressurePa / 1e5, 5)} bar absolute", FiringModel.GasLaw),
            GasMass(setup),
        ];
        if (setup.HasWater) AddWater(steps, charge, nozzle, setup);
        else AddGas(steps, setup, ambient.Pascals);
        return steps;
    }

    private static WorkingStep GasMass(in FiringSetup setup)
    {
        var factor = setup.PressurePa * setup.StartM3 / (setup.StartGasKg * setup.GasConstant * setup.TemperatureK);
        var numbers = $"{Digits.Round(setup.PressurePa / 1e5, 5)} bar × {Digits.Round(setup.StartM3 * 1e3, 4)} L / (";
        var ideal = $"{Digits.Round(setup.GasConstant, 6)} J/(kg K) × {Digits.Round(setup.TemperatureK, 5)} K)";
        return setup.Tables.Gas is { } gas
            ? new("Gas mass", @"m_g = \frac{p_0\,V_g}{Z\,R\,T}", numbers + $"{Digits.Round(factor, 4)} × " + ideal,
                $"{Digits.Round(setup.StartGasKg * 1e3, 4)} g", gas.Source)
            : new("Gas mass", @"m_g = \frac{p_0\,V_g}{R\,T}", numbers + ideal, $"{Digits.Round(setup.StartGasKg * 1e3, 4)} g",
                FiringModel.GasLaw);
    }

    private static void AddWater(List<WorkingStep> steps, Charge charge, Nozzle nozzle, in FiringSetup setup)
    {
        var jet = setup.WaterJet;
        var difference = charge.Pressure.Pascals;
        var speed = jet.Speed(difference);
        steps.Add(new("Jet area", @"A = C_c\,\frac{\pi}{4}\,d^2",
            $"{Digits.Round(nozzle.WaterContractionCoefficient)} × π/4 × ({nozzle.Throat.Show(4)})²",
            $"{Digits.Round(jet.JetAreaM2 * 1e6, 4)} mm²", FiringModel.Bernoulli));
        steps.Add(new("Water jet speed", @"u = C_v\,\sqrt{\frac{2\,\Delta p}{\rho\,(1-\varphi^2)}}",
            $"{Digits.Round(nozzle.WaterVelocityCoefficient)} × √(2 × {Digits.Round(difference / 1e5, 4)} bar / "
                + $"({Digits.Round(jet.Density, 4)} kg/m³ × (1 − {Digits.Round(jet.AreaRatio)}²)))",
            $"{Digits.Round(speed, 4)} m/s", FiringModel.Bernoulli));
        steps.Add(new("Thrust at release, pressure alone", @"F = \rho\,A\,u^2",
            $"{Digits.Round(jet.Density, 4)} kg/m³ × {Digits.Round(jet.JetAreaM2 * 1e6, 4)} mm² × ({Digits.Round(speed, 4)} m/s)²",
            $"{Digits.Round(jet.Density * jet.JetAreaM2 * speed * speed, 4)} N", FiringModel.Bernoulli));
        var pressures = $"{Digits.Round(setup.PressurePa / 1e5, 5)} bar × ({Digits.Round(setup.StartM3 * 1e3, 4)} L / "
            + $"{Digits.Round(setup.ChamberM3 * 1e3, 4)} L)";
        if (setup.Tables.Closed is { } closed)
        {
            var x = Math.Log(setup.ChamberM3 / setup.StartM3);
            var exponent = x > 0 ? (closed.LogPressure(0) - closed.LogPressure(x)) / x : closed.Exponent(0);
            steps.Add(new("Gas pressure when the water is out", @"p_1 = p_0\left(\frac{V_g}{V}\right)^{\bar n}",
                $"{pressures}^{Digits.Round(exponent, 4)}, n̄ from the tabulated expansion",
                    $"{Digits.Round(closed.Pressure(x) / 1e5, 4)} bar absolute",
                setup.Tables.Gas?.Source ?? FiringModel.Bolton));
            return;
        }

        var end = setup.ClosedGas.Pressure(setup.ChamberM3);
        steps.Add(new("Gas pressure when the water is out", @"p_1 = p_0\left(\frac{V_g}{V}\right)^n",
            $"{pressures}^{Digits.Round(setup.WaterExponent)}",
            $"{Digits.Round(end / 1e5, 4)} bar absolute", FiringModel.GasLaw));
    }

    private static void AddGas(List<WorkingStep> steps, in FiringSetup setup, double ambientPa)
    {
        var flow = new GasOutflow(setup).MassFlow(setup.GasKg, setup.TemperatureK, ambientPa, out _, out var thrust, out _);
        var choked = ambientPa <= setup.AirJet.CriticalRatio * setup.PressurePa;
        steps.Add(new("Gas mass flow", choked ? @"\dot m = "
            + @"A\,p_0\,\sqrt{\frac{\gamma}{R\,T}}\left(\frac{2}{\gamma+1}\right)^{\frac{\gamma+1}{2(\gamma-1)}}" :
            @"\dot m = \rho_e\,A\,u_e",
            $"A = {Digits.Round(setup.AirAreaM2 * 1e6, 4)} mm², p = {Digits.Round(setup.PressurePa / 1e5, 5)} bar",
                $"{Digits.Round(flow, 4)} kg/s", FiringModel.Isentropic));
        steps.Add(new("Thrust at release", @"F = \dot m\,u_e + (p_e - p_a)\,A", choked ? "sonic exit" : "exit at ambient pressure",
            $"{Digits.Round(thrust, 4)} N", FiringModel.Isentropic));
    }
}

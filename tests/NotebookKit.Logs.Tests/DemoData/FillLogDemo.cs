using NotebookKit.Numerics;

namespace NotebookKit.Logs.Tests.DemoData;

/// <summary>
/// An invented fill of Curlew at the pad: 3.1 L of gas, regulator at 60 bar gauge, restrictor of 0.04 dm³/(s·bar) with b = 0.5, valve
/// shut at 58 bar gauge, then cooling. Mass and energy balance in small steps with a wall that takes heat and warms, formulae of its own.
/// </summary>
internal static class FillLogDemo
{
    public const ulong Seed = 20260315;
    public const double GasLitres = 3.1, RegulatorBar = 60, ConductanceLitresPerSecondBar = 0.04, CriticalRatio = 0.5, ShutBar = 58;
    public const double AmbientCelsius = 14, WallWattsPerKelvin = 12, WallJoulesPerKelvin = 390, OutsideWattsPerKelvin = 1.95;

    public static string Text()
    {
        var noise = new SeededSamples(Seed);
        var csv = new DemoCsv(
            Seed,
            "fill of Curlew at the pad: 4.56 L vessel with 1.46 L of water, regulator 60 bar gauge, valve shut at 58 bar gauge",
            "temperature is that of the air around the vessel; the logger ran 3 s before the valve was opened");
        csv.Line("time [s]", "pressure [bar gauge]", "temperature [°C]");

        const double ambient = 1.009, gasConstant = 287.05, gamma = 1.4, step = 0.005;
        double supplyK = AmbientCelsius + 273.15, volume = GasLitres / 1000, p = ambient * 1e5, kelvin = supplyK, wall = supplyK;
        var source = (RegulatorBar + ambient) * 1e5;
        var open = false;
        var shut = false;
        for (var tick = 0; tick <= 150 * 200; tick++)
        {
            if (tick % 100 == 0)
            {
                var row = tick / 100;
                csv.Line(
                    DemoCsv.Number(tick * step, 1),
                    row == 33 ? "" : DemoCsv.Number(Math.Round((p / 1e5 - ambient + 0.04 * noise.Normal(row, 0)) / 0.1) * 0.1, 1),
                    DemoCsv.Number(AmbientCelsius + 0.1 * noise.Normal(row, 1), 1));
            }

            open = open || tick * step >= 3;
            shut = shut || p / 1e5 - ambient >= ShutBar;
            var flow = 0.0;
            if (open && !shut)
            {
                var past = Math.Max(0, (p / source - CriticalRatio) / (1 - CriticalRatio));
                flow = ConductanceLitresPerSecondBar * 1e-8 * source * 1.185 * Math.Sqrt(293.15 / supplyK) * Math.Sqrt(1 - past * past);
            }

            var mass = p * volume / (gasConstant * kelvin);
            var heat = WallWattsPerKelvin * (wall - kelvin);
            wall -= step * (heat + OutsideWattsPerKelvin * (wall - supplyK)) / WallJoulesPerKelvin;
            p += step * (gamma - 1) / volume * (flow * gamma / (gamma - 1) * gasConstant * supplyK + heat);
            kelvin = p * volume / (gasConstant * (mass + flow * step));
        }

        return csv.ToString();
    }
}

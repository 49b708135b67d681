using NotebookKit.Numerics;

namespace NotebookKit.Logs.Tests.DemoData;

/// <summary>
/// An invented fill of Curlew at the pad: 1.7 L of gas, regulator at 38 bar gauge, restrictor of 0.1 dm³/(s·bar) with b = 0.35, valve shut
/// at 36 bar gauge, then cooling. Mass and energy balance in small steps with a wall that takes heat, formulae of its own.
/// </summary>
internal static class FillLogDemo
{
    public const ulong Seed = 20260315;
    public const double GasLitres = 1.7, RegulatorBar = 38, ConductanceLitresPerSecondBar = 0.1, CriticalRatio = 0.35, ShutBar = 36;
    public const double AmbientCelsius = 14, WallWattsPerKelvin = 1.6;

    public static string Text()
    {
        var noise = new SeededSamples(Seed);
        var csv = new DemoCsv(
            Seed,
            "fill of Curlew at the pad: 2.5 L vessel with 0.8 L of water, regulator 38 bar gauge, valve shut at 36 bar gauge",
            "temperature is that of the air around the vessel; the logger ran 3 s before the valve was opened");
        csv.Line("time [s]", "pressure [bar gauge]", "temperature [°C]");

        const double ambient = 1.009, gasConstant = 287.05, gamma = 1.4, step = 0.005;
        double supplyK = AmbientCelsius + 273.15, volume = GasLitres / 1000, p = ambient * 1e5, kelvin = supplyK;
        var source = (RegulatorBar + ambient) * 1e5;
        var open = false;
        var shut = false;
        for (var tick = 0; tick <= 45 * 200; tick++)
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
            var heat = WallWattsPerKelvin * (supplyK - kelvin);
            p += step * (gamma - 1) / volume * (flow * gamma / (gamma - 1) * gasConstant * supplyK + heat);
            kelvin = p * volume / (gasConstant * (mass + flow * step));
        }

        return csv.ToString();
    }
}

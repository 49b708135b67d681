using NotebookKit.Numerics;

namespace NotebookKit.Logs.Tests.DemoData;

/// <summary>
/// An invented proof of Curlew's vessel: 4.56 L, 60 bar gauge working, 94.5 bar gauge proof, steps of 25, 50, 75, 90, 100 % (the last
/// pumped 0.9 bar past), then ten minutes at working pressure. And the evening a week before, given up at 40 bar gauge because the nozzle
/// dripped. Formulae of its own, so that it doesn't follow the library's models about.
/// </summary>
internal static class ProofLogDemo
{
    public const ulong Seed = 20260314;
    public const double VesselMillilitres = 4560, WallGrowthAtProofMillilitres = 47.0, PermanentMillilitres = 0.9,
        TrappedAirMillilitres = 4;
    public const double ProofBar = 94.5, PumpedToBar = 95.4, WorkingBar = 60, LeakMillilitresPerMinute = 0.010;
    public const double FittingMillilitres = 0.2;
    public const int FittingDropAtSeconds = 450;
    public const ulong FirstSeed = 20260307;
    public const double FirstLeakMillilitresPerMinute = 0.2, DripsFromBar = 28;

    private static readonly (double Bar, int Hold)[] Steps = [(23.6, 60), (47.2, 60), (70.9, 60), (85, 60), (PumpedToBar, 120), (60, 600),
        (0, 30)];

    private static readonly (double Bar, int Hold)[] FirstSteps = [(23.6, 60), (40, 180), (0, 30)];

    public static string Text() => Write(Steps, new SeededSamples(Seed), drips: false, new DemoCsv(
        Seed,
        "vessel: Curlew",
        "serial: C-1",
        "day: 2026-03-14",
        "hydrostatic proof of Curlew's vessel, 4.56 L, working pressure 60 bar gauge, proof pressure 94.5 bar gauge",
        "pumped a little past proof so that a fitting that settles doesn't take the hold below it",
        "hand pump, gauge 0 to 160 bar read at 0.05 bar, burette read at 0.1 mL; expansion is the water pumped in less the "
            + "water let out",
        "expansion at the end, with the pressure vented, is what stays: permanent expansion and water lost"));

    public static string FirstEveningText() => Write(FirstSteps, new SeededSamples(FirstSeed), drips: true, new DemoCsv(
        FirstSeed,
        "vessel: Curlew",
        "serial: C-1",
        "day: 2026-03-07",
        "hydrostatic proof of Curlew's vessel, given up at 40 bar gauge: four drops a minute at the nozzle's thread from 28 bar gauge on",
        "hand pump, gauge 0 to 160 bar read at 0.05 bar, burette read at 0.1 mL"));

    private static string Write((double Bar, int Hold)[] steps, SeededSamples noise, bool drips, DemoCsv csv)
    {
        csv.Line("time [s]", "pressure [bar gauge]", "temperature [°C]", "expansion [mL]");

        double bar = 0, lost = 0, highest = 0;
        var second = 0;
        void Row(bool gaugeOut)
        {
            highest = Math.Max(highest, bar);
            var celsius = 17.6 + 0.25 * (1 - Math.Exp(-second / 900.0)) + 0.02 * noise.Normal(second, 0);
            var pumped = VolumeFor(bar, highest) + lost;
            csv.Line(
                DemoCsv.Number(second, 0),
                gaugeOut ? "" : DemoCsv.Number(Math.Round((bar + 0.03 * noise.Normal(second, 1)) / 0.05) * 0.05, 2),
                second % 10 == 0 ? DemoCsv.Number(celsius, 2) : "",
                DemoCsv.Number(pumped + 0.04 * noise.Normal(second, 2), 1));
        }

        for (; second < 20; second++) Row(false);
        foreach (var (target, hold) in steps)
        {
            for (var rate = target > bar ? 1.2 : -1.5; Math.Abs(target - bar) > 1e-9; second++)
            {
                bar = rate > 0 ? Math.Min(target, bar + rate) : Math.Max(target, bar + rate);
                Row(false);
            }

            var until = second + hold;
            for (; second < until; second++)
            {
                // While it is held nothing is pumped: what the leak takes, the springs give up.
                if (bar > 1)
                {
                    var perMinute = !drips ? LeakMillilitresPerMinute : bar > DripsFromBar ? FirstLeakMillilitresPerMinute : 0;
                    var loss = perMinute / 60 * Math.Sqrt(bar / WorkingBar);
                    if (!drips && second == FittingDropAtSeconds) loss += FittingMillilitres;
                    lost += loss;
                    bar -= loss / Compliance(bar);
                }

                Row(!drips && second is >= 200 and < 206);
            }
        }

        return csv.ToString();
    }

    private static double VolumeFor(double bar, double highest) =>
        VesselMillilitres * bar / 21_800
        + WallGrowthAtProofMillilitres * bar / ProofBar
        + TrappedAirMillilitres * (1 - 1.013 / (1.013 + bar))
        + PermanentMillilitres * Math.Max(0, (highest - ProofBar / 2) / (ProofBar / 2));

    private static double Compliance(double bar) =>
        VesselMillilitres / 21_800 + WallGrowthAtProofMillilitres / ProofBar
            + TrappedAirMillilitres * 1.013 / ((1.013 + bar) * (1.013 + bar));
}

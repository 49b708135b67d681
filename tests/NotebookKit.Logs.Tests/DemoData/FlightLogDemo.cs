using NotebookKit.Numerics;

namespace NotebookKit.Logs.Tests.DemoData;

/// <summary>
/// An invented flight of Curlew from Ferry Flat, 35 m above sea level: a hard push by water and a softer one by air, coast with drag,
/// canopy, ground, as an altimeter's absolute pressure 20 times a second. Formulae of its own.
/// </summary>
internal static class FlightLogDemo
{
    public const ulong Seed = 20260316;
    public const double SiteMetres = 35, LaunchAtSeconds = 12.4, ClockRunsOnSeconds = 100;

    public static string Text()
    {
        var noise = new SeededSamples(Seed);
        var csv = new DemoCsv(
            Seed,
            "flight of Curlew from Ferry Flat, 35 m above sea level; 32 % water, 58 bar gauge",
            "the clock starts when the altimeter is armed, not at launch");
        csv.Line("time [s]", "pressure [hPa absolute]", "temperature [°C]");

        const double step = 0.001, gravity = 9.80665, water = 0.12, push = 0.58, descent = 6.3;
        double height = 0, speed = 0;
        var canopy = false;
        for (var tick = 0; tick <= (int)(ClockRunsOnSeconds / step); tick++)
        {
            var time = tick * step;
            if (tick % 50 == 0)
            {
                var row = tick / 50;
                var above = SiteMetres + height;
                var pascals = 101_640 * Math.Pow(1 - 0.0065 * above / 287.15, 5.25588) + 6 * noise.Normal(row, 0);
                csv.Line(
                    DemoCsv.Number(time, 2),
                    DemoCsv.Number(pascals / 100, 2),
                    row % 20 == 0 ? DemoCsv.Number(14.2 - 0.0065 * height + 0.05 * noise.Normal(row, 1), 1) : "");
            }

            var since = time - LaunchAtSeconds;
            if (since < 0 || (height <= 0 && since > 1)) continue;
            if (!canopy && speed < -2 && since > 1) canopy = true;
            var acceleration = since < water ? 61.5 / water
                : since < push ? 46.5 / (push - water)
                : canopy ? -gravity * (1 + speed * Math.Abs(speed) / (descent * descent)) : -gravity - 0.00102 * speed * Math.Abs(speed);
            speed += acceleration * step;
            height = Math.Max(0, height + speed * step);
        }

        return csv.ToString();
    }
}

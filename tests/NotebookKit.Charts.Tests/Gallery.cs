using NotebookKit.Charts.Engineering;
using NotebookKit.Charts.Notes;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Tests;

/// <summary>One of every named chart, over invented numbers with the shape of the real ones.</summary>
public static class Gallery
{
    public static IReadOnlyDictionary<string, Func<EngineeringChart>> All { get; } = new SortedDictionary<string,
        Func<EngineeringChart>>(StringComparer.Ordinal)
    {
        ["line"] = Lines,
        ["thrust"] = Thrust,
        ["height-speed"] = () => HeightSpeedChart.Draw(Time(240, 14),
            Column("Height", "m", 240, t => Math.Max(0, (70 * t) - (5 * t * t)), 14),
            Column("Speed", "m/s", 240, t => Math.Abs(70 - (10 * t)), 14), new EventLine(0.2, "water out"), new EventLine(7, "apogee")),
        ["fill"] = () => FillChart.Draw(Time(120, 180), Column("Pressure", "bar gauge", 120, t => 58 * (1 - Math.Exp(-t / 50)), 180),
            Column("Gas temperature", "°C", 120, t => 20 + (35 * Math.Exp(-Math.Pow((t - 60) / 60, 2))), 180), GaugePressure.FromBar(60),
            new EventLine(150, "valve shut")),
        ["margin"] = () => MarginChart.Draw(Column("Water left", "%", 100, t => t, 32),
            Column("Static margin", "calibres", 100, t => 2.4 - (0.06 * t) + (0.0014 * t * t), 32), 1.5),
        ["pareto"] = Pareto,
        ["parts"] = () => PartMarginsChart.Draw([("Wall", GaugePressure.FromBar(142)), ("Nozzle-end bond", GaugePressure.FromBar(104)),
            ("Closure plug", GaugePressure.FromBar(210)), ("Closure bond", GaugePressure.FromBar(118)),
            ("Boss thread", GaugePressure.FromBar(260))], GaugePressure.FromBar(55), GaugePressure.FromBar(82.5)),
        ["drag"] = () => DragShareChart.Draw(new Series("Speed", "m/s", [20, 60, 100, 140]),
            new Series("Friction", "-", [0.30, 0.25, 0.23, 0.22]), new Series("Nose and body form", "-", [0.03, 0.03, 0.03, 0.03]),
            new Series("Base", "-", [0.12, 0.12, 0.125, 0.13]), new Series("Fins", "-", [0.11, 0.10, 0.095, 0.09]),
            new Series("Fin edges", "-", [0.03, 0.03, 0.03, 0.03])),
        ["burst"] = () => BurstChart.Draw(new Series("Burst pressure", "bar gauge", Normal(5000, 128, 11, 7)),
            ("working", GaugePressure.FromBar(55)), ("MEOP", GaugePressure.FromBar(60.5)), ("proof", GaugePressure.FromBar(82.5)),
            ("B-basis", GaugePressure.FromBar(112))),
        ["contour"] = Contour,
        ["flutter"] = Flutter,
        ["overlay"] = Overlay,
        ["plan"] = () => TrackChart.Draw(Column("East of the pad", "m", 200, t => 40 * t * t, 1),
            Column("North of the pad", "m", 200, t => (25 * t) - (9 * t * t), 1)),
        ["space"] = () => FlightPathChart.Draw(Column("East of the pad", "m", 200, t => 40 * t * t, 1),
            Column("North of the pad", "m", 200, t => (25 * t) - (9 * t * t), 1),
            Column("Height above the pad", "m", 200, t => 900 * t * (1 - t), 1)),
        ["landings"] = Landings,
        ["log"] = () => LineChart.Draw("Leak rate", Time(200, 600),
            Column("Pressure lost", "mbar", 200, t => 0.2 * Math.Pow(1.012, t), 600)) is var c ? c with { Y = c.Y.Logarithmic() }
            : throw new InvalidOperationException(),
    };

    public static Series Time(int count, double end) => Column("Time", "s", count, t => t, end);

    public static Series Column(string name, string unit, int count, Func<double, double> f, double end) =>
        new(name, unit, [.. Enumerable.Range(0, count).Select(i => f(end * i / (count - 1)))]);

    private static EngineeringChart Lines() => LineChart.Draw(
        "Pressure in the vessel by expansion model", Time(200, 0.25), new Axis("Pressure", "bar gauge"),
        Column("isothermal", "bar gauge", 200, t => 55 / (1 + (6 * t)), 0.25),
            Column("adiabatic", "bar gauge", 200, t => 55 / Math.Pow(1 + (6 * t), 1.4), 0.25),
        Column("polytropic, n = 1.2", "bar gauge", 200, t => 55 / Math.Pow(1 + (6 * t), 1.2), 0.25),
            Column("moist air", "bar gauge", 200, t => 55 / Math.Pow(1 + (6 * t), 1.1), 0.25));

    private static EngineeringChart Thrust() => ThrustChart.Draw(
        Time(300, 0.32), Column("Thrust", "N", 300, t => t < 0.2 ? 900 * Math.Exp(-4 * t) : 330 * Math.Exp(-30 * (t - 0.2)), 0.32),
        new EventLine(0.2, "water out"), new EventLine(0.27, "unchoked"));

    private static EngineeringChart Pareto()
    {
        var noise = Normal(60, 0, 1, 3);
        double[] mass = [.. Enumerable.Range(0, 60).Select(i => 120 + (4.0 * i) + (6 * noise[i]))];
        double[] pressure = [.. Enumerable.Range(0, 60).Select(i => 30 + (1.1 * i) + (9 * noise[59 - i]))];
        string[] reasons = [.. Enumerable.Range(0, 60).Select(i => i % 7 == 3 ? "sleeve jams on this diameter" : "")];
        return ParetoChart.Draw("Every layup in stock", new Series("Vessel mass", "g", mass),
            new Series("Rated pressure", "bar gauge", pressure), [.. Enumerable.Range(0, 60).Select(i => $"L{i}")], reasons);
    }

    private static EngineeringChart Contour()
    {
        var (x, y) = (Column("Water fraction", "%", 40, t => 5 + t, 60), Column("Nozzle bore", "mm", 40, t => 6 + t, 12));
        return ContourChart.Draw("Apogee by fill and nozzle", x, y,
            Grid("Apogee", "m", x, y, (a, b) => 240 * Math.Exp(-Math.Pow((a - 31) / 22, 2) - Math.Pow((b - 12) / 7, 2))));
    }

    private static EngineeringChart Flutter()
    {
        var (x, y) = (Column("Fin thickness", "mm", 40, t => 0.8 + t, 2.2), Column("Fin span", "mm", 40, t => 40 + t, 80));
        return FlutterChart.Draw(x, y, Grid("Flutter margin", "-", x, y, (a, b) => 1.5 * Math.Pow(a / 1.5, 1.5) * Math.Pow(70 / b, 1.2)),
            1.5);
    }

    private static EngineeringChart Overlay()
    {
        var t = Time(150, 12);
        var height = Column("Height", "m", 150, s => (60 * s) - (5 * s * s), 12);
        var noise = Normal(60, 0, 2.5, 11);
        return OverlayChart.Draw(
            "Height, flight of the demo log", t, height,
            Column("Time", "s", 60, s => s, 11), new Series("Height", "m",
                [.. Column("", "", 60, s => (58 * s) - (4.95 * s * s), 11).Values.Select((v, i) => v + noise[i])]),
            height with { Name = "low", Values = [.. height.Values.Select(v => v * 0.92)] },
                height with { Name = "high", Values = [.. height.Values.Select(v => v * 1.08)] });
    }

    private static EngineeringChart Landings()
    {
        var (a, b) = (Normal(1000, 0, 1, 5), Normal(1000, 0, 1, 6));
        return LandingChart.Draw(
            new Series("East of the pad", "m", [.. a.Select((v, i) => 60 + (35 * v) + (8 * b[i]))]),
                new Series("North of the pad", "m", [.. b.Select((v, i) => 20 + (15 * v) + (10 * a[i]))]),
            [new ScatterEllipse("50 %", 60, 20, 42, 18, 72), new ScatterEllipse("90 %", 60, 20, 77, 33, 72),
                new ScatterEllipse("99 %", 60, 20, 109, 47, 72)],
            [(-120, -90), (200, -110), (220, 130), (-100, 140)]);
    }

    private static Series Grid(string name, string unit, Series x, Series y, Func<double, double, double> f) =>
        new(name, unit, [.. from row in y.Values from column in x.Values select f(column, row)]);

    private static double[] Normal(int count, double mean, double deviation, ulong seed)
    {
        // A small generator of its own keeps the gallery the same on every runtime.
        var state = seed;
        return [.. Enumerable.Range(0, count).Select(_ => mean + (deviation * (Enumerable.Range(0, 12).Sum(_ => Next()) - 6)))];

        double Next()
        {
            state = (state * 6364136223846793005UL) + 1442695040888963407UL;
            return (state >> 11) / (double)(1UL << 53);
        }
    }
}

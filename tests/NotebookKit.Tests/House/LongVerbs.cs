using NotebookKit.Clearance;
using NotebookKit.Clearance.Learned;
using NotebookKit.Filling.ByHand;
using NotebookKit.Flight.Dispersion;
using NotebookKit.Flight.RigidBody;
using NotebookKit.Flight.Staging;
using NotebookKit.Launching.Heating;
using NotebookKit.Quantities;
using NotebookKit.Tests.Clearance;
using NotebookKit.Tests.Flight;
using NotebookKit.Tests.Propulsion;
using UnitsNet;

namespace NotebookKit.Tests.House;

/// <summary>Every public verb that may take long, small enough for a test. A new one joins here.</summary>
internal static class LongVerbs
{
    private static readonly Vehicle Trainer = SampleVehicles.Trainer;
    private static readonly TwoStageVehicle Pair = SampleVehicles.TwoStages;
    private static readonly Vehicle Proved = CardFixture.TestVehicle;
    private static readonly LaunchSite Site = SampleVehicles.Breezy;
    private static readonly PredictedPart[] Parts = [new("wall", 180.BarGauge()), new("nozzle end", 150.BarGauge()),
        new("forward end", 260.BarGauge())];

    private static readonly VerticalFlight Upward = new(
        FiringExamples.Charge, FiringExamples.Nozzle, 800.Grams(), DragCurve.Constant(0.4, 74.Millimetres()), LaunchSite.SeaLevel);

    private static readonly PadFill Plain = new()
    {
        Chamber = new Chamber(2.5.Litres(), 66.Millimetres(), 50.BarGauge()),
        Supply = 45.BarGauge(),
        Restrictor = new SonicRestrictor(0.3.LitresPerSecondBar(), 0.35),
        Target = 40.BarGauge(),
        WaterFraction = 32.Percent(),
    };

    private static readonly PadFill Walled = Plain with { Heat = FillHeat.Wall };

    private static readonly LayupSearch Layups = new(
        Vessels.Samples.Trainer, [Vessels.Samples.Stock.Braid("carbon sleeve 65 mm light"),
            Vessels.Samples.Stock.Braid("carbon sleeve 65 mm heavy")],
        [new HoopWrap(Vessels.Samples.Stock.Cloth("carbon tape 150 g")), new ClothWrap(Vessels.Samples.Stock.Cloth("glass plain 80 g"))]);

    private static readonly BurstDistribution Sampled = Vessels.Samples.ShortChamber.SampleBursts(1000);

    /// <summary>The verbs by name.</summary>
    public static IReadOnlyDictionary<string, Action> All { get; } = new Dictionary<string, Action>(StringComparer.Ordinal)
    {
        ["fire on the stand"] = () => FiringExamples.Firing.Fire(),
        ["fly straight up"] = () => Upward.Fly(),
        ["the top of a flight straight up"] = () => Upward.Peak(),
        ["compare flow models"] = () => Upward.CompareFlows(),
        ["best fill"] = () => Upward.BestFill(),
        ["best fill and throat"] = () => Upward.BestFill(9.Millimetres(), 15.Millimetres()),
        ["map of flights"] = () => Map(4),
        ["fly"] = () => Trainer.Fly(Site),
        ["fly in six degrees"] = () => Trainer.FlySixDegrees(Site),
        ["fly two stages"] = () => Pair.Fly(Site),
        ["fly two stages in six degrees"] = () => Pair.FlySixDegrees(Site),
        ["cost of delay"] = () => Pair.CostOfDelay(Site, 2.Seconds()),
        ["fly a free body"] = () => new FreeBodyFlight(Ball, new() { Altitude = 500.Metres() }).Run(),
        ["disperse"] = () => Trainer.Disperse(Site, new(), 10, 1),
        ["disperse in six degrees"] = () => Trainer.Disperse(Site, new(), 3, 1, sixDegrees: true),
        ["disperse a shard"] = () => Trainer.DisperseShard(Site, new(), 20, 1, 1, 2),
        ["disperse two stages"] = () => Pair.Disperse(Site, new(), 4, 1),
        ["disperse a shard of two stages"] = () => Pair.DisperseShard(Site, new(), 8, 1, 1, 2),
        ["disperse many"] = () => Trainer.DisperseMany(Site, new(), 10, 1),
        ["disperse many of two stages"] = () => Pair.DisperseMany(Site, new(), 4, 1),
        ["check a design"] = () => DesignFiles.DesignFixture.Curlew.With("rail friction", "0.2").Check(),
        ["compare two designs"] = () => DesignFiles.DesignFixture.Curlew.With("rail friction", "0.2").Compare(
            DesignFiles.DesignFixture.Curlew.With("rail friction", "0.3")),
        ["sweep a design"] = () => DesignFiles.DesignFixture.Curlew.Sweep("rail friction=0.1; 0.2; 0.3"),
        ["from tests to landing"] = () => Proved.FromTests(CardFixture.Built, CardFixture.Ground, VesselEvidence.Of(),
            Vessels.Samples.Twins(CardFixture.Built)),
        ["wind limits"] = () => Proved.WindLimits(CardFixture.Ground),
        ["fit a flight log"] = () => Logged().Fit(),
        ["fit flight logs together"] = () => new FlightLogs { Flights = [Logged(), Logged() with { Name = "again" }] }.Fit(),
        ["fit a fill log"] = () => Gauged().Fit(),
        ["fill by sums"] = () => Plain.Run(),
        ["fill with heat to the wall"] = () => Walled.Run(),
        ["fill in a time"] = () => Walled.InTime(60.Seconds()),
        ["vent"] = () => Abort.Run(),
        ["fill a network of a pad"] = () => Filling.Networks.PadSamples.TwoStages.Fill(10.Seconds()),
        ["plan a fill by hand"] = () => Hand().Plan(),
        ["fit a pulsed fill log"] = () => Pulsed().Fit(),
        ["wait in the sun"] = () => Waiting.Run(),
        ["launches from cylinders"] = () => Boot(10).Run(),
        ["search layups"] = () => Layups.Run(),
        ["sample bursts"] = () => Vessels.Samples.ShortChamber.SampleBursts(1000),
        ["what drives the bursts"] = () => _ = Sampled.Drivers,
        ["learn the efficiency"] = () => VesselEvidence.Of().Learn(Vessels.Samples.ShortChamber),
        ["learn of each part"] = () => Learnt(1),
        ["choose the next test"] = () => Learnt(1).NextTest(new TestOption("burst", Duration.FromHours(3), [Parts[1]])),
        ["rate a vessel"] = () => Vessels.Samples.ShortChamber.Rate(),
        ["rate by risk"] = () => Vessels.Samples.ShortChamber.Rate(RuleSet.ByRisk(0.01)),
        ["next test for a rating"] = () => _ = Vessels.Samples.ShortChamber.Rate().NextTest,
        ["nest pieces"] = () => Nest(4),
        ["plan a calendar"] = () => Calendar(2),
        ["cant of fins from a jig"] = () => new FinJig(0.5.Millimetres(), 80.Millimetres()).Cant(3),
    };

    /// <summary>Verbs that grow, with how many looks more at least the larger one has to take.</summary>
    public static IReadOnlyDictionary<string, (Action Small, Action Large, int More)> Growing { get; } =
        new Dictionary<string, (Action, Action, int)>(StringComparer.Ordinal)
        {
            ["flights of a dispersion"] = (() => Trainer.Disperse(Site, new(), 10, 1), () => Trainer.Disperse(Site, new(), 20, 1), 10 * 20),
            ["flights of two stages"] = (() => Pair.Disperse(Site, new(), 4, 1), () => Pair.Disperse(Site, new(), 8, 1), 4 * 20),
            ["samples of bursts"] = (
                () => Vessels.Samples.ShortChamber.SampleBursts(1000), () => Vessels.Samples.ShortChamber.SampleBursts(3000), 2000),
            ["cells of a map"] = (() => Map(4), () => Map(8), 48 * 20),
            ["tests of parts"] = (() => Learnt(1), () => Learnt(6), 5 * Parts.Length),
            ["tests to choose from"] = (() => Choose(1), () => Choose(2), 64 * 400),
            ["layups"] = (() => (Layups with { MaximumSleeves = 1, MaximumWraps = 1 }).Run(), () => Layups.Run(), 20),
            ["orders of a nest"] = (() => Nest(4), () => Nest(12), 8 * 6),
            ["tasks of a calendar"] = (() => Calendar(2), () => Calendar(6), 64 * 4),
            ["launches"] = (() => Boot(10).Run(), () => Boot(40).Run(), 10),
            ["seconds of a free body"] = (() => Falling(2), () => Falling(8), 5),
        };

    private static FreeBody Ball => new(
        "ball", 1.Kilograms(), MassMomentOfInertia.FromKilogramSquareMeters(0.01), MassMomentOfInertia.FromKilogramSquareMeters(0.01),
        MassMomentOfInertia.FromKilogramSquareMeters(0.01)) { Drag = 0.4, ReferenceArea = 0.01.SquareMetres() };

    private static Vent Abort => new()
    {
        Chamber = new Chamber(2.5.Litres(), 66.Millimetres(), 45.BarGauge()),
        Restrictor = new Orifice(1.Millimetres(), 0.8),
        From = 40.BarGauge(),
        WaterFraction = 32.Percent(),
        Port = PortPosition.AboveWater,
    };

    private static void Map(int points) => new FlightMap(
        Upward, MapAxis.WaterFraction(10.Percent(), 60.Percent(), points),
            MapAxis.Throat(8.Millimetres(), 16.Millimetres(), points)).Compute();

    private static void Falling(double seconds) =>
        new FreeBodyFlight(Ball, new() { Altitude = 5000.Metres() }) { Duration = seconds.Seconds(), Interval = 0.1.Seconds() }.Run();

    private static PartLearning Learnt(int tests) =>
        PartEvidence.Of([.. Enumerable.Range(0, tests).Select(i => new PartBurst($"{i}", (150 + i).BarGauge(), "wall",
            Parts))]).Learn(Parts);

    private static void Choose(int options) => Learnt(1).NextTest(
        [.. Enumerable.Range(0, options).Select(i => new TestOption($"burst {i}", Duration.FromHours(3), [Parts[i]]))]);

    private static void Nest(int tries) => new SheetNest(600.Millimetres(), 300.Millimetres(),
        [new("fin", Fin, 6)]) { Tries = tries }.Place();

    private static SheetPoint[] Fin =>
    [
        new(0.Millimetres(), 0.Millimetres()), new(60.Millimetres(), 85.Millimetres()), new(130.Millimetres(), 85.Millimetres()),
            new(130.Millimetres(), 0.Millimetres()),
    ];

    private static void Calendar(int tasks) => new BuildCalendar(
        [.. Enumerable.Range(0, tasks).Select(i => new BuildTask($"{i}", 1.Hours(), 12.Hours(), []))],
        new DateTime(2026, 3, 2, 18, 30, 0, DateTimeKind.Unspecified), BenchHours.Evenings).Plan();

    private static LaunchBudget Boot(double litres) => new()
    {
        Cylinders = [new("A", litres.Litres(), 200.BarGauge())],
        Chamber = new Chamber(2.5.Litres(), 66.Millimetres(), 45.BarGauge()),
        Target = 40.BarGauge(),
        WaterFraction = 32.Percent(),
    };

    private static HandFill Hand() => new() { Fill = Walled, Actions = [HandAction.OpenTo(20.BarGauge()), HandAction.Hold(10.Seconds())] };

    private static PulsedFillLog Pulsed()
    {
        double[] time = [.. Enumerable.Range(0, 12).Select(i => 2.0 * i)];
        return new()
        {
            Fill = Plain, Openings = [new(0.Seconds(), 10.Seconds())], Time = new("Time", "s", time),
            Pressure = new("Pressure", "bar gauge", [.. time.Select(t => t < 10 ? t : 10 - (0.01 * t))]),
        };
    }

    private static WaitInSun Waiting => new()
    {
        Filled = new(40.BarGauge(), 20.Celsius()), Chamber = Plain.Chamber, Sun = new(30.Celsius(), Irradiance.FromWattsPerSquareMeter(900),
            0.9, 0.9, HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(10)),
    };

    // The shapes of logs, by hand: what is fitted doesn't matter here.
    private static FillLog Gauged()
    {
        double[] time = [.. Enumerable.Range(0, 60).Select(i => (double)i)];
        return new()
        {
            Fill = Plain,
            Time = new("Time", "s", time),
            Pressure = new("Pressure", "bar gauge", [.. time.Select(t => t < 3 ? 0 : t < 43 ? t - 3 : 40 - 0.05 * (t - 43))]),
        };
    }

    private static FlightLog Logged()
    {
        double[] time = [.. Enumerable.Range(0, 150).Select(i => i / 10.0)];
        double Bar(double t) => t < 4 ? 1.01325 : 1.01325 - 0.012 * (1 - Math.Pow((t - 8) / 4, 2));
        return new() { Vehicle = Trainer, Site = Site, Name = "by hand", Time = new("Time", "s", time),
            Pressure = new("Static pressure", "bar absolute", [.. time.Select(Bar)]) };
    }
}

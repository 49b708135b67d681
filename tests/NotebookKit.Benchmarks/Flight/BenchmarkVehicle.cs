using NotebookKit.Quantities;
using NotebookKit.Recovery;

namespace NotebookKit.Benchmarks.Flight;

/// <summary>An invented trainer of 70 mm with a 3 l vessel, in a breeze, down to the ground under its canopy.</summary>
internal static class BenchmarkVehicle
{
    public static Vehicle Trainer { get; } = new(
        "Trainer",
        new FinnedBody(
            [Nose.TangentOgive(210.Millimetres(), 70.Millimetres()), new BodyTube(1.39.Metres(), 70.Millimetres())],
            [FinSet.Trapezoidal(3, 130.Millimetres(), 70.Millimetres(), 90.Millimetres(), 60.Millimetres(), 2.Millimetres(), 1.46.Metres())
                with { Cant = 0.2.Degrees() }]),
        new MassBudget(
        [
            new("vessel", 520.Grams(), 1.12.Metres()) { Extent = 0.9.Metres(), Diameter = 70.Millimetres() },
            new("nose and ballast", 260.Grams(), 0.12.Metres()),
            new("canopy and timer", 240.Grams(), 0.4.Metres()) { Extent = 0.2.Metres(), Diameter = 50.Millimetres(), Solid = true },
            new("fins", 110.Grams(), 1.53.Metres()) { Extent = 0.1.Metres(), Diameter = 150.Millimetres() },
        ]),
        new Charge(new Chamber(3.Litres(), 66.Millimetres(), 60.BarGauge()), 33.Percent(), 40.BarGauge(), 15.Celsius()),
        new Nozzle(10.Millimetres()),
        1.58.Metres())
    {
        Canopy = new Canopy(CanopyType.FlatCircular, 0.9.Metres()),
    };

    /// <summary>An invented booster of 90 mm with a 5 l vessel below the trainer.</summary>
    public static TwoStageVehicle TwoStages { get; } = new("Pair", new(
        "Lifter",
        new FinnedBody(
            [Nose.Cone(90.Millimetres(), 90.Millimetres()), new BodyTube(1.15.Metres(), 90.Millimetres())],
            [FinSet.Trapezoidal(4, 180.Millimetres(), 100.Millimetres(), 120.Millimetres(), 80.Millimetres(), 3.Millimetres(),
                1.05.Metres())]),
        new MassBudget(
        [
            new("vessel", 800.Grams(), 0.7.Metres()) { Extent = 1.0.Metres(), Diameter = 90.Millimetres() },
            new("fins", 320.Grams(), 1.14.Metres()) { Extent = 0.15.Metres(), Diameter = 210.Millimetres() },
            new("canopy", 120.Grams(), 0.15.Metres()),
        ]),
        new Charge(new Chamber(5.Litres(), 86.Millimetres(), 60.BarGauge()), 33.Percent(), 40.BarGauge(), 15.Celsius()),
        new Nozzle(15.Millimetres()),
        1.22.Metres())
    {
        Canopy = new Canopy(CanopyType.FlatCircular, 0.8.Metres()),
    }, Trainer);

    public static LaunchSite Site { get; } = LaunchSite.SeaLevel with
    {
        Rail = new(2.Metres()),
        Wind = WindProfile.PowerLaw(5.MetresPerSecond(), 10.Metres()),
        Ceiling = 250.Metres(),
        Field = FlyingField.Circle(300.Metres()),
    };
}

using NotebookKit.Quantities;
using NotebookKit.Recovery;

namespace NotebookKit.Tests.Flight;

/// <summary>Vehicles and sites that several tests share; invented, of the size a club builds.</summary>
internal static class SampleVehicles
{
    /// <summary>70 mm trainer with a 3 l vessel at 40 bar; a whole vehicle in one cell.</summary>
    public static Vehicle Trainer { get; } = new(
        "Trainer",
        new FinnedBody(
            [Nose.TangentOgive(210.Millimetres(), 70.Millimetres()), new BodyTube(1.39.Metres(), 70.Millimetres())],
            [FinSet.Trapezoidal(3, 130.Millimetres(), 70.Millimetres(), 90.Millimetres(), 60.Millimetres(), 2.Millimetres(),
                1.46.Metres())]),
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

    /// <summary>90 mm booster with a 5 l vessel at 40 bar; its nose becomes the shoulder below a 70 mm sustainer.</summary>
    public static Vehicle Booster { get; } = new(
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
    };

    public static TwoStageVehicle TwoStages { get; } = new("Pair", Booster, Trainer);

    public static LaunchSite Calm { get; } = LaunchSite.SeaLevel with { Rail = new(2.Metres()), Wind = WindProfile.Calm };

    public static LaunchSite Breezy { get; } = Calm with { Wind = WindProfile.PowerLaw(5.MetresPerSecond(), 10.Metres(),
        from: 270.Degrees()) };
}

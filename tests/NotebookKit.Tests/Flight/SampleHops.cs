using NotebookKit.Quantities;

namespace NotebookKit.Tests.Flight;

/// <summary>Vehicles whose thrust is above their weight at release and below it soon after; invented.</summary>
internal static class SampleHops
{
    public static Charge Charge { get; } = new(new Chamber(3.4.Litres(), 66.Millimetres(), 60.BarGauge()), 68.Percent(), 10.4.BarGauge(),
        15.Celsius());

    public static Nozzle Nozzle { get; } = new(6.6.Millimetres());

    public static VerticalFlight Vertical { get; } =
        new(Charge, Nozzle, 1.46.Kilograms(), DragCurve.Constant(0, 70.Millimetres()), LaunchSite.SeaLevel) { Name = "Hopper",
            Flow = FlowModel.Plain };

    /// <summary>The same as a whole vehicle, without a canopy that comes out.</summary>
    public static Vehicle Vehicle { get; } = SampleVehicles.Trainer with
    {
        Name = "Hopper",
        Charge = Charge,
        Nozzle = Nozzle,
        Parts = new(
        [
            .. SampleVehicles.Trainer.Parts.Parts, new("ballast", 330.Grams(), 0.3.Metres()),
        ]),
        Deployment = Deployment.None,
    };

    /// <summary>A rail so short that it leaves it.</summary>
    public static LaunchSite ShortRail { get; } = SampleVehicles.Calm with { Rail = new(0.3.Metres()) };

    public static VerticalFlight At(double bar) => Vertical with { Charge = Charge with { Pressure = bar.BarGauge() } };
}

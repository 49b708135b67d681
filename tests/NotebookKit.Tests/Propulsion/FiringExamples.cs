using NotebookKit.Quantities;

namespace NotebookKit.Tests.Propulsion;

/// <summary>An invented vessel for tests that only need any vessel.</summary>
internal static class FiringExamples
{
    public static Chamber Chamber { get; } = new(2.Litres(), 70.Millimetres(), 55.BarGauge());

    public static Charge Charge { get; } = new(Chamber, 33.Percent(), 40.BarGauge(), 20.Celsius());

    public static Nozzle Nozzle { get; } = new(12.Millimetres());

    public static StaticFiring Firing { get; } = new(Charge, Nozzle, AbsolutePressure.StandardSeaLevel);
}

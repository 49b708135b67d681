using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Shells;

/// <summary>Checks of the numbers that every shell formula takes.</summary>
internal static class ShellInput
{
    public static double Radius(Length radius, string name = "radius") =>
        new ValidRange<Length>(1.Millimetres(), 10_000.Millimetres()).Check(radius, name, "Vessels here are 10 to 500 mm across.").Meters;

    public static double Wall(Length wall, string name = "wall") =>
        new ValidRange<Length>(1.Micrometres(), 1000.Millimetres()).Check(wall, name, "A wall has a thickness above nothing.").Meters;

    public static double Stress(Pressure stress, string name = "stress") =>
        new ValidRange<Pressure>(0.01.Megapascals(), 20_000.Megapascals()).Check(stress, name,
            "Give the strength or the allowable stress of the material.").Pascals;

    public static double Pressure(GaugePressure pressure, string name = "pressure") =>
        new ValidRange<GaugePressure>(GaugePressure.Zero, 2000.BarGauge()).Check(pressure, name,
            "Give the pressure inside above ambient.").Pascals;

    public static double Efficiency(double efficiency) =>
        new ValidRange<double>(0.1, 1).Check(efficiency, "joint efficiency", "1 is a seamless shell.");
}

using NotebookKit.Quantities;
using NotebookKit.Tests.Aerodynamics;

namespace NotebookKit.Tests.Flight;

/// <summary>Airframes that several tests share; masses invented.</summary>
internal static class SampleAirframes
{
    public static Airframe ThreeFins { get; } = new(
        SampleBodies.ThreeFins,
        new MassBudget(
        [
            new MassPart("Nose and recovery", 350.Grams(), 300.Millimetres()) { Extent = 500.Millimetres(), Diameter = 60.Millimetres() },
            new MassPart("Vessel", 700.Grams(), 1150.Millimetres()) { Extent = 1.1.Metres(), Diameter = 60.Millimetres(),
                Basis = MassBasis.Weighed },
            new MassPart("Fins", 90.Grams(), 1740.Millimetres()) { Extent = 80.Millimetres(), Diameter = 115.Millimetres() },
        ]),
        new WaterChamber(2.5.Litres(), 56.Millimetres(), 1.75.Metres()));
}

using NotebookKit.Launching;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Published.Launching;

public class WindCases
{
    [Fact]
    [PublishedCase("L36", "EN 1991-1-4, open calculation sheet: 27 m/s, category I, 3.5 m: 0.989 kN/m²")]
    public void Peak_pressure_of_a_low_thing() =>
        Tolerance.Relative(0.989, PeakWind.PeakPressure(27.MetresPerSecond(), 0.01.Metres(), 3.5.Metres()).Kilopascals, 5e-4);

    [Theory]
    [InlineData(77.36, 39.624, 0.098448, 1.65751)]
    [InlineData(28, 35.659, 0.109393, 1.40333)]
    [PublishedCase("L37", "EN 1991-1-4, open sheet: 25 m/s, category 0 (0.003 m), two heights")]
    public void Mean_speed_turbulence_and_peak_pressure(double height, double mean, double turbulence, double kilopascals)
    {
        Tolerance.Relative(mean, PeakWind.MeanSpeed(25.MetresPerSecond(), 0.003.Metres(), height.Metres()).MetersPerSecond, 5e-4);
        Tolerance.Relative(turbulence, PeakWind.Turbulence(0.003.Metres(), height.Metres()), 5e-4);
        Tolerance.Relative(kilopascals, PeakWind.PeakPressure(25.MetresPerSecond(), 0.003.Metres(), height.Metres()).Kilopascals, 5e-4);
    }

    [Theory]
    [InlineData(3, false, 0.85)]
    [InlineData(6.1, false, 0.90)]
    [InlineData(3, true, 1.03)]
    [PublishedCase("L39", "ASCE 7-10, open procedure sheet: exposure coefficients; 20 m/s of gust on a round thing: 198 Pa")]
    public void Exposure(double height, bool overWater, double printed) =>
        Tolerance.Absolute(printed, PeakWind.Exposure(height.Metres(), overWater), 0.005);

    [Fact]
    [PublishedCase("L39", "ASCE 7-10, the same sheet: velocity pressure at 20 m/s")]
    public void Velocity_pressure() =>
        Tolerance.Relative(197.999, PeakWind.VelocityPressure(20.MetresPerSecond(), 2.Metres()).Pascals, 0.005);

    [Theory]
    [InlineData(5, 1.41257813, 2.77695)]
    [InlineData(8, 3.6162, 1.08475)]
    [InlineData(12, 8.13645, 0.48211)]
    [PublishedCase("L40", "Overturning of a cylinder of 0.1 m by 1.5 m, C_d 0.82, 2 kg on a base of 0.4 m, computed")]
    public void Tip_over(double wind, double moment, double factor)
    {
        StandingWind standing = new()
        {
            Wind = wind.MetresPerSecond(), Diameter = 0.1.Metres(), Height = 1.5.Metres(), Mass = 2.Kilograms(), Base = 0.4.Metres(),
            DragCoefficient = 0.82,
        };
        var result = standing.Run();
        Tolerance.Relative(moment, result.Tipping.NewtonMeters, 1e-6);
        Tolerance.Relative(3.92266, result.Holding.NewtonMeters, 1e-6);
        Tolerance.Relative(factor, result.Factor, 1e-5);
        Tolerance.Relative(8.33209, result.TipsAt.MetersPerSecond, 1e-6);
        // With the hold-down that it asks for the factor is two.
        if (result.HoldDownNeeded.Newtons > 0)
            Tolerance.Relative(2, (standing with { HoldDown = result.HoldDownNeeded }).Run().Factor, 1e-9);
    }

    [Theory]
    [InlineData(1, 0.64)]
    [InlineData(2, 0.68)]
    [InlineData(5, 0.74)]
    [InlineData(10, 0.82)]
    [InlineData(20, 0.91)]
    [InlineData(40, 0.98)]
    [PublishedCase("L40", "F. M. White, Fluid Mechanics, table 7.3, drag of short cylinders (from memory; 2, 5, 10 and 40 read in "
        + "C. Matthews, Aeronautical Engineer's Data Book, 2002, fig. 5.13, which has 0.63 for 1)")]
    public void Drag_of_short_cylinders(double slenderness, double printed) => Tolerance.Absolute(printed, new StandingWind
    {
        Wind = 5.MetresPerSecond(), Diameter = 0.1.Metres(), Height = (0.1 * slenderness).Metres(), Mass = 2.Kilograms(),
            Base = 0.4.Metres(),
    }.DragOrCylinder, 1e-12);
}

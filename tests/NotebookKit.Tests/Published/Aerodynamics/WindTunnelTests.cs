using NotebookKit.Aerodynamics;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Published.Aerodynamics;

/// <summary>
/// A sounding rocket at half scale in a wind tunnel: two lengths, fins on and off, Mach 0.6 to 0.9, transition fixed by grit, 9.8 million
/// Reynolds a metre. The report prints plots, no tables; they were read by others on enlargements with an open record of how: C_N ± 0.02
/// (the report itself claims ± 0.03), centre of pressure ± 0.3 % of the length, axial force ± 0.002. The nose, given by coordinates, is the
/// power series of its volume; the double-wedge fins are plates of their root thickness; the lip of the base is left out.
/// </summary>
public class WindTunnelTests
{
    private const string Report = "J. C. Ferris, NASA TN D-4013, 1967, static stability of a single-stage sounding rocket, Mach 0.60 to 1.20; read from its plots";

    private static readonly Length Diameter = Length.FromInches(2.25);

    // Fig. 7(b) and 9(b): slope of the fitted line. The crossflow of the body at the plotted angles belongs into it, and is fitted the same way.
    // 10 %: what the literature claims of the method; 0.03 to 0.04 in C_N over seven degrees are 3 % of it.
    [Theory]
    [PublishedCase("TN D-4013", Report)]
    [InlineData("short", 0.6, new[] { -2.98, -0.467, -2.06, -0.267, -0.03, 0.032, 2.0, 0.448, 4.03, 0.915 })]
    [InlineData("short", 0.8, new[] { -3.05, -0.41, -2.09, -0.238, -0.06, 0.044, 1.97, 0.393, 4.0, 0.841 })]
    [InlineData("short", 0.9, new[] { -3.02, -0.41, -2.07, -0.231, -0.03, 0.106, 2.01, 0.407, 4.02, 0.888 })]
    [InlineData("long", 0.6, new[] { -3.73, -0.615, -0.08, 0.004, 4.02, 0.892 })]
    [InlineData("long", 0.8, new[] { -3.81, -0.567, -0.07, 0.052, 4.06, 0.892 })]
    [InlineData("long", 0.9, new[] { -3.81, -0.649, -0.09, 0.083, 4.07, 0.972 })]
    public void Normal_force_slope_with_fins(string model, double mach, double[] points)
    {
        var (angles, measured) = Columns(points);
        Tolerance.Relative(Slope(angles, measured), Slope(angles, NormalForces(Rocket(model, fins: true), mach, angles)), 0.10);
    }

    // The body alone pushes little, and its points are known to 0.036: the line through them to twice its standard error. Without the cross
    // flow, by slender-body theory alone, it would be far too little.
    [Theory]
    [PublishedCase("TN D-4013", Report)]
    [InlineData("short", 0.6, new[] { -3.04, -0.013, -2.06, -0.02, -0.03, -0.008, 2.0, 0.098, 4.03, 0.164 })]
    [InlineData("short", 0.8, new[] { -3.04, -0.017, -2.08, -0.004, -0.05, 0.027, 1.96, 0.059, 3.99, 0.17 })]
    [InlineData("long", 0.6, new[] { -3.73, -0.092, -0.08, 0.004, 4.02, 0.202 })]
    [InlineData("long", 0.8, new[] { -3.75, -0.045, -0.07, 0.017, 4.06, 0.212 })]
    public void Normal_force_slope_of_the_body_alone(string model, double mach, double[] points)
    {
        var (angles, measured) = Columns(points);
        var (body, expected) = (Rocket(model, fins: false), Slope(angles, measured));
        var mean = angles.Average();
        var error = 0.036 / Math.Sqrt(angles.Sum(a => (a - mean) * (a - mean)));
        Tolerance.Absolute(expected, Slope(angles, NormalForces(body, mach, angles)), 2 * error);
        Assert.True(expected - (body.NormalForce(mach).TotalSlope * Math.PI / 180) > 2 * error);
    }

    // Figs. 11 and 12, over -2 to 2 degrees: within a calibre, which is 5 % of the short and 4 % of the long body's length. Where it parts most
    // (the short body at Mach 0.8 and 0.9) the prediction lies aft of the measurement, on the unsafe side: what a margin of a calibre is for.
    [Theory]
    [PublishedCase("TN D-4013", Report)]
    [InlineData("short", 0.6, 74.7)]
    [InlineData("short", 0.8, 70.9)]
    [InlineData("short", 0.9, 71.6)]
    [InlineData("long", 0.6, 76.8)]
    [InlineData("long", 0.8, 75.6)]
    [InlineData("long", 0.9, 76.2)]
    public void Centre_of_pressure(string model, double mach, double percentOfLength)
    {
        var rocket = Rocket(model, fins: true);
        double[] angles = [-2, -1, 0, 1, 2];
        var moments = angles.Select(a => a == 0 ? 0 : CentreAt(rocket, mach, a) * NormalForces(rocket, mach, [a])[0]).ToArray();
        var centre = Slope(angles, moments) / Slope(angles, NormalForces(rocket, mach, angles));
        Tolerance.Absolute(percentOfLength / 100 * rocket.Length.Meters, centre, Diameter.Meters);
    }

    // Axial force without the base, which had a sting behind it. The band is what the library claims; its middle is fair within 20 %.
    [Theory]
    [PublishedCase("TN D-4013", Report)]
    [InlineData("short", true, 0.6, 0.2987)]
    [InlineData("short", false, 0.6, 0.2217)]
    [InlineData("short", true, 0.8, 0.3299)]
    [InlineData("short", false, 0.8, 0.2308)]
    [InlineData("long", true, 0.6, 0.3455)]
    [InlineData("long", false, 0.6, 0.2477)]
    [InlineData("long", true, 0.8, 0.3706)]
    [InlineData("long", false, 0.8, 0.2517)]
    public void Drag_ahead_of_the_base(string model, bool fins, double mach, double measured)
    {
        var temperature = 300.Kelvins();
        var probe = new AirConditions(AbsolutePressure.StandardSeaLevel, temperature);
        var speed = mach * probe.SpeedOfSound;
        var density = 9.8e6 * probe.Viscosity.PascalSeconds / speed.MetersPerSecond;
        var air = probe with { Pressure = AbsolutePressure.FromPascals(101_325 * density / probe.Density.KilogramsPerCubicMeter) };
        var polished = new DragAssumptions { Roughness = 5.Micrometres(), LateTransition = 0 };
        var parts = Rocket(model, fins).Drag(speed, air, polished).Components.Where(c => c.Name != "Base").ToArray();
        var (low, high) = (parts.Sum(c => c.Low), parts.Sum(c => c.High));
        Tolerance.Relative(measured, (low + high) / 2, 0.20);
        // The band errs high by up to 3 % at its low end on the long body, friction being nearly all of it there.
        Assert.InRange(measured, low / 1.03, high);
    }

    private static FinnedBody Rocket(string model, bool fins)
    {
        var cylinderEnds = model == "short" ? 39.14 : 51.69;
        var nose = new Nose(NoseShape.Power, Length.FromInches(9.375), Diameter, 0.6369);
        var tail = new Transition(Length.FromInches(1.757), Diameter, Length.FromInches(1.308));
        var set = FinSet.Trapezoidal(4, Length.FromInches(3.38), Length.FromInches(2.165), Length.FromInches(2.103), Length.FromInches(1.215),
            Length.FromInches(0.15), Length.FromInches(cylinderEnds + 1.757 + 0.053 - 3.65)) with { LeadingEdge = FinEdge.Sharp, TrailingEdge = FinEdge.Sharp };
        return new FinnedBody([nose, new BodyTube(Length.FromInches(cylinderEnds - 9.375), Diameter), tail], fins ? [set] : []) { Name = model };
    }

    private static double[] NormalForces(FinnedBody body, double mach, double[] degrees)
    {
        var result = body.AtAngles(body.Length / 2, 5.Degrees(), mach);
        return degrees.Select(a => Math.Sign(a) * (Read(result.Potential, result.Angle, a) + Read(result.Viscous, result.Angle, a))).ToArray();
    }

    private static double CentreAt(FinnedBody body, double mach, double degrees)
    {
        var result = body.AtAngles(body.Length / 2, 5.Degrees(), mach);
        return Read(result.CentreOfPressure, result.Angle, degrees) / 1000;
    }

    private static double Read(Series values, Series angles, double degrees)
    {
        var place = Math.Abs(degrees) / (angles[1] - angles[0]);
        var i = Math.Min((int)place, values.Count - 2);
        return values[i] + ((place - i) * (values[i + 1] - values[i]));
    }

    private static (double[] Angles, double[] Forces) Columns(double[] points) =>
        (points.Where((_, i) => i % 2 == 0).ToArray(), points.Where((_, i) => i % 2 == 1).ToArray());

    private static double Slope(double[] x, double[] y)
    {
        var (mx, my) = (x.Average(), y.Average());
        return x.Zip(y, (a, b) => (a - mx) * (b - my)).Sum() / x.Sum(a => (a - mx) * (a - mx));
    }
}

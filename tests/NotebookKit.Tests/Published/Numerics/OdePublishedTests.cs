using NotebookKit.Numerics.Ode;
using NotebookKit.Tests.Numerics.Ode;

namespace NotebookKit.Tests.Published.Numerics;

public class OdePublishedTests
{
    private const string Detest = "Hull, Enright, Fellen, Sedgwick, Comparing numerical methods for ordinary differential equations, "
        + "SIAM J. Numer. Anal. 9 (1972) 603";

    private static readonly OdeSettings Tight = new() { RelativeTolerance = 1e-10 };

    [Fact]
    [PublishedCase("DETEST A1-A4", Detest + ", class A, exact solutions")]
    public void Single_equations_of_class_A_reach_their_exact_values_at_20()
    {
        Check((_, y, f) => f[0] = -y[0], 1, Math.Exp(-20));
        Check((_, y, f) => f[0] = -y[0] * y[0] * y[0] / 2, 1, 1 / Math.Sqrt(21));
        Check((t, y, f) => f[0] = y[0] * Math.Cos(t), 1, Math.Exp(Math.Sin(20)));
        Check((_, y, f) => f[0] = y[0] / 4 * (1 - y[0] / 20), 1, 20 / (1 + 19 * Math.Exp(-5)));

        static void Check(Action<double, double[], double[]> rightHandSide, double start, double end)
        {
            var system = new Equations(1, rightHandSide);
            double[] y = [start];
            var result = OdeDriver.Integrate(ref system, 0, 20, y, Tight, [1e-18]);
            Assert.Equal(OdeStatus.Completed, result.Status);
            Tolerance.Relative(end, y[0], 2e-8);
        }
    }

    [Theory]
    [PublishedCase("DETEST D1-D5", Detest + ", class D, orbits of eccentricity 0.1 to 0.9; exact solution by Kepler's equation")]
    [InlineData(0.1)]
    [InlineData(0.3)]
    [InlineData(0.5)]
    [InlineData(0.7)]
    [InlineData(0.9)]
    public void Orbits_of_class_D_are_where_Kepler_puts_them_at_20(double eccentricity)
    {
        var system = default(TwoBodies);
        double[] y = [1 - eccentricity, 0, 0, Math.Sqrt((1 + eccentricity) / (1 - eccentricity))];
        OdeDriver.Integrate(ref system, 0, 20, y, new() { RelativeTolerance = 1e-12 }, [1e-13, 1e-13, 1e-13, 1e-13]);
        var anomaly = 20.0;
        for (var i = 0; i < 60; i++) anomaly -= (anomaly - eccentricity * Math.Sin(anomaly) - 20) / (1 - eccentricity * Math.Cos(anomaly));
        Tolerance.Absolute(Math.Cos(anomaly) - eccentricity, y[0], 1e-8);
        Tolerance.Absolute(Math.Sqrt(1 - eccentricity * eccentricity) * Math.Sin(anomaly), y[1], 1e-8);
    }

    [Fact]
    [PublishedCase("Arenstorf", "Hairer, Nørsett, Wanner, Solving Ordinary Differential Equations I, 2nd ed. 1993, II.0, eq. (0.1), "
        + "period and initial values")]
    public void The_Arenstorf_orbit_closes_after_its_period()
    {
        const double mu = 0.012277471, other = 1 - mu, period = 17.0652165601579625588917206249;
        var system = new Equations(4, (_, y, f) =>
        {
            var d1 = Math.Pow((y[0] + mu) * (y[0] + mu) + y[1] * y[1], 1.5);
            var d2 = Math.Pow((y[0] - other) * (y[0] - other) + y[1] * y[1], 1.5);
            f[0] = y[2];
            f[1] = y[3];
            f[2] = y[0] + 2 * y[3] - other * (y[0] + mu) / d1 - mu * (y[0] - other) / d2;
            f[3] = y[1] - 2 * y[2] - other * y[1] / d1 - mu * y[1] / d2;
        });
        double[] y = [0.994, 0, 0, -2.00158510637908252240537862224];
        var result = OdeDriver.Integrate(ref system, 0, period, y, new() { RelativeTolerance = 1e-12 }, [1e-13, 1e-13, 1e-13, 1e-13]);
        Assert.Equal(OdeStatus.Completed, result.Status);
        // The orbit is unstable: errors of 1e-12 per step grow by about 1e7 over the period.
        Tolerance.Absolute(0.994, y[0], 1e-5);
        Tolerance.Absolute(0, y[1], 1e-4);
    }
}

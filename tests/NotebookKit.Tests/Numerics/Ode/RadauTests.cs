using NotebookKit.Numerics.Ode;
using NotebookKit.Tests.Published;
using T = NotebookKit.Numerics.Ode.RadauTableau;

namespace NotebookKit.Tests.Numerics.Ode;

public class RadauTests
{
    private static readonly OdeSettings Tight = new() { RelativeTolerance = 1e-9 };

    // The method's matrix as printed (Hairer and Wanner II, table 5.6): its inverse is what the transformation makes diagonal.
    [Fact]
    public void The_transformation_parts_the_inverse_of_the_methods_matrix()
    {
        var r = Math.Sqrt(6);
        double[,] a =
        {
            { (88 - 7 * r) / 360, (296 - 169 * r) / 1800, (-2 + 3 * r) / 225 },
            { (296 + 169 * r) / 1800, (88 + 7 * r) / 360, (-2 - 3 * r) / 225 },
            { (16 - r) / 36, (16 + r) / 36, 1.0 / 9 },
        };
        double[,] forward = { { T.T11, T.T12, T.T13 }, { T.T21, T.T22, T.T23 }, { 1, 1, 0 } },
            back = { { T.S11, T.S12, T.S13 }, { T.S21, T.S22, T.S23 }, { T.S31, T.S32, T.S33 } },
            parted = { { T.Real, 0, 0 }, { 0, T.ComplexRe, -T.ComplexIm }, { 0, T.ComplexIm, T.ComplexRe } };
        for (var i = 0; i < 3; i++)
        {
            for (var j = 0; j < 3; j++)
            {
                Assert.Equal(i == j ? 1 : 0, Times(forward, back)[i, j], 13);
                Assert.Equal(i == j ? 1 : 0, Times(a, Times(forward, Times(parted, back)))[i, j], 13);
            }

            Assert.Equal(i == 0 ? T.C1 : i == 1 ? T.C2 : 1, a[i, 0] + a[i, 1] + a[i, 2], 14);
        }
    }

    // Robertson's kinetics at t = 40: 0.7158270688, 9.185534764e-6, 0.2841637457 (Hairer and Wanner II, IV.10, and many solvers).
    [Fact]
    [PublishedCase("Robertson", "H. H. Robertson 1966, as in E. Hairer, G. Wanner, Solving ODE II, 2nd ed. 1996, IV.10, t = 40")]
    public void Robertsons_kinetics_end_as_published()
    {
        var system = new Stiff(3, (_, y, f) =>
        {
            f[0] = -0.04 * y[0] + 1e4 * y[1] * y[2];
            f[2] = 3e7 * y[1] * y[1];
            f[1] = -f[0] - f[2];
        });
        double[] y = [1, 0, 0];
        var result = Run(ref system, 40, y, [1e-12, 1e-15, 1e-12]);
        Assert.Equal(OdeStatus.Completed, result.Status);
        Tolerance.Relative(0.7158270688, y[0], 1e-9);
        Tolerance.Relative(9.185534764e-6, y[1], 1e-8);
        Tolerance.Relative(0.2841637457, y[2], 1e-9);
        Tolerance.Relative(1, y[0] + y[1] + y[2], 1e-14);
        Assert.InRange(result.AcceptedSteps, 1, 600);
    }

    [Fact]
    [PublishedCase("HIRES", "E. Schäfer 1975, as in E. Hairer, G. Wanner, Solving ODE II, 2nd ed. 1996, IV.10, t = 321.8122")]
    public void Eight_kinetics_of_light_end_as_published()
    {
        var system = new Stiff(8, (_, y, f) =>
        {
            f[0] = -1.71 * y[0] + 0.43 * y[1] + 8.32 * y[2] + 0.0007;
            f[1] = 1.71 * y[0] - 8.75 * y[1];
            f[2] = -10.03 * y[2] + 0.43 * y[3] + 0.035 * y[4];
            f[3] = 8.32 * y[1] + 1.71 * y[2] - 1.12 * y[3];
            f[4] = -1.745 * y[4] + 0.43 * y[5] + 0.43 * y[6];
            f[5] = -280 * y[5] * y[7] + 0.69 * y[3] + 1.71 * y[4] - 0.43 * y[5] + 0.69 * y[6];
            f[6] = 280 * y[5] * y[7] - 1.81 * y[6];
            f[7] = -f[6];
        });
        double[] y = [1, 0, 0, 0, 0, 0, 0, 0.0057];
        Run(ref system, 321.8122, y, [.. Enumerable.Repeat(1e-13, 8)]);
        double[] printed = [0.7371312573325668e-3, 0.1442485726316185e-3, 0.5888729740967575e-4, 0.1175651343283149e-2,
            0.2386356198831331e-2, 0.6238968252742796e-2, 0.2849998395185769e-2, 0.2850001604814231e-2];
        for (var i = 0; i < 8; i++) Tolerance.Relative(printed[i], y[i], 1e-7);
    }

    // y' = -1000 (y - cos t), and a sum of y beside it that no rate depends on: closed form.
    [Fact]
    public void A_stiff_decay_takes_few_steps_and_its_sum_is_the_integral()
    {
        var system = new Stiff(2, (t, y, f) => (f[0], f[1]) = (-1000 * (y[0] - Math.Cos(t)), y[0])) { Leading = 1 };
        double[] y = [0, 0];
        var result = Run(ref system, 10, y, [1e-12, 1e-12]);
        const double k = 1000, share = k / (k * k + 1);
        Tolerance.Relative(share * (k * Math.Cos(10) + Math.Sin(10)), y[0], 1e-9);
        Tolerance.Absolute(share * (k * Math.Sin(10) - Math.Cos(10) + 1) - share, y[1], 1e-8);
        Assert.InRange(result.AcceptedSteps, 1, 1000);
    }

    [Fact]
    public void An_event_ends_it_where_it_happens_to_the_steps_own_exactness()
    {
        var system = new Stiff(2, (_, y, f) => (f[0], f[1]) = (y[1], -9.81 - 0.1 * y[1]));
        var events = new Watched([], ((_, y) => y[0], new(OdeEventDirection.Falling, true)));
        var observer = new NoObserver();
        double[] y = [10, 0];
        var result = RadauDriver.Integrate(ref system, ref events, ref observer, 0, 100, y, Tight, [1e-10, 1e-10]);
        // h(t) = 10 - g/k t + g/k^2 (1 - exp(-k t)) with k 0.1.
        var t = result.Time;
        Assert.Equal(OdeStatus.EndedByEvent, result.Status);
        Tolerance.Absolute(0, 10 - 98.1 * t + 981 * (1 - Math.Exp(-0.1 * t)), 1e-9);
        Tolerance.Absolute(0, y[0], 1e-9);
    }

    [Fact]
    public void What_stops_being_a_number_ends_it()
    {
        var system = new Stiff(1, (_, y, f) => f[0] = y[0] * y[0]);
        double[] y = [1];
        var result = Run(ref system, 2, y, [1e-9]);
        Assert.False(result.Succeeded);
        Assert.InRange(result.Time, 0.9, 1.0001);
    }

    private static OdeResult Run(ref Stiff system, double to, double[] y, double[] absolute)
    {
        var events = new NoEvents();
        var observer = new NoObserver();
        return RadauDriver.Integrate(ref system, ref events, ref observer, 0, to, y, Tight, absolute);
    }

    private static double[,] Times(double[,] a, double[,] b)
    {
        var product = new double[3, 3];
        for (var i = 0; i < 3; i++)
        {
            for (var j = 0; j < 3; j++) product[i, j] = a[i, 0] * b[0, j] + a[i, 1] * b[1, j] + a[i, 2] * b[2, j];
        }

        return product;
    }

    private readonly struct Stiff(int dimension, Action<double, double[], double[]> rightHandSide) : IStiffSystem
    {
        private readonly int[] _all = [.. Enumerable.Range(0, dimension)];

        public int? Leading { get; init; }

        public int Dimension => dimension;

        public ReadOnlySpan<int> Coupled => _all.AsSpan(0, Leading ?? dimension);

        public void Derivatives(double t, ReadOnlySpan<double> y, Span<double> dydt) =>
            new Equations(dimension, rightHandSide).Derivatives(t, y, dydt);
    }
}

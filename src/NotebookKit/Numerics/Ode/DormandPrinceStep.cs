using T = NotebookKit.Numerics.Ode.DormandPrinceTableau;

namespace NotebookKit.Numerics.Ode;

/// <summary>One step of the pair: a pure function of state, step and first stage.</summary>
internal static class DormandPrinceStep
{
    /// <summary>Fills stages 2 to 7 and the new state; stage 1 must hold f(t, y).</summary>
    public static void Attempt<TSystem>(
        ref TSystem system, double t, double h, ReadOnlySpan<double> y, Span<double> stages, Span<double> trial, Span<double> newState)
        where TSystem : struct, IOdeSystem
    {
        var n = y.Length;
        var k1 = stages[..n];
        var k2 = stages.Slice(n, n);
        var k3 = stages.Slice(2 * n, n);
        var k4 = stages.Slice(3 * n, n);
        var k5 = stages.Slice(4 * n, n);
        var k6 = stages.Slice(5 * n, n);
        var k7 = stages.Slice(6 * n, n);

        for (var i = 0; i < n; i++) trial[i] = y[i] + h * (T.A21 * k1[i]);
        system.Derivatives(t + T.C2 * h, trial, k2);
        for (var i = 0; i < n; i++) trial[i] = y[i] + h * (T.A31 * k1[i] + T.A32 * k2[i]);
        system.Derivatives(t + T.C3 * h, trial, k3);
        for (var i = 0; i < n; i++) trial[i] = y[i] + h * (T.A41 * k1[i] + T.A42 * k2[i] + T.A43 * k3[i]);
        system.Derivatives(t + T.C4 * h, trial, k4);
        for (var i = 0; i < n; i++) trial[i] = y[i] + h * (T.A51 * k1[i] + T.A52 * k2[i] + T.A53 * k3[i] + T.A54 * k4[i]);
        system.Derivatives(t + T.C5 * h, trial, k5);
        for (var i = 0; i < n; i++) trial[i] = y[i] + h * (T.A61 * k1[i] + T.A62 * k2[i] + T.A63 * k3[i] + T.A64 * k4[i] + T.A65 * k5[i]);
        system.Derivatives(t + h, trial, k6);
        for (var i = 0; i < n; i++) newState[i] = y[i] + h * (T.B1 * k1[i] + T.B3 * k3[i] + T.B4 * k4[i] + T.B5 * k5[i] + T.B6 * k6[i]);
        system.Derivatives(t + h, newState, k7);
    }

    /// <summary>Root-mean-square of the embedded error over its allowance; above 1 the step is rejected; NaN where a number stopped being
    /// one.</summary>
    public static double ErrorNorm(
        double h, ReadOnlySpan<double> y, ReadOnlySpan<double> newState, ReadOnlySpan<double> stages, double relative,
            ReadOnlySpan<double> absolute)
    {
        var n = y.Length;
        var sum = 0.0;
        for (var i = 0; i < n; i++)
        {
            var error = h * (T.E1 * stages[i] + T.E3 * stages[2 * n + i] + T.E4 * stages[3 * n + i]
                + T.E5 * stages[4 * n + i] + T.E6 * stages[5 * n + i] + T.E7 * stages[6 * n + i]);
            var scaled = error / (absolute[i] + relative * Math.Max(Math.Abs(y[i]), Math.Abs(newState[i])));
            sum += scaled * scaled;
        }

        return Math.Sqrt(sum / n);
    }

    /// <summary>Coefficients of the interpolant of order 4, five rows of n.</summary>
    public static void Interpolant(double h, ReadOnlySpan<double> y, ReadOnlySpan<double> newState, ReadOnlySpan<double> stages,
        Span<double> coefficients)
    {
        var n = y.Length;
        for (var i = 0; i < n; i++)
        {
            var difference = newState[i] - y[i];
            var spline = h * stages[i] - difference;
            coefficients[i] = y[i];
            coefficients[n + i] = difference;
            coefficients[2 * n + i] = spline;
            coefficients[3 * n + i] = difference - h * stages[6 * n + i] - spline;
            coefficients[4 * n + i] = h * (T.D1 * stages[i] + T.D3 * stages[2 * n + i] + T.D4 * stages[3 * n + i]
                + T.D5 * stages[4 * n + i] + T.D6 * stages[5 * n + i] + T.D7 * stages[6 * n + i]);
        }
    }
}

namespace NotebookKit.Numerics.Ode;

/// <summary>How long the first and the next step may be.</summary>
/// <remarks>
/// Source: E. Hairer, S. P. Nørsett, G. Wanner, Solving Ordinary Differential Equations I, 2nd ed. 1993, II.4 (first step) and
/// IV.2 of volume II with code DOPRI5 (proportional-integral control, beta = 0.04).
/// </remarks>
internal static class StepControl
{
    private const double Safety = 0.9, Smallest = 0.2, Largest = 10, Beta = 0.04, Alpha = 0.2 - 0.75 * Beta;

    /// <summary>Logarithm of the smallest error that the control takes notice of.</summary>
    public const double LeastLogError = -9.210340371976182;

    /// <summary>
    /// The step with sixteen lengths an octave, rounded down. What decides a length, the error's power, differs in a last bit from machine
    /// to machine; so rounded, it hardly ever does, and the same flight takes the same steps everywhere.
    /// </summary>
    public static double Rounded(double step) => BitConverter.Int64BitsToDouble(BitConverter.DoubleToInt64Bits(step) & ~((1L << 48) - 1));

    /// <summary>Factor on the step after an accepted one; errors by their logarithms, since each is used twice.</summary>
    public static double AfterAccepted(double logError, double previousLogError, bool lastWasRejected)
    {
        var factor = Math.Clamp(Safety * Math.Exp(Beta * previousLogError - Alpha * logError), Smallest, Largest);
        return lastWasRejected ? Math.Min(1, factor) : factor;
    }

    /// <summary>Factor on the step after a rejected one; the strongest cut where the error isn't a number.</summary>
    public static double AfterRejected(double error) =>
        double.IsFinite(error) ? Math.Max(Smallest, Safety * Math.Pow(error, -Alpha)) : Smallest;

    /// <summary>Length of the first step; one more right-hand side.</summary>
    public static double FirstStep<TSystem>(
        ref TSystem system, double t, double direction, ReadOnlySpan<double> y, ReadOnlySpan<double> slope, double relative,
        ReadOnlySpan<double> absolute, double maximum, Span<double> trial, Span<double> trialSlope)
        where TSystem : struct, IOdeSystem
    {
        double stateNorm = 0, slopeNorm = 0;
        for (var i = 0; i < y.Length; i++)
        {
            var scale = absolute[i] + relative * Math.Abs(y[i]);
            stateNorm += y[i] / scale * (y[i] / scale);
            slopeNorm += slope[i] / scale * (slope[i] / scale);
        }

        stateNorm = Math.Sqrt(stateNorm / y.Length);
        slopeNorm = Math.Sqrt(slopeNorm / y.Length);
        var first = stateNorm < 1e-5 || slopeNorm < 1e-5 ? 1e-6 : 0.01 * stateNorm / slopeNorm;
        first = Math.Min(first, maximum);
        for (var i = 0; i < y.Length; i++) trial[i] = y[i] + direction * first * slope[i];
        system.Derivatives(t + direction * first, trial, trialSlope);

        var curvature = 0.0;
        for (var i = 0; i < y.Length; i++)
        {
            var scaled = (trialSlope[i] - slope[i]) / (absolute[i] + relative * Math.Abs(y[i]));
            curvature += scaled * scaled;
        }

        curvature = Math.Sqrt(curvature / y.Length) / first;
        if (!double.IsFinite(curvature)) return first * 1e-3;
        var steepest = Math.Max(slopeNorm, curvature);
        var second = steepest <= 1e-15 ? Math.Max(1e-6, first * 1e-3) : Math.Pow(0.01 / steepest, 0.2);
        return Math.Min(Rounded(Math.Min(100 * first, second)), maximum);
    }
}

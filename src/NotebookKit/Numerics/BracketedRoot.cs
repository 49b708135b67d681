using System.Globalization;

namespace NotebookKit.Numerics;

/// <summary>Finds where a function changes sign between two points.</summary>
/// <remarks>
/// Inverse quadratic interpolation and secant steps, guarded by bisection: never slower than bisection by more than a constant factor.
/// Source: R. P. Brent, Algorithms for Minimization without Derivatives, 1973, ch. 4 (procedure zero).
/// </remarks>
public static class BracketedRoot
{
    /// <summary>The root, or an exception where the two points don't bracket one.</summary>
    /// <param name="function">Function of [unit of x].</param>
    /// <param name="low">One end of the bracket [unit of x]; any finite value.</param>
    /// <param name="high">The other end [unit of x]; any finite value.</param>
    /// <param name="tolerance">Width of the final bracket [unit of x]; 0 or above, 0 meaning to rounding.</param>
    /// <exception cref="ArgumentException">The function has the same sign at both ends, or isn't finite there.</exception>
    public static double Solve(Func<double, double> function, double low, double high, double tolerance = 0)
    {
        ArgumentNullException.ThrowIfNull(function);
        return TrySolve(function, low, high, tolerance, out var result)
            ? result.Root
            : throw new ArgumentException(string.Create(CultureInfo.InvariantCulture,
                $"no sign change between {low:G6} and {high:G6}: the function is {function(low):G6} and {function(high):G6} there. "
                + $"Widen the bracket."));
    }

    /// <summary>Looks for the root; false where the two points don't bracket one or the search didn't settle.</summary>
    /// <param name="function">Function of [unit of x].</param>
    /// <param name="low">One end of the bracket [unit of x]; any finite value.</param>
    /// <param name="high">The other end [unit of x]; any finite value.</param>
    /// <param name="tolerance">Width of the final bracket [unit of x]; 0 or above.</param>
    /// <param name="result">What was found.</param>
    public static bool TrySolve(Func<double, double> function, double low, double high, double tolerance, out RootResult result)
    {
        ArgumentNullException.ThrowIfNull(function);
        var wrapped = new Delegated(function);
        return TrySolve(ref wrapped, low, high, tolerance, out result);
    }

    /// <summary>Looks for the root without allocating; false where the two points don't bracket one or the search didn't settle.</summary>
    /// <typeparam name="TFunction">The function.</typeparam>
    /// <param name="function">Function of [unit of x].</param>
    /// <param name="low">One end of the bracket [unit of x]; any finite value.</param>
    /// <param name="high">The other end [unit of x]; any finite value.</param>
    /// <param name="tolerance">Width of the final bracket [unit of x]; 0 or above.</param>
    /// <param name="result">What was found.</param>
    public static bool TrySolve<TFunction>(ref TFunction function, double low, double high, double tolerance, out RootResult result)
        where TFunction : struct, IScalarFunction, allows ref struct
    {
        var atLow = function.Value(low);
        var atHigh = function.Value(high);
        if (!double.IsFinite(atLow) || !double.IsFinite(atHigh) || atLow * atHigh > 0)
        {
            result = new(double.NaN, double.NaN, 2, false);
            return false;
        }

        result = Polish(ref function, low, atLow, high, atHigh, Math.Max(0, tolerance), 200);
        result = result with { Evaluations = result.Evaluations + 2 };
        return result.Converged;
    }

    /// <summary>Shrinks a bracket whose end values are known already.</summary>
    internal static RootResult Polish<TFunction>(
        ref TFunction function, double low, double atLow, double high, double atHigh, double tolerance, int mostEvaluations)
        where TFunction : struct, IScalarFunction, allows ref struct
    {
        // a is the last iterate, b the best one, c the other side of the bracket: Brent's own letters.
        double a = low, b = high, fa = atLow, fb = atHigh;
        double c = a, fc = fa, last = b - a, beforeLast = last;
        for (var evaluations = 0; ; evaluations++)
        {
            if (Math.Abs(fc) < Math.Abs(fb))
            {
                (a, b, c) = (b, c, b);
                (fa, fb, fc) = (fb, fc, fb);
            }

            var close = 2 * 1.1e-16 * Math.Abs(b) + 0.5 * tolerance;
            var half = 0.5 * (c - b);
            if (fb == 0 || Math.Abs(half) <= close) return new(b, fb, evaluations, true);
            if (evaluations >= mostEvaluations || !double.IsFinite(fb)) return new(b, fb, evaluations, false);

            if (Math.Abs(beforeLast) < close || Math.Abs(fa) <= Math.Abs(fb))
            {
                last = beforeLast = half;
            }
            else
            {
                double p, q;
                var s = fb / fa;
                if (a == c)
                {
                    p = 2 * half * s;
                    q = 1 - s;
                }
                else
                {
                    var u = fa / fc;
                    var r = fb / fc;
                    p = s * (2 * half * u * (u - r) - (b - a) * (r - 1));
                    q = (u - 1) * (r - 1) * (s - 1);
                }

                if (p > 0) q = -q;
                else p = -p;
                if (2 * p < Math.Min(3 * half * q - Math.Abs(close * q), Math.Abs(beforeLast * q)))
                {
                    beforeLast = last;
                    last = p / q;
                }
                else
                {
                    last = beforeLast = half;
                }
            }

            a = b;
            fa = fb;
            b += Math.Abs(last) > close ? last : Math.CopySign(close, half);
            fb = function.Value(b);
            if ((fb > 0) == (fc > 0))
            {
                c = a;
                fc = fa;
                last = beforeLast = b - a;
            }
        }
    }

    private readonly struct Delegated(Func<double, double> function) : IScalarFunction
    {
        public double Value(double x) => function(x);
    }
}

/// <summary>What a search for a root found.</summary>
/// <param name="Root">Best estimate [unit of x]; any finite value, NaN where there is none.</param>
/// <param name="Residual">Function value there [unit of f]; any value.</param>
/// <param name="Evaluations">Function evaluations used.</param>
/// <param name="Converged">Whether the bracket shrank to the tolerance.</param>
public readonly record struct RootResult(double Root, double Residual, int Evaluations, bool Converged);

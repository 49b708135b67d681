namespace NotebookKit.Numerics;

/// <summary>Finds where a function of one number is greatest between two points.</summary>
/// <remarks>
/// Parabolas through the best three points, guarded by golden sections. Finds one maximum; scan first where there may be several.
/// Source: R. P. Brent, Algorithms for Minimization without Derivatives, 1973, ch. 5 (procedure localmin).
/// </remarks>
public static class BracketedMaximum
{
    private const double Golden = 0.3819660112501051;

    /// <summary>The maximum between two points.</summary>
    /// <param name="function">Function of [unit of x]; a value that isn't a number counts as lowest.</param>
    /// <param name="low">Lower end [unit of x]; any finite value.</param>
    /// <param name="high">Upper end [unit of x]; above the lower.</param>
    /// <param name="tolerance">Wanted closeness [unit of x]; above 0.</param>
    /// <exception cref="ArgumentException">The ends aren't in order, or the tolerance isn't above 0.</exception>
    public static MaximumResult Search(Func<double, double> function, double low, double high, double tolerance)
    {
        ArgumentNullException.ThrowIfNull(function);
        if (!(high > low)) throw new ArgumentException($"the upper end is {high}; it must be above the lower end {low}.", nameof(high));
        if (!(tolerance > 0)) throw new ArgumentException($"tolerance is {tolerance}; it must be above 0.", nameof(tolerance));

        // x is best, w second, v the second before: Brent's own letters, with the sign of f turned.
        var x = low + Golden * (high - low);
        double w = x, v = x, fx = ValueAt(function, x), fw = fx, fv = fx, last = 0, beforeLast = 0;
        for (var evaluations = 1; ; evaluations++)
        {
            var middle = 0.5 * (low + high);
            var close = 1e-9 * Math.Abs(x) + tolerance / 3;
            if (Math.Abs(x - middle) <= 2 * close - 0.5 * (high - low) || evaluations >= 200) return new(x, fx, evaluations);

            double p = 0, q = 0, step;
            if (Math.Abs(beforeLast) > close)
            {
                var r = (x - w) * (fx - fv);
                q = (x - v) * (fx - fw);
                p = (x - v) * q - (x - w) * r;
                q = 2 * (q - r);
                if (q > 0) p = -p;
                q = Math.Abs(q);
            }

            if (Math.Abs(p) < Math.Abs(0.5 * q * beforeLast) && p > q * (low - x) && p < q * (high - x))
            {
                (beforeLast, last) = (last, p / q);
                var u0 = x + last;
                if (u0 - low < 2 * close || high - u0 < 2 * close) last = Math.CopySign(close, middle - x);
                step = last;
            }
            else
            {
                beforeLast = x < middle ? high - x : low - x;
                step = last = Golden * beforeLast;
            }

            var u = Math.Abs(step) >= close ? x + step : x + Math.CopySign(close, step);
            var fu = ValueAt(function, u);
            if (fu >= fx)
            {
                if (u < x) high = x;
                else low = x;
                (v, fv, w, fw, x, fx) = (w, fw, x, fx, u, fu);
            }
            else
            {
                if (u < x) low = u;
                else high = u;
                if (fu >= fw || w == x) (v, fv, w, fw) = (w, fw, u, fu);
                else if (fu >= fv || v == x || v == w) (v, fv) = (u, fu);
            }
        }
    }

    private static double ValueAt(Func<double, double> function, double x)
    {
        var value = function(x);
        return double.IsNaN(value) ? double.MinValue : value;
    }
}

/// <summary>What a search for a maximum found.</summary>
/// <param name="Location">Where the function is greatest [unit of x]; any finite value.</param>
/// <param name="Value">Function value there [unit of f]; any value.</param>
/// <param name="Evaluations">Function evaluations used; 0 or above.</param>
public readonly record struct MaximumResult(double Location, double Value, int Evaluations);

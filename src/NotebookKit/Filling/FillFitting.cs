using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling;

/// <summary>Damped Gauss-Newton of the fill model on a gauge log.</summary>
internal static class FillFitting
{
    private const int MostSteps = 60;

    private static readonly double[] FirstFilms = [5, 20, 80, 320];

    public static FillFit Fit(FillLog log, IReadOnlyList<Finding> findings)
    {
        double[] t = [.. log.Time.Values], p = [.. log.Pressure.Values];
        var top = Array.IndexOf(p, p.Max());
        var start = p.TakeWhile(v => v < p[0] + 0.03 * (p[top] - p[0])).Count();

        // The film coefficient bends the sum into more than one valley: start in several, keep the lowest.
        var guess = Math.Log(Slope(log, t, p, start, top));
        var (x, best, jacobian, settled) = FirstFilms.Select(film => Descend(log, t, p, [guess, t[Math.Max(0, start - 1)], Math.Log(film), p[top]])).MinBy(d => d.Residuals.DotProduct(d.Residuals));
        var sum = best.DotProduct(best);
        var freedom = t.Length - x.Count;
        var variance = sum / freedom;
        var covariance = jacobian.TransposeThisAndMultiply(jacobian).PseudoInverse() * variance;
        var student = StudentT.InvCDF(0, 1, freedom, 0.975);
        double[] half = [.. covariance.Diagonal().Select(v => student * Math.Sqrt(Math.Max(0, v)))];
        return new FillFit(log, x, half, Math.Sqrt(variance), [.. t.Select((_, i) => p[i] - best[i])], settled, findings);
    }

    // From a start (ln C, time of opening, ln film, pressure when shut) down to the bottom of its valley.
    private static (Vector<double> X, Vector<double> Residuals, Matrix<double> Jacobian, bool Settled) Descend(FillLog log, double[] t, double[] p, double[] from)
    {
        var x = Vector<double>.Build.Dense(from);
        var best = Residuals(log, t, p, x);
        double damping = 1e-2, sum = best.DotProduct(best);
        var jacobian = Jacobian(log, t, p, x, best);
        for (var steps = 0; steps < MostSteps; steps++)
        {
            var normal = jacobian.TransposeThisAndMultiply(jacobian);
            var damped = normal + damping * Matrix<double>.Build.DenseOfDiagonalVector(normal.Diagonal() + 1e-12);
            var trial = x + damped.Solve(-jacobian.TransposeThisAndMultiply(best)).Map(v => Math.Clamp(v, -1, 1));
            trial[2] = Math.Clamp(trial[2], Math.Log(0.1), Math.Log(2000));
            trial[3] = Math.Clamp(trial[3], p[0] + 0.5, log.Fill.Supply.Bar - 1e-3);
            var residuals = Residuals(log, t, p, trial);
            var trialSum = residuals.DotProduct(residuals);
            if (trialSum < sum)
            {
                var gain = (sum - trialSum) / sum;
                (x, best, sum) = (trial, residuals, trialSum);
                damping = Math.Max(1e-9, damping / 5);
                jacobian = Jacobian(log, t, p, x, best);
                // Scatter of the gauge moves the sum by parts in a hundred; a part in 1e8 moves no parameter by a thousandth of its interval.
                if (gain < 1e-8) return (x, best, jacobian, true);
            }
            else if ((damping *= 6) > 1e9)
            {
                return (x, best, jacobian, true);
            }
        }

        return (x, best, jacobian, false);
    }

    /// <summary>The fill with a set of parameters.</summary>
    public static PadFill With(FillLog log, Vector<double> x) => log.Fill with
    {
        Restrictor = new SonicRestrictor(SonicConductance.FromLitresPerSecondBar(Math.Exp(x[0])), Math.Clamp(log.Fill.Restrictor.CriticalRatio, 0, 0.7)),
        Heat = FillHeat.Wall,
        Goal = FillGoal.WhenShut,
        Target = x[3].BarGauge(),
        Wall = log.Fill.WallOrPlain with { Film = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(Math.Exp(x[2])), FilmFactor = 1 },
        Watch = Duration.FromSeconds(Math.Min(3600, Math.Max(1, log.Time[^1] - log.Time[0]))),
    };

    // What the gauge reads less what the model says, bar.
    private static Vector<double> Residuals(FillLog log, double[] t, double[] p, Vector<double> x)
    {
        var trace = FillSimulation.Integrate(With(log, x));
        var gauge = trace.Pascals.Select(v => (v - log.Fill.Ambient.Pascals) / 1e5).ToArray();
        var residuals = Vector<double>.Build.Dense(t.Length);
        for (int i = 0, k = 0; i < t.Length; i++)
        {
            var since = t[i] - x[1];
            while (k + 1 < trace.Seconds.Length - 1 && trace.Seconds[k + 1] < since) k++;
            var model = since <= 0
                ? gauge[0]
                : since >= trace.Seconds[^1] ? gauge[^1] : gauge[k] + (gauge[k + 1] - gauge[k]) * (since - trace.Seconds[k]) / (trace.Seconds[k + 1] - trace.Seconds[k]);
            residuals[i] = p[i] - model;
        }

        return residuals;
    }

    private static Matrix<double> Jacobian(FillLog log, double[] t, double[] p, Vector<double> x, Vector<double> at)
    {
        var jacobian = Matrix<double>.Build.Dense(t.Length, x.Count);
        double[] widths = [1e-4, 1e-3, 1e-2, -1e-3];
        for (var k = 0; k < x.Count; k++)
        {
            var moved = x.Clone();
            moved[k] += widths[k];
            jacobian.SetColumn(k, (Residuals(log, t, p, moved) - at) / widths[k]);
        }

        return jacobian;
    }

    // Conductance from the steepest part as if nothing were lost to the wall, halfway between the bounds.
    private static double Slope(FillLog log, double[] t, double[] p, int start, int top)
    {
        var third = Math.Max(start + 2, start + (top - start) / 3);
        third = Math.Min(third, t.Length - 1);
        var perSecond = 1e5 * (p[third] - p[Math.Max(0, start - 1)]) / (t[third] - t[Math.Max(0, start - 1)]);
        var fill = log.Fill;
        var flow = perSecond * fill.GasVolume.CubicMeters / (1.2 * fill.Gas.GasConstant.JoulesPerKilogramKelvin * fill.Temperature.Kelvins);
        return Math.Max(1e-4, flow / (FlowCapacity.ReferenceDensity * fill.Supply.ToAbsolute(fill.Ambient).Pascals) / 1e-8);
    }
}

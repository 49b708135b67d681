using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;

namespace NotebookKit.Numerics.Fits;

/// <summary>Least squares of a model with parameters on data, with the intervals of the parameters.</summary>
/// <remarks>
/// The minimiser is MathNet.Numerics' Levenberg-Marquardt; derivatives are central differences over steps that the caller chooses, since a
/// model that integrates has noise of its own.
/// Source: D. W. Marquardt, J. SIAM 11 (1963) 431; intervals as G. A. F. Seber, C. J. Wild, Nonlinear Regression, 1989, ch. 5.
/// </remarks>
internal sealed class CurveFit
{
    private CurveFit(double[] parameters, double[] halfWidths, Matrix<double> correlation, double[] fitted, double scatter, bool settled,
        int evaluations)
    {
        (Parameters, HalfWidths, Correlation, Fitted, Scatter, Settled, Evaluations) = (parameters, halfWidths, correlation, fitted,
            scatter, settled, evaluations);
    }

    /// <summary>The parameters at the least sum of squares.</summary>
    public double[] Parameters { get; }

    /// <summary>Half of the 95 % interval of each.</summary>
    public double[] HalfWidths { get; }

    /// <summary>How parameters hang together, −1 to 1.</summary>
    public Matrix<double> Correlation { get; }

    /// <summary>The model at the data's places.</summary>
    public double[] Fitted { get; }

    /// <summary>Standard deviation of the data about the model.</summary>
    public double Scatter { get; }

    /// <summary>Whether the search came to rest.</summary>
    public bool Settled { get; }

    /// <summary>Times the model was asked.</summary>
    public int Evaluations { get; }

    /// <summary>Fits.</summary>
    /// <param name="model">Model values at the data's places for a set of parameters.</param>
    /// <param name="data">The data.</param>
    /// <param name="start">First guess.</param>
    /// <param name="low">Lowest values searched.</param>
    /// <param name="high">Highest values searched.</param>
    /// <param name="steps">Steps of the derivatives.</param>
    public static CurveFit Of(Func<double[], double[]> model, double[] data, double[] start, double[] low, double[] high, double[] steps)
    {
        var evaluations = 0;
        var run = WorkRun.Current;
        Vector<double> Values(Vector<double> p)
        {
            run.ThrowIfStopped();
            evaluations++;
            return Vector<double>.Build.Dense(model(p.ToArray()));
        }

        Matrix<double> Slopes(Vector<double> p)
        {
            var slopes = Matrix<double>.Build.Dense(data.Length, p.Count);
            for (var k = 0; k < p.Count; k++)
            {
                var (up, down) = (p.Clone(), p.Clone());
                up[k] = Math.Min(high[k], p[k] + steps[k]);
                down[k] = Math.Max(low[k], p[k] - steps[k]);
                slopes.SetColumn(k, (Values(up) - Values(down)) / (up[k] - down[k]));
            }

            return slopes;
        }

        var places = Vector<double>.Build.Dense(data.Length, i => i);
        var objective = ObjectiveFunction.NonlinearModel((p, _) => Values(p), (p, _) => Slopes(p), places,
            Vector<double>.Build.Dense(data));
        var found = new LevenbergMarquardtMinimizer(maximumIterations: 60).FindMinimum(
            objective, Vector<double>.Build.Dense(start), Vector<double>.Build.Dense(low), Vector<double>.Build.Dense(high));
        var point = found.MinimizingPoint;
        var fitted = Values(point);
        var freedom = Math.Max(1, data.Length - start.Length);
        var sum = (fitted - Vector<double>.Build.Dense(data)).DotProduct(fitted - Vector<double>.Build.Dense(data));
        var slopesThere = Slopes(point);
        var covariance = slopesThere.TransposeThisAndMultiply(slopesThere).PseudoInverse() * (sum / freedom);
        var deviation = covariance.Diagonal().Map(v => Math.Sqrt(Math.Max(v, 0)));
        var student = StudentT.InvCDF(0, 1, freedom, 0.975);
        var correlation = Matrix<double>.Build.Dense(start.Length, start.Length,
            (i, j) => i == j ? 1 : covariance[i, j] / Math.Max(deviation[i] * deviation[j], double.Epsilon));
        return new(point.ToArray(), [.. deviation.Select(d => student * d)], correlation, fitted.ToArray(), Math.Sqrt(sum / freedom),
            found.ReasonForExit is ExitCondition.Converged or ExitCondition.RelativeGradient or ExitCondition.RelativePoints
                or ExitCondition.AbsoluteGradient or ExitCondition.LackOfProgress, evaluations);
    }
}

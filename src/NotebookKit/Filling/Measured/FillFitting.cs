using NotebookKit.Filling.Balances;
using NotebookKit.Filling.Fills;
using NotebookKit.Filling.Restrictors;
using NotebookKit.Numerics.Fits;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.Measured;

/// <summary>Least squares of the fill model on a gauge log.</summary>
internal static class FillFitting
{
    private static readonly double[] FirstFilms = [5, 20, 80, 320];

    public static FillFit Fit(FillLog log, IReadOnlyList<Finding> findings)
    {
        double[] t = [.. log.Time.Values], p = [.. log.Pressure.Values];
        var top = Array.IndexOf(p, p.Max());
        var start = p.TakeWhile(v => v < p[0] + 0.03 * (p[top] - p[0])).Count();

        // ln of the conductance, moment of opening, ln of the film coefficient, pressure at shutting. The film bends the sum into more than
        // one valley:
        // start in several, keep the lowest.
        double opened = t[Math.Max(0, start - 1)], guess = Math.Log(Slope(log, t, p, start, top)), span = t[^1] - t[0];
        double[] low = [guess - 5, opened - span, Math.Log(0.1), p[0] + 0.5],
            high = [guess + 5, opened + span, Math.Log(2000), log.Fill.Supply.Bar - 1e-3];
        var fit = FirstFilms
            .Select(film => CurveFit.Of(x => Gauge(log, t, x), p, [guess, opened, Math.Log(film), Math.Min(p[top], high[3])], low, high,
                [1e-4, 1e-3, 1e-2, 1e-3]))
            .MinBy(f => f.Scatter)!;
        return new FillFit(log, fit, findings);
    }

    /// <summary>The fill with a set of parameters.</summary>
    public static PadFill With(FillLog log, double[] x) => log.Fill with
    {
        Restrictor = new SonicRestrictor(SonicConductance.FromLitresPerSecondBar(Math.Exp(x[0])),
            Math.Clamp(log.Fill.Restrictor.CriticalRatio, 0, 0.7)),
        Heat = FillHeat.Wall,
        Goal = FillGoal.WhenShut,
        Target = x[3].BarGauge(),
        Wall = log.Fill.WallOrPlain with { Film = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(Math.Exp(x[2])), FilmFactor = 1 },
        Watch = Duration.FromSeconds(Math.Min(3600, Math.Max(1, log.Time[^1] - log.Time[0]))),
    };

    // What the gauge would read, bar.
    private static double[] Gauge(FillLog log, double[] t, double[] x)
    {
        var trace = FillSimulation.Integrate(With(log, x));
        var gauge = trace.Pascals.Select(v => (v - log.Fill.Ambient.Pascals) / 1e5).ToArray();
        var read = new double[t.Length];
        for (int i = 0, k = 0; i < t.Length; i++)
        {
            var since = t[i] - x[1];
            while (k + 1 < trace.Seconds.Length - 1 && trace.Seconds[k + 1] < since) k++;
            read[i] = since <= 0
                ? gauge[0]
                : since >= trace.Seconds[^1] ? gauge[^1] : gauge[k]
                    + (gauge[k + 1] - gauge[k]) * (since - trace.Seconds[k]) / (trace.Seconds[k + 1] - trace.Seconds[k]);
        }

        return read;
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

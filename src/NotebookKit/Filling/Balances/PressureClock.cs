using MathNet.Numerics.Integration;
using NotebookKit.Numerics;

namespace NotebookKit.Filling.Balances;

/// <summary>
/// Adds up the time a pressure takes to run from one value to another, dt = g(p) dp, on points that crowd where the flow dies away
/// (p → the pressure it ends at), so that the square-root ending of a nozzle law doesn't spoil the sum.
/// </summary>
internal static class PressureClock
{
    private static readonly GaussLegendreRule Rule = new(0, 1, 12);

    /// <summary>Times at pressures from start to end.</summary>
    /// <param name="secondsPerUnit">dt/dx at x.</param>
    /// <param name="start">Coordinate at the start.</param>
    /// <param name="end">Coordinate at the end, between start and limit, limit included.</param>
    /// <param name="limit">Coordinate at which the flow is nil.</param>
    /// <param name="kink">Coordinate where the flow law changes; may lie outside.</param>
    /// <param name="cells">Cells on each side of the kink; 1 or above.</param>
    public static (double[] Coordinates, double[] Seconds) Run(Func<double, double> secondsPerUnit, double start, double end, double limit,
        double kink, int cells)
    {
        // x = limit - (limit - start)(1 - u)^2: dx/du vanishes at the limit as fast as a square-root flow does.
        double XAt(double u) => limit - (limit - start) * (1 - u) * (1 - u);
        double UAt(double x) => 1 - Math.Sqrt(Math.Max(0, (limit - x) / (limit - start)));

        var last = UAt(end);
        var middle = (kink - start) * (end - kink) > 0 ? UAt(kink) : double.NaN;
        double[] edges = double.IsNaN(middle) ? [0, last] : [0, middle, last];
        List<double> x = [start], t = [0];
        var run = WorkRun.Current;
        for (var e = 0; e + 1 < edges.Length; e++)
        {
            var width = (edges[e + 1] - edges[e]) / cells;
            for (var i = 0; i < cells; i++)
            {
                run.ThrowIfStopped();
                var left = edges[e] + i * width;
                var sum = 0.0;
                for (var k = 0; k < Rule.Order; k++)
                {
                    var u = left + Rule.GetAbscissa(k) * width;
                    sum += Rule.GetWeight(k) * secondsPerUnit(XAt(u)) * 2 * (limit - start) * (1 - u);
                }

                x.Add(i == cells - 1 ? XAt(edges[e + 1]) : XAt(left + width));
                t.Add(t[^1] + sum * width);
            }
        }

        x[^1] = end;
        return ([.. x], [.. t]);
    }
}

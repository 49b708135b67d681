using NotebookKit.Flight.Design;
using NotebookKit.Flight.Flights;
using NotebookKit.Numerics.Fits;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Evidence.FlightFits;

/// <summary>Fits a predicted flight to a logged one.</summary>
internal static class FlightFitting
{
    // Before launch the log only says where the ground is; a second and a half of it is enough.
    private const double BeforeSeconds = 1.5;

    public static FlightFit Fit(FlightLog log, IReadOnlyList<Finding> findings)
    {
        var (numbers, used) = Numbers(log);
        return new FlightFit(log, numbers, used, findings);
    }

    /// <summary>The numbers of a fit, and which readings it used; the drag fitted, or kept at a factor whose logarithm is given.</summary>
    public static (FlightFitNumbers Numbers, int[] Used) Numbers(FlightLog log, double? logFactor = null)
    {
        double[] time = [.. log.Time.Values], height = [.. log.Height.Values];
        var top = Array.IndexOf(height, height.Max());
        var launch = time[LaunchAt(height, top)];
        var used = Enumerable.Range(0, top + 1).Where(i => time[i] >= launch - BeforeSeconds).ToArray();
        double[] t = [.. used.Select(i => time[i])], h = [.. used.Select(i => height[i])];
        var meant = log.Vehicle.Charge.Pressure.Bar;

        double[] Model(double[] x)
        {
            var flight = With(log, x[0], x[1]).Fly(log.Site);
            return [.. t.Select(at => x[3] + HeightAt(flight, at - x[2]))];
        }

        // ln of the factor on drag, fill pressure, moment of launch, zero of the height.
        var rated = log.Vehicle.Charge.Chamber.RatedPressure.Bar;
        double[] start = [logFactor ?? 0, meant, launch, 0], steps = [0.02, 0.005 * meant, 0.005, 0.01];
        double[] low = [Math.Log(0.25), 0.5 * meant, launch - 1, -5], high = [Math.Log(4), Math.Min(rated, 1.5 * meant), launch + 1, 5];
        int[] free = [.. Enumerable.Range(0, 4).Where(k => k switch { 0 => logFactor is null, 1 => !log.TrustGauge, _ => true })];
        double[] Whole(double[] x)
        {
            var whole = (double[])start.Clone();
            for (var k = 0; k < free.Length; k++) whole[free[k]] = x[k];
            return whole;
        }

        double[] Part(double[] whole) => [.. free.Select(k => whole[k])];
        var fit = CurveFit.Of(x => Model(Whole(x)), h, Part(start), Part(low), Part(high), Part(steps));
        var half = new double[4];
        for (var k = 0; k < free.Length; k++) half[free[k]] = fit.HalfWidths[k];
        return (new(Whole(fit.Parameters), half, log.TrustGauge || logFactor is not null ? 0 : fit.Correlation[0, 1], fit.Fitted,
            fit.Scatter, fit.Settled, fit.Evaluations), used);
    }

    /// <summary>The vehicle with a factor on drag and a fill pressure.</summary>
    public static Vehicle With(FlightLog log, double logFactor, double bar) => log.Vehicle with
    {
        DragCalibration = new DragCalibration(Math.Exp(logFactor) * (log.Vehicle.DragCalibration?.Factor ?? 1), Ratio.Zero,
            new Source("", log.Name, null, "trial", SourceKind.Measured)),
        DragEnd = DragEnd.Middle,
        MeasuredDrag = null,
        Charge = log.Vehicle.Charge with { Pressure = bar.BarGauge() },
    };

    /// <summary>Height of a flight at a time; on the ground before it starts, at its end after it.</summary>
    public static double HeightAt(FlightResult flight, double seconds)
    {
        var (time, height) = (flight.Time.Values, flight.Height.Values);
        if (seconds <= time[0]) return 0;
        if (seconds >= time[^1]) return height[^1];
        int low = 0, high = time.Count - 1;
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            if (time[middle] <= seconds) low = middle;
            else high = middle;
        }

        // A cubic through heights and vertical speeds, as smooth as the flight.
        var step = time[high] - time[low];
        var s = (seconds - time[low]) / step;
        var (v0, v1) = (flight.VerticalSpeed[low] * step, flight.VerticalSpeed[high] * step);
        return height[low] * (1 + 2 * s) * (1 - s) * (1 - s) + v0 * s * (1 - s) * (1 - s) + height[high] * s * s * (3 - 2 * s)
            + v1 * s * s * (s - 1);
    }

    /// <summary>Index of the last reading that is still on the ground, before the rise to the top.</summary>
    public static int LaunchAt(IReadOnlyList<double> height, int top)
    {
        var rise = 0.03 * height[top];
        var i = top;
        while (i > 0 && height[i] > rise) i--;
        return i;
    }
}

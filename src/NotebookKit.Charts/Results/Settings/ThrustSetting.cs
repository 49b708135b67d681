using NotebookKit.Charts.Explorers;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Results.Settings;

/// <summary>Thrust straight up for one setting of its explorer: water fraction [%], throat [mm], pressure [bar gauge].</summary>
internal static class ThrustSetting
{
    private const int PointsPerPhase = 24;

    /// <summary>The answer.</summary>
    public static ExplorerState Answer(VerticalFlight flight, IReadOnlyList<double> s) => Answer(flight with
    {
        Charge = flight.Charge with { WaterFraction = s[0].Percent(), Pressure = GaugePressure.FromBar(s[2]) },
        Nozzle = flight.Nozzle with { Throat = s[1].Millimetres() },
    });

    private static ExplorerState Answer(VerticalFlight flight)
    {
        var findings = flight.Validate();
        if (Worst(findings) is { } problem) return ExplorerState.Refused(problem);
        var result = flight.Fly();
        if (result.Status == ResultStatus.Failed) return ExplorerState.Refused(Worst(result.Findings)
            ?? "The flight could not be computed.");
        var (times, thrusts) = Sample(result.Curve);
        return new ExplorerState
        {
            X = times,
            Y = thrusts,
            Numbers = [result.Apogee.Meters, result.ApogeeTime.Seconds, result.Curve.PeakThrust.Newtons,
                result.Curve.Impulse.NewtonSeconds, result.MaximumSpeed.MetersPerSecond],
        };
    }

    private static string? Worst(IEnumerable<Finding> findings) =>
        findings.FirstOrDefault(f => f.Severity == FindingSeverity.Error) is { } error ? char.ToUpperInvariant(error.Message[0])
            + error.Message[1..] : null;

    // The jump from water to gas must stay a jump: both phases are sampled at equal shares of their own length, so that point i of every
    // curve means the same.
    private static (double[] Times, double[] Thrusts) Sample(ThrustCurve curve)
    {
        var change = curve.WaterPhase is null ? 0 : Enumerable.Range(1,
            curve.Time.Count - 1).FirstOrDefault(i => curve.Time[i] == curve.Time[i - 1], curve.Time.Count);
        var times = new double[2 * PointsPerPhase];
        var thrusts = new double[2 * PointsPerPhase];
        Phase(curve, 0, Math.Max(change - 1, 0), times, thrusts, 0);
        Phase(curve, Math.Min(change, curve.Time.Count - 1), curve.Time.Count - 1, times, thrusts, PointsPerPhase);
        return (times, thrusts);
    }

    private static void Phase(ThrustCurve curve, int first, int last, double[] times, double[] thrusts, int at)
    {
        var row = first;
        for (var i = 0; i < PointsPerPhase; i++)
        {
            var time = curve.Time[first] + ((curve.Time[last] - curve.Time[first]) * i / (PointsPerPhase - 1));
            while (row + 1 < last && curve.Time[row + 1] < time) row++;
            var span = last > first ? curve.Time[row + 1] - curve.Time[row] : 0;
            var share = span > 0 ? Math.Clamp((time - curve.Time[row]) / span, 0, 1) : 0;
            times[at + i] = time;
            thrusts[at + i] = last > first ? curve.Thrust[row] + (share * (curve.Thrust[row + 1] - curve.Thrust[row]))
                : curve.Thrust[first];
        }
    }
}

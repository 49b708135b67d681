using NotebookKit.Charts.Explorers;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Charts.Results;

/// <summary>Explorers of a flight: <c>flight.Explore()</c>.</summary>
public static class FlightExplorers
{
    private const int PointsPerPhase = 24;

    /// <summary>
    /// Water fraction, nozzle and pressure to drag, thrust curve and apogee to watch: water from 5 % to 70 %, the throat from 0.6 to 1.4
    /// times that of the flight, pressure from a third of the vessel's rated pressure up to it.
    /// </summary>
    /// <param name="flight">The flight to start from.</param>
    /// <exception cref="InvalidDesignException">The flight can't be computed.</exception>
    public static Explorer Explore(this VerticalFlight flight)
    {
        ArgumentNullException.ThrowIfNull(flight);
        var (throat, charge) = (flight.Nozzle.Throat, flight.Charge);
        var (least, rated) = (charge.Chamber.RatedPressure / 3, charge.Chamber.RatedPressure);
        return flight.Explore(5.Percent(), 70.Percent(), throat * 0.6, throat * 1.4,
            charge.Pressure < least ? charge.Pressure * 0.9 : least, rated);
    }

    /// <summary>Water fraction, nozzle and pressure to drag over ranges of one's own.</summary>
    /// <param name="flight">The flight to start from; what isn't dragged is taken from it.</param>
    /// <param name="leastWater">Least water fraction; 0 % to 95 %.</param>
    /// <param name="mostWater">Greatest water fraction; above the least, at most 95 %.</param>
    /// <param name="leastThroat">Narrowest throat; above 0.5 mm.</param>
    /// <param name="mostThroat">Widest throat; above the narrowest, below the vessel's bore.</param>
    /// <param name="leastPressure">Least pressure; above 0.1 bar gauge.</param>
    /// <param name="mostPressure">Greatest pressure; above the least. Settings above the rated pressure are refused in the figure
    /// too.</param>
    /// <exception cref="InvalidDesignException">A range doesn't hold the flight's own value, or every setting is refused.</exception>
    public static Explorer Explore(
        this VerticalFlight flight, Ratio leastWater, Ratio mostWater, Length leastThroat, Length mostThroat, GaugePressure leastPressure,
            GaugePressure mostPressure)
    {
        ArgumentNullException.ThrowIfNull(flight);
        InvalidDesignException.ThrowIfAny(flight.Name, flight.Validate());
        ExplorerParameter[] parameters =
        [
            new("Water fraction", "%", leastWater.Percent, mostWater.Percent, 14, flight.Charge.WaterFraction.Percent),
            new("Nozzle throat", "mm", leastThroat.Millimeters, mostThroat.Millimeters, 7, flight.Nozzle.Throat.Millimeters),
            new("Pressure", "bar gauge", leastPressure.Bar, mostPressure.Bar, 7, flight.Charge.Pressure.Bar),
        ];
        ExplorerNumber[] numbers = [new("Apogee", "m"), new("Time of apogee", "s"), new("Peak thrust", "N"), new("Impulse", "N s"),
            new("Maximum speed", "m/s")];
        return Explorer.Build(
            $"Water, nozzle and pressure, {flight.Name}", new Axis("Time from release", "s"), new Axis("Thrust", "N"), parameters, numbers,
            s => Answer(flight with
            {
                Charge = flight.Charge with { WaterFraction = s[0].Percent(), Pressure = GaugePressure.FromBar(s[2]) },
                Nozzle = flight.Nozzle with { Throat = s[1].Millimetres() },
            })) with
        {
            Cautions = Cautions.ForFlight,
            Remark = $"Everything else as in the flight of {flight.Name}: dry mass {flight.DryMass.Show()}, straight up, model "
                + $"“{flight.Fly().Model.Name}”.",
        };
    }

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

using NotebookKit.Numerics.Ode;
using NotebookKit.Propulsion.Firings;
using NotebookKit.Propulsion.Phases;

namespace NotebookKit.Flight.Vertical;

/// <summary>Flies with everything recorded.</summary>
internal static class VerticalFlightRecord
{
    public static VerticalFlightResult Fly<TDrag>(VerticalFlight flight, TDrag law)
        where TDrag : struct, IDragLaw
    {
        var setup = flight.Setup(flight.Tables);
        var mount = flight.Mount(law);
        var record = FiringRecord.Fire(setup, mount, VerticalFlight.Recorded);
        var end = record.End;

        var coast = new TrajectoryBuilder(2);
        var recorder = new TrajectoryRecorder(coast, 4);
        var (apogee, time) = VerticalRun.Coast(mount, ref recorder, VerticalFlight.Recorded, ref end);
        if (!end.Failed && !end.TopReached)
        {
            var last = end;
            record.Then(rows => AddCoast(rows, mount, coast, last));
        }

        return new(flight, setup, record, end, apogee, time, VerticalFlight.ComesDownCharged(setup, mount, end), mount.SpeedOfSoundAt);
    }

    private static void AddCoast<TDrag>(List<FiringRow> rows, FreeMount<TDrag> mount, TrajectoryBuilder coast, in FiringEnd end)
        where TDrag : struct, IDragLaw
    {
        var phase = new CoastPhase<FreeMount<TDrag>>(mount, VerticalRun.CoastMass(mount, end));
        double pressure = end.EndPressure, temperature = end.EndTemperature, gas = end.EndGasKg, water = end.WaterLeftKg;
        Span<double> slope = stackalloc double[2];
        Add(end.EndTime, [end.EndHeight, end.EndSpeed], slope);
        for (var i = 0; i < coast.Count; i++) Add(coast.Time(i), coast.State(i), slope);

        void Add(double t, ReadOnlySpan<double> y, Span<double> slope)
        {
            phase.Derivatives(t, y, slope);
            rows.Add(new(FiringStage.Coast, t, y[0], y[1], slope[1], 0, pressure, temperature, water, gas, 0));
        }
    }
}

using NotebookKit.Flight.Drive;
using NotebookKit.Numerics.Ode;

namespace NotebookKit.Flight.Motion;

/// <summary>Watches for the end of the rail, for a vehicle that stops on it, for the maximum speed, and for the end of its drive.</summary>
internal struct RailEvents<TDrive>(RailPath<TDrive> path, double railM, FlightMarks marks) : IOdeEvents
    where TDrive : struct, IDrive
{
    public const int Exit = 0, Stopped = 1, FirstEnd = 3;

    private const int Fastest = 2;

    private FlightMarks _marks = marks;

    public FlightMarks Marks => _marks;

    public int Count => FirstEnd + path.Ends;

    public OdeEventRule Rule(int index) => new(OdeEventDirection.Falling, index != Fastest);

    public double Value(int index, double t, ReadOnlySpan<double> y, ReadOnlySpan<double> dydt) => index switch
    {
        Exit => railM - y[0],
        Stopped => y[1],
        Fastest => dydt[1],
        _ => path.End(index - FirstEnd, path.AmbientPa(t, y), y),
    };

    public void Located(int index, double t, ReadOnlySpan<double> y)
    {
        if (index == Fastest) Offer(t, y);
    }

    /// <summary>Keeps speed and dynamic pressure of a state where they are the greatest so far.</summary>
    public void Offer(double t, ReadOnlySpan<double> y)
    {
        var air = path.Air(t, y);
        _marks.Offer(t, y[1], air, path.ThroughAir(y[1], air).Length);
    }
}

using NotebookKit.Flight.Drive;
using NotebookKit.Flight.Site;
using NotebookKit.Numerics.Ode;
using NotebookKit.Numerics.Space;

namespace NotebookKit.Flight.Motion;

/// <summary>
/// Watches a free flight for its top, the ground, the end of the drag model, the maximum speed and dynamic pressure, and the end of its
/// drive.
/// </summary>
internal struct FreeEvents<TPath, TDrive>(TPath path, bool hasTopped, FlightMarks marks) : IOdeEvents
    where TPath : struct, IFreePath<TDrive>
    where TDrive : struct, IDrive
{
    public const int Apogee = 0, Ground = 1, TooFast = 2, FirstEnd = 5;

    private const int Fastest = 3, Hardest = 4;

    private FlightMarks _marks = marks;
    private AirSample _air;
    private double _airTime = double.NaN, _airDown;

    public FlightMarks Marks => _marks;

    public int Count => FirstEnd + path.Ends;

    public OdeEventRule Rule(int index) => new(OdeEventDirection.Falling, index is not (Fastest or Hardest));

    public double Value(int index, double t, ReadOnlySpan<double> y, ReadOnlySpan<double> dydt)
    {
        switch (index)
        {
            case Apogee:
                return hasTopped ? -1 : -y[5];
            case Ground:
                return -y[2];
            case Fastest:
                return (y[3] * dydt[3]) + (y[4] * dydt[4]) + (y[5] * dydt[5]);
        }

        // Several are asked for at every state, and all of them want its air.
        if (t != _airTime || y[2] != _airDown) (_airTime, _airDown, _air) = (t, y[2], path.Air(t, y));
        ref readonly var air = ref _air;
        var through = Vector.From(y[3..]) - air.WindMps;
        return index switch
        {
            TooFast => Aerodynamics.Drag.DragCurve.MaximumMach - (through.Length / air.SoundMps),
            Hardest => Vector.Dot(through, Vector.From(dydt[3..]))
                + (0.5 * through.Square * path.Numbers.DensityFall(-y[2]) * y[5]),
            _ => path.End(index - FirstEnd, air.PressurePa, y),
        };
    }

    public void Located(int index, double t, ReadOnlySpan<double> y)
    {
        if (index is Fastest or Hardest) Offer(t, y);
    }

    /// <summary>Keeps speed and dynamic pressure of a state where they are the greatest so far.</summary>
    public void Offer(double t, ReadOnlySpan<double> y)
    {
        var air = path.Air(t, y);
        var velocity = Vector.From(y[3..]);
        _marks.Offer(t, velocity.Length, air, (velocity - air.WindMps).Length);
    }
}

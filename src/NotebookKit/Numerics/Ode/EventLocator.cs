namespace NotebookKit.Numerics.Ode;

/// <summary>Finds where event functions vanish inside an accepted step.</summary>
internal static class EventLocator
{
    public const int MaximumEvents = 16;

    /// <summary>Whether a pair of values is a crossing that counts.</summary>
    public static bool Crosses(double before, double after, OdeEventDirection direction) => direction switch
    {
        OdeEventDirection.Rising => before < 0 && after >= 0,
        OdeEventDirection.Falling => before > 0 && after <= 0,
        _ => (before < 0 && after >= 0) || (before > 0 && after <= 0),
    };

    /// <summary>Where one event function vanishes on the step's dense output.</summary>
    public static double Locate<TEvents>(
        ref TEvents events, int index, in DenseStep step, double before, double after, Span<double> state, Span<double> slope)
        where TEvents : struct, IOdeEvents
    {
        if (after == 0) return step.End;
        var function = new AlongStep<TEvents>(ref events, index, step, state, slope);
        return BracketedRoot.Polish(ref function, step.Start, before, step.End, after, 0, 100).Root;
    }

    private readonly ref struct AlongStep<TEvents>(ref TEvents events, int index, DenseStep step, Span<double> state, Span<double> slope)
        : IScalarFunction
        where TEvents : struct, IOdeEvents
    {
        private readonly ref TEvents _events = ref events;
        private readonly int _index = index;
        private readonly DenseStep _step = step;
        private readonly Span<double> _state = state;
        private readonly Span<double> _slope = slope;

        public double Value(double x)
        {
            _step.StateAndDerivative(x, _state, _slope);
            return _events.Value(_index, x, _state, _slope);
        }
    }
}

namespace NotebookKit.Numerics.Ode;

/// <summary>Which zero crossings of an event function count, seen in the direction of integration.</summary>
public enum OdeEventDirection
{
    /// <summary>Both.</summary>
    Any,

    /// <summary>From negative to positive.</summary>
    Rising,

    /// <summary>From positive to negative.</summary>
    Falling,
}

namespace NotebookKit.Vessels.Ends.Modes;

/// <summary>Who carries the thrust on what closes the hole in an end: nozzle, plug, valve.</summary>
public enum HoleCover
{
    /// <summary>
    /// It is supported at the edge of the hole and pulls on it. Taken where nothing else is said, since it loads the plate more.
    /// </summary>
    SupportedAtEdge,

    /// <summary>Something other than the plate carries it: a hole over a plugged neck, a tie rod.</summary>
    HeldElsewhere,
}

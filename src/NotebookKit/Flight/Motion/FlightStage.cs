namespace NotebookKit.Flight.Motion;

/// <summary>What leaves the vessel at a time of the flight.</summary>
internal enum FlightStage
{
    /// <summary>Nothing yet: it rides up its launch tube.</summary>
    Tube,

    /// <summary>Water.</summary>
    Water,

    /// <summary>Gas.</summary>
    Gas,

    /// <summary>Nothing.</summary>
    Coast,
}

namespace NotebookKit.Flight;

/// <summary>What leaves the vessel at a time of the flight.</summary>
internal enum FlightStage
{
    /// <summary>Water.</summary>
    Water,

    /// <summary>Gas.</summary>
    Gas,

    /// <summary>Nothing.</summary>
    Coast,
}

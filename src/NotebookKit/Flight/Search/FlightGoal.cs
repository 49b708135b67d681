namespace NotebookKit.Flight.Search;

/// <summary>What a fill or a nozzle is chosen for.</summary>
public enum FlightGoal
{
    /// <summary>Height of the top above the pad.</summary>
    Apogee,

    /// <summary>Greatest speed.</summary>
    MaximumSpeed,
}

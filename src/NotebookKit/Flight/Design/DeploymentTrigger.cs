namespace NotebookKit.Flight.Design;

/// <summary>What brings the canopy out.</summary>
public enum DeploymentTrigger
{
    /// <summary>Nothing: the vehicle comes down as it is.</summary>
    None,

    /// <summary>Passing the top of the flight.</summary>
    Apogee,

    /// <summary>A timer started by the release.</summary>
    Timer,
}

namespace NotebookKit.Flight.Design;

/// <summary>How a mass is known.</summary>
public enum MassBasis
{
    /// <summary>Worked out or guessed before the part existed.</summary>
    Estimated,

    /// <summary>Read from a scale.</summary>
    Weighed,
}

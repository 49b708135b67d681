namespace NotebookKit.Flight.Search;

/// <summary>What an axis of a map changes.</summary>
public enum MapVariable
{
    /// <summary>Water volume over internal volume.</summary>
    WaterFraction,

    /// <summary>Nozzle throat.</summary>
    Throat,

    /// <summary>Fill pressure.</summary>
    Pressure,

    /// <summary>Mass without water and gas.</summary>
    DryMass,
}

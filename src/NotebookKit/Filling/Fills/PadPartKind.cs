namespace NotebookKit.Filling.Fills;

/// <summary>What a part of the fill line does, in the order in which the gas meets it.</summary>
public enum PadPartKind
{
    /// <summary>Holds the gas.</summary>
    Cylinder,

    /// <summary>Brings the cylinder's pressure down to the set one.</summary>
    Regulator,

    /// <summary>Opened and shut by hand, from behind cover.</summary>
    FillValve,

    /// <summary>Brings the gas to the vehicle.</summary>
    Hose,

    /// <summary>The smallest passage, which sets the fill time.</summary>
    Restrictor,

    /// <summary>Keeps water from running back.</summary>
    CheckValve,

    /// <summary>Shows the vessel's pressure.</summary>
    Gauge,

    /// <summary>Vents the vessel from afar.</summary>
    DumpValve,

    /// <summary>Opens by itself above its set pressure.</summary>
    ReliefValve,

    /// <summary>What is filled.</summary>
    Vessel,
}

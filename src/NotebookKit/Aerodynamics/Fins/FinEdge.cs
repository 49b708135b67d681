namespace NotebookKit.Aerodynamics.Fins;

/// <summary>How the edge of a fin is finished.</summary>
public enum FinEdge
{
    /// <summary>Left square, as sawn.</summary>
    Square,

    /// <summary>Rounded over the whole thickness.</summary>
    Rounded,

    /// <summary>Tapered to an edge.</summary>
    Sharp,
}

namespace NotebookKit.Vessels.Laminates;

/// <summary>What gives way.</summary>
public enum FailureMode
{
    /// <summary>Resin cracks between the fibres: a path for a leak, not a burst.</summary>
    Matrix,

    /// <summary>Fibres break.</summary>
    FibreTension,

    /// <summary>Fibres buckle in compression.</summary>
    FibreCompression,

    /// <summary>The liner yields; it goes on carrying its yield stress.</summary>
    LinerYield,

    /// <summary>The liner tears.</summary>
    LinerTear,

    /// <summary>Nothing limits the strain: the wall turns into a mechanism without end.</summary>
    Mechanism,
}

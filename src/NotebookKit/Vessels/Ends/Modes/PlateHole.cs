namespace NotebookKit.Vessels.Ends.Modes;

/// <summary>How a round plate is held at the edge of the hole in its middle.</summary>
public enum PlateHole
{
    /// <summary>Nothing holds it.</summary>
    Free,

    /// <summary>A stiff boss keeps the edge from tilting and moves with it.</summary>
    Guided,

    /// <summary>A post keeps the edge from moving; it may tilt.</summary>
    Supported,

    /// <summary>A stiff post keeps the edge from moving and from tilting.</summary>
    Held,
}

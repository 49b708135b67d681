namespace NotebookKit.Vessels.Ends.Modes;

/// <summary>How a round plate is held at its outer edge.</summary>
public enum PlateRim
{
    /// <summary>Held against the thrust, free to tilt. It errs low where a real rim holds a little of the tilt.</summary>
    Supported,

    /// <summary>Held against the thrust and against tilt. No bolted or glued rim does it wholly.</summary>
    Clamped,
}

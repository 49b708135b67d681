namespace NotebookKit.Life;

/// <summary>Which faces of a wall water can enter by.</summary>
public enum WetFaces
{
    /// <summary>Both faces.</summary>
    Both,

    /// <summary>The outer face alone: a liner keeps the inner one dry, and the same uptake takes four times as long.</summary>
    OuterOnly,
}

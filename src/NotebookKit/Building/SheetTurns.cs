namespace NotebookKit.Building;

/// <summary>How a piece may be turned on the sheet; a laminate's strength goes with its direction.</summary>
public enum SheetTurns
{
    /// <summary>As drawn or end for end: the plies keep their direction.</summary>
    EndForEnd,

    /// <summary>As drawn only.</summary>
    AsDrawn,

    /// <summary>By quarter turns: for sheets that are the same both ways.</summary>
    Quarter,
}

namespace NotebookKit.Filling.Supply;

/// <summary>Which cylinder a vessel is filled from.</summary>
public enum CylinderOrder
{
    /// <summary>From the emptiest that still gives something to the fullest: the full ones are kept for the last bar.</summary>
    Cascade,

    /// <summary>Each fill from one cylinder alone, the emptiest that can still do it.</summary>
    OneAtATime,
}

namespace NotebookKit.Vessels.Ends;

/// <summary>What it means that a part gives way: three answers, never one.</summary>
public enum PartFailure
{
    /// <summary>It comes apart and lets the vessel go.</summary>
    Burst,

    /// <summary>It lets water out; the rest holds on.</summary>
    Leak,

    /// <summary>It takes a permanent set and holds on.</summary>
    Yield,
}

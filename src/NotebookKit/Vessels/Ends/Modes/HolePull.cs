namespace NotebookKit.Vessels.Ends.Modes;

/// <summary>How a sheet with a hole is pulled.</summary>
public enum HolePull
{
    /// <summary>One way only.</summary>
    OneWay,

    /// <summary>The same in every direction, as in a sphere.</summary>
    Even,
}

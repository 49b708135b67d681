namespace NotebookKit.Charts;

/// <summary>How an axis runs.</summary>
public enum AxisScale
{
    /// <summary>Equal steps.</summary>
    Linear,

    /// <summary>Equal ratios; values above zero only.</summary>
    Logarithmic,

    /// <summary>Names instead of numbers: parts, layups, phases.</summary>
    Categories,
}

namespace NotebookKit.Filling.Restrictors;

/// <summary>Where the port that a vessel is filled or vented through lies.</summary>
public enum PortPosition
{
    /// <summary>Not given: where the vessel holds water, the worse of the two counts.</summary>
    NotGiven,

    /// <summary>Above the water: gas alone passes.</summary>
    AboveWater,

    /// <summary>Under water: the water passes first.</summary>
    UnderWater,
}

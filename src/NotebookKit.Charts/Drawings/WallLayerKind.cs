namespace NotebookKit.Charts.Drawings;

/// <summary>What a layer of the wall does.</summary>
public enum WallLayerKind
{
    /// <summary>Keeps the water in.</summary>
    Liner,

    /// <summary>A braid, both ways at an angle.</summary>
    Sleeve,

    /// <summary>Woven cloth.</summary>
    Cloth,

    /// <summary>Fibres around the body.</summary>
    Hoop,

    /// <summary>A thin veil that holds the surface.</summary>
    Veil,
}

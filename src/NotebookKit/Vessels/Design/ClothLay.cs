namespace NotebookKit.Vessels.Design;

/// <summary>How a cloth lies on the vessel.</summary>
public enum ClothLay
{
    /// <summary>Warp along the axis, weft around.</summary>
    WarpAxial,

    /// <summary>Warp around, weft along the axis.</summary>
    WarpAround,

    /// <summary>On the bias: warp and weft at 45° either way.</summary>
    Bias,
}

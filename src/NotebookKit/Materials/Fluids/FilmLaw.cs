namespace NotebookKit.Materials.Fluids;

/// <summary>By which law of free convection a vessel's wall and the gas in it exchange heat; a vessel that stands has another than one that
/// lies.</summary>
/// <remarks>Source: S. W. Churchill, H. H. S. Chu, 1975 (standing); P. L. Woodfield, M. Monde, Y. Mitsutake, 2007 (lying).</remarks>
public enum FilmLaw
{
    /// <summary>
    /// The vessel stands: its wall is a vertical plate, Nu = {0.825 + 0.387 Ra^(1/6) / [1 + (0.492/Pr)^(9/16)]^(8/27)}².
    /// Source: S. W. Churchill, H. H. S. Chu, Int. J. Heat Mass Transfer 18 (1975) 1323, eq. 9, unverified: confirm.
    /// </summary>
    Vertical,

    /// <summary>
    /// The vessel lies: measured in horizontal vessels while hydrogen, nitrogen and argon were let in and out, Nu = 0.104 Ra^0.352 on the
    /// bore.
    /// Source: P. L. Woodfield, M. Monde, Y. Mitsutake, J. Thermal Sci. Tech. 2 (2007) 180, unverified: confirm.
    /// </summary>
    Horizontal,
}

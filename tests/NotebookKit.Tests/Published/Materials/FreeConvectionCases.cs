namespace NotebookKit.Tests.Published.Materials;

/// <summary>Free convection against a textbook's worked example.</summary>
public class FreeConvectionCases
{
    // Air at 400 K, Pr 0.690: Ra = 1.813e9 over 0.71 m, Nu = 147, h = 7.0 W/(m²·K) with k = 33.8e-3 W/(m·K).
    [Fact]
    [PublishedCase("A01", "F. P. Incropera, D. P. DeWitt, Fundamentals of Heat and Mass Transfer, 5th ed. 2002, Example 9.2, fireplace "
        + "screen; unverified")]
    public void Vertical_plate_of_the_textbook()
    {
        var nusselt = FreeConvection.Nusselt(FilmLaw.Vertical, 1.813e9, 0.690);
        Tolerance.Absolute(147, nusselt, 0.5);
        Tolerance.Absolute(7.0, nusselt * 33.8e-3 / 0.71, 0.05);
    }

    [Theory]
    [InlineData(FilmLaw.Vertical)]
    [InlineData(FilmLaw.Horizontal)]
    [PublishedCase("A02", "W. H. McAdams, Heat Transmission, 3rd ed. 1954, eq. 7-4b, Nu = 0.13 Ra^(1/3) for Ra from 1e9 to "
        + "1e12; unverified")]
    public void Both_laws_agree_with_the_turbulent_law_of_walls_to_a_third(FilmLaw law)
    {
        foreach (var rayleigh in new[] { 1e9, 1e10, 1e11 })
            Assert.InRange(FreeConvection.Nusselt(law, rayleigh, 0.71) / (0.13 * Math.Cbrt(rayleigh)), 0.75, 1.34);
    }
}

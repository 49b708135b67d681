using NotebookKit.Interactive.Html;

namespace NotebookKit.Interactive.Tests;

public sealed class PlainFormulaTests
{
    [Theory]
    [InlineData(@"\sigma_h = \frac{p\,r}{t}", "σ_h = (p r)/t")]
    [InlineData(@"E = \frac{1}{2}\,p\,\Delta V_{wall}", "E = 1/2 p ΔV_wall")]
    [InlineData(@"v = \sqrt{2\,(p - p_a)/\rho}", "v = √(2 (p − p_a)/ρ)")]
    [InlineData(@"x^2 + y^{3} = z^{n+1}", "x² + y³ = z^(n+1)")]
    [InlineData(@"\dot{m} = C_d \cdot A \times \left(\frac{a}{b}\right)^{\gamma}", "m\u0307 = C_d · A × (a/b)^γ")]
    [InlineData(@"\mathrm{Re} \le 10 \text{ m}", "Re ≤ 10 m")]
    [InlineData(@"\ln x + \sin\theta", "ln x + sin θ")]
    public void A_formula_reads_as_one_line(string tex, string expected) =>
        Assert.Equal(expected, PlainFormula.From(tex));

    [Theory]
    [InlineData("")]
    [InlineData(@"\")]
    [InlineData("{{{")]
    [InlineData("}}}")]
    [InlineData(@"\frac{a")]
    [InlineData(@"\sqrt")]
    [InlineData(@"x_")]
    public void A_broken_formula_does_no_harm(string tex) => Assert.NotNull(PlainFormula.From(tex));
}

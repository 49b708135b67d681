using NotebookKit.Runner.Pages;

namespace NotebookKit.Runner.Tests.Pages;

public sealed class EquationsTests
{
    private readonly Equations equations = new();

    // The same formulas set by Temml 0.13.5 under Node, its own reference surrounding.
    [Fact]
    public void A_formula_is_set_as_its_maker_sets_it() => Assert.Equal(
        "<math display=\"block\" class=\"tml-display\" style=\"display:block math;\"><mrow><mpadded "
            + "lspace=\"0\"><mi>kg</mi></mpadded><mspace width=\"0.1667em\"></mspace><mrow><mi "
            + "mathvariant=\"normal\">Δ</mi><mspace></mspace></mrow><mi>p</mi></mrow></math>",
        equations.ToMathML("\\mathrm{kg}\\,\\Delta p", display: true));

    [Theory]
    [InlineData("\\sigma_h = \\frac{p\\,r}{t}", "<mfrac>")]
    [InlineData("\\begin{bmatrix} A & B \\\\ B & D \\end{bmatrix}", "<mtable>")]
    [InlineData("\\sqrt{2 \\rho \\Delta p}", "<msqrt>")]
    public void Usual_notation_is_known(string tex, string element) =>
        Assert.Contains(element, equations.ToMathML(tex, display: false), StringComparison.Ordinal);

    [Fact]
    public void What_is_not_TeX_is_refused_with_a_reason()
    {
        var refusal = Assert.Throws<EquationException>(() => equations.ToMathML("\\frac{1}{", display: false));
        Assert.Contains("\\frac{1}{", refusal.Message, StringComparison.Ordinal);
        Assert.Contains("<code class=\"tex-problem\"", equations.ToHtml("\\frac{1}{", display: false), StringComparison.Ordinal);
    }

    [Fact]
    public void Marked_formulas_in_outputs_are_set_and_their_escapes_undone()
    {
        var html = equations.SetIn("<p><span class=\"tex\">a &lt; b</span> and <span class=\"tex tex-display\">c</span></p>");
        Assert.Equal(2, html.Split("<math").Length - 1);
        Assert.Contains("&lt;", html, StringComparison.Ordinal);
        Assert.Contains("display=\"block\"", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Markup_in_a_formula_stays_text() =>
        Assert.DoesNotContain("<script", equations.ToHtml("\\text{<script>alert(1)</script>}", display: false), StringComparison.Ordinal);
}

using CsCheck;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Building.Resins;

public class FinFilletsTests
{
    [Fact]
    public void Volume_is_section_times_roots_on_both_sides()
    {
        var fillets = new FinFillets(70.Millimetres(), 2.Millimetres(), 130.Millimetres(), 6.Millimetres(), 3);
        Tolerance.Relative(fillets.Section.SquareMillimeters * 130 * 6 / 1000, fillets.Volume.Milliliters, 1e-12);
        var adhesive = MaterialLibrary.Typical.Adhesive("structural epoxy");
        Tolerance.Relative(fillets.Volume.Milliliters * adhesive.Density.Value.GramsPerCubicCentimeter * 1.3,
            fillets.ToMix(adhesive).Grams, 1e-9);
    }

    [Fact]
    public void A_round_body_falls_away_so_that_it_takes_less_than_a_flat_one() =>
        Gen.Select(Gen.Double[40, 300], Gen.Double[1, 5], Gen.Double[3, 15]).Sample((body, fin, radius) =>
        {
            var round = new FinFillets(body.Millimetres(), fin.Millimetres(), 1.Metres(), radius.Millimetres(), 3).Section;
            var wider = new FinFillets((2 * body).Millimetres(), fin.Millimetres(), 1.Metres(), radius.Millimetres(), 3).Section;
            Assert.True(round < wider, $"{round} {wider}");
            Assert.True(wider.SquareMillimeters < (1 - Math.PI / 4) * radius * radius);
        }, iter: 200);

    [Fact]
    public void Bad_input_is_refused()
    {
        var message = Assert.Throws<InvalidDesignException>(() => new FinFillets(70.Millimetres(), 50.Millimetres(), 1.Millimetres(),
            300.Millimetres(), 0).ToMix(MaterialLibrary.Typical.Adhesive("structural epoxy"))).Message;
        foreach (var part in new[] { "thickness of the fin", "thinner than half", "length of the root", "radius of the fillet",
            "number of fins" }) Assert.Contains(part, message, StringComparison.OrdinalIgnoreCase);
    }
}

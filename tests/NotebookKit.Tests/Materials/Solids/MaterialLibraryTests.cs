using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Materials.Solids;

public class MaterialLibraryTests
{
    private static readonly MaterialLibrary Stock = MaterialLibrary.Typical;

    [Fact]
    public void Everything_in_the_library_is_valid_and_says_where_it_comes_from()
    {
        Assert.NotEmpty(Stock.All);
        Assert.All(Stock.All, m => Assert.Empty(m.Validate()));
        Assert.Empty(Stock.Overrides);
        Assert.All(Stock.AllOf<Fibre>(), f => Assert.False(string.IsNullOrEmpty(f.TensileStrength.Source.Title)));
    }

    [Fact]
    public void Names_are_found_in_any_letter_case() =>
        Assert.Equal("carbon T700 class", Stock.Fibre("  Carbon t700 CLASS ").Name);

    [Theory]
    [InlineData("carbon T700", "carbon T700 class")]
    [InlineData("eglass", "E-glass")]
    public void An_unknown_name_is_answered_with_the_nearest(string asked, string nearest)
    {
        var error = Assert.Throws<UnknownMaterialException>(() => Stock.Fibre(asked));
        Assert.Equal(nearest, error.Nearest[0]);
        Assert.Contains($"There is no fibre named \"{asked}\"", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_resin_asked_for_as_a_fibre_is_unknown() =>
        Assert.Throws<UnknownMaterialException>(() => Stock.Fibre("laminating epoxy"));

    [Fact]
    public void A_measured_fibre_replaces_the_typical_one_in_every_sleeve_made_of_it()
    {
        var typical = Stock.Fibre("carbon T700 class");
        var mine = typical with { TensileStrength = Property.Measured(4500.Megapascals(), 0.04, "strand tests") };
        var library = Stock.With(mine);
        Assert.Equal(4500, library.Braid("carbon sleeve 65 mm heavy").Fibre.TensileStrength.Value.Megapascals);
        Assert.Equal(4900, Stock.Braid("carbon sleeve 65 mm heavy").Fibre.TensileStrength.Value.Megapascals);
        Assert.Contains("carbon T700 class: tensile strength 4500 MPa ± 4 % from strand tests", library.Overrides);
        Assert.Equal(SourceKind.Measured, library.Fibre("carbon T700 class").TensileStrength.Kind);
    }

    [Fact]
    public void Every_wrong_value_is_named_at_once()
    {
        var wrong = Stock.Fibre("E-glass") with
        {
            Density = Property.Measured(2.5.KilogramsPerCubicMetre(), 0.01, "typed in g/cm³"),
            TensileStrength = Property.Measured(2200.Megapascals(), 4, "spread in per cent"),
        };
        var error = Assert.Throws<InvalidDesignException>(() => Stock.With(wrong));
        Assert.Equal(2, error.Findings.Count);
        Assert.Contains("E-glass: density is 2.5 kg/m³; it must be 500 kg/m³ to 5000 kg/m³", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_name_of_another_kind_is_refused()
    {
        var clash = Stock.Resin("laminating epoxy") with { Name = "E-glass" };
        var error = Assert.Throws<InvalidDesignException>(() => Stock.With(clash));
        Assert.Contains("already the name of another kind", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_property_shows_its_value_and_its_spread() =>
        Assert.Equal("3530 MPa ± 5 %", Stock.Fibre("carbon T300 class").TensileStrength.ToString());
}

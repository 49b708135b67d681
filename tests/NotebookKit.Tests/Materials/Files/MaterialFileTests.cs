using NotebookKit.Provenance;

namespace NotebookKit.Tests.Materials.Files;

public class MaterialFileTests
{
    [Fact]
    public void The_example_overrides_a_fibre_and_adds_a_sleeve()
    {
        var library = MaterialFile.Parse(MaterialFile.Example, "club.json");
        var fibre = library.Fibre("carbon T700 class");
        Assert.Equal(4600, fibre.TensileStrength.Value.Megapascals, 9);
        Assert.Equal(0.04, fibre.TensileStrength.Spread, 12);
        Assert.Equal("club.json, line 3", fibre.TensileStrength.Origin);
        Assert.False(fibre.LongitudinalModulus.IsOverride);
        var sleeve = library.Braid("our 65 mm sleeve");
        Assert.Equal(120, sleeve.Carriers);
        Assert.Equal(410e-6, sleeve.Yarn.Value.KilogramsPerMeter, 12);
        // The new sleeve is made of the overridden fibre.
        Assert.Equal(4600, sleeve.Fibre.TensileStrength.Value.Megapascals, 9);
        Assert.Equal(2, library.Overrides.Count);
    }

    [Fact]
    public void A_result_that_uses_an_override_shows_file_and_line()
    {
        var library = MaterialFile.Parse(MaterialFile.Example, "club.json");
        var vessel = Vessels.Samples.Trainer with { Plies = [new BraidedSleeve(library.Braid("our 65 mm sleeve"))] };
        Assert.Contains(vessel.Burst().Findings, f => f.Message.Contains("carbon T700 class: tensile strength 4600 MPa ± 4 % from "
            + "club.json, line 3", StringComparison.Ordinal));
        Assert.Contains(vessel.Rate().Findings, f => f.Message.Contains("club.json, line 5", StringComparison.Ordinal)
            || f.Message.Contains("club.json, line 6", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("4600 MPa", 4600)]
    [InlineData("4.6 GPa", 4600)]
    [InlineData("4600 N/mm²", 4600)]
    [InlineData("667 ksi", 4598.8)]
    [InlineData("46000 bar", 4600)]
    public void Strength_comes_in_any_unit(string text, double megapascals)
    {
        var library = MaterialFile.Parse($$"""{ "fibres": [ { "name": "E-glass", "tensile strength": "{{text}}" } ] }""", "club.json");
        Assert.Equal(megapascals, library.Fibre("E-glass").TensileStrength.Value.Megapascals, 0.05);
    }

    // NIST SP 811 (2008), Appendix B.9: 1 oz/yd² = 3.390575 E−02 kg/m².
    [Fact]
    public void Ounces_per_square_yard_are_as_NIST_prints_them()
    {
        var library = MaterialFile.Parse("""{ "cloths": [ { "name": "light", "like": "glass plain 80 g", "areal weight": "2 oz/yd²" } ] }""", "club.json");
        Tolerance.Relative(2 * 33.90575, library.Cloth("light").ArealWeight.Value.GramsPerSquareMeter, 1e-7);
    }

    [Fact]
    public void Every_mistake_is_named_with_its_line_and_nothing_is_taken()
    {
        const string text = """
            {
              "fibres": [
                { "name": "E-glass",
                  "tensile strength": "2200",
                  "density": "2,57 g/cm3",
                  "modulus": "73 GPa" },
                { "name": "hemp", "density": "1500 kg/m³" }
              ],
              "resins": [
                { "name": "laminating epoxy", "modulus": { "value": "3 furlongs" } },
                { "name": "my epoxy", "like": "laminating epoxi" }
              ],
              "sleeves": []
            }
            """;
        var error = Assert.Throws<InvalidDesignException>(() => MaterialFile.Parse(text, "club.json"));
        Assert.Contains("club.json, line 4: tensile strength: \"2200\" has no unit; write one of Pa, kPa, MPa", error.Message,
            StringComparison.Ordinal);
        Assert.Contains("club.json, line 5: density: \"2,57 g/cm3\"", error.Message, StringComparison.Ordinal);
        Assert.Contains("club.json, line 6: \"modulus\" isn't known here; this kind of material takes", error.Message,
            StringComparison.Ordinal);
        Assert.Contains("club.json, line 7: \"longitudinal modulus\" is missing; a new material needs all of its properties",
            error.Message, StringComparison.Ordinal);
        Assert.Contains("club.json, line 10: modulus: \"furlongs\" in \"3 furlongs\" isn't a unit taken here", error.Message,
            StringComparison.Ordinal);
        Assert.Contains("club.json, line 11: \"my epoxy\" is to be like \"laminating epoxi\"", error.Message, StringComparison.Ordinal);
        Assert.Contains("club.json, line 13: there is no list \"sleeves\"; lists are fibres, resins", error.Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_glass_temperature_may_be_left_out_and_is_then_not_given()
    {
        const string own = """
            "density": "1150 kg/m³", "modulus": "3 GPa", "Poisson's ratio": "0.35", "tensile strength": "60 MPa", "compressive strength": "95 MPa",
            "shear strength": "45 MPa", "service temperature": "50 °C"
            """;
        MaterialLibrary Of(string entry) => MaterialFile.Parse($$"""{ "resins": [ { {{entry}} } ] }""", "club.json");
        Assert.Null(Of($"\"name\": \"mine\", {own}").Resin("mine").GlassTemperature);
        Assert.Equal(72, Of($"\"name\": \"mine\", {own}, \"glass "
            + "temperature\": \"72 °C\"").Resin("mine").GlassTemperature!.Value.DegreesCelsius, 9);
        var changed = Of("\"name\": \"laminating epoxy\", \"glass temperature\": \"65 °C\"");
        Assert.Contains(changed.Overrides, o => o.Contains("glass temperature", StringComparison.Ordinal));
        Assert.Equal(60, Of("\"name\": \"mine\", \"like\": \"laminating epoxy\"").Resin("mine").GlassTemperature!.Value.DegreesCelsius, 9);
        Assert.Contains("glass temperature is 400 °C", Assert.Throws<InvalidDesignException>(() => Of("\"name\": \"laminating epoxy\", "
            + "\"glass temperature\": \"400 °C\"")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_value_out_of_range_is_named_with_its_line()
    {
        const string text = """
            { "solids": [
              { "name": "PET", "yield strength": "55 GPa" } ] }
            """;
        var error = Assert.Throws<InvalidDesignException>(() => MaterialFile.Parse(text, "club.json"));
        Assert.Contains("club.json, line 2: PET: yield strength is 55 GPa; it must be 1 MPa to 2000 MPa", error.Message,
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{ "fibres": [ { "name": "E-glass" """, 1)]
    [InlineData("{ \"fibres\": [\n { \"name\": \"E-glass\" \"density\": \"2 g/cm3\" } ] }", 2)]
    [InlineData("density,2.57", 1)]
    [InlineData("", 1)]
    public void Broken_JSON_is_named_with_its_line(string text, int line)
    {
        var error = Assert.Throws<InvalidDesignException>(() => MaterialFile.Parse(text, "club.json"));
        Assert.Contains($"club.json, line {line}: the line isn't JSON", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_missing_file_says_so()
    {
        var error = Assert.Throws<FileNotFoundException>(() => MaterialFile.Read("no-such-materials.json"));
        Assert.Contains("no-such-materials.json", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sleeve_of_an_unknown_fibre_is_answered_with_the_nearest()
    {
        var error = Assert.Throws<InvalidDesignException>(() => MaterialFile.Parse(
            """{ "braids": [ { "name": "new", "like": "glass sleeve 65 mm", "fibre": "E glass" } ] }""", "club.json"));
        Assert.Contains("There is no fibre named \"E glass\"", error.Message, StringComparison.Ordinal);
        Assert.Contains("\"E-glass\"", error.Message, StringComparison.Ordinal);
    }
}

using NotebookKit.DesignFiles;
using NotebookKit.DesignFiles.Trees;
using NotebookKit.Provenance;

namespace NotebookKit.Tests.DesignFiles;

public class DesignMaterialTests
{
    private static readonly Design Own = DesignFixture.Curlew.With("materials", """
        {
          "fibres": [{ "name": "our carbon", "like": "carbon T700 class", "tensile strength": { "value": "4600 MPa", "spread": "4 %", "kind": "measured", "source": "strand tests" } }],
          "resins": [{ "name": "laminating epoxy", "glass temperature": { "value": "88 °C", "kind": "measured", "source": "a strip" } }],
          "solids": [{ "name": "our alloy", "like": "aluminium 6061-T6", "yield strength": "250 MPa", "thermal expansion": "23 ppm/K", "usable strain": "5 %", "Poisson's ratio": 0.33 }],
          "adhesives": [{ "name": "our glue", "density": "1200 kg/m³", "shear modulus": "600 MPa", "strength on treated metal": "20 MPa", "strength on abraded metal": "15 MPa", "strength on abraded laminate": "14 MPa", "strength on abraded plastic": "3 MPa" }],
          "veils": [{ "name": "our veil", "like": "glass veil 30 g", "areal weight": "25 gsm", "fibre density": "2500 kg/m³", "fibre fraction": "15 %" }],
          "braids": [{ "name": "our sleeve", "fibre": "our carbon", "nominal diameter": "65 mm", "nominal angle": "45°", "carriers": 120, "yarn": "410 tex", "yarn width": "2 mm" }],
          "cloths": [{ "name": "our cloth", "fibre": "E-glass", "areal weight": "80 g/m²", "warp share": "50 %", "roll width": "1 m" }]
        }
        """);

    [Fact]
    public void A_property_of_its_own_stands_in_the_vessel_with_its_origin()
    {
        var glass = DesignFixture.Curlew.Vessel.Resin.GlassTemperature!;
        Assert.Equal(88, glass.Value.DegreesCelsius, 9);
        Assert.Equal(SourceKind.Measured, glass.Kind);
        Assert.Contains(DesignFixture.Curlew.Vessel.Overrides, o => o.Contains("a strip of the batch", StringComparison.Ordinal));
    }

    [Fact]
    public void Every_kind_of_material_may_be_of_the_designs_own()
    {
        var library = Own.Materials;
        Assert.Equal(4600, library.Braid("our sleeve").Fibre.TensileStrength.Value.Megapascals, 9);
        Assert.Equal(0.04, library.Fibre("our carbon").TensileStrength.Spread, 12);
        Assert.Equal(250, library.Solid("our alloy").YieldStrength.Value.Megapascals, 9);
        Assert.Equal(SourceKind.Unverified, library.Solid("our alloy").YieldStrength.Kind);
        Assert.Equal(23e-6, library.Solid("our alloy").ThermalExpansion.Value.PerKelvin, 12);
        Assert.Equal(3, library.Adhesive("our glue").OnAbradedPlastic.Value.Megapascals, 9);
        Assert.Equal(25, library.Veil("our veil").ArealWeight.Value.GramsPerSquareMeter, 9);
        Assert.Equal(80, library.Cloth("our cloth").ArealWeight.Value.GramsPerSquareMeter, 9);
        var plied = Own.With("plies.1", "our sleeve");
        Assert.Equal(120, ((BraidedSleeve)plied.Vessel.Plies[0]).Braid.Carriers);
        Assert.Equal(plied, Design.Parse(plied.ToText()));
    }

    [Theory]
    [InlineData("""{ "resins": [{ "name": "other epoxy", "modulus": "3 GPa" }] }""", "\"other epoxy\" is new, so it needs \"density\"")]
    [InlineData("""{ "resins": [{ "name": "other epoxy", "like": "none" }] }""", "is to be like \"none\"")]
    [InlineData("""{ "resins": [{ "name": "a", "like": "b" }, { "name": "b", "like": "a" }] }""", "no material of that kind and name stands above it")]
    [InlineData("""{ "resins": [{ "name": "laminating epoxy", "modulus": "3 kg" }] }""", "that is a mass, and a stress or modulus is wanted")]
    [InlineData("""{ "resins": [{ "name": "laminating epoxy", "modulus": "300 GPa" }] }""", "it must be 0.1 GPa to 20 GPa")]
    [InlineData("""{ "resins": [{ "name": "PET", "like": "laminating epoxy" }] }""", "PET")]
    [InlineData("""{ "resin": [] }""", "is \"resins\" meant?")]
    public void A_material_that_can_not_be_says_why(string materials, string says) =>
        Assert.Contains(says, Assert.Throws<DesignFileException>(() => DesignFixture.Curlew.With("materials", materials)).AllMessages,
            StringComparison.Ordinal);

    [Fact]
    public void A_vessel_that_was_tested_differs_only_in_what_its_test_says()
    {
        var (first, whole, shorter) = (DesignFixture.Curlew.Evidence.Tests[0].Vessel, DesignFixture.Curlew.Vessel,
            DesignFixture.Curlew.Evidence.Tests[2].Vessel);
        Assert.Equal("Curlew, first ends", first.Name);
        Assert.Equal(350, first.Length.Millimeters, 9);
        var (tail, own) = ((CarriedSleeve)first.NozzleEnd.Joints[0], (CarriedSleeve)whole.NozzleEnd.Joints[0]);
        Assert.Equal((15.0, 40.0, false, true), (tail.Tail!.Value.Millimeters, own.Tail!.Value.Millimeters, tail.IsTiedOff, own.IsTiedOff));
        Assert.Equal(whole.NozzleEnd.Fitting, first.NozzleEnd.Fitting);
        Assert.True(whole.Plies.SequenceEqual(first.Plies));
        Assert.Same(whole, DesignFixture.Curlew.Evidence.Tests[1].Vessel);
        Assert.Equal(whole.NozzleEnd.Closure, shorter.NozzleEnd.Closure);
        // What was tested stays what it was when the design's own layup is changed.
        Assert.Equal("carbon sleeve 65 mm heavy", DesignFixture.Curlew.With("plies.2", "carbon sleeve 65 mm light").Evidence.Tests[2]
            .Vessel.Plies[1].Name);
    }

    [Fact]
    public void Leaks_drops_growth_and_held_proofs_are_read()
    {
        var design = DesignFixture.Curlew.With("evidence.tests.6", """
            { "kind": "held proof", "vessel": "C-1", "pressure": "94 bar gauge", "batch": "batch 3", "drops seen": true, "growth": "31 mL",
              "growth uncertainty": "3 mL", "growth at": "80 bar gauge",
              "leak": { "where": "nozzle end, seal", "pressure": "70 bar gauge", "drops a minute": 4 } }
            """);
        var test = Assert.IsType<HeldProof>(design.Evidence.Tests[^1]);
        Assert.Equal(("C-1", 94.0, "batch 3", true), (test.Id, test.Pressure.Bar, test.Batch, test.DropsSeen));
        Assert.Equal((31.0, 4.0, "nozzle end, seal"), (test.Growth!.Value.Milliliters, test.Leak!.DropsPerMinute, test.Leak.Where));
        Assert.Equal((3.0, 80.0), (test.GrowthUncertainty!.Value.Milliliters, test.GrowthPressure!.Value.Bar));
        Assert.Equal(design, Design.Parse(design.ToText()));
    }
}

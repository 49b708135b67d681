using NotebookKit.DesignFiles;

namespace NotebookKit.Tests.DesignFiles;

/// <summary>A changed design reads only what the change reaches; what stands is what reading the whole text would give.</summary>
public class KeptPartsTests
{
    private static readonly (string Path, string Value)[] OfCurlew =
    [
        ("vessel.length", "1200 mm"), ("charge.water fraction", "33 %"), ("nozzle.throat", "14 mm"), ("vessel.liner.wall", "1.2 mm"),
        ("materials.resins.1.glass temperature.value", "80 °C"), ("vessel.length", "1150 mm"), ("recovery.canopy.diameter", "1.1 m"),
        ("vessel.plies.4.turns", "2"), ("vessel.plies.1", "carbon sleeve 65 mm heavy"),
        ("site.ceiling", "300 m"), ("nozzle.throat", "15 mm"), ("name", "Other"), ("evidence.batch", "2"),
        ("requirements.1.why", "Because."),
        ("recovery.canopy.diameter", "= body.fins.1.planform.span + 900 mm"), ("body.fins.1.planform.span", "78 mm"),
    ];

    [Fact]
    public void After_every_change_of_a_chain_the_values_are_those_of_the_whole_text()
    {
        var design = DesignFixture.Curlew;
        foreach (var (path, value) in OfCurlew)
        {
            design = design.With(path, value);
            var anew = ReadAnew(design);
            Assert.Equal(anew.Materials.All.Select(m => m.Name), design.Materials.All.Select(m => m.Name));
            Assert.Equal(anew.Stage.Masses.MassProperties().Mass, design.Stage.Masses.MassProperties().Mass);
            Assert.Equal(anew.Stage.Canopy, design.Stage.Canopy);
        }
    }

    // Vessels take over their nozzle's throat, the booster's water the sustainer's; the last changes go by way of a third place.
    private static readonly (string Path, string Value)[] OfGodwit =
    [
        ("stages.sustainer.charge.water fraction", "31 %"), ("stages.booster.nozzle.throat", "11 mm"), ("site.ceiling", "400 m"),
        ("stages.sustainer.nozzle.throat", "9 mm"), ("stages.booster.vessel.length", "700 mm"), ("name", "Other"),
        ("stages.booster.nozzle.throat", "= stages.sustainer.nozzle.throat + 2 mm"), ("stages.sustainer.nozzle.throat", "8 mm"),
        ("stages.sustainer.charge.fill pressure", "40 bar gauge"),
    ];

    [Fact]
    public void Of_two_stages_too_what_takes_over_from_another_place_goes_with_that_place()
    {
        var design = DesignFixture.Godwit;
        foreach (var (path, value) in OfGodwit)
        {
            design = design.With(path, value);
            ReadAnew(design);
        }

        Assert.Equal(10, design.Stages[0].Nozzle!.Throat.Millimeters, 9);
    }

    [Fact]
    public void The_order_of_two_changes_decides_nothing()
    {
        var one = DesignFixture.Curlew.With("vessel.length", "1200 mm").With("charge.water fraction", "33 %")
            .With("recovery.canopy.diameter", "1.1 m");
        var other = DesignFixture.Curlew.With("recovery.canopy.diameter", "1.1 m").With("vessel.length", "1200 mm")
            .With("charge.water fraction", "33 %");
        Assert.Equal(one.ToText(), other.ToText());
        Assert.Equal(one.Givens, other.Givens);
        Assert.Equal(one.Rating.WorkingPressure, other.Rating.WorkingPressure);
        Assert.Equal(one.Rating.Findings, other.Rating.Findings);
    }

    [Fact]
    public void A_vessel_that_was_tested_stays_the_same_one_while_the_design_is_changed()
    {
        var changed = DesignFixture.Curlew.With("vessel.length", "1200 mm");
        Assert.NotEmpty(changed.Evidence.Tests);
        Assert.All(changed.Evidence.Tests.Zip(DesignFixture.Curlew.With("vessel.length", "1100 mm").Evidence.Tests),
            t => Assert.Same(t.Second.Vessel, t.First.Vessel));
        Assert.DoesNotContain(changed.Evidence.Tests, t => t.Vessel.Length.Millimeters is > 1199.9 and < 1200.1);
    }

    [Fact]
    public void A_material_of_its_own_that_changes_reaches_every_part_that_is_made_of_it()
    {
        var design = Design.Parse(DesignFixture.Curlew.ToText());
        var resin = design.Vessel.Resin.Name;
        var other = design.With("materials", $$"""{ "resins": [ { "name": "{{resin}}", "density": "1300 kg/m³" } ] }""");
        Assert.Equal(1300, other.Vessel.Resin.Density.Value.KilogramsPerCubicMeter, 9);
        Assert.All(other.Evidence.Tests, t => Assert.Equal(1300, t.Vessel.Resin.Density.Value.KilogramsPerCubicMeter, 9));
    }

    // The booster's water follows the sustainer's in this design, and the ends of each vessel its own nozzle.
    [Theory]
    [InlineData("stages.sustainer.charge.water fraction", "31 %", "")]
    [InlineData("stages.booster.charge.fill pressure", "20 bar gauge", "")]
    [InlineData("site.ceiling", "400 m", "")]
    [InlineData("stages.sustainer.vessel.length", "640 mm", "sustainer")]
    [InlineData("stages.sustainer.nozzle.throat", "9 mm", "sustainer")]
    [InlineData("stages.booster.nozzle.throat", "11 mm", "booster")]
    [InlineData("name", "Other", "booster sustainer")]
    public void Only_the_stage_whose_vessel_a_change_reaches_is_rated_anew(string path, string value, string ratedAnew)
    {
        var before = DesignFixture.Godwit;
        var after = before.With(path, value);
        var anew = Design.Parse(after.ToText());
        for (var i = 0; i < 2; i++)
        {
            var stays = !ratedAnew.Contains(i == 0 ? "booster" : "sustainer", StringComparison.Ordinal);
            Assert.Equal(stays, ReferenceEquals(before.Stages[i].Rating, after.Stages[i].Rating));
            if (!stays) continue;
            Assert.Equal(anew.Stages[i].Rating.WorkingPressure, after.Stages[i].Rating.WorkingPressure);
            Assert.Equal(anew.Stages[i].Vehicle.Charge.WaterFraction, after.Stages[i].Vehicle.Charge.WaterFraction);
        }
    }

    [Fact]
    public void A_vessel_that_follows_by_way_of_another_part_is_rated_anew()
    {
        var design = DesignFixture.Curlew.With("nozzle.throat", "= nozzle.station - 1912 mm");
        Assert.NotSame(design.Rating, design.With("nozzle.station", "1926 mm").Rating);
        Assert.Same(design.Rating, design.With("nozzle.entry", "sharp edged").Rating);
    }

    // The whole text read anew: its values, marks, nozzles and bursts are those of the design that was changed.
    private static Design ReadAnew(Design design)
    {
        var anew = Design.Parse(design.ToText());
        Assert.Equal(anew.Givens, design.Givens);
        Assert.Equal(anew.Stages.Select(s => s.Mark), design.Stages.Select(s => s.Mark));
        Assert.Equal(anew.Stages.Select(s => s.Nozzle), design.Stages.Select(s => s.Nozzle));
        Assert.Equal(anew.Stages.SelectMany(s => s.Vessel.Burst().Parts).Select(p => p.Burst),
            design.Stages.SelectMany(s => s.Vessel.Burst().Parts).Select(p => p.Burst));
        return anew;
    }
}

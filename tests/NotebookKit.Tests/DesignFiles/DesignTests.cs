using NotebookKit.DesignFiles;
using NotebookKit.DesignFiles.Shapes;
using NotebookKit.DesignFiles.Trees;
using NotebookKit.Flight.Staging;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Record;

namespace NotebookKit.Tests.DesignFiles;

public class DesignTests
{
    private static readonly Design Curlew = DesignFixture.Curlew;

    [Fact]
    public void Curlew_from_its_file_is_rated_weighs_and_flies_as_its_script_says()
    {
        var (vehicle, rating) = DesignFixture.CurlewByCode();
        Assert.Equal(rating.WorkingPressure, Curlew.Rating.WorkingPressure);
        Assert.Equal(rating.DesignBurst, Curlew.Rating.DesignBurst);
        Assert.Equal(rating.LimitedBy, Curlew.Rating.LimitedBy);
        var (byCode, byFile) = (vehicle.MassProperties(), Curlew.Vehicle.MassProperties());
        Assert.Equal(byCode.Mass.Kilograms, byFile.Mass.Kilograms, 12);
        Assert.Equal(byCode.CentreOfGravity.Meters, byFile.CentreOfGravity.Meters, 12);
        Assert.Equal(byCode.PitchInertia.KilogramSquareMeters, byFile.PitchInertia.KilogramSquareMeters, 12);
        var (flown, read) = (vehicle.Fly(DesignFixture.Site(2.Metres())).Figures, Curlew.Vehicle.Fly(Curlew.Site!).Figures);
        Assert.Equal(flown.Apogee.Meters, read.Apogee.Meters, 9);
        Assert.Equal(flown.Drift.Meters, read.Drift.Meters, 9);
        Assert.Equal(flown.DescentSpeed.MetersPerSecond, read.DescentSpeed.MetersPerSecond, 9);
    }

    [Fact]
    public void Curlews_proof_is_held_as_its_script_says()
    {
        var planned = NotebookKit.Proofing.Plans.Proof.For(DesignFixture.CurlewByCode().Rating);
        var byCode = planned with { TrappedAir = 5.Millilitres(), Support = planned.Support! with { Span = 1.Metres() } };
        Assert.Equal(byCode.Plan().Steps[^2].Pressure, Curlew.Stage.Proof.Plan().Steps[^2].Pressure);
        Assert.Equal(byCode.Support!.Sag, Curlew.Stage.Proof.Support!.Sag);
        Assert.Equal(byCode.TrappedAir, Curlew.Stage.Proof.TrappedAir);
    }

    [Fact]
    public void Godwit_from_its_file_is_rated_weighs_and_flies_as_its_script_says()
    {
        var (vehicle, lower, upper) = DesignFixture.GodwitByCode();
        var godwit = DesignFixture.Godwit;
        Assert.Equal(lower.WorkingPressure, godwit.Stages[0].Rating.WorkingPressure);
        Assert.Equal(upper.WorkingPressure, godwit.Stages[1].Rating.WorkingPressure);
        Assert.Equal(vehicle.Booster.MassProperties().Mass.Kilograms, godwit.Stages[0].Vehicle.MassProperties().Mass.Kilograms, 12);
        Assert.Equal(vehicle.Sustainer.MassProperties().Mass.Kilograms, godwit.Stages[1].Vehicle.MassProperties().Mass.Kilograms, 12);
        Assert.Equal(vehicle.Fly(DesignFixture.Site(3.Metres())).Apogee.Meters, godwit.TwoStageVehicle.Fly(godwit.Site!).Apogee.Meters, 9);
    }

    [Theory]
    [InlineData("curlew.json")]
    [InlineData("godwit.json")]
    public void A_design_is_written_as_it_was_read_remarks_included(string file)
    {
        var text = File.ReadAllText(DesignFixture.PathOf(file));
        var design = Design.Read(DesignFixture.PathOf(file));
        Assert.Equal(text, design.ToText());
        Assert.Equal(design, Design.Parse(design.ToText()));
    }

    [Fact]
    public void A_file_is_replaced_whole()
    {
        var folder = Directory.CreateTempSubdirectory();
        try
        {
            var path = Path.Combine(folder.FullName, "own design.json");
            Curlew.Write(path);
            Curlew.With("fill pressure", "40 bar gauge").Write(path);
            Assert.Equal(40.BarGauge(), Design.Read(path).Stage.FillPressure);
            Assert.Single(folder.GetFiles());
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Theory]
    [InlineData("fill pressure", "40 bar gauge", "charge.fill pressure")]
    [InlineData("charge.fill pressure", "580 psi gauge", "charge.fill pressure")]
    [InlineData("Bore", "65 mm", "vessel.liner.bore")]
    [InlineData("vessel length", "1200 mm", "vessel.length")]
    [InlineData("fin thickness", "3 mm", "body.fins.1.thickness")]
    [InlineData("nozzle throat", "12 mm", "nozzle.throat")]
    [InlineData("working pressure", "50 bar gauge", "rating.working pressure")]
    [InlineData("ceiling", "400 m", "site.ceiling")]
    [InlineData("water fraction", "25 %", "charge.water fraction")]
    [InlineData("plies.1", "carbon sleeve 65 mm light", "vessel.plies.1.material")]
    [InlineData("vessel.plies.3.layers", "3", "vessel.plies.3.layers")]
    [InlineData("rail friction", "0.3", "site.rail.friction")]
    public void A_value_is_changed_by_its_path_or_its_plain_name(string name, string text, string path)
    {
        var changed = Curlew.With(name, text);
        Assert.Equal(text, changed.Givens.Single(g => g.Path == path).Value);
        var others = Curlew.Givens.Where(g => g.Path != path && !g.Path.StartsWith("vessel.nozzle end", StringComparison.Ordinal)
            && !g.Path.StartsWith("requirements", StringComparison.Ordinal)).Select(g => (g.Path, g.Value));
        Assert.Empty(others.Except(changed.Givens.Select(g => (g.Path, g.Value))));
    }

    [Fact]
    public void A_value_taken_over_follows_the_one_it_is_taken_from()
    {
        var changed = Curlew.With("nozzle throat", "12 mm");
        Assert.Equal(15, changed.Vessel.NozzleEnd.Closure.Opening.Millimeters, 12);
        Assert.Equal(17, ((ThreadedFitting)changed.Vessel.NozzleEnd.Fitting!).Nominal.Millimeters, 12);
        Assert.Equal("450 m", Curlew.With("ceiling", "450 m").Requirements.Single(r => r.Of == "apogee").Limit);
    }

    [Fact]
    public void A_part_is_put_in_and_taken_out()
    {
        var tube = Curlew.With("launch tube", """{ "diameter": "12 mm", "stroke": "1 m" }""");
        Assert.Equal(1, tube.Vehicle.LaunchTube!.Stroke.Meters, 12);
        Assert.Equal(Curlew, tube.Without("launch tube"));
        var more = Curlew.With("plies.5", "carbon sleeve 65 mm light");
        Assert.Equal(5, more.Vessel.Plies.Count);
        Assert.Equal(Curlew, more.Without("vessel.plies.5"));
        Assert.Equal(4, Curlew.Without("evidence.tests.1").Evidence.Tests.Count);
    }

    [Theory]
    [InlineData("fil presure", "40 bar gauge", "is \"fill pressure\" meant?")]
    [InlineData("fill pressure", "40 bar", "has to say whether it is gauge or absolute")]
    [InlineData("fill pressure", "40 mm", "that is a length, and a gauge pressure is wanted")]
    [InlineData("fill pressure", "90 bar gauge", "it must be 5 bar gauge to 80 bar gauge. Two bar below the regulator")]
    [InlineData("bore", "66", "the unit is missing")]
    [InlineData("bore", "6,6 cm", "decimals are written with a point")]
    [InlineData("plies.1", "carbon sleve 65 mm light", "nearest are \"carbon sleeve 65 mm light\"")]
    [InlineData("plies.1", "carbon tape 150 g", "there is no sleeve of that name")]
    [InlineData("friction", "0.2", "has 3 values called \"friction\"")]
    [InlineData("vessel", "66 mm", "holds more than one value")]
    public void A_change_that_can_not_be_says_why(string name, string text, string says) =>
        Assert.Contains(says, Assert.Throws<DesignFileException>(() => Curlew.With(name, text)).Message, StringComparison.Ordinal);

    [Fact]
    public void A_run_overrides_values_and_leaves_names_of_others_alone()
    {
        var overrides = GivenOverrides.Parse(["fill pressure=40 bar gauge", "plies.1=carbon sleeve 65 mm light", "fin sheet=3 mm"]);
        var design = Curlew.With(overrides);
        Assert.Equal(40.BarGauge(), design.Stage.FillPressure);
        Assert.Equal(["fin sheet"], overrides.Untaken);
    }

    [Fact]
    public void Each_value_stands_in_the_record_with_range_and_reason()
    {
        var builder = new DesignRecordBuilder("Curlew");
        Curlew.With("fill pressure", "40 bar gauge").State(builder);
        var givens = builder.Build().Givens;
        var fill = givens.Single(g => g.Name == "fill pressure");
        Assert.Equal(("40 bar gauge", "5 bar gauge to 80 bar gauge", true), (fill.Value, fill.Range, fill.Overridden));
        Assert.StartsWith("Two bar below the regulator", fill.Why, StringComparison.Ordinal);
        Assert.Contains(givens, g => g is { Name: "throat", Value: "13 mm", Overridden: false });
        Assert.Equal(givens.Count, givens.Select(g => g.Name).Distinct().Count());
        Assert.All(givens, g => Assert.False(string.IsNullOrWhiteSpace(g.Why), g.Name));
    }

    [Fact]
    public void Defaults_are_named_and_what_has_none_is_not_given()
    {
        var friction = Curlew.Defaults.Single(d => d.Path == "vessel.nozzle end.joints.1.friction");
        Assert.Equal("0.15", friction.Value);
        Assert.Contains(Curlew.Givens, g => g is { Path: "charge.gas temperature", State: GivenState.NotGiven, Value: "not given" });
        Assert.All(Curlew.Defaults, d => Assert.Equal(Curlew, Curlew.With(d.Path, d.Value).Without(d.Path)));
    }

    [Fact]
    public void Every_plain_name_means_its_own_value_alone()
    {
        foreach (var given in DesignFixture.Godwit.Givens.Where(g => g.State == GivenState.Stated && g.Kind.Length > 0
            && g.Kind is not ("name" or "text" or "word")))
            Assert.Contains(DesignFixture.Godwit.With(given.Name, given.Value).Givens, g => g.Path == given.Path && g.Value == given.Value);
    }

    [Fact]
    public void A_design_without_what_flies_still_has_its_vessel_and_says_what_is_missing()
    {
        var bare = Curlew.Without("body").Without("masses").Without("charge");
        Assert.Equal(Curlew.Rating.WorkingPressure, bare.Rating.WorkingPressure);
        Assert.Contains("the design doesn't give body, masses or charge", Assert.Throws<InvalidDesignException>(() => bare.Vehicle).Message,
            StringComparison.Ordinal);
        Assert.Contains("two stages", Assert.Throws<InvalidDesignException>(() => DesignFixture.Godwit.Vehicle).Message,
            StringComparison.Ordinal);
        Assert.Contains("one stage", Assert.Throws<InvalidDesignException>(() => Curlew.TwoStageVehicle).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Stations_of_fins_and_body_parts_follow_from_the_layout()
    {
        var laid = Curlew.With("masses.6", """{ "name": "fins", "of": "fins", "weighed": "70 g" }""")
            .With("masses.1", """{ "name": "nose", "of": "Nose", "weighed": "64 g" }""").Vehicle.Parts.Parts;
        // Centroid of the trapezoid by its two triangles: (70 · 80/2 · (60 + 130)/3 ... ) worked by hand from its corners.
        double rootArea = 130 * 80 / 2.0, tipArea = 70 * 80 / 2.0;
        var aft = (rootArea * (0 + 60 + 130) / 3 + tipArea * (60 + 130 + 130) / 3) / (rootArea + tipArea);
        Assert.Equal(1815 + aft, laid[5].At.Millimeters, 9);
        Assert.Equal(130, laid[5].Extent.Millimeters, 12);
        // A slender cone's side has its centroid at two thirds; an ogive's lies forward of that and behind its middle.
        Assert.InRange(laid[0].At.Millimeters, 115, 230 * 2 / 3.0);
    }
}

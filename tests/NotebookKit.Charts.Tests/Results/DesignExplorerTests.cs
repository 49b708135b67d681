using NotebookKit.Charts.Explorers;
using NotebookKit.Charts.Results;
using NotebookKit.Charts.Results.Settings;
using NotebookKit.DesignFiles;
using NotebookKit.Provenance;

namespace NotebookKit.Charts.Tests.Results;

/// <summary>Explorers of a design: whoever has the text of the design answers as the explorer's own model does.</summary>
public class DesignExplorerTests
{
    private static Design Curlew { get; } = Design.Read(PathOf("curlew.json"));

    public static TheoryData<string> Models => [DesignSetting.Flight, DesignSetting.Stability, DesignSetting.Thrust, DesignSetting.Fill,
        DesignSetting.Descent, DesignSetting.Wall];

    [Theory]
    [MemberData(nameof(Models))]
    public void The_text_that_it_carries_answers_as_its_model_does(string model)
    {
        var explorer = Of(model, Curlew);
        Assert.Equal(model, explorer.Base!.Model);
        var read = DesignSetting.Of(explorer.Base.Model, Design.Parse(explorer.Base.DesignText));
        double[] setting = [.. explorer.Parameters.Select(p => p.From + 0.37 * (p.To - p.From))];
        var (own, known) = (explorer.Model(setting), read(setting));
        Assert.Equal("", own.RefusedBecause);
        Assert.Equal(own.Numbers, known.Numbers);
        Assert.Equal(own.X, known.X);
        Assert.Equal(own.Y, known.Y);
    }

    // Read alone, the text of a vessel that was changed for a run would let the tests speak for it.
    [Fact]
    public void A_vessel_that_was_changed_for_a_run_is_left_to_the_grid() =>
        Assert.Null(Curlew.With("vessel.length", "1200 mm").ExploreStability().Base);

    [Fact]
    public void What_the_design_does_not_give_is_named()
    {
        Assert.Contains("the design gives no pad", Assert.Throws<InvalidDesignException>(() => Curlew.Without("pad").ExploreFill()).Message,
            StringComparison.Ordinal);
        Assert.Throws<InvalidDesignException>(() => Design.Read(PathOf("godwit.json")).ExploreFlight());
    }

    // The design's own wall, rated as though no twin of it had been burst.
    [Fact]
    public void The_designs_own_wall_is_that_of_its_vessel_without_a_test()
    {
        var explorer = Curlew.ExploreWall();
        var own = explorer.Model([.. explorer.Parameters.Select(p => p.Start)]);
        Assert.Equal(Curlew.Vessel.Rate(Curlew.Stage.Rules).WorkingPressure.Bar, own.Numbers[0], 1e-9);
        Assert.Equal(Curlew.Vessel.Layup().Mass.Grams, own.Numbers[1], 1e-9);
        Assert.Equal(own.Y.Max(), own.Numbers[2], 1e-12);
        var two = explorer.Model([explorer.Parameters[0].Start, 2, 30]);
        Assert.True(two.Numbers[1] > own.Numbers[1] + 100);
    }

    [Fact]
    public void A_vessel_without_a_hoop_wrap_has_no_wall_to_explore() => Assert.Contains("the vessel has no hoop wrap",
        Assert.Throws<InvalidDesignException>(() => Curlew.With("vessel.plies", """["carbon sleeve 65 mm heavy"]""").ExploreWall()).Message,
        StringComparison.Ordinal);

    private static Explorer Of(string model, Design design) => model switch
    {
        DesignSetting.Flight => design.ExploreFlight(), DesignSetting.Stability => design.ExploreStability(),
        DesignSetting.Thrust => design.ExploreThrust(), DesignSetting.Fill => design.ExploreFill(),
        DesignSetting.Wall => design.ExploreWall(), _ => design.ExploreDescent(),
    };

    private static string PathOf(string name)
    {
        var folder = AppContext.BaseDirectory;
        while (!Directory.Exists(Path.Combine(folder, "notebooks"))) folder = Path.GetDirectoryName(folder)!;
        return Path.Combine(folder, "notebooks", name);
    }
}

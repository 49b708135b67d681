using System.Xml.Linq;
using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Results;
using NotebookKit.Clearance;
using NotebookKit.DesignFiles;
using NotebookKit.Provenance;

namespace NotebookKit.Charts.Tests.Results;

public sealed class SweepChartTests
{
    private static readonly Design Club = Design.Read(Path.Combine(Root(), "notebooks", "curlew.json"));

    [Fact]
    public void One_value_makes_a_line_a_required_figure_with_its_limit_and_units()
    {
        var sweep = Club.Sweep("fill pressure=30..60 bar gauge/3");
        var charts = sweep.Charts();
        Assert.Equal(Club.Requirements.Select(r => r.Of).Distinct().Count(), charts.Count);
        var apogee = charts.Single(c => c.Y.Name == "Apogee");
        Assert.Equal(("m", "bar gauge"), (apogee.Y.Unit, apogee.X.Unit));
        Assert.Equal(600, apogee.Limits.Single().Value, 1e-9);
        Assert.Contains("apogee below the ceiling: at most 600 m", apogee.Limits.Single().Label, StringComparison.Ordinal);
        Assert.Equal(sweep.Column("apogee").Values, Assert.IsType<Curve>(apogee.Marks.Single()).Y.Values);
        Assert.All(charts, c => Assert.NotNull(XElement.Parse(c.ToSvg())));
    }

    [Fact]
    public void Words_make_a_bar_a_word()
    {
        var sweep = Club.Without("rating.working pressure").Sweep("plies.1=carbon sleeve 65 mm heavy; carbon sleeve 65 mm light");
        var bars = sweep.Charts().Select(c => Assert.IsType<Bars>(c.Marks.Single())).ToList();
        Assert.All(bars, b => Assert.Equal(["carbon sleeve 65 mm heavy", "carbon sleeve 65 mm light"], b.Names));
        Assert.All(sweep.Charts(), c => Assert.NotNull(XElement.Parse(c.ToSvg())));
    }

    // By the sweep's own lines: every design is one point, and those that hold are the ones marked so.
    [Fact]
    public void Two_values_make_a_map_of_the_designs_that_hold()
    {
        var sweep = Club.Sweep("fill pressure=60 bar gauge; 70 bar gauge; 200 bar gauge", "throat=13 mm; 11 mm");
        var map = sweep.Charts().Single();
        var points = map.Marks.Cast<Points>().ToList();
        Assert.Equal(6, points.Sum(p => p.X.Count));
        Assert.Equal(sweep.Designs.Count(d => d.Holds), points.Single(p => p.Name == "all requirements hold").X.Count);
        Assert.Contains(points, p => p.Name == "can't be made");
        Assert.Contains(points, p => p.Name.Contains("fill pressure within the rating", StringComparison.Ordinal));
        Assert.NotNull(XElement.Parse(map.ToSvg()));
    }

    [Fact]
    public void A_map_says_what_the_numbers_of_words_mean_and_three_values_have_no_chart()
    {
        var map = Club.Sweep("throat=11 mm; 13 mm", "plies.1=carbon sleeve 65 mm heavy; carbon sleeve 65 mm light").Charts().Single();
        Assert.Contains("2 carbon sleeve 65 mm light", map.Remark, StringComparison.Ordinal);
        Assert.Empty(Club.Sweep("throat=11 mm", "ceiling=600 m", "fill pressure=40 bar gauge").Charts());
    }

    [Fact]
    public void A_limit_is_in_the_unit_of_its_column()
    {
        var sweep = Club.Sweep("throat=13 mm");
        Assert.Equal([1, 600, 1, 500, 7], Club.Requirements.Select(sweep.LimitOf));
        Assert.Throws<InvalidDesignException>(() => sweep.Column("colour"));
    }

    private static string Root()
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
            if (File.Exists(Path.Combine(at.FullName, "NotebookKit.sln"))) return at.FullName;
        throw new DirectoryNotFoundException("The tests don't lie in the repository.");
    }
}

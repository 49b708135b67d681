using NotebookKit.Charts.Figures;
using NotebookKit.Charts.Marks;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Tests.Figures;

public sealed class PointLabelsTests
{
    private static Points Named(params (double X, double Y)[] at)
        => new(new Series("Mass", "g", [.. at.Select(p => p.X)]), new Series("Pressure", "bar gauge", [.. at.Select(p => p.Y)]))
    {
        Labels = [.. at.Select((_, i) => $"layup {i}")], LabelsShown = true,
    };

    [Fact]
    public void Names_at_the_edges_run_inwards() => Assert.Equal([1, 2, -1], PointLabels.Sides(Named((100, 10), (500, 50), (900, 90))));

    [Fact]
    public void A_name_that_would_lie_on_another_is_left_out()
        => Assert.Equal([1, 2, 0, -1], PointLabels.Sides(Named((0, 0), (500, 50), (520, 51), (1000, 100))));

    [Fact]
    public void Points_without_names_have_none() => Assert.Equal([0, 0],
        PointLabels.Sides(Named((0, 0), (1, 1)) with { LabelsShown = false }));
}

using CsCheck;
using NotebookKit.Charts.Marks;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Tests.Marks;

public sealed class HistogramTests
{
    [Fact]
    public void Shares_add_up_and_classes_cover_the_samples() =>
        Gen.Double[-1000, 1000].Array[1, 300].Sample(values =>
        {
            var (centres, width, shares) = new Histogram(new Series("Burst", "bar gauge", values)).Count();
            Assert.Equal(100, shares.Sum(), 6);
            Assert.True(centres[0] - (width / 2) <= values.Min() + 1e-9);
            Assert.True(centres[^1] + (width / 2) >= values.Max() - 1e-9);
        });

    [Fact]
    public void Classes_can_be_chosen()
    {
        var (centres, width, shares) = (new Histogram(new Series("Burst", "bar gauge", [0, 1, 2, 3, 4])) { Classes = 2 }).Count();
        Assert.Equal([1.0, 3.0], centres);
        Assert.Equal(2.0, width);
        Assert.Equal([40.0, 60.0], shares);
    }
}

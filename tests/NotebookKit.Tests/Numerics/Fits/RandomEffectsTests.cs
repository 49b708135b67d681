using NotebookKit.Numerics;
using NotebookKit.Numerics.Fits;

namespace NotebookKit.Tests.Numerics.Fits;

public class RandomEffectsTests
{
    [Fact]
    public void Estimates_that_agree_leave_no_scatter_and_the_weighted_mean()
    {
        var all = RandomEffects.Of([1.0, 1.02, 0.99], [0.1, 0.2, 0.1]);
        Assert.Equal(0, all.BetweenVariance);
        // Weights 100, 25, 100.
        Tolerance.Relative((100 * 1.0 + 25 * 1.02 + 100 * 0.99) / 225, all.Mean, 1e-12);
        Tolerance.Relative(1 / 15.0, all.StandardError, 1e-12);
    }

    [Fact]
    public void The_95_percent_interval_holds_the_mean_about_as_often()
    {
        var noise = new SeededSamples(20261127);
        var (held, next) = (0, 0);
        const int sets = 2000;
        double[] errors = [0.05, 0.08, 0.06, 0.05];
        for (var set = 0; set < sets; set++)
        {
            var all = RandomEffects.Of(
                [.. errors.Select((e, i) => 0.2 + 0.07 * noise.Normal(set, 2 * i) + e * noise.Normal(set, 2 * i + 1))], errors);
            if (Math.Abs(all.Mean - 0.2) < all.HalfWidth) held++;
            if (Math.Abs(all.Mean - (0.2 + 0.07 * noise.Normal(set, 20))) < all.NextHalfWidth) next++;
        }

        // 1900 of 2000 are expected; the standard deviation of that count is 10. An interval that errs wide may hold more.
        Assert.InRange(held, 1860, 1999);
        Assert.InRange(next, 1860, 1999);
    }
}

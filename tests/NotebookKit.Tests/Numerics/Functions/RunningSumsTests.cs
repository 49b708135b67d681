using CsCheck;
using MathNet.Numerics.Statistics;
using NotebookKit.Numerics;
using NotebookKit.Numerics.Functions;

namespace NotebookKit.Tests.Numerics.Functions;

/// <summary>What is gathered number by number is what the numbers give together.</summary>
public class RunningSumsTests
{
    private static readonly Gen<double[]> Numbers = Gen.Double[-1e3, 1e3].Array[2, 200];

    [Fact]
    public void Covariance_of_two_sets_together_is_that_of_all_points() =>
        Gen.Select(Numbers, Gen.Double[0, 1], Gen.Double[-1e6, 1e6]).Sample((x, where, shift) =>
        {
            double[] y = [.. x.Select((v, i) => (0.3 * v) + (i % 7))], east = [.. x.Select(v => v + shift)];
            var (first, second, cut) = (new RunningCovariance(), new RunningCovariance(), (int)(where * x.Length));
            for (var i = 0; i < x.Length; i++)
            {
                if (i < cut) first.Add(east[i], y[i]);
                else second.Add(east[i], y[i]);
            }

            first.Add(second);
            var n = x.Length - 1.0;
            var whole = BivariateSpread.Of(east, y);
            var size = 1e-9 * (1 + whole.VarianceX + whole.VarianceY);
            Assert.Equal(x.Length, first.Count);
            Assert.Equal(whole.MeanX, first.MeanX, 1e-12 * (1e3 + Math.Abs(shift)));
            Assert.Equal(whole.MeanY, first.MeanY, 1e-9);
            Assert.Equal(whole.VarianceX, first.SumXX / n, size);
            Assert.Equal(whole.VarianceY, first.SumYY / n, size);
            Assert.Equal(whole.Covariance, first.SumXY / n, size);
        });

    [Fact]
    public void A_quantile_from_bins_is_within_its_stated_error_of_that_of_the_numbers() =>
        Gen.Select(Numbers, Gen.Double[0, 1], Gen.Double[0.01, 1]).Sample((x, share, seen) =>
        {
            // The bins are laid after a part of the numbers, so that some lie beyond them.
            var first = x[..Math.Max(1, (int)(seen * x.Length))];
            var bins = new BinCounts(first.Min(), first.Max());
            foreach (var value in x) bins.Add(value);
            var (found, error) = bins.Quantile(share, x.Min(), x.Max());
            Assert.InRange(x.QuantileCustom(share, QuantileDefinition.R7), found - error - 1e-9, found + error + 1e-9);
        });

    [Fact]
    public void Bins_over_numbers_that_are_all_seen_are_as_wide_as_stated()
    {
        var x = Enumerable.Range(0, 10_001).Select(i => Math.Sin(i)).ToArray();
        var bins = new BinCounts(x.Min(), x.Max());
        foreach (var value in x) bins.Add(value);
        Assert.Equal(3 * (x.Max() - x.Min()) / 4096, bins.Width, 1e-12);
        Assert.InRange(bins.Quantile(0.37, x.Min(), x.Max()).Error, 0, 0.51 * bins.Width);
    }
}

using NotebookKit.Numerics;

namespace NotebookKit.Tests.Numerics;

public class SeededSamplesTests
{
    [Fact]
    public void The_order_of_asking_and_the_number_of_threads_do_not_matter()
    {
        var samples = new SeededSamples(20250611);
        double[] serial = [.. Enumerable.Range(0, 5000).Select(i => samples.Normal(i, 3))];
        var parallel = new double[5000];
        Parallel.For(0, 5000, i => parallel[4999 - i] = samples.Normal(4999 - i, 3));
        Assert.Equal(serial, parallel);
    }

    [Fact]
    public void Uniform_numbers_fill_their_interval_evenly()
    {
        // 20 cells of 10 000: chi-square with 19 degrees of freedom, 99.99 % point 49.6 (tables); the seed is fixed, so this can't flicker.
        var samples = new SeededSamples(7);
        var cells = new int[20];
        for (var i = 0; i < 200_000; i++) cells[(int)(samples.Uniform(i, 0) * 20)]++;
        Assert.InRange(cells.Sum(c => (c - 10_000.0) * (c - 10_000.0) / 10_000.0), 4, 49.6);
    }

    [Fact]
    public void Normal_numbers_have_the_moments_of_the_normal_distribution()
    {
        var samples = new SeededSamples(11);
        const int n = 200_000;
        double[] x = [.. Enumerable.Range(0, n).Select(i => samples.Normal(i, 0))];
        // Four standard errors: mean 1/sqrt(n), variance sqrt(2/n), kurtosis sqrt(96/n).
        Tolerance.Absolute(0, x.Average(), 4 / Math.Sqrt(n));
        Tolerance.Absolute(1, x.Average(v => v * v), 4 * Math.Sqrt(2.0 / n));
        Tolerance.Absolute(3, x.Average(v => v * v * v * v), 4 * Math.Sqrt(96.0 / n));
        Assert.InRange(x.Count(v => v > 1.959963985) / (double)n, 0.025 - 0.0014, 0.025 + 0.0014);
    }

    [Fact]
    public void Variables_draws_parts_and_seeds_are_unrelated()
    {
        var a = new SeededSamples(1);
        Assert.NotEqual(a.Uniform(0, 0), a.Uniform(0, 1));
        Assert.NotEqual(a.Uniform(0, 0), a.Uniform(1, 0));
        Assert.NotEqual(a.Uniform(0, 0), a.Uniform(0, 0, 1));
        Assert.NotEqual(a.Uniform(0, 0), new SeededSamples(2).Uniform(0, 0));
        Assert.NotEqual(a.Uniform(0, 0), a.Part(0).Uniform(0, 0));
        Assert.NotEqual(a.Part(0), a.Part(1));
        const int n = 100_000;
        var covariance = Enumerable.Range(0, n).Average(i => a.Normal(i, 0) * a.Normal(i, 1));
        Tolerance.Absolute(0, covariance, 4 / Math.Sqrt(n));
    }

    [Fact]
    public void Refuses_negative_numbers()
    {
        var samples = new SeededSamples(1);
        Assert.Throws<ArgumentOutOfRangeException>(() => samples.Uniform(-1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => samples.Normal(0, -1));
    }
}

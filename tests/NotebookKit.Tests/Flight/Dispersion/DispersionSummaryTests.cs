using MathNet.Numerics.Statistics;
using NotebookKit.Flight.Dispersion;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Flight.Dispersion;

/// <summary>A dispersion that keeps no flight tells of the flights what the one that keeps all of them tells.</summary>
public class DispersionSummaryTests
{
    private static readonly Vehicle Trainer = SampleVehicles.Trainer;

    private static readonly LaunchSite Site = SampleVehicles.Breezy
        with { Ceiling = 215.Metres(), Field = FlyingField.Circle(230.Metres()) };

    [Fact, Trait("Length", "long")]
    public void Ten_thousand_flights_have_moments_extremes_and_quantiles_of_the_kept_flights()
    {
        var kept = Trainer.Disperse(Site, new(), 10_000, 7);
        var gathered = Trainer.DisperseMany(Site, new(), 10_000, 7);
        Assert.Equal(kept.Plan, gathered.Plan);
        Assert.Equal(kept.Failed, gathered.Failed);
        Assert.Equal(kept.AboveCeiling, gathered.AboveCeiling);
        Assert.Equal(kept.OffField, gathered.OffField);
        foreach (var (series, column) in kept.Inputs.Concat(kept.Outputs).Zip(gathered.Inputs.Concat(gathered.Outputs)))
            AssertSame(series, column);

        var (all, spread) = (kept.Landings!, gathered.Landings!);
        Assert.Equal(all.Count, spread.Count);
        Same(all.MeanEast.Meters, spread.MeanEast.Meters);
        Same(all.MeanNorth.Meters, spread.MeanNorth.Meters);
        Same(all.Covariance.EastEast.SquareMeters, spread.Covariance.EastEast.SquareMeters);
        Same(all.Covariance.NorthNorth.SquareMeters, spread.Covariance.NorthNorth.SquareMeters);
        Same(all.Major.Meters, spread.Major.Meters);
        Same(all.Axes(90.Percent()).Minor.Meters, spread.Axes(90.Percent()).Minor.Meters);
        Assert.Equal(kept.MiddleApogee.Meters, gathered.Apogee.Quantile(0.5).Value, gathered.Apogee.Quantile(0.5).Error);
        Assert.InRange(gathered.Apogee.Quantile(0.5).Error, 0, 0.003 * gathered.Apogee.Deviation);
    }

    [Theory]
    [InlineData(300)]
    [InlineData(3000)]
    public void One_thread_or_four_give_the_same_bits(int flights) =>
        AssertSame(Trainer.DisperseMany(Site, new(), flights, 3, threads: 1), Trainer.DisperseMany(Site, new(), flights, 3, threads: 4));

    [Fact]
    public void Two_stages_have_the_booster_beside_the_sustainer()
    {
        var kept = SampleVehicles.TwoStages.Disperse(Site, new(), 1200, 7);
        var gathered = SampleVehicles.TwoStages.DisperseMany(Site, new(), 1200, 7);
        Assert.Equal(kept.Unparted, gathered.Unparted);
        Assert.Equal(kept.Booster!.OffField, gathered.BoosterOffField);
        Assert.Equal(kept.Booster.Landings!.Count, gathered.BoosterLandings!.Count);
        Same(kept.Booster.Landings.Minor.Meters, gathered.BoosterLandings.Minor.Meters);
        foreach (var (series, column) in kept.Outputs.Zip(gathered.Outputs)) AssertSame(series, column);
        AssertSame(gathered, SampleVehicles.TwoStages.DisperseMany(Site, new(), 1200, 7, threads: 3));
    }

    [Fact]
    public void Flights_that_do_not_vary_have_no_deviation()
    {
        var still = Trainer.DisperseMany(Site, Spread.None, 1100, 1);
        Assert.Equal(0, still.Apogee.Variance, 1e-18);
        Assert.Equal(still.Apogee.Mean, still.Apogee.Quantile(0.3).Value, 1e-6);
        Assert.Equal(ResultStatus.Completed, still.Status);
    }

    [Fact]
    public void Wrong_numbers_of_flights_and_shares_are_refused_and_a_stop_is_heard()
    {
        Assert.Contains("10000000", Assert.Throws<InvalidDesignException>(() => Trainer.DisperseMany(Site, new(), 10_000_001, 1)).Message
            .Replace(" ", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Throws<InvalidDesignException>(() => Trainer.DisperseMany(Site, new(), 1, 1));
        Assert.Throws<OutOfRangeException>(() => Trainer.DisperseMany(Site, new(), 3, 1).Apogee.Quantile(1.5));
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => Trainer.DisperseMany(Site, new(), 3, 1, cancellation: stop.Token));
    }

    private static void AssertSame(Series series, ColumnSummary column)
    {
        double[] values = [.. series.Values.Where(double.IsFinite)];
        Assert.Equal((series.Name, series.Unit, values.Length), (column.Name, column.Unit, (int)column.Count));
        if (values.Length < 2) return;
        Assert.Equal(values.Min(), column.Minimum);
        Assert.Equal(values.Max(), column.Maximum);
        // Two passes over all numbers; where the mean is next to nothing beside the deviation, to the deviation.
        var mean = values.Average();
        var variance = values.Sum(v => (v - mean) * (v - mean)) / (values.Length - 1);
        Assert.Equal(mean, column.Mean, 1e-12 * (Math.Abs(mean) + Math.Sqrt(variance)));
        Assert.Equal(variance, column.Variance, 1e-12 * variance);
        foreach (var share in new[] { 0, 0.001, 0.05, 0.5, 0.95, 0.999, 1 })
        {
            var (found, error) = column.Quantile(share);
            Assert.Equal(values.QuantileCustom(share, QuantileDefinition.R7), found, error + (1e-12 * Math.Abs(found)));
        }
    }

    private static void AssertSame(DispersionSummary one, DispersionSummary other)
    {
        foreach (var (a, b) in one.Inputs.Concat(one.Outputs).Zip(other.Inputs.Concat(other.Outputs)))
        {
            Assert.Equal((a.Count, a.Mean, a.Variance, a.Minimum, a.Maximum), (b.Count, b.Mean, b.Variance, b.Minimum, b.Maximum));
            foreach (var share in new[] { 0.01, 0.5, 0.99 }) Assert.Equal(a.Quantile(share), b.Quantile(share));
        }

        Assert.Equal(one.Landings, other.Landings);
        Assert.Equal(one.BoosterLandings, other.BoosterLandings);
        Assert.Equal((one.Failed, one.Unparted, one.AboveCeiling, one.OffField, one.BoosterOffField),
            (other.Failed, other.Unparted, other.AboveCeiling, other.OffField, other.BoosterOffField));
    }

    private static void Same(double expected, double actual) => Assert.Equal(expected, actual, 1e-12 * Math.Abs(expected));
}

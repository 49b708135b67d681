using NotebookKit.Charts.Results;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Recovery;

namespace NotebookKit.Charts.Tests.Results;

public sealed class ResultExplorerTests
{
    private static Canopy Canopy { get; } = new(CanopyType.FlatCircular, 0.9.Metres());

    [Fact]
    public void The_way_down_starts_where_the_canopy_is_and_ends_where_the_drift_is()
    {
        var explorer = Canopy.Explore(900.Grams(), 150.Metres(), 4.MetresPerSecond());
        var state = explorer.At(0.9, 4.5, 150);
        var descent = Canopy.Descend(900.Grams());
        var drift = Drift.Descending(150.Metres(), descent.Fastest, WindProfile.PowerLaw(4.5.MetresPerSecond(), 10.Metres()));
        Assert.Equal(descent.Fastest.MetersPerSecond, state.Numbers[0], 1e-9);
        Assert.Equal(drift.Distance.Meters, state.Numbers[3], 1e-6);
        Assert.Equal(0, state.X[0], 1e-9);
        Assert.Equal(drift.Distance.Meters, state.X[^1], 1e-6);
        Assert.Equal([150.0, 0.0], [state.Y[0], state.Y[^1]]);
    }

    [Fact]
    public void Between_the_computed_canopies_it_is_right_to_two_per_cent()
    {
        var explorer = Canopy.Explore(900.Grams(), 150.Metres());
        Assert.True(explorer.Error.Checked > 50);
        Assert.True(explorer.Error.Numbers[0] < 0.02 * explorer.At(0.45, 4, 150).Numbers[0], explorer.ErrorText());
    }

    [Fact]
    public void The_margin_is_that_of_the_vehicle_where_nothing_is_dragged()
    {
        var explorer = Curlew.Vehicle.ExploreStability();
        var stability = Curlew.Vehicle.Stability();
        var span = Curlew.Body.Fins[0].Planform.Reach.Millimeters;
        var state = explorer.At(span, 0, 32);
        // The water fraction lies between two computed ones.
        Assert.Equal(stability.MinimumMargin, state.Numbers[0], 0.01);
        Assert.Equal(stability.Margin[^1], state.Numbers[1], 0.01);
    }

    [Fact]
    public void Longer_fins_and_ballast_help()
    {
        var explorer = Curlew.Vehicle.ExploreStability();
        var span = Curlew.Body.Fins[0].Planform.Reach.Millimeters;
        var least = explorer.At(span, 0, 30).Numbers[0];
        Assert.True(explorer.At(span * 1.3, 0, 30).Numbers[0] > least);
        Assert.True(explorer.At(span, 100, 30).Numbers[0] > least);
        Assert.True(explorer.At(span, 0, 60).Numbers[0] < least);
    }

    [Fact]
    public void A_body_without_fins_has_no_span_to_drag() =>
        Assert.Throws<InvalidDesignException>(() => (Curlew.Vehicle with { Body = Curlew.Body with { Fins = [] } }).ExploreStability());

    [Fact]
    public void A_storm_is_no_place_to_start_from() =>
        Assert.Throws<OutOfRangeException>(() => Canopy.Explore(900.Grams(), 150.Metres(), 20.MetresPerSecond()));
}

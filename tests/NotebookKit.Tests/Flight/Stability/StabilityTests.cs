using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Flight.Stability;

public class StabilityTests
{
    private static Airframe Frame { get; } = SampleAirframes.ThreeFins;

    // The aft water pulls the centre of gravity back; it moves forward as the water leaves, and the margin follows it.
    [Fact]
    public void The_margin_is_centre_of_pressure_less_centre_of_gravity_at_every_row()
    {
        var result = Frame.Stability(40.Percent(), 80.Grams());
        for (var i = 0; i < result.Abscissa.Count; i++)
            Tolerance.Absolute((result.CentreOfPressure[i] - result.CentreOfGravity[i]) / 60, result.Margin[i], 1e-9);
        Assert.Equal(result.Margin.Values.Min(), result.MinimumMargin);
        Assert.True(result.CentreOfGravity[0] > result.CentreOfGravity[^1]);
        Tolerance.Relative(1.140 + 0.9982 + 0.08, result.Mass[0], 1e-9);
        Tolerance.Relative(1.140, result.Mass[^1], 1e-9);
    }

    [Fact]
    public void The_stated_ballast_brings_the_margin_to_the_limit()
    {
        var limits = new StabilityLimits(6, 10);
        var result = Frame.Stability(60.Percent(), 80.Grams(), limits: limits);
        Assert.False(result.Holds);
        var remedy = result.Remedy!;
        var mended = Frame with { MassBudget = Frame.MassBudget.With(new MassPart("Ballast", remedy.NoseBallast!.Value,
            remedy.BallastAt)) };
        Tolerance.Relative(6, mended.Stability(60.Percent(), 80.Grams(), limits: limits).MinimumMargin, 1e-9);
    }

    [Fact]
    public void The_stated_fin_span_brings_the_margin_to_the_limit()
    {
        var limits = new StabilityLimits(6, 10);
        var remedy = Frame.Stability(60.Percent(), 80.Grams(), limits: limits).Remedy!;
        var fins = Frame.Body.Fins[0];
        var longer = Frame with { Body = Frame.Body with { Fins = [fins.WithSpanTimes(remedy.FinSpan!.Value / fins.Planform.Reach)] } };
        Tolerance.Relative(6, longer.Stability(60.Percent(), 80.Grams(), limits: limits).MinimumMargin, 1e-9);
    }

    [Fact]
    public void An_unstable_vehicle_is_an_error_finding_not_a_quiet_number()
    {
        var bare = Frame with { Body = Frame.Body with { Fins = [] } };
        var result = bare.Stability(40.Percent(), 80.Grams());
        Assert.True(result.MinimumMargin < 0);
        Assert.Contains(result.Findings, f => f.Severity == FindingSeverity.Error
            && f.Message.Contains("Don't fly this vehicle", StringComparison.Ordinal));
        Assert.Equal(Cautions.ForFlight, result.Cautions);
    }

    [Fact]
    public void Against_time_it_follows_the_masses_it_is_given()
    {
        var result = Frame.StabilityDuring(
            new Series("Time", "s", [0, 0.1, 0.2, 0.3]), new Series("Water", "kg", [1, 0.5, 0, 0]),
                new Series("Gas", "kg", [0.08, 0.08, 0.08, 0]),
            new Series("Mach number", "-", [0, 0.1, 0.25, 0.3]));
        Assert.Equal(4, result.Margin.Count);
        Tolerance.Relative(Frame.Body.NormalForce(0.25).CentreOfPressure.Millimeters, result.CentreOfPressure[2], 1e-12);
        Tolerance.Relative(Frame.StateWith(0.5, 0.08).CentreM * 1000, result.CentreOfGravity[1], 1e-12);
    }

    [Fact]
    public void Columns_that_do_not_match_are_refused()
    {
        var error = Assert.Throws<ArgumentException>(() => Frame.StabilityDuring(
            new Series("Time", "s", [0, 0.1]), new Series("Water", "kg", [1]), new Series("Gas", "kg", [0.1, 0.1])));
        Assert.Contains("same number", error.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => Frame.StabilityDuring(
            new Series("Time", "s", [0]), new Series("Water", "g", [1]), new Series("Gas", "kg", [0.1])));
    }

    [Fact]
    public void A_vessel_wider_than_the_body_is_refused() =>
        Assert.Throws<InvalidDesignException>(() => (Frame with {
            Chamber = Frame.Chamber with { Bore = 80.Millimetres() } }).Stability(40.Percent(), 80.Grams()));

    [Fact]
    public void Beyond_Mach_point_nine_it_is_refused() =>
        Assert.Throws<OutOfRangeException>(() => Frame.Stability(40.Percent(), 80.Grams(), 0.95));
}

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

    // 40 % of 2.5 L are 1 L, 998.2 g of water: half of it is left half-way along the rows, a tenth nine tenths along, and the gas stays.
    [Fact]
    public void Water_leaves_row_by_row_and_the_gas_last()
    {
        var result = Frame.Stability(40.Percent(), 80.Grams());
        Tolerance.Relative(1.140 + 0.4991 + 0.08, result.Mass[50], 1e-9);
        Tolerance.Relative(1.140 + 0.09982 + 0.08, result.Mass[90], 1e-9);
        Tolerance.Relative(1.140 + 0.08, result.Mass[100], 1e-9);
    }

    // A mass at the tail that moves the centre of gravity of the worst row to the wanted place, by moments; another row may then be worse.
    private static Airframe WithMargin(double calibres)
    {
        var bare = Frame.Stability(40.Percent(), 80.Grams());
        var row = bare.MinimumRow;
        var target = bare.CentreOfPressure[row] - 60 * calibres;
        var kilograms = bare.Mass[row] * (target - bare.CentreOfGravity[row]) / (1790 - target);
        return Frame with { MassBudget = Frame.MassBudget.With(new MassPart("Tail", kilograms.Kilograms(), 1790.Millimetres())) };
    }

    [Theory]
    [InlineData(-0.5, true)]
    [InlineData(-0.05, true)]
    [InlineData(0.5, false)]
    public void A_margin_below_nothing_is_never_flown(double calibres, bool isUnstable)
    {
        var result = WithMargin(calibres).Stability(40.Percent(), 80.Grams());
        Assert.InRange(result.MinimumMargin, calibres - 0.4, calibres + 1e-9);
        Assert.Equal(result.MinimumMargin <= 0, isUnstable);
        Assert.Equal(isUnstable, result.Findings.Any(f => f.Severity == FindingSeverity.Error
            && f.Message.Contains("Don't fly this vehicle", StringComparison.Ordinal)));
        Assert.Equal(!isUnstable, result.Findings.Any(f => f.Severity == FindingSeverity.Warning
            && f.Message.Contains("the minimum margin is", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData(-0.01, false)]
    [InlineData(0.01, true)]
    public void A_hundredth_of_a_calibre_below_the_limit_asks_for_a_remedy(double above, bool isAsked)
    {
        var margin = Frame.Stability(40.Percent(), 80.Grams()).MinimumMargin;
        var result = Frame.Stability(40.Percent(), 80.Grams(), limits: new(margin + above, 20));
        Assert.Equal(isAsked, result.Remedy is not null);
        Assert.Equal(!isAsked, result.Holds);
    }

    // Three quarters of a nose of 240 mm.
    [Fact]
    public void Ballast_sits_three_quarters_down_the_nose() =>
        Tolerance.Relative(180, Frame.Stability(60.Percent(), 80.Grams(), limits: new(6, 10)).Remedy!.BallastAt.Millimeters, 1e-12);

    [Theory]
    [InlineData(-0.01, true)]
    [InlineData(0.01, false)]
    public void A_margin_over_the_upper_limit_is_said(double above, bool isSaid)
    {
        var most = Frame.Stability(40.Percent(), 80.Grams()).Margin.Values.Max();
        Assert.Equal(isSaid, Frame.Stability(40.Percent(), 80.Grams(), limits: new(1, most + above)).Findings.Any(f =>
            f.Message.Contains("turns into the wind readily", StringComparison.Ordinal)));
    }

    // The Prandtl-Glauert factor is that of the one Mach number all along.
    [Fact]
    public void Every_row_has_the_Mach_number_that_was_given()
    {
        var result = Frame.Stability(40.Percent(), 80.Grams(), 0.6);
        Assert.All(result.CentreOfPressure.Values, x => Tolerance.Relative(Frame.Body.NormalForce(0.6).CentreOfPressure.Millimeters, x,
            1e-12));
        Assert.NotEqual(Frame.Body.NormalForce(0).CentreOfPressure.Millimeters, result.CentreOfPressure[^1], 6);
    }
}

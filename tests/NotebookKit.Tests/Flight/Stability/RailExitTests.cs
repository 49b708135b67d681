using NotebookKit.Flight.Staging;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Flight.Stability;

public class RailExitTests
{
    private static Airframe Frame { get; } = SampleAirframes.ThreeFins;

    [Fact]
    public void Wind_above_the_exit_speed_is_an_error_without_a_made_up_margin()
    {
        var result = Frame.LeaveRail(10.MetresPerSecond(), 15.MetresPerSecond(), 0.5.Kilograms(), 50.Grams());
        Assert.Null(result.MarginAtAngle);
        Assert.False(result.Holds);
        Assert.Contains(result.Findings, f => f.Severity == FindingSeverity.Error
            && f.Message.Contains("Don't fly", StringComparison.Ordinal));
    }

    [Fact]
    public void At_the_wind_limit_one_calibre_or_fifteen_degrees_are_left()
    {
        var limit = Frame.LeaveRail(25.MetresPerSecond(), 1.MetresPerSecond(), 1.Kilograms(), 80.Grams()).WindLimit;
        var result = Frame.LeaveRail(25.MetresPerSecond(), limit, 1.Kilograms(), 80.Grams());
        Assert.True(Math.Abs(result.MarginAtAngle!.Value - 1) < 1e-6 || Math.Abs(result.AngleOfAttack.Degrees - 15) < 1e-6);
    }

    [Fact]
    public void Calm_air_needs_no_speed_but_is_computed()
    {
        var result = Frame.LeaveRail(20.MetresPerSecond(), Speed.Zero, 0.Grams(), 0.Grams());
        Tolerance.Absolute(0, result.AngleOfAttack.Degrees, 1e-12);
        Tolerance.Relative(result.MarginAtZero, result.MarginAtAngle!.Value, 1e-12);
        Assert.Equal(Cautions.ForFlight, result.Cautions);
    }

    [Fact]
    public void More_water_than_the_vessel_holds_is_refused() =>
        Assert.Throws<OutOfRangeException>(() => Frame.LeaveRail(20.MetresPerSecond(), 2.MetresPerSecond(), 3.Kilograms(), 0.Grams()));

    [Fact]
    public void An_unstable_vehicle_has_no_pitch_frequency()
    {
        var bare = Frame with { Body = Frame.Body with { Fins = [] } };
        var error = Assert.Throws<InvalidDesignException>(() => bare.PitchRoll(50.MetresPerSecond(), 0.Degrees()));
        Assert.Contains("unstable", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Negative_drag_areas_are_refused() =>
        Assert.Throws<InvalidDesignException>(() => new DragSeparation(1.Kilograms(), (-1).SquareCentimetres(), 1.Kilograms(),
            1.SquareCentimetres()).At(50.MetresPerSecond(), 0.1.Metres()));

    // √(2 × 50 m/s² × 1.5 m) = 12.2474 m/s; atan(2/12.2474) = 9.2745°.
    [Fact]
    public void Speed_and_angle_off_the_rail_by_hand()
    {
        var result = Frame.LeaveRail(1.5.Metres(), Acceleration.FromMetersPerSecondSquared(50), 2.MetresPerSecond(), 0.5.Kilograms(),
            50.Grams());
        Tolerance.Relative(12.247449, result.Exit.MetersPerSecond, 1e-7);
        Tolerance.Relative(9.2744998, result.AngleOfAttack.Degrees, 1e-6);
    }

    // tan 20° = 0.36397: 7.27 m/s across 20 are 19.98°, 7.29 are 20.03°.
    [Theory]
    [InlineData(7.27, true)]
    [InlineData(7.29, false)]
    public void No_margin_is_given_beyond_twenty_degrees(double wind, bool isGiven) => Assert.Equal(isGiven,
        Frame.LeaveRail(20.MetresPerSecond(), wind.MetresPerSecond(), 0.Grams(), 0.Grams()).MarginAtAngle is not null);

    [Theory]
    [InlineData(4.99, false)]
    [InlineData(5.01, true)]
    public void Less_than_four_times_the_wind_off_the_rail_is_said(double wind, bool isSaid) => Assert.Equal(isSaid,
        Frame.LeaveRail(20.MetresPerSecond(), wind.MetresPerSecond(), 0.Grams(), 0.Grams()).Findings.Any(f =>
            f.Message.Contains("four times is required", StringComparison.Ordinal)));

    // Half a calibre in still air, and more than one at fifteen degrees, where a bare body's lift lies near its middle: no wind is allowed.
    [Fact]
    public void A_margin_below_one_in_still_air_allows_no_wind_whatever_the_angle_brings()
    {
        var bare = Frame with { Body = Frame.Body with { Fins = [] } };
        var dry = bare.Loaded(Mass.Zero, Mass.Zero);
        var target = bare.Body.NormalForce(0).CentreOfPressure.Meters - 0.06 * 0.5;
        var nose = dry.MassKg * (dry.CentreM - target) / (target - 0.001);
        var heavy = bare with { MassBudget = bare.MassBudget.With(new MassPart("Nose", nose.Kilograms(), 1.Millimetres())) };
        var result = heavy.LeaveRail(20.MetresPerSecond(), (20 * Math.Tan(15 * Math.PI / 180)).MetresPerSecond(), Mass.Zero, Mass.Zero);
        Tolerance.Absolute(0.5, result.MarginAtZero, 1e-6);
        Assert.True(result.MarginAtAngle > 1);
        Assert.Equal(0, result.WindLimit.MetersPerSecond);
    }

    // A mass at the tail that leaves the wanted margin, by moments.
    [Theory]
    [InlineData(-0.5, "unstable as it leaves the rail")]
    [InlineData(0.7, "calibres, below one")]
    [InlineData(1.1, "")]
    public void A_margin_below_one_or_below_nothing_is_said_as_it_leaves_the_rail(double calibres, string sentence)
    {
        var dry = Frame.Loaded(Mass.Zero, Mass.Zero);
        var target = Frame.Body.NormalForce(0).CentreOfPressure.Meters - 0.06 * calibres;
        var tail = dry.MassKg * (target - dry.CentreM) / (1.79 - target);
        var heavy = Frame with { MassBudget = Frame.MassBudget.With(new MassPart("Tail", tail.Kilograms(), 1790.Millimetres())) };
        var result = heavy.LeaveRail(20.MetresPerSecond(), Speed.Zero, Mass.Zero, Mass.Zero);
        Tolerance.Absolute(calibres, result.MarginAtZero, 1e-6);
        if (sentence.Length == 0) Assert.Empty(result.Findings);
        else Assert.Contains(sentence, Assert.Single(result.Findings).Message, StringComparison.Ordinal);
        Assert.Equal(calibres < 1, result.WindLimit.MetersPerSecond == 0);
    }
}

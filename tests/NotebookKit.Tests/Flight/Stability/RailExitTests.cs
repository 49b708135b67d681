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
}

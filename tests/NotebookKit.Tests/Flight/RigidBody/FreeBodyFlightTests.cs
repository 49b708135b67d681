using NotebookKit.Flight.RigidBody;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Flight.RigidBody;

public class FreeBodyFlightTests
{
    private static readonly MassMomentOfInertia Inertia = MassMomentOfInertia.FromKilogramSquareMeters(0.01);

    private static FreeBody Ball { get; } = new("ball", 1.Kilograms(), Inertia, Inertia, Inertia) { Drag = 0.4,
        ReferenceArea = 0.01.SquareMetres() };

    [Fact]
    public void Everything_wrong_is_said_at_once()
    {
        var body = Ball with { Drag = double.NaN, Mass = 0.Kilograms(), YawInertia = MassMomentOfInertia.FromKilogramSquareMeters(0.5) };
        var flight = new FreeBodyFlight(body, new() { Altitude = 100.Metres(), Pitch = 91.Degrees(), Down = 3000.MetresPerSecond() })
        {
            Duration = 10.Seconds(),
            Interval = 20.Seconds(),
            Wind = new(200.MetresPerSecond(), 0.Degrees()),
        };
        var findings = Assert.Throws<InvalidDesignException>(flight.Run).Findings;
        Assert.Equal(7, findings.Count(f => f.Severity == FindingSeverity.Error));
        Assert.Contains(findings, f => f.Message.Contains("no rigid body has that", StringComparison.Ordinal));
        Assert.Contains(findings, f => f.Message.Contains("pitch is 91°", StringComparison.Ordinal));
    }

    [Fact]
    public void A_ball_that_comes_down_ends_on_the_ground()
    {
        var result = new FreeBodyFlight(Ball, new() { Altitude = 50.Metres() }).Run();
        Assert.True(result.Landed);
        Assert.Equal(ResultStatus.Completed, result.Status);
        Tolerance.Absolute(0, result.Altitude[^1], 1e-9);
        Assert.InRange(result.Time[^1], 3.19, 3.4);
        Assert.NotEmpty(result.Cautions);
        Assert.All(result.Working.Steps, s => Assert.NotEmpty(s.Numbers));
    }

    [Fact]
    public void A_body_on_the_ground_that_moves_down_is_refused_instead_of_falling_through_it()
    {
        var refused = Assert.Throws<InvalidDesignException>(new FreeBodyFlight(Ball, new() { Down = 20.MetresPerSecond() }).Run);
        Assert.Contains("moves down at 20 m/s", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Air_beyond_the_atmospheres_range_is_said_and_a_vacuum_has_none()
    {
        var up = new FreeBodyFlight(Ball, new() { Altitude = 19_000.Metres(), Down = (-500).MetresPerSecond() });
        Assert.Contains(up.Run().Findings, f => f.Severity == FindingSeverity.Warning
            && f.Message.Contains("extrapolation", StringComparison.Ordinal));
        Assert.Empty((up with { Atmosphere = null }).Run().Findings);
        Assert.Empty(new FreeBodyFlight(Ball, new() { Altitude = 10_000.Metres() }).Run().Findings);
    }

    [Fact]
    public void Rows_stand_at_multiples_of_the_interval()
    {
        var result = new FreeBodyFlight(Ball, new() { Altitude = 5000.Metres() }) { Duration = 3.Seconds(),
            Interval = 0.1.Seconds() }.Run();
        Assert.Equal(31, result.Time.Count);
        Assert.All(Enumerable.Range(0, 31), i => Assert.Equal(i * 0.1, result.Time[i], 12));
    }

    [Fact]
    public void A_wind_from_the_west_carries_a_falling_ball_to_the_east()
    {
        var result = new FreeBodyFlight(Ball, new() { Altitude = 500.Metres() }) { Wind = new(8.MetresPerSecond(), 270.Degrees()) }.Run();
        Assert.True(result.East[^1] > 1);
        Tolerance.Absolute(0, result.North[^1], 1e-9);
        Assert.True(result.Longitude[^1] > 1);
    }

    [Fact]
    public void Over_the_turning_round_Earth_a_fall_drifts_to_the_east_as_Coriolis_has_it()
    {
        // In a vacuum from rest: omega g t^3 / 3 at the equator, to first order in omega t.
        var result = new FreeBodyFlight(Ball, new() { Altitude = 500.Metres() }) { Earth = Earth.Round, Atmosphere = null,
            Duration = 10.Seconds() }.Run();
        var east = result.Longitude[^1] * Math.PI / 180 * 6_371_007.1809;
        Tolerance.Relative(7.292115e-5 * 9.7871 * 1000 / 3, east, 2e-3);
    }
}

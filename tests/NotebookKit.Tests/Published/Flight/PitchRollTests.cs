using NotebookKit.Flight.Staging;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Tests.Aerodynamics;
using NotebookKit.Tests.Flight;
using UnitsNet;

namespace NotebookKit.Tests.Published.Flight;

public class PitchRollTests
{
    private const string Strip = "Strip theory, J. S. Barrowman, M.S. thesis, 1967; worked independently";
    private const string Murphy = "J. D. Nicolaides, 1953; C. H. Murphy, BRL R-1216, 1963; frequency checked by integration";
    private const double Area = 2.827433e-3, Diameter = 0.06, Pressure = 6125, Pitch = 0.42, Roll = 6.5e-4, Mass = 1.6;

    private static MassState State { get; } = new(Mass, 1.2, Roll, Pitch);

    [Theory]
    [PublishedCase("F30", Strip)]
    [InlineData(0.10, 2.787679)]
    [InlineData(0.25, 6.969197)]
    [InlineData(0.50, 13.938393)]
    public void Steady_roll(double degrees, double expected)
    {
        var roll = SampleBodies.ThreeFins.Roll();
        Tolerance.Relative(expected, PitchRoll.SteadyRoll(100, Diameter, roll.Forcing, roll.Damping, degrees * Math.PI / 180), 1e-6);
        // I1 / I2 of the fin alone gives the same: the lift slope drops out.
        Tolerance.Relative(expected, degrees * Math.PI / 180 * 100 * 2.76e-4 / 1.728e-5, 1e-6);
    }

    [Fact]
    [PublishedCase("F30", Strip)]
    public void The_two_dimensional_slope_underpredicts_roll_threefold()
    {
        var roll = SampleBodies.ThreeFins.Roll();
        Tolerance.Relative(0.919114, PitchRoll.SteadyRoll(100, Diameter, roll.Forcing, roll.DampingTwoDimensional, 0.1 * Math.PI / 180),
            1e-6);
    }

    [Fact]
    [PublishedCase("F31", Murphy)]
    public void Pitch_frequency_and_damping()
    {
        var frequency = PitchRoll.Frequency(Pressure, Area, Diameter, -26.884988, Pitch);
        Tolerance.Relative(8.155585, frequency, 1e-6);
        Tolerance.Relative(1.298002, frequency / (2 * Math.PI), 1e-6);
        var rotational = PitchRoll.RotationalDamping(Pressure, Area, Diameter, 100, -2449.852, Pitch, frequency);
        Tolerance.Relative(0.111475, rotational, 5e-6);
        Tolerance.Relative(0.171421, rotational + PitchRoll.HeaveDamping(Pressure, Area, 100, 9.033725, Mass, frequency), 5e-6);
    }

    // The case's nose centre is rounded to 0.466 L, 0.41 mm aft of the exact one: 5e-4 of the moment, 7e-4 of the damping sum.
    [Fact]
    [PublishedCase("F31", Murphy)]
    [PublishedCase("F32", Murphy)]
    public void Whole_vehicle_at_100_metres_per_second()
    {
        // Slow air would do as well: the case takes the slopes at Mach 0.
        var still = SampleBodies.ThreeFins.NormalForce();
        Tolerance.Relative(-26.884988, still.MomentSlope(1.2.Metres()), 6e-4);
        Tolerance.Relative(-2449.852, still.PitchDamping(1.2.Metres()), 8e-4);
        var result = PitchRollVerbs.PitchRollOf(SampleBodies.ThreeFins, State, 100.MetresPerSecond(), 0.25.Degrees(),
            AirConditions.SeaLevel);
        // At 100 m/s Mach 0.294 raises the fins' slope by 0.9 %, the moment by 2 %, and so the frequency by 1 %.
        Tolerance.Relative(1.298002, result.PitchFrequency.Hertz, 0.012);
        Tolerance.Relative(6.969197, result.SteadyRoll.RadiansPerSecond, 1e-5);
        Tolerance.Relative(0.292558, result.CriticalCant.Degrees, 0.012);
        Tolerance.Relative(2.917, result.Amplification, 0.01);
        Assert.Contains(result.Findings, f => f.Severity == FindingSeverity.Warning
            && f.Message.Contains("lock", StringComparison.Ordinal));
    }

    [Fact]
    [PublishedCase("F32", Murphy)]
    public void Resonance()
    {
        Tolerance.Relative(8.161904, PitchRoll.Resonance(8.155585, Roll, Pitch), 1e-6);
        var perRadian = PitchRoll.SteadyRoll(100, Diameter, 10.110980, -21.101175, 1);
        Tolerance.Relative(0.292558, 8.155585 / perRadian * 180 / Math.PI, 2e-6);
    }

    // In incompressible flow: both rates go with speed. Slow enough for Mach effects to stay below 1e-4.
    [Fact]
    [PublishedCase("F32", Murphy)]
    public void The_critical_cant_does_not_depend_on_speed()
    {
        var slow = PitchRollVerbs.PitchRollOf(SampleBodies.ThreeFins, State, 3.MetresPerSecond(), 0.1.Degrees(), AirConditions.SeaLevel);
        var twice = PitchRollVerbs.PitchRollOf(SampleBodies.ThreeFins, State, 6.MetresPerSecond(), 0.1.Degrees(), AirConditions.SeaLevel);
        Tolerance.Relative(slow.CriticalCant.Degrees, twice.CriticalCant.Degrees, 1e-4);
    }

    [Theory]
    [PublishedCase("F33", "v² = 2 a L and α = atan(w / v); worked independently")]
    [InlineData(1.5, 150, 21.213203, 13.262676)]
    [InlineData(2, 100, 20, 14.036243)]
    [InlineData(3, 60, 18.973666, 14.763133)]
    public void Rail_exit(double rail, double acceleration, double speed, double angle)
    {
        var result = SampleAirframes.ThreeFins.LeaveRail(
            rail.Metres(), Acceleration.FromMetersPerSecondSquared(acceleration), 5.MetresPerSecond(), 0.5.Kilograms(), 50.Grams());
        Tolerance.Relative(speed, result.Exit.MetersPerSecond, 1e-7);
        Tolerance.Relative(angle, result.AngleOfAttack.Degrees, 1e-7);
    }

    [Theory]
    [PublishedCase("F33", "Angle of attack of 15° off the rail; worked independently")]
    [InlineData(21.213203, 5.684)]
    [InlineData(20, 5.359)]
    [InlineData(18.973666, 5.084)]
    public void Wind_for_fifteen_degrees(double exit, double wind)
    {
        // A nose-heavy vehicle keeps more than a calibre at 15°, so that the angle alone limits the wind.
        var frame = SampleAirframes.ThreeFins;
        var heavy = frame with { MassBudget = frame.MassBudget.With(new MassPart("Ballast", 2.Kilograms(), 200.Millimetres())) };
        var result = heavy.LeaveRail(exit.MetresPerSecond(), 2.MetresPerSecond(), 0.Grams(), 0.Grams());
        Assert.True(heavy.Body.MarginAt(heavy.MassBudget.MassProperties().CentreOfGravity, 15.Degrees()) > 1);
        Tolerance.Absolute(wind, result.WindLimit.MetersPerSecond, 6e-4);
    }

    [Fact]
    [PublishedCase("F33", "Common range practice, combined with NACA TR 1048 body lift: at 14° the 30-calibre body is unstable")]
    public void A_long_body_that_is_stable_at_zero_is_unstable_at_fourteen_degrees()
    {
        var frame = new Airframe(SampleBodies.ThreeFins, new MassBudget([new MassPart("All", 1.6.Kilograms(), 1.2.Metres())]),
            SampleAirframes.ThreeFins.Chamber);
        var result = frame.LeaveRail(20.MetresPerSecond(), 5.MetresPerSecond(), 0.Grams(), 0.Grams());
        Assert.InRange(result.MarginAtZero, 2.9, 3.1);
        Assert.True(result.MarginAtAngle < 0);
        Assert.False(result.Holds);
        Assert.Contains(result.Findings, f => f.Severity == FindingSeverity.Error
            && f.Message.Contains("unstable as it leaves", StringComparison.Ordinal));
    }

    [Fact]
    [PublishedCase("F72", "Two bodies with one deceleration; worked independently")]
    public void Drag_separation()
    {
        var stack = new DragSeparation(1.1.Kilograms(), (0.45 * 2.827433e-3).SquareMetres(), 0.8.Kilograms(),
            (0.60 * 6.361725e-3).SquareMetres());
        var result = stack.At(80.MetresPerSecond(), 0.12.Metres());
        Tolerance.Relative(4.534175, result.SustainerDeceleration.MetersPerSecondSquared, 1e-6);
        Tolerance.Relative(18.703472, result.BoosterDeceleration.MetersPerSecondSquared, 1e-6);
        Tolerance.Relative(-6.562622, result.JointForce.Newtons, 1e-6);
        Tolerance.Relative(0.130146, result.TimeToClear!.Value.Seconds, 5e-6);
        Assert.True(result.Parts);

        var clean = (stack with { BoosterDragArea = (0.25 * 2.827433e-3).SquareMetres() }).At(80.MetresPerSecond(), 0.12.Metres());
        Tolerance.Relative(3.463606, clean.BoosterDeceleration.MetersPerSecondSquared, 1e-6);
        Assert.False(clean.Parts);
        Assert.Null(clean.TimeToClear);
    }
}

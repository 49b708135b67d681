using NotebookKit.Flight.Drive;
using NotebookKit.Flight.RigidBody;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Tests.Aerodynamics;

namespace NotebookKit.Tests.Flight.Flights;

/// <summary>Flights in six degrees of freedom.</summary>
public class SixDegreesTests
{
    private static readonly Vehicle Trainer = SampleVehicles.Trainer;

    [Fact]
    public void In_still_air_it_climbs_as_high_as_in_three_degrees()
    {
        var three = Trainer.Fly(SampleVehicles.Calm);
        var six = Trainer.FlySixDegrees(SampleVehicles.Calm);
        Tolerance.Relative(three.Apogee.Meters, six.Apogee.Meters, 1e-5);
        Tolerance.Relative(three.ApogeeTime.Seconds, six.ApogeeTime.Seconds, 1e-5);
        Tolerance.Relative(three.Figures.LandingTime.Seconds, six.Figures.LandingTime.Seconds, 1e-5);
        // Zero but for rounding where the speed itself goes through zero.
        Assert.Equal(0, six.Figures.MaximumAngleOfAttack!.Value.Degrees, 1e-4);
        Assert.Null(three.Attitude);
    }

    [Fact]
    public void It_turns_into_the_wind_and_swings_about_it()
    {
        var flight = Trainer.FlySixDegrees(SampleVehicles.Breezy);
        var attitude = flight.Attitude!;
        Assert.Equal(ResultStatus.Completed, flight.Status);
        Assert.InRange(flight.Figures.MaximumAngleOfAttack!.Value.Degrees, 6.5, 7.5);
        // Wind from the west: the nose leans west, so that the climb goes upwind of where three degrees would drift.
        var half = Enumerable.Range(0, attitude.Time.Count).First(i => attitude.Time[i] > 2);
        Tolerance.Absolute(-90, attitude.Heading[half], 0.1);
        Assert.InRange(attitude.Elevation[half], 70, 88);
        Assert.True(attitude.AngleOfAttack[half] < 1);
    }

    [Fact]
    public void Rolled_or_not_a_wind_from_another_side_makes_the_same_flight_turned()
    {
        var west = Trainer.FlySixDegrees(SampleVehicles.Breezy).Figures;
        var site = SampleVehicles.Calm with { Wind = WindProfile.PowerLaw(5.MetresPerSecond(), 10.Metres(), from: 200.Degrees()) };
        var other = Trainer.FlySixDegrees(site).Figures;
        Tolerance.Relative(west.Apogee.Meters, other.Apogee.Meters, 1e-6);
        Tolerance.Relative(west.Drift.Meters, other.Drift.Meters, 1e-4);
        Tolerance.Absolute(20, Math.Atan2(other.LandingEast.Meters, other.LandingNorth.Meters) * 180 / Math.PI, 0.01);
    }

    [Fact]
    public void Canted_fins_spin_it_up_towards_the_rate_of_strip_theory()
    {
        var body = Trainer.Body with { Fins = [Trainer.Body.Fins[0] with { Cant = 0.3.Degrees() }] };
        var flight = (Trainer with { Body = body }).FlySixDegrees(SampleVehicles.Calm);
        Assert.True(flight.Figures.MaximumRollRate!.Value.RevolutionsPerSecond > 0.5);
        Assert.True(flight.Attitude!.RollRate.Values.Max() > 0);
        var reversed = Trainer.Body with { Fins = [Trainer.Body.Fins[0] with { Cant = (-0.3).Degrees() }] };
        Assert.True((Trainer with { Body = reversed }).FlySixDegrees(SampleVehicles.Calm).Attitude!.RollRate.Values.Min() < -0.5);
    }

    [Fact]
    public void An_unstable_vehicle_turns_over_and_that_is_said()
    {
        var vehicle = Trainer with { Body = Trainer.Body with { Fins = [] } };
        var flight = vehicle.FlySixDegrees(SampleVehicles.Breezy);
        Assert.Contains(flight.Findings, f => f.Severity == FindingSeverity.Error
            && f.Message.Contains("turns over", StringComparison.Ordinal));
        Assert.True(flight.Apogee.Meters < 0.7 * Trainer.Fly(SampleVehicles.Breezy).Apogee.Meters);
    }

    [Fact]
    public void A_wind_above_the_speed_off_the_rail_leaves_no_margin_to_speak_of()
    {
        var site = SampleVehicles.Calm with { Rail = new(0.1.Metres()), Wind = WindProfile.Uniform(12.MetresPerSecond()) };
        var flight = Trainer.FlySixDegrees(site);
        Assert.True(flight.Figures.RailExitAngle.Degrees > 45);
        Assert.Null(flight.Figures.RailExitMargin);
        Assert.Contains(flight.Findings, f => f.Severity == FindingSeverity.Error
            && f.Message.Contains("Don't fly in this wind", StringComparison.Ordinal));
    }

    // The flight and the airframe's own check must not judge the same angle differently.
    [Theory]
    [InlineData(18)]
    [InlineData(22)]
    public void An_angle_off_the_rail_is_as_grave_in_the_flight_as_in_the_airframes_check(double degrees)
    {
        var calm = Trainer.Fly(SampleVehicles.Calm).Figures.RailExitSpeed;
        var wind = Math.Tan(degrees * Math.PI / 180) * calm.MetersPerSecond;
        var flight = Trainer.Fly(SampleVehicles.Calm with { Wind = WindProfile.Uniform(wind.MetresPerSecond()) });
        Assert.Equal(degrees, flight.Figures.RailExitAngle.Degrees, 1.0);
        var check = Trainer.Airframe.LeaveRail(flight.Figures.RailExitSpeed, flight.Figures.RailWind, 0.3.Kilograms(), 80.Grams());
        bool Grave(IEnumerable<Finding> findings) => findings.Any(f => f.Severity == FindingSeverity.Error
            && f.Message.Contains("will turn over", StringComparison.Ordinal));
        Assert.Equal(degrees > 20, Grave(flight.Findings));
        Assert.Equal(degrees > 20, Grave(check.Findings));
    }

    [Fact]
    public void A_fin_without_span_is_refused()
    {
        var fin = FinSet.Trapezoidal(3, 100.Millimetres(), 60.Millimetres(), 0.Millimetres(), 40.Millimetres(), 2.Millimetres(),
            1.46.Metres());
        var vehicle = Trainer with { Body = Trainer.Body with { Fins = [fin] } };
        Assert.Contains("span", Assert.Throws<InvalidDesignException>(() => vehicle.FlySixDegrees(SampleVehicles.Calm)).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Gusts_shake_it_and_the_same_seed_shakes_it_the_same()
    {
        var gusts = new DrydenTurbulence(8.MetresPerSecond()).Field(600.Metres(), 7);
        var calm = Trainer.FlySixDegrees(SampleVehicles.Breezy);
        var shaken = Trainer.FlySixDegrees(SampleVehicles.Breezy with { Gusts = gusts });
        var again = Trainer.FlySixDegrees(SampleVehicles.Breezy
            with { Gusts = new DrydenTurbulence(8.MetresPerSecond()).Field(600.Metres(), 7) });
        Assert.NotEqual(calm.Drift.Meters, shaken.Drift.Meters);
        Assert.Equal(shaken.Drift.Meters, again.Drift.Meters);
    }

    [Theory]
    [InlineData(0.013)]
    [InlineData(0.4123)]
    [InlineData(0.877)]
    public void The_table_reads_what_the_component_method_gives(double mach)
    {
        var body = SampleBodies.ThreeFins;
        var table = new AeroTable(body).At(mach);
        var force = body.NormalForce(mach);
        var (area, diameter) = (body.ReferenceArea.SquareMeters, body.ReferenceDiameter.Meters);
        var centre = SampleBodies.ThreeFinsGravity;
        Tolerance.Relative(force.TotalSlope * area, table.Slope, 1e-6);
        Tolerance.Relative(-force.MomentSlope(centre) * area * diameter, table.MomentAbout(centre.Meters), 1e-6);
        Tolerance.Relative(-force.PitchDamping(centre) / 2 * area * diameter * diameter, table.DampingAbout(centre.Meters), 1e-6);
        var roll = body.Roll(mach);
        Tolerance.Relative(roll.Forcing * area * diameter, table.RollByCant, 1e-6);
        Tolerance.Relative(roll.Damping / 2 * area * diameter * diameter, table.RollDamping, 1e-6);
    }

    [Fact]
    public void The_strips_add_up_to_the_cross_flow_of_the_whole_body()
    {
        var body = SampleBodies.ThreeFins;
        var at = body.AtAngles(SampleBodies.ThreeFinsGravity, 10.Degrees());
        var sine = Math.Sin(10 * Math.PI / 180);
        double side = 0, down = 0, pitch = 0, yaw = 0;
        new AeroTable(body).AddCrossFlow(1.225, new(100 * Math.Cos(10 * Math.PI / 180), 0, 100 * sine), default, 0, ref side, ref down,
            ref pitch, ref yaw);
        var q = 0.5 * 1.225 * 100 * 100 * body.ReferenceArea.SquareMeters;
        Tolerance.Relative(at.Viscous[^1], -down / q, 1e-4);
        Tolerance.Relative(0.938823, pitch / down, 1e-4);
        Assert.Equal(0, side);
        Assert.Equal(0, yaw);
    }

    [Fact]
    public void The_tank_of_the_step_loop_is_the_tank_of_the_balance()
    {
        var tank = Trainer.Airframe.Chamber;
        var fast = new ChamberNumbers(tank);
        foreach (var (water, gas) in new[] { (0.0, 0.1), (0.5, 0.12), (1.0, 0.02), (2.9, 0) })
        {
            var (expected, actual) = (tank.Contents(water, gas), fast.Contents(water, gas));
            Tolerance.Relative(expected.MassKg, actual.MassKg, 1e-12);
            Tolerance.Relative(expected.CentreM, actual.CentreM, 1e-12);
            Tolerance.Relative(expected.PitchKgM2, actual.PitchKgM2, 1e-10);
        }
    }

    [Fact]
    public void Parts_that_are_only_points_are_refused_with_what_is_missing()
    {
        var points = Trainer with { Parts = new([.. Trainer.Parts.Parts.Select(p => p with { Diameter = UnitsNet.Length.Zero })]) };
        var refused = Assert.Throws<NotebookKit.Provenance.InvalidDesignException>(() => points.FlySixDegrees(SampleVehicles.Calm));
        Assert.Contains("roll inertia of the parts is 0", refused.Message, StringComparison.Ordinal);
        Assert.Contains("Give the parts of the mass budget a diameter", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_leaving_jet_damps_pitching()
    {
        var numbers = Trainer.Numbers(SampleVehicles.Calm) with { DragFactor = 0 };
        var drive = new WaterDrive(numbers.Firing, 1);
        var body = new VehicleBody<WaterDrive>(numbers, Trainer.SixDegrees(), drive);
        Span<double> own = [numbers.Firing.GasM3];
        Span<double> rates = stackalloc double[1];
        var air = new AirSample(1e-12, 340, 101_325, default);
        var loads = body.Loads(0, new BodyMotion(0, air, new(1, 0, 0), new(0, 1, 0), new(0, 1, 0)), own, rates);
        Assert.True(loads.Moment.Y < 0);
        Assert.True(loads.Force.X > 500);
    }
}

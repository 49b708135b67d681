using NotebookKit.Flight.Drive;
using NotebookKit.Flight.RigidBody;
using NotebookKit.Numerics.Ode;
using NotebookKit.Tests.Aerodynamics;
using NotebookKit.Tests.Flight;

namespace NotebookKit.Tests.Published.Flight;

/// <summary>The six-degree-of-freedom vehicle against closed forms of small motions: 60 mm body, three fins, 100 m/s at sea
/// level.</summary>
public class SixDegreesTests
{
    [Theory]
    [PublishedCase("F31", "Barrowman, M.S. thesis, 1967: pitch stiffness and damping by components; period and damping of the "
        + "linear oscillator")]
    // Held to its path by a great mass only the rotation damps: 0.111475; free to heave with 1.6 kg, 0.171421.
    [InlineData(1e6, 0.111475)]
    [InlineData(1.6, 0.171421)]
    public void Disturbed_it_swings_with_the_frequency_and_damping_of_the_component_method(double mass, double damping)
    {
        // The printed 8.155585 rad/s has the ogive's centre at 0.466 of its length; the exact 0.464292 at this fineness takes 0.013664 off
        // the 26.884988.
        const double Moment = 26.884988 - 0.013664;
        var natural = 8.155585 * Math.Sqrt(Moment / 26.884988);
        var path = Coasting(mass, 0);
        // A thousandth of a degree: the linear range, far below where cross flow matters.
        var y = Start(0.001 * Math.PI / 180);
        var crossings = new Crossings(path);
        var none = new NoObserver();
        var tolerance = Enumerable.Repeat(1e-13, 13).ToArray();
        Assert.True(OdeDriver.Integrate(ref path, ref crossings, ref none, 0, 1.2, y, new() { RelativeTolerance = 1e-11 },
            tolerance).Succeeded);

        // The angle of attack passes zero every half damped period; the turning rate there falls by the sum of both dampings. Heaving also
        // stiffens:
        // s² + (a + b) s + a b + ω² (1 − ρ M / 2m) = 0 with a by heaving, b by turning, M the sum of slope times arm times area.
        Assert.Equal(3, crossings.Times.Count);
        var half = crossings.Times[2] - crossings.Times[1];
        var (both, turning) = (2 * damping * natural, 2 * 0.111475 * natural);
        var square = (natural * natural * (1 - (0.5 * 1.225 * Moment * 0.06 * Math.PI / 4 * 0.06 * 0.06 / mass)))
            + ((both - turning) * turning);
        Tolerance.Relative(Math.PI / Math.Sqrt(square - (both * both / 4)), half, 1e-4);
        Tolerance.Relative(both / 2, Math.Log(Math.Abs(crossings.Rates[1] / crossings.Rates[2])) / half, 1e-3);
    }

    [Theory]
    [PublishedCase("F30", "Strip theory of roll with the panel's own lift slope (Barrowman, M.S. thesis, 1967): steady roll by cant")]
    [InlineData(0.10, 2.787679)]
    [InlineData(0.25, 6.969197)]
    [InlineData(0.50, 13.938393)]
    public void Canted_fins_bring_it_to_the_steady_roll_of_strip_theory(double degrees, double rate)
    {
        var path = Coasting(1e6, degrees * Math.PI / 180);
        var y = Start(0);
        var tolerance = Enumerable.Repeat(1e-10, 13).ToArray();
        Assert.True(OdeDriver.Integrate(ref path, 0, 5, y, new() { RelativeTolerance = 1e-10 }, tolerance).Succeeded);
        Tolerance.Relative(rate, y[10], 1e-6);
    }

    private static RigidBodySystem<FlatEarth, SiteAir, VehicleBody<NoDrive>> Coasting(double massKg, double cant)
    {
        var body = SampleBodies.ThreeFins;
        var numbers = SampleVehicles.Trainer.Numbers(SampleVehicles.Calm) with
        {
            // Constant density and speed: the published figures are for 100 m/s at sea level, incompressible slopes. A thousandfold speed
            // of sound holds Mach at nothing.
            Air = new(Still(), 0, WindProfile.Calm, 2),
            DragFactor = 0,
            DryKg = massKg,
        };
        var vehicle = new VehicleNumbers(new MassState(massKg, 1.2, 6.5e-4, 0.42), new(SampleVehicles.Trainer.Airframe.Chamber), new(body),
            cant);
        return new(new(0), numbers.Air, new(numbers, vehicle, new(0, 0)), default);
    }

    /// <summary>Air of 1.225 kg/m³ with so high a speed of sound that nothing is compressed: the gas constant is a million times that of
    /// air.</summary>
    private static AtmosphereLaw Still()
    {
        const double GasConstant = 287.05 * 1e6;
        return new(0, 288.15, 1.225 * GasConstant * 288.15, GasConstant, countsGeometric: false);
    }

    private static double[] Start(double attack)
    {
        var y = new double[13];
        // To the north, without gravity.
        y[3] = 100;
        Rotation.FromYawPitchRoll(attack, 0, 0).CopyTo(y.AsSpan(6));
        return y;
    }

    /// <summary>Watches the sideways part of the relative wind pass zero.</summary>
    private struct Crossings(RigidBodySystem<FlatEarth, SiteAir, VehicleBody<NoDrive>> path) : IOdeEvents
    {
        public List<double> Times { get; } = [];

        public List<double> Rates { get; } = [];

        public readonly int Count => 1;

        public readonly OdeEventRule Rule(int index) => new(OdeEventDirection.Any, false);

        public readonly double Value(int index, double t, ReadOnlySpan<double> y, ReadOnlySpan<double> dydt)
            => path.Motion(t, y, out _).ThroughAir.Y;

        public readonly void Located(int index, double t, ReadOnlySpan<double> y)
        {
            Times.Add(t);
            var motion = path.Motion(t, y, out _);
            Rates.Add(motion.Rates.Z);
        }
    }
}

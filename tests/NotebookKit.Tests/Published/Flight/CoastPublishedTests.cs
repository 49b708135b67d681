using NotebookKit.Numerics.Ode;

namespace NotebookKit.Tests.Published.Flight;

/// <summary>The coast equations in air of constant density against closed forms (tan and tanh solutions of dv/dt = −g ∓ k v²/m).</summary>
public class CoastPublishedTests
{
    private const string Closed = "Ballistic coast with quadratic drag, closed form; checked against integration to 1e-8, 2025";

    private static readonly OdeSettings Tight = new() { RelativeTolerance = 1e-10 };

    [Fact]
    [PublishedCase("F34", Closed)]
    public void Up_and_down_at_constant_density()
    {
        var (height, time) = Up(new ConstantAir(0.5 * 1.225 * 0.46 * Math.PI / 4 * 0.06 * 0.06), 1.5, 120);
        Tolerance.Relative(542.778931, height, 1e-8);
        Tolerance.Relative(10.023762, time, 1e-7);

        var down = new CoastPhase<ConstantAir>(new ConstantAir(0.5 * 1.225 * 0.46 * Math.PI / 4 * 0.06 * 0.06), 1.5);
        var ground = default(Ground);
        var none = new NoObserver();
        double[] y = [height, 0];
        var result = OdeDriver.Integrate(ref down, ref ground, ref none, 0, 100, y, Tight, [1e-9, 1e-9]);
        Tolerance.Relative(-89.947784, y[1], 1e-7);
        Tolerance.Relative(11.033226, result.Time, 1e-7);
    }

    [Theory]
    [PublishedCase("F35", Closed)]
    [InlineData(1, 9.789660, 4.899075)]
    [InlineData(5, 47.010422, 120.011841)]
    [InlineData(20, 121.533349, 1514.758130)]
    public void Fall_from_rest(double time, double speed, double depth)
    {
        var fall = new CoastPhase<ConstantAir>(new ConstantAir(0.5 * 1.225 * 0.46 * Math.PI / 4 * 0.06 * 0.06), 1.5);
        double[] y = [0, 0];
        OdeDriver.Integrate(ref fall, 0, time, y, Tight, [1e-9, 1e-9]);
        Tolerance.Relative(-speed, y[1], 1e-7);
        Tolerance.Relative(-depth, y[0], 2e-7);
    }

    [Fact]
    [PublishedCase("P34", Closed)]
    public void Drag_coast_of_a_light_vehicle()
    {
        var (height, time) = Up(new ConstantAir(0.5 * 1.225 * 2.5e-3), 1, 60);
        Tolerance.Relative(145.646678, height, 1e-8);
        Tolerance.Relative(5.249960, time, 2e-7);
    }

    [Fact]
    [PublishedCase("P29", "Univ. Cape Town InCFD news, 7 Oct 2015: 550 km/h, mass below 1.5 kg, 830 m; drag area 1.02719e-3 m² makes the "
        + "closed form give 830 m")]
    public void The_published_record_flight_is_consistent_with_a_plausible_drag_area()
    {
        var (height, _) = Up(new ConstantAir(0.5 * 1.2 * 1.02719e-3), 1.5, 550 / 3.6);
        Tolerance.Relative(830, height, 1e-4);
        var (vacuum, _) = Up(new ConstantAir(0), 1.5, 550 / 3.6);
        Tolerance.Relative(1190.06, vacuum, 1e-5);
    }

    private static (double Height, double Time) Up(ConstantAir air, double massKg, double speed)
    {
        var phase = new CoastPhase<ConstantAir>(air, massKg);
        var top = default(ApogeeEvents);
        var none = new NoObserver();
        double[] y = [0, speed];
        var result = OdeDriver.Integrate(ref phase, ref top, ref none, 0, 1000, y, Tight, [1e-9, 1e-9]);
        return (y[0], result.Time);
    }

    private readonly struct ConstantAir(double k) : IMount
    {
        public bool IsHeld => false;

        public double DryMassKg => 0;

        public double Gravity => 9.80665;

        public double Ambient(double heightM) => 101_325;

        public double Surroundings(double heightM, double speed, bool jetOn, out double dragN)
        {
            dragN = k * speed * Math.Abs(speed);
            return 101_325;
        }
    }

    private readonly struct Ground : IOdeEvents
    {
        public int Count => 1;

        public OdeEventRule Rule(int index) => new(OdeEventDirection.Falling, true);

        public double Value(int index, double t, ReadOnlySpan<double> y, ReadOnlySpan<double> dydt) => y[0];

        public void Located(int index, double t, ReadOnlySpan<double> y)
        {
        }
    }
}

using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Recovery;
using NotebookKit.Tests.Aerodynamics;
using UnitsNet;

namespace NotebookKit.Tests.Flight;

/// <summary>What nobody means to ask for: not a number, no fins, fins without span, a rail that outlasts the jet, more wind than
/// speed.</summary>
public class BadFlightInputTests
{
    private static readonly Vehicle Trainer = SampleVehicles.Trainer;

    private static readonly Airframe Frame = SampleAirframes.ThreeFins;

    public static TheoryData<string> NotNumbers => [.. Refused.Keys];

    // A NaN must be refused where it enters, at the latest by the verb that would compute with it; never come back as an answer.
    private static Dictionary<string, Action> Refused => new()
    {
        ["nose parameter"] = () => (SampleBodies.ThreeFins with {
            Parts = [SampleBodies.NoseOf(NoseShape.Power, 240.Millimetres(), 60.Millimetres(), double.NaN),
            SampleBodies.ThreeFins.Parts[1]] }).NormalForce(),
        ["Mach number of the margin"] = () => SampleBodies.ThreeFins.MarginAt(1.2.Metres(), 5.Degrees(), double.NaN),
        ["Mach number of the roll"] = () => SampleBodies.ThreeFins.Roll(double.NaN),
        ["finite-length factor"] = () => SampleBodies.ThreeFins.AtAngles(1.2.Metres(), finiteLengthFactor: double.NaN),
        ["transition"] = () => SampleBodies.ThreeFins.Drag(50.MetresPerSecond(), assumptions: new() { LateTransition = double.NaN }),
        ["protuberance drag"] = () => SampleBodies.ThreeFins.DragCurves(assumptions: new() { ProtuberanceDrag = double.NaN }),
        ["drag coefficient"] = () => DragCurve.Constant(double.NaN, 60.Millimetres()),
        ["factor on drag"] = () => SampleBodies.ThreeFins.DragCurves().Middle.Times(double.NaN),
        ["fin span"] = () => SampleBodies.ThreeFins.Fins[0].WithSpanTimes(double.NaN).Flutter(Pressure.FromGigapascals(5),
            100.MetresPerSecond()),
        ["fin corner"] = () => new PolygonPlanform([new(0.Metres(), 0.Metres()), new(Length.FromMeters(double.NaN), 60.Millimetres()),
            new(0.1.Metres(), 0.Metres())]).Validate(),
        ["gust"] = () => SampleBodies.ThreeFins.FinStructure(
            new FinSheet("sheet", Pressure.FromGigapascals(5), Pressure.FromMegapascals(500), Source.CommonPractice("invented")),
            new FinBond(6.Millimetres(), Pressure.FromMegapascals(10), Source.CommonPractice("invented")), 100.MetresPerSecond(),
                Speed.FromMetersPerSecond(double.NaN)),
        ["rail friction"] = () => Trainer.Fly(SampleVehicles.Calm with { Rail = new(2.Metres()) { Friction = double.NaN } }),
        ["rail length"] = () => Trainer.Fly(SampleVehicles.Calm with { Rail = new(Length.FromMeters(double.NaN)) }),
        ["wind"] = () => WindProfile.Uniform(Speed.FromMetersPerSecond(double.NaN)),
        ["wind exponent"] = () => WindProfile.PowerLaw(5.MetresPerSecond(), 10.Metres(), double.NaN),
        ["exit speed"] = () => Frame.LeaveRail(Speed.FromMetersPerSecond(double.NaN), 3.MetresPerSecond(), 0.Grams(), 0.Grams()),
        ["cant"] = () => Frame.PitchRoll(50.MetresPerSecond(), Angle.FromDegrees(double.NaN)),
        ["margin wanted"] = () => Frame.Stability(40.Percent(), 80.Grams(), limits: new StabilityLimits(double.NaN)),
        ["Mach number of the stability"] = () => Frame.Stability(40.Percent(), 80.Grams(), double.NaN),
        ["water"] = () => (Trainer with { Charge = Trainer.Charge
            with { WaterFraction = Ratio.FromPercent(double.NaN) } }).Fly(SampleVehicles.Calm),
        ["mass"] = () => (Trainer with { Parts = new([new("all", Mass.FromKilograms(double.NaN),
            0.7.Metres())]) }).Fly(SampleVehicles.Calm),
        ["timer"] = () => Deployment.ByTimer(Duration.FromSeconds(double.NaN)),
        ["canopy drag"] = () => new Canopy(CanopyType.FlatCircular, 1.Metres()) { DragCoefficient = double.NaN }.Descend(1.Kilograms()),
        ["opening speed"] = () => new Canopy(CanopyType.FlatCircular, 1.Metres()).Open(1.Kilograms(),
            Speed.FromMetersPerSecond(double.NaN)),
        ["growth exponent"] = () => new Canopy(CanopyType.FlatCircular, 1.Metres()).Open(1.Kilograms(), 10.MetresPerSecond(),
            growthExponent: double.NaN),
        ["spread of the timer"] = () => new Canopy(CanopyType.FlatCircular, 1.Metres()).OpenByTimer(1.Kilograms(), 8.Seconds(),
            8.Seconds(), Duration.FromSeconds(double.NaN), 3.MetresPerSecond()),
        ["finite-mass parameter"] = () => OpeningForce.FiniteMassFactor(double.NaN, 2),
        ["drift height"] = () => Drift.Descending(Length.FromMeters(double.NaN), 6.MetresPerSecond(), WindProfile.Calm),
    };

    [Theory]
    [MemberData(nameof(NotNumbers))]
    public void Not_a_number_is_refused(string name)
    {
        var error = Xunit.Record.Exception(Refused[name]);
        Assert.True(error is OutOfRangeException or InvalidDesignException or ArgumentException,
            $"{name}: {error?.GetType().Name ?? "no refusal"}");
        Assert.NotEmpty(error!.Message);
    }

    [Fact]
    public void A_body_without_fins_says_so_wherever_fins_are_asked_about()
    {
        var bare = SampleBodies.ThreeFins with { Fins = [] };
        var sheet = new FinSheet("sheet", Pressure.FromGigapascals(5), Pressure.FromMegapascals(500), Source.CommonPractice("invented"));
        var bond = new FinBond(6.Millimetres(), Pressure.FromMegapascals(10), Source.CommonPractice("invented"));
        Assert.Contains("no fins", Assert.Throws<InvalidDesignException>(() => bare.FinStructure(sheet, bond, 100.MetresPerSecond(),
            5.MetresPerSecond())).Message, StringComparison.Ordinal);
        Assert.Contains("no fins", Assert.Throws<InvalidDesignException>(() => (Frame
            with { Body = Frame.Body with { Fins = [] } }).Alignment(new(0.5.Millimetres(), 80.Millimetres()),
            50.MetresPerSecond())).Message, StringComparison.Ordinal);
        Assert.Equal(new RollDerivatives(0, 0, 0), bare.Roll());
        Assert.DoesNotContain(bare.Drag(50.MetresPerSecond()).Components, c => c.Name.StartsWith("Fin", StringComparison.Ordinal));
        var flight = (Trainer with { Body = Trainer.Body with { Fins = [] } }).Fly(SampleVehicles.Calm);
        Assert.Contains(flight.Findings, f => f.Severity == FindingSeverity.Error);
    }

    [Fact]
    public void Fins_without_span_are_refused_whether_measured_or_drawn()
    {
        var drawn = SampleBodies.ThreeFins.Fins[0] with { Planform = new PolygonPlanform([new(0.Metres(), 0.Metres()),
            new(40.Millimetres(), 0.Metres()), new(100.Millimetres(), 0.Metres())]) };
        var measured = FinSet.Trapezoidal(3, 100.Millimetres(), 60.Millimetres(), 0.Millimetres(), 40.Millimetres(), 1.5.Millimetres(),
            1.7.Metres());
        foreach (var fins in new[] { drawn, measured })
        {
            Assert.Contains("fin span", Assert.Throws<InvalidDesignException>(() => (SampleBodies.ThreeFins
                with { Fins = [fins] }).NormalForce()).Message, StringComparison.Ordinal);
            Assert.Contains("fin span", Assert.Throws<InvalidDesignException>(() => fins.Flutter(Pressure.FromGigapascals(5),
                100.MetresPerSecond())).Message, StringComparison.Ordinal);
            Assert.Contains("fin span", Assert.Throws<InvalidDesignException>(() => (Trainer
                with { Body = Trainer.Body with { Fins = [fins
                with { LeadingEdgeAt = 1.4.Metres() }] } }).Fly(SampleVehicles.Calm)).Message, StringComparison.Ordinal);
        }
    }

    // The whole burn on the rail, in both models: it is guided to the end, leaves it coasting, and both models agree on the speed.
    [Fact]
    public void A_rail_longer_than_the_burn_is_the_same_in_three_and_six_degrees()
    {
        var vehicle = Trainer with { Charge = Trainer.Charge with { Pressure = 10.BarGauge() } };
        var site = SampleVehicles.Breezy with { Rail = new(20.Metres()) };
        var (three, six) = (vehicle.Fly(site).Figures, vehicle.FlySixDegrees(site).Figures);
        Assert.True(three.EndOfJet < three.RailExitTime && six.EndOfJet < six.RailExitTime);
        Tolerance.Relative(three.RailExitSpeed.MetersPerSecond, six.RailExitSpeed.MetersPerSecond, 1e-4);
        Tolerance.Relative(three.RailExitTime.Seconds, six.RailExitTime.Seconds, 1e-4);
    }

    [Fact]
    public void Wind_above_the_speed_off_the_rail_is_an_error_in_three_degrees_as_well()
    {
        var flight = Trainer.Fly(SampleVehicles.Calm with { Rail = new(0.1.Metres()), Wind = WindProfile.Uniform(12.MetresPerSecond()) });
        Assert.True(flight.Figures.RailExitSpeed < flight.Figures.RailWind);
        Assert.Null(flight.Figures.RailExitMargin);
        Assert.Contains(flight.Findings, f => f.Severity == FindingSeverity.Error
            && f.Message.Contains("Don't fly", StringComparison.Ordinal));
    }
}

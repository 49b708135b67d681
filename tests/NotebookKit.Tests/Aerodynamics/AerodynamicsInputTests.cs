using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Aerodynamics;

public class AerodynamicsInputTests
{
    [Fact]
    public void Air_in_bar_taken_for_pascal_is_refused()
    {
        var error = Assert.Throws<OutOfRangeException>(() => new AirConditions(AbsolutePressure.FromPascals(1.013), 15.Celsius()));
        Assert.Contains("air pressure", error.Message, StringComparison.Ordinal);
        Assert.Throws<OutOfRangeException>(() => AirConditions.SeaLevel with { Temperature = Temperature.FromKelvins(15) });
    }

    // U.S. Standard Atmosphere 1976, Table I, sea level and 5000 m.
    [Theory]
    [InlineData(101325, 288.1500, 1.22500, 340.294, 1.78938e-5)]
    [InlineData(54048.3, 255.6755, 0.736428, 320.546, 1.62825e-5)]
    public void Air_agrees_with_the_standard_table(double pascals, double kelvin, double density, double sound, double viscosity)
    {
        var air = new AirConditions(AbsolutePressure.FromPascals(pascals), Temperature.FromKelvins(kelvin));
        Tolerance.Relative(density, air.Density.KilogramsPerCubicMeter, 5e-6);
        Tolerance.Relative(sound, air.SpeedOfSound.MetersPerSecond, 2e-6);
        Tolerance.Relative(viscosity, air.Viscosity.PascalSeconds, 4e-6);
    }

    [Theory]
    [InlineData(NoseShape.Parabolic, 1.2)]
    [InlineData(NoseShape.Parabolic, double.NaN)]
    [InlineData(NoseShape.Power, 0.3)]
    [InlineData(NoseShape.Haack, -0.1)]
    public void A_nose_parameter_outside_is_refused(NoseShape shape, double parameter) =>
        Assert.Single(SampleBodies.NoseOf(shape, 200.Millimetres(), 60.Millimetres(), parameter).Validate());

    [Fact]
    public void An_ogive_blunter_than_a_hemisphere_is_refused_with_what_to_use() =>
        Assert.Contains("ellipsoid", Nose.TangentOgive(20.Millimetres(), 60.Millimetres()).Validate().Single().Message,
            StringComparison.Ordinal);

    [Fact]
    public void Steps_between_parts_are_refused()
    {
        var body = SampleBodies.ThreeFins with { Parts = [SampleBodies.ThreeFins.Parts[0], new BodyTube(1.56.Metres(), 62.Millimetres())] };
        var error = Assert.Throws<InvalidDesignException>(() => body.NormalForce());
        Assert.Contains("Put a transition between them", error.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(2)]
    [InlineData(7)]
    public void Fin_counts_outside_three_to_six_are_refused(int count)
    {
        var body = SampleBodies.ThreeFins with { Fins = [SampleBodies.ThreeFins.Fins[0] with { Count = count }] };
        var error = Assert.Throws<InvalidDesignException>(() => body.NormalForce());
        Assert.Contains("3 to 6", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_body_without_fins_has_its_centre_in_the_nose_and_says_so()
    {
        var result = (SampleBodies.ThreeFins with { Fins = [] }).NormalForce();
        Assert.True(result.CentreOfPressure < SampleBodies.ThreeFins.Parts[0].Length);
        Assert.Contains(result.Findings, f => f.Severity == FindingSeverity.Warning
            && f.Message.Contains("no fins", StringComparison.Ordinal));
    }

    [Fact]
    public void A_boat_tail_takes_normal_force_away()
    {
        var plain = SampleBodies.ThreeFins;
        var tailed = plain with
        {
            Parts = [plain.Parts[0], new BodyTube(1.56.Metres(), 60.Millimetres()),
                new Transition(60.Millimetres(), 60.Millimetres(), 40.Millimetres())],
        };
        // 2 ((40/60)² − 1) = −1.1111 by hand; its centre 1.8 m + (60/3)(1 + (1 − 1.5)/(1 − 2.25)) mm.
        var part = tailed.NormalForce().Components.Single(c => c.Name == "Transition");
        Tolerance.Relative((2 * 16.0 / 36) - 2, part.Slope, 1e-12);
        Tolerance.Relative(1.8 + (0.02 * 1.4), part.At.Meters, 1e-12);
        Assert.True(tailed.NormalForce().CentreOfPressure < plain.NormalForce().CentreOfPressure);
        Assert.True(tailed.Drag(80.MetresPerSecond()).Components.Single(c => c.Name == "Base").Middle <
            plain.Drag(80.MetresPerSecond()).Components.Single(c => c.Name == "Base").Middle);
    }

    [Fact]
    public void Drag_assumptions_swapped_or_outside_are_refused()
    {
        Assert.Contains("swap", new DragAssumptions { EarlyTransition = 1e6, LateTransition = 1e5 }.Validate().Single().Message,
            StringComparison.Ordinal);
        Assert.Throws<InvalidDesignException>(() => SampleBodies.ThreeFins.Drag(50.MetresPerSecond(),
            assumptions: new DragAssumptions { Roughness = 2.Millimetres() }));
        Assert.Throws<OutOfRangeException>(() => SampleBodies.ThreeFins.Drag(0.MetresPerSecond()));
        Assert.Throws<OutOfRangeException>(() => SampleBodies.ThreeFins.Drag(320.MetresPerSecond()));
    }

    [Theory]
    [InlineData(0.5)]
    [InlineData(61)]
    [InlineData(double.NaN)]
    public void Fineness_outside_the_measured_cylinders_is_refused(double fineness) =>
        Assert.Throws<OutOfRangeException>(() => Crossflow.FiniteLengthFactor(fineness));

    // F. M. White, Fluid Mechanics: short cylinders across the flow, 0.82 at a fineness of 10 against 1.2 for a long one.
    [Fact]
    public void Finite_length_factor_agrees_with_the_measured_cylinders()
    {
        Tolerance.Relative(0.82 / 1.2, Crossflow.FiniteLengthFactor(10), 1e-12);
        Assert.InRange(Crossflow.FiniteLengthFactor(20), 0.72, 0.77);
    }
}

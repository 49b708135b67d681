using NotebookKit.Quantities;

namespace NotebookKit.Tests.Aerodynamics.NormalForces;

public class AerodynamicNumbersTests
{
    private static FinnedBody Canted { get; } = SampleBodies.Shouldered
        with { Fins = [SampleBodies.Shouldered.Fins[0] with { Cant = 0.3.Degrees() }] };

    [Theory]
    [InlineData(0)]
    [InlineData(0.35)]
    [InlineData(0.9)]
    public void They_are_the_numbers_of_the_results(double mach)
    {
        var sums = new AerodynamicNumbers(Canted).At(mach);
        var (force, roll, gravity) = (Canted.NormalForce(mach), Canted.Roll(mach), 1.6.Metres());
        Tolerance.Relative(force.TotalSlope, sums.Slope, 1e-12);
        Tolerance.Relative(force.CentreOfPressure.Meters, sums.SlopeStation / sums.Slope, 1e-12);
        Tolerance.Relative(force.MomentSlope(gravity), -sums.Arm(1.6) / 0.06, 1e-12);
        Tolerance.Relative(force.PitchDamping(gravity), -2 * sums.ArmSquare(1.6) / 0.0036, 1e-12);
        Tolerance.Relative(roll.Forcing * 0.3 * Math.PI / 180, sums.RollForcing, 1e-12);
        Tolerance.Relative(roll.Damping, sums.RollDamping, 1e-12);
    }

    [Fact]
    public void Cross_flow_is_that_of_the_margin_at_an_angle()
    {
        var numbers = new AerodynamicNumbers(SampleBodies.ThreeFins);
        var result = SampleBodies.ThreeFins.AtAngles(1.2.Metres(), 10.Degrees());
        var sine = Math.Sin(10 * Math.PI / 180);
        Tolerance.Relative(result.Viscous[^1], numbers.CrossflowM2 / numbers.ReferenceM2 * sine * sine, 1e-12);
        Tolerance.Relative(SampleBodies.ThreeFins.PlanformCentroidM, numbers.CrossflowCentreM, 1e-12);
    }

    [Fact]
    public void Beyond_Mach_point_nine_they_are_held_and_nothing_is_allocated()
    {
        var numbers = new AerodynamicNumbers(SampleBodies.ThreeFins);
        Assert.Equal(numbers.At(0.9), numbers.At(1.3));
        var before = GC.GetAllocatedBytesForCurrentThread();
        var sum = 0.0;
        for (var i = 0; i < 1000; i++) sum += numbers.At(i * 0.0009).Slope;
        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
        Assert.True(sum > 0);
    }
}

using NotebookKit.Quantities;
using NotebookKit.Tests.Aerodynamics;

namespace NotebookKit.Tests.Published.Aerodynamics;

/// <summary>
/// The published formulas worked independently to six or more digits; they check our arithmetic, not the method against experiment.
/// </summary>
public class ComponentMethodTests
{
    private const string Thesis = "J. S. Barrowman, M.S. thesis, 1967, ch. 3 (NASA/TM-2001-209983); worked independently";

    // Slender-body theory: x/L = 1 - V/(A L). Closed forms to six digits.
    [Theory]
    [PublishedCase("F02", Thesis)]
    [InlineData(NoseShape.Cone, 0, 4, 2.0 / 3)]
    [InlineData(NoseShape.TangentOgive, 0, 2, 0.457240)]
    [InlineData(NoseShape.TangentOgive, 0, 3, 0.462453)]
    [InlineData(NoseShape.TangentOgive, 0, 4, 0.464292)]
    [InlineData(NoseShape.TangentOgive, 0, 5, 0.465145)]
    [InlineData(NoseShape.TangentOgive, 0, 8, 0.466072)]
    [InlineData(NoseShape.Ellipsoid, 0, 4, 1.0 / 3)]
    [InlineData(NoseShape.Power, 0.5, 4, 0.5)]
    [InlineData(NoseShape.Power, 0.75, 4, 0.6)]
    [InlineData(NoseShape.Haack, 0, 4, 0.5)]
    [InlineData(NoseShape.Haack, 1.0 / 3, 4, 0.4375)]
    [InlineData(NoseShape.Parabolic, 0.5, 4, 0.607407)]
    [InlineData(NoseShape.Parabolic, 0.75, 4, 0.554667)]
    [InlineData(NoseShape.Parabolic, 1, 4, 0.466667)]
    public void Nose_centre_of_pressure(NoseShape shape, double parameter, double fineness, double share)
    {
        var body = new FinnedBody([SampleBodies.NoseOf(shape, (60 * fineness).Millimetres(), 60.Millimetres(), parameter)], []);
        var result = body.NormalForce();
        Tolerance.Relative(2, result.TotalSlope, 1e-12);
        Tolerance.Absolute(share, result.CentreOfPressure.Millimeters / (60 * fineness), 1e-6);
    }

    // The case takes the nose's centre at the rounded 0.466 L; the exact one of this ogive is 0.464292 L, 0.41 mm forward, which moves the
    // whole by 0.09 mm. Total and margin are compared with that difference put back, the parts directly.
    [Theory]
    [PublishedCase("F03", Thesis)]
    [InlineData(0, 3.516862, 7.033725, 9.033725, 1.378564, 2.976069, -26.884988)]
    [InlineData(0.5, 3.616767, 7.233535, 9.233535, 1.386358, 3.105974, -28.679114)]
    [InlineData(0.8, 3.797233, 7.594466, 9.594466, 1.399615, 3.326915, -31.919978)]
    public void Three_fins(double mach, double panel, double fins, double total, double centre, double margin, double moment)
    {
        var result = SampleBodies.ThreeFins.NormalForce(mach);
        Tolerance.Relative(panel, result.Components[1].Slope / 1.5 / (4.0 / 3), 1e-6);
        Tolerance.Relative(fins, result.Components[1].Slope, 1e-6);
        Tolerance.Relative(1.738750, result.Components[1].At.Meters, 1e-9);
        Tolerance.Relative(total, result.TotalSlope, 1e-6);

        var rounded = 2 * (0.111840 - result.Components[0].At.Meters);
        Tolerance.Absolute(centre, result.CentreOfPressure.Meters + (rounded / total), 1e-6);
        Tolerance.Absolute(margin, result.Margin(1.2.Metres()) + (rounded / total / 0.06), 2e-5);
        Tolerance.Absolute(moment, result.MomentSlope(1.2.Metres()) - (rounded / 0.06), 2e-5);
    }

    [Theory]
    [PublishedCase("F04", Thesis)]
    [InlineData(0, 9.711086, 25.449744, 29.949744, 1.753601)]
    [InlineData(0.8, 10.519676, 27.568805, 32.068805, 1.768231)]
    public void Four_fins_with_a_shoulder(double mach, double panel, double fins, double total, double centre)
    {
        var result = SampleBodies.Shouldered.NormalForce(mach);
        Tolerance.Absolute(0.2, result.Components[0].At.Meters, 1e-6);
        Tolerance.Relative(2.5, result.Components[1].Slope, 1e-9);
        Tolerance.Absolute(0.742667, result.Components[1].At.Meters, 1e-6);
        Tolerance.Relative(panel, result.Components[2].Slope / 2 / 1.310345, 1e-6);
        Tolerance.Relative(fins, result.Components[2].Slope, 1e-6);
        Tolerance.Relative(1.975, result.Components[2].At.Meters, 1e-9);
        Tolerance.Relative(total, result.TotalSlope, 1e-6);
        Tolerance.Absolute(centre, result.CentreOfPressure.Meters, 1e-6);
        if (mach > 0) return;
        Tolerance.Absolute(2.560022, result.Margin(1.6.Metres()), 1e-5);
        Tolerance.Absolute(-76.672009, result.MomentSlope(1.6.Metres()), 1e-3);
    }

    [Fact]
    [PublishedCase("F06", "Basic Finner range model: geometry of Dupuis and Hathaway, DREV-TM-9703, 1997; component method worked "
        + "independently")]
    public void Basic_finner()
    {
        var result = SampleBodies.BasicFinner.NormalForce();
        Tolerance.Relative(8.836556, result.Components[1].Slope, 1e-6);
        Tolerance.Absolute(9.25, result.Components[1].At.Millimeters / 30, 1e-9);
        Tolerance.Relative(10.836556, result.TotalSlope, 1e-6);
        Tolerance.Absolute(7.891758, result.CentreOfPressure.Millimeters / 30, 1e-6);
        Tolerance.Absolute(-19.416485, result.MomentSlope((6.1 * 30).Millimetres()), 1e-4);
    }

    [Fact]
    [PublishedCase("F08", Thesis)]
    public void Roll_forcing_and_damping()
    {
        var roll = SampleBodies.ThreeFins.Roll();
        Tolerance.Relative(10.110980, roll.Forcing, 1e-6);
        Tolerance.Relative(-64.000000, roll.DampingTwoDimensional, 1e-6);
        Tolerance.Relative(-21.101175, roll.Damping, 1e-6);

        var finner = SampleBodies.BasicFinner.Roll();
        Tolerance.Relative(-69.3333, finner.DampingTwoDimensional, 1e-5);
        Tolerance.Relative(-28.718807, finner.Damping, 1e-6);
    }

    // Position of the nose's centre as in F03: 0.41 mm of rounding on a force of 2 sin(alpha).
    [Theory]
    [PublishedCase("F09", "H. J. Allen, E. W. Perkins, NACA TR 1048, 1951; L. H. Jorgensen, NASA TR R-474, 1977; worked independently")]
    [InlineData(0, 0, 0, 1.378564, 2.976)]
    [InlineData(5, 0.787341, 0.239618, 1.275961, 1.266)]
    [InlineData(10, 1.568690, 0.951190, 1.212573, 0.210)]
    [InlineData(15, 2.338100, 2.113097, 1.169808, -0.503)]
    public void Margin_at_an_angle_of_attack(double degrees, double potential, double viscous, double centre, double margin)
    {
        var gravity = SampleBodies.ThreeFinsGravity;
        var result = SampleBodies.ThreeFins.AtAngles(gravity, 20.Degrees(), finiteLengthFactor: 0.72);
        var i = Enumerable.Range(0, result.Angle.Count).First(k => Math.Abs(result.Angle[k] - degrees) < 1e-9);
        Tolerance.Absolute(potential, result.Potential[i], 2e-6);
        Tolerance.Absolute(viscous, result.Viscous[i], 2e-6);
        Tolerance.Absolute(centre * 1000, result.CentreOfPressure[i], 0.1);
        Tolerance.Absolute(margin, result.Margin[i], 2e-3);
        Assert.Equal(result.Margin[i], SampleBodies.ThreeFins.MarginAt(gravity, degrees.Degrees(), finiteLengthFactor: 0.72), 9);
    }

    // F09: side view of the ogive and of the whole body.
    [Fact]
    [PublishedCase("F09", "Geometry of a tangent ogive, worked independently")]
    public void Side_view_of_the_ogive()
    {
        var nose = SampleBodies.ThreeFins.Parts[0];
        Tolerance.Relative(0.00962993, nose.PlanformArea.SquareMeters, 1e-6);
        Tolerance.Relative(0.149812, nose.PlanformCentroidM, 5e-6);
        Tolerance.Relative(0.1032299, SampleBodies.ThreeFins.PlanformM2, 1e-6);
        Tolerance.Relative(0.938823, SampleBodies.ThreeFins.PlanformCentroidM, 1e-6);
    }
}

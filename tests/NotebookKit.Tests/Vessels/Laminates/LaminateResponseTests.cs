using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Laminates;
using UnitsNet;

namespace NotebookKit.Tests.Vessels.Laminates;

public class LaminateResponseTests
{
    private static readonly Lamina Carbon = new(120.Gigapascals(), 8.Gigapascals(), 4.Gigapascals(), 0.3);

    private static Laminate Stack(params double[] degrees) =>
        new([.. degrees.Select(d => new LaminatePly(Carbon, d.Degrees(), 0.25.Millimetres()))]);

    [Fact]
    public void Stresses_of_the_plies_add_up_to_the_forces_and_moments()
    {
        var load = new LaminateLoad
        {
            ForceX = ForcePerLength.FromNewtonsPerMeter(2e4), ForceY = ForcePerLength.FromNewtonsPerMeter(-5e3),
            Shear = ForcePerLength.FromNewtonsPerMeter(3e3), MomentX = TorquePerLength.FromNewtonMetersPerMeter(4),
            MomentY = TorquePerLength.FromNewtonMetersPerMeter(-2), Twist = TorquePerLength.FromNewtonMetersPerMeter(1),
        };
        var faces = Stack(0, 30, -45, 90, 15).Under(load).Faces;
        double Force(Func<PlyFace, Pressure> of) => faces.Chunk(3).Sum(f => 0.25e-3 * of(f[1]).Pascals);
        // The stress is a straight line through a ply: Simpson's rule is exact for its moment.
        double Moment(Func<PlyFace, Pressure> of) => faces.Chunk(3).Sum(f =>
            0.25e-3 / 6 * (of(f[0]).Pascals * f[0].Height.Meters + 4 * of(f[1]).Pascals * f[1].Height.Meters
                + of(f[2]).Pascals * f[2].Height.Meters));
        Tolerance.Relative(2e4, Force(f => f.StressX), 1e-9);
        Tolerance.Relative(-5e3, Force(f => f.StressY), 1e-9);
        Tolerance.Relative(3e3, Force(f => f.StressXy), 1e-9);
        Tolerance.Relative(4, Moment(f => f.StressX), 1e-9);
        Tolerance.Relative(-2, Moment(f => f.StressY), 1e-9);
        Tolerance.Relative(1, Moment(f => f.StressXy), 1e-9);
    }

    [Fact]
    public void A_symmetric_stack_pulled_in_its_plane_stays_flat()
    {
        var answer = Stack(0, 45, -45, -45, 45, 0).Under(new() { ForceX = ForcePerLength.FromNewtonsPerMeter(1e4) });
        Assert.True(Math.Abs(answer.CurvatureX.InverseMeters) < 1e-9 && Math.Abs(answer.Twist.InverseMeters) < 1e-9);
        Tolerance.Relative(1e4 / (Stack(0, 45, -45, -45, 45, 0).Constants().Axial.Pascals * 1.5e-3), answer.Middle.X.DecimalFractions,
            1e-9);
    }

    [Fact]
    public void A_stack_without_plies_is_refused() =>
        Assert.Contains("has no ply", Assert.Throws<InvalidDesignException>(() => new Laminate([]).Under(new())).Message,
            StringComparison.Ordinal);

    [Fact]
    public void A_large_strain_is_warned_of()
    {
        var answer = Stack(90).Under(new() { ForceX = ForcePerLength.FromNewtonsPerMeter(2e5) });
        Assert.Contains(answer.Findings, f => f.Severity == FindingSeverity.Warning
            && f.Message.Contains("holds to some 5 %", StringComparison.Ordinal));
    }
}

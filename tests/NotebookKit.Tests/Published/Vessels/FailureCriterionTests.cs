using NotebookKit.Quantities;
using NotebookKit.Vessels.Laminates;
using UnitsNet;

namespace NotebookKit.Tests.Published.Vessels;

/// <summary>Tolerance 0.1 %, half a unit of the fourth digit.</summary>
public class FailureCriterionTests
{
    [Theory]
    [PublishedCase("V14", "Kaw, Mechanics of Composite Materials, 2nd ed. 2006, §2.8: 60° ply under 2s, −3s, 4s")]
    [InlineData(FailureCriterion.MaximumStress, 16.33)]
    [InlineData(FailureCriterion.TsaiHill, 10.94)]
    [InlineData(FailureCriterion.ModifiedTsaiHill, 16.06)]
    [InlineData(FailureCriterion.TsaiWu, 22.39)]
    public void Strength_of_a_ply_at_60_degrees(FailureCriterion criterion, double expected)
    {
        var local = Lamina.Resolve(60.Degrees(), 2.Megapascals(), (-3).Megapascals(), 4.Megapascals());
        Tolerance.Relative(1.714, local.Longitudinal.Megapascals, 1e-3);
        Tolerance.Relative(-2.714, local.Transverse.Megapascals, 1e-3);
        Tolerance.Relative(-4.165, local.Shear.Megapascals, 1e-3);
        Tolerance.Relative(expected, Cases.T300Strength.Reserve(local, criterion), 1e-3);
    }

    [Theory]
    [PublishedCase("V16", "Kaw, Mechanics of Composite Materials, 2nd ed. 2006, §2.8: formulae; figures re-computed")]
    [InlineData(0, 1500, 1500, 1500)]
    [InlineData(15, 272.0, 244.9, 222.2)]
    [InlineData(30, 157.0, 112.0, 101.2)]
    [InlineData(45, 80.00, 68.95, 64.54)]
    [InlineData(60, 53.33, 50.50, 48.96)]
    [InlineData(90, 40.00, 40.00, 40.00)]
    public void Strength_off_the_fibres(double degrees, double maximumStress, double tsaiHill, double tsaiWu)
    {
        var local = Lamina.Resolve(degrees.Degrees(), 1.Megapascals(), Pressure.Zero, Pressure.Zero);
        Tolerance.Relative(maximumStress, Cases.T300Strength.Reserve(local, FailureCriterion.MaximumStress), 1e-3);
        Tolerance.Relative(tsaiHill, Cases.T300Strength.Reserve(local, FailureCriterion.TsaiHill), 1e-3);
        Tolerance.Relative(tsaiWu, Cases.T300Strength.Reserve(local, FailureCriterion.TsaiWu), 1e-3);
    }

    // Hashin, J. Appl. Mech. 47, 1980, Eq. 26 to 29 by hand: (σ2/Yt)² + (τ/S)² = (20/40)² + (34/68)² = 0.5, so the reserve is √2.
    [Fact]
    [PublishedCase("Hashin", "Hashin, J. Appl. Mech. 47, 1980, Eq. 26 to 29, worked by hand")]
    public void Hashin_by_hand()
    {
        var stress = new PlyStress(Pressure.Zero, 20.Megapascals(), 34.Megapascals());
        Tolerance.Relative(Math.Sqrt(2), Cases.T300Strength.Reserve(stress, FailureCriterion.Hashin), 1e-12);
        // Compression along the fibres alone: σ1 = −Xc.
        Tolerance.Relative(2, Cases.T300Strength.Reserve(new PlyStress((-750).Megapascals(), Pressure.Zero, 10.Megapascals()),
            FailureCriterion.Hashin), 1e-12);
    }

    [Fact]
    [PublishedCase("V17", "Kaw 2006, ch. 4 and §2.8: formulae; figures re-computed for a [±55] closed tube")]
    public void First_crack_of_a_closed_tube()
    {
        var tube = Cases.Tube(Cases.T300, Cases.T300Strength, (55, 1));
        // 1 MPa of hoop stress: p = σ·t/R.
        var unit = tube.Stresses(GaugePressure.FromPascals(1e6 * 1e-3 / 50e-3))[0];
        Tolerance.Relative(1.4118, unit.Longitudinal.Megapascals, 1e-3);
        Tolerance.Relative(0.08825, unit.Transverse.Megapascals, 1e-3);
        Tolerance.Relative(0.02519, Math.Abs(unit.Shear.Megapascals), 1e-3);
        Tolerance.Relative(439.2, tube.Fail(2, 1, FailureCriterion.TsaiWu).FirstPlyFailure.Megapascals, 1e-3);
        Tolerance.Relative(453.2, tube.Fail(2, 1).FirstPlyFailure.Megapascals, 1e-3);
        // The first failure is resin: a leak, not a burst.
        Assert.Equal(FailureMode.Matrix, tube.Fail(2, 1).Steps[0].Mode);
    }
}

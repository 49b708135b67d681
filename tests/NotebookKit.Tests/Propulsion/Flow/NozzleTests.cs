using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Propulsion.Flow;

public class NozzleTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(-0.1)]
    [InlineData(1.01)]
    [InlineData(double.NaN)]
    public void Refuses_coefficients_outside_their_range(double coefficient)
    {
        var nozzle = new Nozzle(10.Millimetres())
        {
            WaterVelocityCoefficient = coefficient,
            WaterContractionCoefficient = coefficient,
            AirDischargeCoefficient = coefficient,
        };
        Assert.Equal(3, nozzle.Validate().Count(f => f.Severity == FindingSeverity.Error));
    }

    [Fact]
    public void A_nozzle_as_wide_as_the_bore_is_refused()
    {
        var firing = FiringExamples.Firing with { Nozzle = new Nozzle(70.Millimetres()) };
        var error = Assert.Throws<InvalidDesignException>(() => firing.Fire());
        Assert.Contains("; it must be below the vessel's bore of 70", error.Message, StringComparison.Ordinal);
    }

    // (1 − φ²)/2 = φ at φ = √2 − 1: a free vehicle that is nearly all water has no jet speed past that, so it's refused, not flown with no
    // jet.
    [Theory]
    [InlineData(44, true)]
    [InlineData(46, false)]
    public void A_nozzle_nearly_as_wide_as_the_bore_has_no_steady_jet_and_is_refused(double millimetres, bool fires)
    {
        var findings = (FiringExamples.Firing with { Nozzle = new Nozzle(millimetres.Millimetres()) }).Validate();
        Assert.Equal(!fires, findings.Any(f => f.Severity == FindingSeverity.Error
            && f.Message.Contains("no steady jet", StringComparison.Ordinal)));
    }

    [Fact]
    public void Slow_jet_and_narrow_jet_of_one_discharge_coefficient_differ_in_thrust_as_the_coefficient()
    {
        // F = 2 Cc Cv² A Δp: with 0.9 lumped into either, 10 % apart.
        var narrow = FiringExamples.Firing with { Nozzle = new Nozzle(10.Millimetres()) { WaterContractionCoefficient = 0.9,
            WaterVelocityCoefficient = 1 } };
        var slow = FiringExamples.Firing with { Nozzle = new Nozzle(10.Millimetres()) { WaterContractionCoefficient = 1,
            WaterVelocityCoefficient = 0.9 } };
        Tolerance.Relative(0.9, slow.Fire().Curve.PeakThrust / narrow.Fire().Curve.PeakThrust, 1e-3);
    }
}

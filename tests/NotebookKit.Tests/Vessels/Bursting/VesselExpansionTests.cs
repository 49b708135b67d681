using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Tests.Published;
using NotebookKit.Vessels.Shells;

namespace NotebookKit.Tests.Vessels.Bursting;

public class VesselExpansionTests
{
    // A bare metal tube as a vessel without plies has to come out as the closed thin cylinder (Timoshenko; Roark).
    private static readonly PressureVessel Tube = Samples.Trainer with
    {
        Liner = new Liner(Samples.Stock.Solid("aluminium 6061-T6"), 99.Millimetres(), 1.Millimetres()),
        Plies = [],
        NozzleEnd = Solid(Samples.Trainer.NozzleEnd),
        ForwardEnd = Solid(Samples.Trainer.NozzleEnd),
    };

    [Fact]
    [PublishedCase("V71", "Timoshenko; Roark: growth of a closed thin cylinder")]
    public void A_bare_metal_tube_grows_as_the_closed_thin_cylinder()
    {
        var growth = Tube.Expansion(30.BarGauge());
        var cylinder = ThinCylinder.Expand(30.BarGauge(), 50.Millimetres(), 1.Millimetres(), 68.9.Gigapascals(), 0.33);
        Tolerance.Relative(cylinder.Hoop.DecimalFractions, growth.Strain.Hoop.DecimalFractions, 1e-9);
        Tolerance.Relative(cylinder.Axial.DecimalFractions, growth.Strain.Axial.DecimalFractions, 1e-9);
        Assert.True(growth.IsSound);
    }

    // Von Mises yield of a closed thin tube: p = 2/√3·σy·t/r (Hill, The Mathematical Theory of Plasticity, 1950).
    [Fact]
    [PublishedCase("yield", "Hill, The Mathematical Theory of Plasticity, 1950: yield of a closed thin tube by von Mises")]
    public void A_bare_metal_tube_yields_by_von_Mises()
    {
        var burst = Tube.Burst();
        Tolerance.Relative(2 / Math.Sqrt(3) * 240 * 1 / 50, burst.WallBurst.Pascals / 1e6, 0.01);
        Assert.Contains("bulges", burst.Parts[0].Cause, StringComparison.Ordinal);
    }

    [Fact]
    public void Growth_is_linear_while_sound_and_more_past_the_first_crack()
    {
        var burst = Samples.Trainer.Burst();
        var half = Samples.Trainer.Expansion(burst.FirstPlyFailure * 0.5);
        var quarter = Samples.Trainer.Expansion(burst.FirstPlyFailure * 0.25);
        Assert.True(half.IsSound);
        Tolerance.Relative(2 * quarter.Strain.Hoop.DecimalFractions, half.Strain.Hoop.DecimalFractions, 1e-9);
        var past = Samples.Trainer.Expansion(burst.FirstPlyFailure * 1.2);
        Assert.False(past.IsSound);
        Assert.True(past.CompliancePerBar > 1.2 * half.CompliancePerBar);
        Assert.Contains(past.Findings, f => f.Message.Contains("resin of carbon sleeve 65 mm heavy cracked", StringComparison.Ordinal));
    }

    [Fact]
    public void Fibre_use_comes_to_one_at_the_burst_of_the_wall()
    {
        var burst = Samples.Trainer.Burst();
        var use = Samples.Trainer.Expansion(burst.WallBurst * 0.9999).MaximumUse!.FibreUse.DecimalFractions;
        Tolerance.Relative(1, use, 2e-3);
    }

    [Fact]
    public void A_pressure_past_the_burst_is_refused_with_the_burst()
    {
        var error = Assert.Throws<OutOfRangeException>(() => Samples.Trainer.Expansion(500.BarGauge()));
        Assert.Contains("pressure is 500 bar gauge; it must be 0 bar gauge to below 1", error.Message, StringComparison.Ordinal);
        Assert.Throws<OutOfRangeException>(() => Samples.Trainer.Expansion((-1).BarGauge()));
    }

    private static VesselEnd Solid(VesselEnd end) => end with
    {
        Joints = [new ThreadedBoss(Samples.Stock.Solid("aluminium 6061-T6"), 90.Millimetres(), 20.Millimetres())],
    };
}

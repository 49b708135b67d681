using NotebookKit.Quantities;
using NotebookKit.Vessels.Ends;
using UnitsNet;

namespace NotebookKit.Tests.Published.Vessels;

public class BondTests(Xunit.Abstractions.ITestOutputHelper output)
{
    private const string Source = "Volkersen 1938, as reviewed by da Silva et al., Int. J. Adhes. Adhes. 29, 2009: formula; figures "
        + "re-computed by formula and by a boundary-value solver";

    private static readonly ShearLag Balanced = new(
        70.Gigapascals(), 1.6.Millimetres(), 70.Gigapascals(), 1.6.Millimetres(), 1200.Megapascals(), 0.2.Millimetres(),
            12.5.Millimetres());

    private static readonly ForcePerLength Load = ForcePerLength.FromNewtonsPerMillimeter(200);

    [Fact]
    [PublishedCase("V63", Source)]
    public void Balanced_single_lap()
    {
        Tolerance.Relative(0.32733, Balanced.Omega.InverseMillimeters, 2e-5);
        Tolerance.Relative(16.00, Balanced.Mean(Load).Megapascals, 1e-10);
        Tolerance.Relative(33.85, Balanced.Peak(Load).Megapascals, 2e-4);
        Tolerance.Relative(33.85, Balanced.At(Load, (-6.25).Millimetres()).Megapascals, 2e-4);
        Tolerance.Relative(8.607, Balanced.At(Load, Length.Zero).Megapascals, 1e-4);
        Tolerance.Relative(2.1153, Balanced.PeakRatio, 5e-5);
    }

    [Fact]
    [PublishedCase("V65", Source)]
    public void More_overlap_soon_adds_nothing()
    {
        Tolerance.Relative(32.75, (Balanced with { Overlap = 25.Millimetres() }).Peak(Load).Megapascals, 2e-4);
        Tolerance.Relative(32.73, (Balanced with { Overlap = 50.Millimetres() }).Peak(Load).Megapascals, 2e-4);
    }

    [Fact]
    [PublishedCase("V66", Source)]
    public void Plug_in_a_braided_wall()
    {
        // 47 124 N on a bore of 100 mm at 60 bar: the plug's mean shear over its bonded area. 5 MPa of it needs 30 mm.
        var plug = new BondedPlug(MaterialLibrary.Typical.Adhesive("structural epoxy"), 40.Millimetres(), BondSurface.AbradedLaminate,
            BondSurface.AbradedMetal);
        var thrust = plug.MeanShear(60.BarGauge(), 100.Millimetres()).Pascals * Math.PI * 0.1 * plug.Overlap.Meters;
        Tolerance.Relative(47_124, thrust, 1e-5);
        Tolerance.Relative(5, (plug with { Overlap = 30.Millimetres() }).MeanShear(60.BarGauge(), 100.Millimetres()).Megapascals, 1e-9);
        var load = ForcePerLength.FromNewtonsPerMeter(thrust / (Math.PI * 0.1));
        var joint = new ShearLag(20.Gigapascals(), 1.2.Millimetres(), 70.Gigapascals(), 3.Millimetres(), 1000.Megapascals(),
            0.3.Millimetres(), 40.Millimetres());
        Tolerance.Relative(3.750, joint.Mean(load).Megapascals, 1e-4);
        Tolerance.Relative(0.39340, joint.Omega.InverseMillimeters, 2e-5);
        Tolerance.Relative(52.96, joint.Peak(load).Megapascals, 2e-4);
        Tolerance.Relative(52.96, joint.At(load, (-20).Millimetres()).Megapascals, 2e-4);
        Tolerance.Relative(6.052, joint.At(load, 20.Millimetres()).Megapascals, 2e-4);
        Tolerance.Relative(14.12, joint.PeakRatio, 4e-4);
        // The same joint read from its other end.
        Tolerance.Relative(14.12, new ShearLag(70.Gigapascals(), 3.Millimetres(), 20.Gigapascals(), 1.2.Millimetres(), 1000.Megapascals(),
            0.3.Millimetres(), 40.Millimetres()).PeakRatio, 4e-4);
    }

    // The mean of the shear along the overlap is the load over the area, whatever the stiffnesses: balance of forces.
    [Fact]
    [PublishedCase("V63", "Volkersen 1938, as reviewed by da Silva et al. 2009: the mean of τ is P/(b·l)")]
    public void Shear_along_the_overlap_adds_up_to_the_load()
    {
        var joint = new ShearLag(20.Gigapascals(), 1.2.Millimetres(), 70.Gigapascals(), 3.Millimetres(), 1000.Megapascals(),
            0.3.Millimetres(), 40.Millimetres());
        const int n = 20_000;
        var sum = Enumerable.Range(0, n).Sum(i => joint.At(Load, ((i + 0.5) / n * 40 - 20).Millimetres()).Pascals) / n;
        Tolerance.Relative(joint.Mean(Load).Pascals, sum, 1e-6);
    }

    // Remembered ranges: two-part epoxy on treated aluminium 15 to 35 MPa, abraded laminate 10 to 25, plastics 1 to 8. Reported; the order
    // of the surfaces gates.
    [Fact]
    [PublishedCase("V67", "lap-shear ranges unverified; ASTM D1002 as coupon: plastics hold least, treated metal most")]
    public void Surfaces_hold_in_their_order()
    {
        var glue = MaterialLibrary.Typical.Adhesive("structural epoxy");
        Assert.True(glue.On(BondSurface.TreatedMetal).Value > glue.On(BondSurface.AbradedMetal).Value);
        Assert.True(glue.On(BondSurface.AbradedMetal).Value > glue.On(BondSurface.AbradedPlastic).Value);
        Assert.True(glue.On(BondSurface.AbradedLaminate).Value > glue.On(BondSurface.AbradedPlastic).Value);
        foreach (var surface in Enum.GetValues<BondSurface>().Where(s => s != BondSurface.UntreatedPlastic))
            output.WriteLine($"{surface}: {glue.On(surface).Value.Show()}");
    }

    // The fillet lowers the peak by some 30 to 40 % (unverified): a joint of this library has no member to claim it with.
    [Fact]
    [PublishedCase("V68", "Adams and Peppiatt, J. Strain Anal. 9, 1974, abstract: the peak lies at the corner inside the fillet; never "
        + "credited here")]
    public void A_fillet_can_not_be_credited()
    {
        Assert.DoesNotContain(typeof(BondedPlug).GetProperties().Concat(typeof(ShearLag).GetProperties()),
            p => p.Name.Contains("Fillet", StringComparison.OrdinalIgnoreCase));
        // At the coupon's own geometry the mean shear at failure is the coupon's, not above it.
        var even = new BondedPlug(MaterialLibrary.Typical.Adhesive("structural epoxy"), 3.Millimetres(), BondSurface.AbradedLaminate,
            BondSurface.AbradedMetal) { BondLine = 3.Millimetres() };
        var vessel = NotebookKit.Tests.Vessels.Samples.Trainer;
        var burst = (vessel with { ForwardEnd = vessel.ForwardEnd
            with { Joints = [even] } }).Burst().Parts.Single(p => p.Name == "forward end, bonded plug").Burst;
        Assert.True(even.MeanShear(burst, vessel.Liner.Bore) <= even.CouponStrength.Value * 1.0000001);
    }
}

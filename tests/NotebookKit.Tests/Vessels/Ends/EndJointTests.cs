using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Ends;

namespace NotebookKit.Tests.Vessels.Ends;

public class EndJointTests
{
    private static readonly Adhesive Epoxy = Samples.Stock.Adhesive("structural epoxy");

    private static GaugePressure Burst(EndJoint joint) => Part(Samples.Trainer
        with { ForwardEnd = Samples.Trainer.ForwardEnd with { Joints = [joint] } }, "forward end, " + joint.Name);

    private static GaugePressure Part(PressureVessel vessel, string name) => vessel.Burst().Parts.Single(p => p.Name == name).Burst;

    // Volkersen: past a few times 1/ω more overlap adds nothing. Measured the same way on CFRP-steel laps (Adv. Mater. Sci. Eng. 2018,
    // 5810180: load rises by 6 to 7 MPa of added area, far below the 20 to 30 MPa of a short lap).
    [Fact]
    public void Twice_the_overlap_is_not_twice_the_strength()
    {
        var single = Burst(new BondedPlug(Epoxy, 25.Millimetres(), BondSurface.AbradedPlastic, BondSurface.AbradedMetal));
        var twice = Burst(new BondedPlug(Epoxy, 50.Millimetres(), BondSurface.AbradedPlastic, BondSurface.AbradedMetal));
        Assert.InRange(twice / single, 1, 1.3);
    }

    [Fact]
    public void The_weaker_surface_governs()
    {
        var plug = new BondedPlug(Epoxy, 30.Millimetres(), BondSurface.AbradedPlastic, BondSurface.TreatedMetal);
        Assert.Equal(Epoxy.OnAbradedPlastic.Value, plug.CouponStrength.Value);
        Assert.Equal("shear at the end of the bond on abraded plastic", plug.Cause());
    }

    // Lap shear on machined aluminium reaches 24.6 to 28 MPa at best (OKU J. 2023, 1183795): a default for hand-abraded metal lies below.
    [Fact]
    public void Default_bond_strengths_lie_below_the_best_measured()
    {
        foreach (var adhesive in Samples.Stock.AllOf<Adhesive>())
        {
            Assert.True(adhesive.OnAbradedMetal.Value <= 25.Megapascals());
            Assert.True(adhesive.OnAbradedPlastic.Value <= 8.Megapascals());
        }
    }

    [Fact]
    public void Mean_shear_is_thrust_over_bonded_area()
    {
        var plug = new BondedPlug(Epoxy, 40.Millimetres(), BondSurface.AbradedLaminate, BondSurface.AbradedMetal);
        Tolerance.Relative(3.750, plug.MeanShear(60.BarGauge(), 100.Millimetres()).Megapascals, 1e-12);
    }

    [Fact]
    public void A_boss_strips_by_hand()
    {
        // 0.5 × π × 60 × 12 mm² × 0.577 × 240 MPa over π/4 × 66² mm².
        var boss = new ThreadedBoss(Samples.Stock.Solid("aluminium 6061-T6"), 60.Millimetres(), 12.Millimetres());
        Tolerance.Relative(0.5 * Math.PI * 60 * 12 * 0.577 * 240 / (Math.PI / 4 * 66 * 66), Burst(boss).Pascals / 1e6, 1e-9);
        // Length past a diameter isn't counted.
        Assert.Equal(Burst(boss with { Engagement = 60.Millimetres() }).Bar, Burst(boss with { Engagement = 90.Millimetres() }).Bar, 9);
    }

    [Fact]
    public void A_carried_sleeve_holds_the_axial_netting_of_the_sleeves_alone()
    {
        var burst = Samples.Trainer.Burst();
        var ply = burst.Layup.Plies[0];
        var fibre = Samples.Stock.Fibre("carbon T700 class");
        var solid = ply.Thickness.Meters * ply.FibreFraction.DecimalFractions;
        var c = Math.Cos(ply.Angle!.Value.Radians);
        var radius = (ply.InnerDiameter + ply.Thickness).Meters / 2;
        var expected = 2 * 0.6 * fibre.TensileStrength.Value.Pascals * solid * c * c / radius * 0.85;
        Tolerance.Relative(expected, Part(Samples.Trainer, "forward end, sleeve carried over").Pascals, 1e-9);
        // A cloth over it doesn't reach the end.
        var cloth = Samples.Trainer with { Plies = [Samples.Trainer.Plies[0], new ClothWrap(Samples.Stock.Cloth("carbon twill 200 g"))] };
        Assert.True(Part(cloth, "forward end, sleeve carried over") <= Part(Samples.Trainer, "forward end, sleeve carried over"));
    }

    // Simply supported plate, σ = 3(3 + ν)/8·p·r²/t² (Timoshenko and Woinowsky-Krieger, §16); a central hole
    // with its fitting on the edge takes it to 3p/(4t²)·((3 + ν)a² + (1 − ν)b²) (§17).
    [Fact]
    public void Flat_closures_by_hand()
    {
        var plate = new FlatClosure(Samples.Stock.Solid("aluminium 6061-T6"), 8.Millimetres());
        var expected = 240.0 * 8 / (3 * 3.33) * (8.0 / 33) * (8.0 / 33);
        Tolerance.Relative(expected, plate.YieldPressure(66.Millimetres()).Pascals / 1e6, 1e-9);
        Tolerance.Relative(240 * 4.0 * 8 * 8 / 3 / (3.33 * 33 * 33 + 0.67 * 10 * 10),
            (plate with { Opening = 20.Millimetres() }).YieldPressure(66.Millimetres()).Pascals / 1e6, 1e-9);
    }

    [Fact]
    public void Domes_hold_volume_and_mass_by_geometry()
    {
        var aluminium = Samples.Stock.Solid("aluminium 6061-T6");
        var hemisphere = DomedClosure.Hemisphere(aluminium, 2.Millimetres(), 60.Millimetres());
        Tolerance.Relative(2.0 / 3 * Math.PI * 27, hemisphere.VolumeInside(60.Millimetres()).CubicCentimeters, 1e-12);
        Tolerance.Relative(2.0 / 3 * Math.PI * (32.0 * 32 * 32 - 30.0 * 30 * 30), hemisphere.Solid(60.Millimetres()).CubicMillimeters,
            1e-9);
        Tolerance.Relative(Math.PI / 2 * 30, hemisphere.Meridian(60.Millimetres()).Millimeters, 1e-9);
        // p·r/(2t) everywhere in a sphere.
        Tolerance.Relative(240 * 2 * 2 / 31.0, hemisphere.YieldPressure(60.Millimetres()).Pascals / 1e6, 1e-9);
    }

    [Fact]
    public void An_end_without_a_joint_and_a_dome_too_flat_are_refused()
    {
        var open = Samples.Trainer with { ForwardEnd = new VesselEnd(DomedClosure.Ellipsoid(Samples.Stock.Solid("aluminium 6061-T6"),
            2.Millimetres(), 30.Millimetres())) };
        var error = Assert.Throws<InvalidDesignException>(() => open.Burst());
        Assert.Contains("Forward end: No joint holds the closure in", error.Message, StringComparison.Ordinal);
        Assert.Contains("Forward end: depth of the dome", error.Message, StringComparison.Ordinal);
    }
}

using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Ends;
using NotebookKit.Vessels.Laminates;
using UnitsNet;

namespace NotebookKit.Tests.Vessels.Design;

public class PressureVesselTests
{
    private static readonly PressureVessel Vessel = Samples.Trainer;

    [Fact]
    public void The_sample_is_valid_and_every_verb_answers()
    {
        Assert.DoesNotContain(Vessel.Validate(), f => f.Severity == FindingSeverity.Error);
        IResult[] results = [Vessel.Layup(), Vessel.Burst(), Vessel.Expansion(20.BarGauge()), Vessel.Rate()];
        Assert.All(results, r =>
        {
            Assert.Equal(ResultStatus.Completed, r.Status);
            Assert.NotEmpty(r.Lines);
            Assert.NotEmpty(r.Cautions);
            Assert.NotEmpty(r.Working.Steps);
            Assert.NotEmpty(r.Model.Assumptions);
            Assert.NotEmpty(r.Model.Sources);
            Assert.All(r.Lines, l => Assert.DoesNotContain("NaN", l.Value, StringComparison.Ordinal));
        });
    }

    [Fact]
    public void First_crack_and_burst_are_two_answers()
    {
        var burst = Vessel.Burst();
        Assert.True(burst.FirstPlyFailure < burst.WallBurst);
        Assert.Equal(FailureMode.Matrix, burst.Steps[0].Mode);
        Assert.Equal(FailureMode.FibreTension, burst.WallMode);
    }

    [Fact]
    public void The_weakest_part_bursts_the_vessel_and_is_named()
    {
        var burst = Vessel.Burst();
        Assert.Equal(burst.Parts.Min(p => p.Burst.Bar), burst.Burst.Bar, 12);
        Assert.Contains(burst.WeakestPart.Name, burst.Lines[0].Note, StringComparison.Ordinal);
        var glued = Vessel with
        {
            ForwardEnd = Vessel.ForwardEnd with
            {
                Joints = [new BondedPlug(Samples.Stock.Adhesive("structural epoxy"), 40.Millimetres(), BondSurface.AbradedPlastic,
                    BondSurface.AbradedMetal)],
            },
        };
        Assert.Equal("forward end, bonded plug", glued.Burst().WeakestPart.Name);
        Assert.Contains(glued.Burst().Findings, f => f.Message.Contains("more plies won't help", StringComparison.Ordinal));
    }

    [Fact]
    public void A_sleeve_off_its_balance_angle_is_a_band_and_is_rated_on_its_low_end()
    {
        var burst = Vessel.Burst();
        Assert.True(burst.IsMatrixDominated);
        Assert.True(burst.WallLow < burst.WallBurst);
        Assert.Equal(burst.Netting.Bar, burst.WallLow.Bar, 12);
        Assert.Contains(burst.Findings, f => f.Message.StartsWith("Matrix-dominated, wide band", StringComparison.Ordinal));
        Assert.InRange(burst.Turned[0].AtBurst.Degrees, burst.Turned[0].Laid.Degrees, 54.7356);
    }

    [Fact]
    public void What_is_rated_on_rises_with_the_efficiency_without_a_step()
    {
        // A wall that barely cracks its resin before it bursts must not be rated above a better made one.
        var before = 0.0;
        for (var percent = 21; percent <= 109; percent++)
        {
            var low = (Vessel with
            {
                Fabrication = Vessel.Fabrication with { EfficiencyLow = 20.Percent(), Efficiency = percent.Percent(),
                    EfficiencyHigh = 110.Percent() },
            }).Burst().WallLow.Bar;
            Assert.True(low > before, $"{low} bar at {percent} %");
            if (before > 0) Assert.True(low < before + 3, $"step to {low} bar at {percent} %");
            before = low;
        }
    }

    [Fact]
    public void A_cloth_along_and_around_holds_the_sleeve_in_place()
    {
        var wrapped = Vessel with { Plies = [Vessel.Plies[0], new ClothWrap(Samples.Stock.Cloth("carbon twill 200 g"), Turns: 2),
            Vessel.Plies[1]] };
        Assert.False(wrapped.Burst().IsMatrixDominated);
        Assert.True(wrapped.Burst().WallLow > Vessel.Burst().WallLow);
    }

    [Fact]
    public void A_second_layer_of_hoop_wrap_adds_nothing_once_the_axis_limits()
    {
        GaugePressure Low(int layers) => (Vessel with { Plies = [Vessel.Plies[0],
            new HoopWrap(Samples.Stock.Cloth("carbon tape 150 g"), layers)] }).Burst().WallLow;
        Assert.True(Low(1) > 1.4 * Vessel.Burst().WallLow);
        Tolerance.Relative(Low(1).Bar, Low(2).Bar, 0.02);
    }

    // A tape holds around, the sleeve alone holds along; a thick plastic tube takes up to half of the pull along and would double the
    // burst.
    [Fact]
    public void A_plastic_liner_carries_nothing_of_what_a_vessel_is_rated_on()
    {
        var thick = Vessel with
        {
            Liner = Vessel.Liner with { Wall = 3.Millimetres() },
            Plies = [new BraidedSleeve(Samples.Stock.Braid("carbon sleeve 65 mm light")),
                new HoopWrap(Samples.Stock.Cloth("carbon tape 150 g"))],
        };
        var burst = thick.Burst();
        var alone = (thick with { Fabrication = thick.Fabrication with { CountsLiner = false } }).Burst();
        Assert.True(burst.WallBurst.Bar > 1.8 * alone.WallBurst.Bar);
        Assert.Equal(alone.WallLow.Bar, burst.WallLow.Bar, 9);
        Assert.True(burst.LinerShare.Percent > 25);
        Assert.Contains(burst.Findings, f => f.Severity == FindingSeverity.Warning
            && f.Message.Contains("The liner carries", StringComparison.Ordinal));
    }

    [Fact]
    public void A_metal_liner_is_counted()
    {
        var metal = Vessel with { Liner = new Liner(Samples.Stock.Solid("aluminium 6061-T6"), 66.Millimetres(), 1.5.Millimetres()),
            Plies = [Vessel.Plies[0], new HoopWrap(Samples.Stock.Cloth("carbon tape 150 g"))] };
        var burst = metal.Burst();
        var bare = (metal with { Fabrication = metal.Fabrication with { CountsLiner = false } }).Burst();
        // 1.5 mm at 240 MPa hold 360 N/mm each way and more: over 80 bar on this radius.
        Assert.True(burst.WallLow.Bar > bare.WallLow.Bar + 80);
        Assert.True(burst.WallLow <= burst.WallBurst);
    }

    // Bond line 2 mm, overlap 5 mm: the shear is nearly even, and Volkersen's peak alone would let the joint carry twice what the coupon
    // did.
    [Fact]
    public void A_short_thick_bond_carries_no_more_than_the_coupon_in_the_mean()
    {
        var plug = new BondedPlug(Samples.Stock.Adhesive("structural epoxy"), 5.Millimetres(), BondSurface.AbradedLaminate,
            BondSurface.AbradedMetal) { BondLine = 2.Millimetres() };
        var glued = Vessel with { ForwardEnd = Vessel.ForwardEnd with { Joints = [plug] } };
        var part = Assert.Single(glued.Burst().Parts, p => p.Name == "forward end, bonded plug");
        var shear = GaugePressure.FromPascals(PlugStrength.ShearPascals(plug, 0.066, 50e6, 207e6));
        Tolerance.Relative(plug.CouponStrength.Value.Megapascals, plug.MeanShear(shear, 66.Millimetres()).Megapascals, 1e-9);
        // The wall growing past the plug takes a share of that.
        Assert.InRange(part.Burst / shear, 0.7, 1);
    }

    [Fact]
    public void A_second_sleeve_sees_the_first_ones_outer_diameter()
    {
        var sleeve = new BraidedSleeve(Samples.Stock.Braid("carbon sleeve 65 mm light"));
        var layup = (Vessel with { Plies = [sleeve, sleeve] }).Layup();
        Assert.Equal(layup.Plies[0].OuterDiameter.Millimeters, layup.Plies[1].InnerDiameter.Millimeters, 12);
        Assert.True(layup.Plies[1].Angle!.Value > layup.Plies[0].Angle!.Value);
    }

    [Fact]
    public void Masses_add_up()
    {
        var layup = Vessel.Layup();
        Tolerance.Relative(layup.Mass.Grams, layup.FibreMass.Grams + layup.ResinMass.Grams + layup.LinerMass.Grams + layup.EndsMass.Grams,
            1e-12);
        // A sleeve's fibre is what was cut of it: length at the nominal diameter times its weight a length there.
        var ply = layup.Plies[0];
        var braid = ((BraidedSleeve)ply.Ply).Braid;
        var weight = braid.Carriers * braid.Yarn.Value.GramsPerMeter / Math.Cos(braid.NominalAngle.Radians);
        Tolerance.Relative(ply.CutLength.Meters * weight, ply.FibreMass.Grams, 1e-12);
        // Laminate cross-section by volume: fibre and resin over their densities fill the ring.
        var ring = Math.PI / 4 * (Math.Pow(ply.OuterDiameter.Meters, 2) - Math.Pow(ply.InnerDiameter.Meters, 2));
        var perLength = braid.Carriers * braid.Yarn.Value.KilogramsPerMeter / Math.Cos(ply.Angle!.Value.Radians);
        Tolerance.Relative(perLength / braid.Fibre.Density.Value.KilogramsPerCubicMeter / ply.FibreFraction.DecimalFractions, ring, 1e-10);
    }

    [Fact]
    public void The_chamber_takes_volume_bore_and_working_pressure()
    {
        var rating = Vessel.Rate();
        var chamber = Vessel.ToChamber(rating);
        Assert.Equal(rating.WorkingPressure, chamber.RatedPressure);
        Assert.Equal(66, chamber.Bore.Millimeters, 9);
        // 450 mm of 66 mm bore, and a 2:1 ellipsoid, π·D³/24.
        Tolerance.Relative(Math.PI / 4 * 0.66 * 0.66 * 4.5 + Math.PI * 0.66 * 0.66 * 0.66 / 24, chamber.Volume.Liters, 1e-12);
    }

    [Fact]
    public void All_that_is_wrong_is_said_at_once()
    {
        var wrong = Vessel with
        {
            Length = (-450).Millimetres(),
            Liner = Vessel.Liner with { Wall = (-1.5).Millimetres() },
            Fabrication = Vessel.Fabrication with { FibreFraction = 80.Percent() },
        };
        var error = Assert.Throws<InvalidDesignException>(() => wrong.Burst());
        Assert.Equal(3, error.Findings.Count(f => f.Severity == FindingSeverity.Error));
        Assert.Contains("straight length is", error.Message, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("liner wall is", error.Message, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("above 78.5 % round fibres have no room", error.Message, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void A_body_too_wide_for_the_sleeve_is_an_error_with_the_range()
    {
        var wide = Vessel with { Liner = Vessel.Liner with { Bore = 95.Millimetres() } };
        var error = Assert.Throws<InvalidDesignException>(() => wide.Layup());
        Assert.Contains("Diameter under carbon sleeve 65 mm heavy is 98", error.Message, StringComparison.Ordinal);
        Assert.Contains("below 91.9", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_jammed_sleeve_is_a_warning_with_the_range()
    {
        var wide = Vessel with { Liner = Vessel.Liner with { Bore = 81.Millimetres() } };
        var warning = Assert.Single(wide.Layup().Findings, f => f.Message.Contains("is jammed at", StringComparison.Ordinal));
        Assert.Equal(FindingSeverity.Warning, warning.Severity);
        Assert.Contains("It lies free on", warning.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_user_s_value_shows_in_every_result_that_uses_it()
    {
        var resin = Vessel.Resin with { TensileStrength = Property.Measured(66.Megapascals(), 0.1, "dog bones, March") };
        var mine = Vessel with { Resin = resin };
        foreach (var result in new IResult[] { mine.Layup(), mine.Burst(), mine.Rate(), mine.Expansion(10.BarGauge()),
            mine.SampleBursts(200) })
            Assert.Contains(result.Findings, f => f.Message.Contains("dog bones, March", StringComparison.Ordinal));
    }

    [Fact]
    public void A_vessel_without_a_liner_weeps_at_its_first_crack()
    {
        var bare = Vessel with { Liner = Liner.Removed(69.Millimetres()) };
        Assert.Contains(bare.Burst().Findings, f => f.Message.Contains("expect it to weep from", StringComparison.Ordinal));
    }

    [Fact]
    public void Nan_never_becomes_a_length() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => double.NaN.Millimetres());

    [Fact]
    public void A_bonded_plug_says_what_its_shear_lag_leaves_out()
    {
        var plug = new BondedPlug(Samples.Stock.Adhesive("structural epoxy"), 40.Millimetres(), BondSurface.AbradedPlastic,
            BondSurface.AbradedMetal);
        var glued = Samples.Trainer with { ForwardEnd = Samples.Trainer.ForwardEnd with { Joints = [plug] } };
        var finding = Assert.Single(glued.Burst().Findings, f => f.Message.Contains("peel", StringComparison.Ordinal));
        Assert.Equal(FindingSeverity.Warning, finding.Severity);
        Assert.Contains("liner to the plies", finding.Message, StringComparison.Ordinal);
        Assert.DoesNotContain(Samples.Trainer.Burst().Findings, f => f.Message.Contains("peel", StringComparison.Ordinal));
    }

    [Fact]
    public void A_sleeve_over_the_sharp_edge_of_a_flat_closure_is_warned_of_and_over_a_dome_not()
    {
        var findings = Samples.Trainer.Validate().Where(f => f.Message.Contains("sharp edge", StringComparison.Ordinal)).ToList();
        var flat = Assert.Single(findings);
        Assert.StartsWith("Nozzle end", flat.Message, StringComparison.Ordinal);
        Assert.Equal(FindingSeverity.Warning, flat.Severity);
        Assert.Contains("85 %", flat.Message, StringComparison.Ordinal);
        Assert.Contains("has no source", flat.Message, StringComparison.Ordinal);
    }

    // Fibre of 2000 MPa at 60 % in a 1275 g/m² one-way cloth of 2.55 g/cm³, wound around: 0.5 mm × 1200 MPa = 600 N/mm, over resin of 45
    // MPa 13.3 mm, three times that 40 mm.
    [Theory]
    [InlineData(12, true, true)]
    [InlineData(25, true, false)]
    [InlineData(41, false, false)]
    public void An_overlap_too_short_for_the_hoop_pull_of_its_cloth_is_warned_of(double millimetres, bool warned, bool letsGo)
    {
        static Property<T> Given<T>(T value) where T : struct, IComparable<T> => Property.Typical(value, 0, "test");
        var glass = Samples.Stock.Fibre("E-glass") with { Density = Given(2550.KilogramsPerCubicMetre()),
            TensileStrength = Given(2000.Megapascals()) };
        var cloth = new Cloth("heavy cloth", glass, Given(AreaDensity.FromGramsPerSquareMeter(1275)), 100.Percent(), 1.Metres());
        var vessel = Samples.Trainer with { Plies = [.. Samples.Trainer.Plies,
            new ClothWrap(cloth, 1, ClothLay.WarpAround) { Overlap = millimetres.Millimetres() }] };
        var finding = vessel.Layup().Findings.SingleOrDefault(f => f.Message.Contains("hoop pull", StringComparison.Ordinal));
        Assert.Equal(warned, finding is not null);
        if (finding is null) return;
        Assert.Contains("600 N/mm", finding.Message, StringComparison.Ordinal);
        Assert.Contains("Lap 40 mm", finding.Message, StringComparison.Ordinal);
        Assert.Equal(letsGo, finding.Message.Contains("before the cloth does", StringComparison.Ordinal));
    }
}

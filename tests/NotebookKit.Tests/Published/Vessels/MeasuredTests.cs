using NotebookKit.Quantities;
using NotebookKit.Provenance;
using NotebookKit.Tests.Vessels;
using NotebookKit.Vessels.Laminates;
using NotebookKit.Vessels.Shells;
using UnitsNet;

namespace NotebookKit.Tests.Published.Vessels;

/// <summary>
/// Measured and exercise figures. The laminate results of the failure exercise are remembered, not read: what gates here is the model
/// against an independent computation with the exercise's lamina, and the ordering; the remembered measurements are reported only.
/// </summary>
public class MeasuredTests(Xunit.Abstractions.ITestOutputHelper output)
{
    private const string Exercise = "Soden, Hinton and Kaddour, Compos. Sci. Technol. 58, 1998 (lamina data); independent "
        + "laminate computation";

    [Theory]
    [PublishedCase("M05", Exercise)]
    [PublishedCase("M06", Exercise)]
    [PublishedCase("M07", Exercise)]
    [PublishedCase("M08", Exercise)]
    [PublishedCase("M09", Exercise)]
    // id, angle, hoop, axial, first crack by maximum stress and by Tsai-Wu, fibre limit with 1 % of the resin, remembered measurement
    [InlineData("M05", 55, 2, 1, 112, 119, 858, 736)]
    [InlineData("M06", 55, 1, 0, 198, 186, 1019, 595)]
    [InlineData("M07", 55, 3, 1, 156, 150, 906, 0)]
    [InlineData("M08", 45, 1, 1, 68, 73, 642, 502)]
    [InlineData("M09", 45, 2, 1, 91, 90, 856, 0)]
    public void Glass_tubes(string id, double degrees, double hoop, double axial, double crack, double crackTsaiWu, double last,
        double remembered)
    {
        var tube = Cases.Tube(Cases.My750, Cases.My750Strength, (degrees, 1));
        var failure = tube.Fail(hoop, axial);
        Tolerance.Absolute(crack, failure.FirstPlyFailure.Megapascals, 0.5);
        Tolerance.Absolute(crackTsaiWu, tube.Fail(hoop, axial, FailureCriterion.TsaiWu).FirstPlyFailure.Megapascals, 0.6);
        Tolerance.Absolute(last, failure.Last.Megapascals, 0.6);
        Assert.True(failure.FirstPlyFailure < failure.Last);
        output.WriteLine($"{id}: last {failure.Last.Megapascals:F0} MPa, remembered "
            + $"{(remembered > 0 ? $"{remembered} MPa, ratio {remembered / failure.Last.Megapascals:F2}" : "none")}, matrix-dominated "
            + $"{failure.IsMatrixDominated}");
    }

    [Theory]
    [PublishedCase("M10", Exercise)]
    [PublishedCase("M11", Exercise)]
    [PublishedCase("M12", Exercise)]
    [InlineData("M10", 0, 1, 78, 77, 642, 609)]
    [InlineData("M11", 2, 1, 242, 254, 781, 857)]
    // The independent computation gives 651 for M12 with every ply cracked from the start; here plies crack in turn and one family fails in
    // compression.
    [InlineData("M12", 1, 0, 241, 227, 651, 718)]
    public void Laminates(string id, double hoop, double axial, double crack, double crackTsaiWu, double last, double remembered)
    {
        var tube = id == "M10"
            ? Cases.Tube(Cases.My750, Cases.My750Strength, (0, 0.5), (90, 0.5))
            : Cases.Tube(Cases.As4, Cases.As4Strength, (0, 0.25), (45, 0.5), (90, 0.25));
        var failure = tube.Fail(hoop, axial);
        Tolerance.Absolute(crack, failure.FirstPlyFailure.Megapascals, 0.6);
        Tolerance.Absolute(crackTsaiWu, tube.Fail(hoop, axial, FailureCriterion.TsaiWu).FirstPlyFailure.Megapascals, 0.6);
        Tolerance.Relative(last, failure.Last.Megapascals, 3e-3);
        Assert.True(failure.FirstPlyFailure < failure.Last);
        output.WriteLine($"{id}: last {failure.Last.Megapascals:F0} MPa, remembered {remembered} MPa, ratio "
            + $"{remembered / failure.Last.Megapascals:F2}");
    }

    // Off the balance of its load a linear model is no prediction: it has to say so (M06, M07, M09), and not where it is balanced (M05,
    // M08).
    [Fact]
    [PublishedCase("M06", "failure exercise part B, Compos. Sci. Technol. 62, 2002: largest errors on ±55° and ±45° glass tubes off "
        + "their balance")]
    public void Off_balance_tubes_are_flagged_and_balanced_ones_are_not()
    {
        var at55 = Cases.Tube(Cases.My750, Cases.My750Strength, (55, 1));
        var at45 = Cases.Tube(Cases.My750, Cases.My750Strength, (45, 1));
        Assert.True(at55.Fail(1, 0).IsMatrixDominated);
        Assert.True(at55.Fail(3, 1).IsMatrixDominated);
        Assert.True(at45.Burst().IsMatrixDominated);
        Assert.False(at55.Burst().IsMatrixDominated);
        Assert.False(at45.Fail(1, 1).IsMatrixDominated);
    }

    [Theory]
    [PublishedCase("M36", "independent laminate computation with the lamina of Soden, Hinton and Kaddour 1998")]
    [InlineData(false, 55, 15.40, 23.46, 12.67, 0.580)]
    [InlineData(false, 45, 17.66, 17.66, 13.57, 0.515)]
    [InlineData(true, 0, 51.06, 51.06, 19.77, 0.292)]
    public void Tube_elasticity(bool quasi, double degrees, double axial, double hoop, double shear, double hoopPoisson)
    {
        var tube = quasi
            ? Cases.Tube(Cases.As4, Cases.As4Strength, (0, 0.25), (45, 0.5), (90, 0.25))
            : Cases.Tube(Cases.My750, Cases.My750Strength, (degrees, 1));
        var constants = tube.Constants();
        Tolerance.Relative(axial, constants.Axial.Gigapascals, 1e-3);
        Tolerance.Relative(hoop, constants.Hoop.Gigapascals, 1e-3);
        Tolerance.Relative(shear, constants.Shear.Gigapascals, 1e-3);
        Tolerance.Relative(hoopPoisson, constants.HoopPoissonRatio, 2e-3);
    }

    [Fact]
    [PublishedCase("M36", "independent laminate computation: ±55° MY750 at 100 MPa around and 50 along")]
    public void Growth_of_a_glass_tube()
    {
        var strain = Cases.Tube(Cases.My750, Cases.My750Strength, (55, 1)).Expand(GaugePressure.FromPascals(100e6 * 1 / 50.0));
        Tolerance.Absolute(0.303, strain.Hoop.Percent, 5e-4);
        Tolerance.Absolute(0.077, strain.Axial.Percent, 6e-4);
        Tolerance.Absolute(0.68, strain.Volume.Percent, 5e-3);
    }

    // Rule of mixtures against measured laminae. Tolerance 6 %: the fibres' own modulus is known no better, and 20 % across (method
    // dependent).
    [Theory]
    [PublishedCase("M03", "Soden, Hinton and Kaddour, Compos. Sci. Technol. 58, 1998: lamina and constituents")]
    [InlineData(74, 3.35, 60, 45.6)]
    [InlineData(80, 3.35, 62, 53.48)]
    public void Measured_modulus_along_the_fibres(double fibre, double resin, double percent, double measured) =>
        Tolerance.Relative(measured, MicromechanicsFormulas.Mixtures(fibre, resin, percent / 100), 0.06);

    // NOL ring 4.10e6 in and 3.26e6 in of specific strength against 0.806e6 and 0.632e6 in of vessel performance: netting ideal is a third
    // of the ring. Tolerance 15 % on the delivered share of 0.58, as two fibres agree within 2 %; the ideal must be 1.5 to 1.8 times too
    // high.
    [Theory]
    [PublishedCase("M14", "Boeing, NTRS 19720027075, 1971: ring and small-vessel performance of PRD-49-1 and S-glass")]
    [InlineData(4.10e6, 806_000)]
    [InlineData(3.26e6, 632_000)]
    public void Small_vessels_deliver_the_default_efficiency(double ringInches, double vesselInches)
    {
        // The library's netting on fibre of that specific strength: p π R² over ρ 2π R t, in inches of its own weight, at any pressure and
        // radius.
        const double density = 1500, gravity = 9.80665;
        var strength = GaugePressure.FromPascals(ringInches * 0.0254 * density * gravity).AsDifference();
        var wall = Netting.FibreThickness(200.BarGauge(), 100.Millimetres(), strength);
        var ideal = 200.BarGauge().Pascals * 0.1 / (2 * density * wall.Meters) / gravity / 0.0254;
        Assert.InRange(ideal / vesselInches, 1.5, 1.8);
        Tolerance.Relative(vesselInches, ideal * Fabrication.HandLaid.Efficiency.DecimalFractions, 0.15);
    }

    [Fact]
    [PublishedCase("M24", "University of the Bundeswehr Munich, abstract: carbon rings 1430 to 1800 MPa against flat coupons 2100 MPa")]
    [PublishedCase("M04", "Soden, Hinton and Kaddour 1998: lamina strength over fibre strength 0.855 (LY556) to 0.99 (MY750)")]
    public void Efficiency_is_an_input_takes_the_measured_range_and_is_low_by_default()
    {
        double[] measured = [1430.0 / 2100, 1800.0 / 2100, 0.855, 0.99];
        foreach (var share in measured)
            Assert.DoesNotContain((Fabrication.HandLaid with { Efficiency = (100 * share).Percent(),
                EfficiencyHigh = 110.Percent() }).Validate(), f => f.Severity == FindingSeverity.Error);
        Assert.True(Fabrication.HandLaid.Efficiency.DecimalFractions < measured.Min());
        Assert.Contains((Fabrication.HandLaid with { Efficiency = 130.Percent() }).Validate(), f => f.Severity == FindingSeverity.Error);
    }

    // 834 000 in of p V/W are printed as 210 J/g: 207.7 J/g exactly, the source rounds by 1 %. The library's netting sphere isn't there; a
    // closed cylinder of the fibre (3.62 GPa, 1.45 g/cm³, unverified) delivers a third of its specific strength, 832 J/g, and the vessel a
    // quarter of that: an upper bound only.
    [Fact]
    [PublishedCase("M16", "SCI, ADA307616, 1976: Kevlar 49 over cryoformed steel, 61 cm, 834 000 in = 210 J/g at burst")]
    public void Performance_in_inches_and_in_joules_a_gram()
    {
        var joules = SpecificEnergy.FromJoulesPerKilogram(Length.FromInches(834_000).Meters * 9.80665);
        Tolerance.Relative(210, joules.KilojoulesPerKilogram, 0.015);
        var wall = Netting.FibreThickness(200.BarGauge(), 100.Millimetres(), 3620.Megapascals());
        Assert.True(200.BarGauge().Pascals * 0.1 / (2 * 1450 * wall.Meters) > joules.JoulesPerKilogram);
    }

    // No wall, layup or bosses are published: 13.8 to 17.2 MPa in 1.9 L make 131 to 164 kJ/kg of whole tank. What a bare wall delivers
    // here, without ends, is an
    // upper bound of that; the ratio is reported.
    [Fact]
    [PublishedCase("M17", "trade report of a linerless T700/epoxy tank, 2014: 152 mm, 1.9 L, 0.20 kg, burst 13.8 to 17.2 MPa")]
    public void A_bare_wall_is_an_upper_bound_of_a_small_linerless_tank()
    {
        var fibre = MaterialLibrary.Typical.Fibre("carbon T700 class")
            with { TensileStrength = Property.Typical(4900.Megapascals(), 0, "T700 class") };
        var strong = Samples.Trainer.Burst();
        var share = strong.Layup.FibreMass / (strong.Layup.FibreMass + strong.Layup.ResinMass);
        var stress = fibre.TensileStrength.Value * Fabrication.HandLaid.Efficiency.DecimalFractions;
        var wall = Netting.FibreThickness(150.BarGauge(), 76.Millimetres(), stress);
        var performance = 150.BarGauge().Pascals * 0.076 / (2 * fibre.Density.Value.KilogramsPerCubicMeter * wall.Meters) * share / 1000;
        output.WriteLine($"M17: {performance:F0} kJ/kg of wall against 131 to 164 of a whole tank, {performance / 164:F2} to "
            + $"{performance / 131:F2} times");
        Assert.True(performance > 164);
        Assert.True(performance < 164 * 3);
    }

    [Fact]
    [PublishedCase("M18", "abstract of a thermoplastic-tape vessel: it burst in the dome at 1586 bar, so a prediction has to say where")]
    public void A_prediction_says_where_it_bursts()
    {
        var burst = Samples.Trainer.Burst();
        var thin = (Samples.Trainer with { ForwardEnd = Samples.Trainer.ForwardEnd
            with { Closure = DomedClosure.Ellipsoid(Samples.Stock.Solid("aluminium 6061-T6"), 0.2.Millimetres(),
            66.Millimetres()) } }).Burst();
        Assert.Equal("forward end, domed closure", thin.WeakestPart.Name);
        Assert.NotEqual(thin.WeakestPart.Name, burst.WeakestPart.Name);
        Assert.Contains(thin.WeakestPart.Name, thin.Lines[0].Note, StringComparison.Ordinal);
    }

    [Fact]
    [PublishedCase("M29", "LLNL, ADA306039: graphite strand 3570 MPa, 206 GPa, 1.7 %")]
    public void Strain_of_a_strand_at_its_strength()
    {
        var strand = MaterialLibrary.Typical.Fibre("carbon T700 class") with
        {
            TensileStrength = Property.Typical(3570.Megapascals(), 0, "strand"),
            LongitudinalModulus = Property.Typical(206.Gigapascals(), 0, "strand"),
        };
        Tolerance.Relative(1.7, strand.FailureStrain.Percent, 0.03);
    }

    // E1 2.0 %, along in tension 4.4 %: the library's fibres must scatter no less than a third below that. Across in tension 31 %: far more
    // than along, and it is the resin's.
    [Fact]
    [PublishedCase("M31", "Acta Mech. Autom. 2025, 0022: carbon/epoxy lamina, mean and SD; along 1277 ± 56 MPa, E1 103.0 ± 2.1 GPa, "
        + "across 31.5 ± 9.6 MPa")]
    public void Scatter_of_the_typical_materials()
    {
        var fibre = MaterialLibrary.Typical.Fibre("carbon T700 class");
        Assert.InRange(fibre.TensileStrength.Spread, 0.67 * 56 / 1277, 0.15);
        Assert.InRange(fibre.LongitudinalModulus.Spread, 0.5 * 2.1 / 103, 0.05);
        Assert.True(MaterialLibrary.Typical.Resin("laminating epoxy").TensileStrength.Spread > fibre.TensileStrength.Spread);
        // On the way that a rating goes: were every vessel made alike, bursts would scatter as the lamina does; made by hand they scatter
        // more.
        var alike = NotebookKit.Tests.Vessels.Samples.ShortChamber with
        {
            Liner = new Liner(NotebookKit.Tests.Vessels.Samples.Stock.Solid("PVC-U"), 54.Millimetres(), 1.5.Millimetres()),
            ForwardEnd = Samples.Trainer.ForwardEnd with { Closure = Samples.Trainer.ForwardEnd.Closure with { Wall = 4.Millimetres() } },
        };
        var handMade = alike.SampleBursts(4000).Spread;
        var spread = (alike with
        {
            Fabrication = alike.Fabrication with { EfficiencyLow = 60.Percent(), EfficiencyHigh = 60.Percent(), VesselSpread = 0,
                FibreFractionSpread = 0.Percent(), AngleSpread = 0.Degrees() },
        }).SampleBursts(4000).Spread;
        Assert.InRange(spread, 0.67 * 56 / 1277, 1.5 * 56 / 1277);
        Assert.True(handMade > spread);
        output.WriteLine($"M31: bursts {100 * spread:F1} % made alike, {100 * handMade:F1} % by hand");
        output.WriteLine($"M31: along {100 * fibre.TensileStrength.Spread:F1} % (4.4 measured), resin "
            + $"{100 * MaterialLibrary.Typical.Resin("laminating epoxy").TensileStrength.Spread:F0} % (31 across the ply)");
    }

    // The measured curve bends from 0.6 % on: a linear shear modulus must be shown to overshoot, 234 against 73 MPa at 4 %. That end of the
    // curve is the strain past which a wall is called matrix-dominated.
    [Fact]
    [PublishedCase("M01", "Soden, Hinton and Kaddour, Compos. Sci. Technol. 58, 1998, in-plane shear of E-glass/MY750, as digitised in a "
        + "NASA open repository")]
    public void A_linear_shear_modulus_overshoots_the_measured_curve()
    {
        (double Percent, double Megapascals)[] curve = [(0.1, 5.83), (0.3, 17.49), (0.6, 34.98), (1.0, 47.45), (2.0, 63.84), (4.0, 72.99)];
        foreach (var (percent, stress) in curve.Take(3)) Tolerance.Relative(stress, Cases.My750.Shear.Megapascals * percent / 100, 0.05);
        foreach (var (percent, stress) in curve.Skip(3)) Assert.True(Cases.My750.Shear.Megapascals * percent / 100 > 1.2 * stress);
        Tolerance.Absolute(234, Cases.My750.Shear.Megapascals * 0.04, 1);
        Tolerance.Absolute(curve[^1].Percent / 100, WallFailure.FollowableResinStrain, 1e-12);
    }

    [Fact]
    [PublishedCase("M02", "Soden, Hinton and Kaddour 1998, in-plane shear of AS4/3501-6: 10 MPa at 0.152 %")]
    public void Initial_shear_slope_is_the_shear_modulus() => Tolerance.Relative(Cases.As4.Shear.Megapascals, 10 / 0.00152, 0.05);

    // Resin had insignificant effect on the burst of well-made glass bottles. Tolerance 3 %: in netting the fibres carry all.
    [Fact]
    [PublishedCase("M20", "NRL Report 6161, 1964: glass-wound bottles with amine-cured epoxies")]
    public void Burst_in_balance_does_not_depend_on_the_strength_of_the_resin()
    {
        var vessel = NotebookKit.Tests.Vessels.Samples.ShortChamber with
        {
            // The 65 mm glass sleeve lies at balance on 75.06 mm.
            Liner = Liner.Removed(75.Millimetres()),
            // Its yarns have room on necks of 48.6 mm and more.
            NozzleEnd = NotebookKit.Tests.Vessels.Samples.Trainer.NozzleEnd,
            ForwardEnd = NotebookKit.Tests.Vessels.Samples.Trainer.NozzleEnd,
            Plies = [new BraidedSleeve(MaterialLibrary.Typical.Braid("glass sleeve 65 mm"))],
        };
        Assert.False(vessel.Burst().IsMatrixDominated);
        foreach (var factor in new[] { 0.5, 2.0 })
        {
            var resin = vessel.Resin with
            {
                TensileStrength = vessel.Resin.TensileStrength with { Value = vessel.Resin.TensileStrength.Value * factor },
                ShearStrength = vessel.Resin.ShearStrength with { Value = vessel.Resin.ShearStrength.Value * factor },
                CompressiveStrength = vessel.Resin.CompressiveStrength with { Value = vessel.Resin.CompressiveStrength.Value * factor },
            };
            Tolerance.Relative(vessel.Burst().WallBurst.Bar, (vessel with { Resin = resin }).Burst().WallBurst.Bar, 0.03);
        }
    }

    // Triaxial AS4 braids, [0 18k/±66.5 6k], 37.6 % axial: 556 MPa along. Laminate of 3501-6-class plies: the first 0° break times a braid
    // factor of 0.70 to 0.90. The coupon's fibre fraction isn't printed in the source; the lamina's 60 % is assumed, so 15 % is added
    // either way.
    [Fact]
    [PublishedCase("M25", "Cox and Flanagan, NASA CR-4750, 1997, Table 3.2: triaxial AS4/1895 braids; §3.4.2: 10 to 30 % below tape")]
    public void Triaxial_braid_along_its_axis()
    {
        var wall = Cases.Tube(Cases.As4, Cases.As4Strength, (0, 0.376), (66.5, 0.624));
        var strength = wall.Fail(0, 1).Last.Megapascals;
        output.WriteLine($"M25: laminate {strength:F0} MPa, measured 556, ratio {556 / strength:F2}");
        Assert.InRange(556 / strength, 0.70 * 0.85, 0.90 * 1.15);
    }
}

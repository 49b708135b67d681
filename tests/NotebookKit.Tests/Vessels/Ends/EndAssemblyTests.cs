using CsCheck;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Ends;
using NotebookKit.Vessels.Ends.Modes;
using UnitsNet;

namespace NotebookKit.Tests.Vessels.Ends;

public class EndAssemblyTests
{
    private static readonly IsotropicMaterial Aluminium = Samples.Stock.Solid("aluminium 6061-T6");
    private static readonly Adhesive Epoxy = Samples.Stock.Adhesive("structural epoxy");
    private static readonly BondedPlug Plug = new(Epoxy, 30.Millimetres(), BondSurface.AbradedPlastic, BondSurface.AbradedMetal);

    private static readonly DomedClosure Dome = DomedClosure.Hemisphere(Aluminium, 2.Millimetres(), 66.Millimetres());

    private static PressureVessel With(VesselEnd end) => Samples.Trainer with { ForwardEnd = end };

    private static GaugePressure Weakest(VesselEnd end) =>
        With(end).Burst().Parts.Where(p => p.Name.StartsWith("forward end", StringComparison.Ordinal)).MinBy(p => p.Burst.Pascals)!.Burst;

    private static string Errors(VesselEnd end) =>
        string.Join(" ", With(end).Validate().Where(f => f.Severity == FindingSeverity.Error).Select(f => f.Message));

    [Fact]
    public void A_wider_hole_holds_less_and_one_wider_than_half_the_bore_is_refused()
    {
        var rims = new[] { 6, 13, 20, 33 }.Select(d => With(new(Dome with { Opening = d.Millimetres() }, Samples.Tied)).Burst().Parts
            .Single(p => p.Name == "forward end, rim of the opening").Burst.Bar).ToList();
        Assert.Equal(rims.OrderDescending(), rims);
        Assert.True(rims[^1] < 0.6 * rims[0], string.Join(", ", rims));
        Assert.Contains("Opening in the domed closure is 60 mm in a bore of 66 mm; it must be 0 to 33 mm",
            Errors(new(Dome with { Opening = 60.Millimetres() }, Samples.Tied)), StringComparison.Ordinal);
    }

    [Fact]
    public void Ends_weaken_with_their_hole_and_gain_with_their_wall() => Gen.Select(Gen.Double[1, 12],
        Gen.Double[1, 32], Gen.Double[1.01, 2], Gen.Int[0, 2]).Sample((wall, hole, factor, shape) =>
    {
        var closure = shape switch
        {
            0 => (Closure)new FlatClosure(Aluminium, wall.Millimetres()),
            1 => DomedClosure.Hemisphere(Aluminium, (wall / 2).Millimetres(), 66.Millimetres()),
            _ => DomedClosure.Ellipsoid(Samples.Stock.Solid("polycarbonate"), (wall / 2).Millimetres(), 66.Millimetres()),
        };
        var end = new VesselEnd(closure with { Opening = hole.Millimetres() }, Samples.Tied);
        var wider = end with { Closure = end.Closure with { Opening = (hole + (33 - hole) / 2).Millimetres() } };
        var thicker = end with { Closure = end.Closure with { Wall = closure.Wall * factor } };
        return Weakest(wider).Pascals <= Weakest(end).Pascals * (1 + 1e-9)
            && Weakest(thicker).Pascals >= Weakest(end).Pascals * (1 - 1e-9);
    }, iter: 60);

    [Fact]
    public void A_sleeve_over_a_bonded_plug_never_weakens_it_nor_the_bond_the_sleeve() => Gen.Select(Gen.Double[5, 80], Gen.Double[0.1, 1],
        Gen.Double[30, 100]).Sample((overlap, line, share) =>
    {
        var plug = Plug with { Overlap = overlap.Millimetres(), BondLine = line.Millimetres() };
        var sleeve = Samples.Tied with { Delivers = share.Percent() };
        var both = Weakest(new(Dome, plug, sleeve)).Pascals * (1 + 1e-9);
        return both >= Weakest(new(Dome, plug)).Pascals && both >= Weakest(new(Dome, sleeve)).Pascals;
    }, iter: 100);

    // Two springs side by side: the bond takes 0.8 of the thrust. It lets go at 10/0.8 = 12.5, the sleeve then holds 50 alone. With a
    // sleeve of 2 the sleeve tears first, at 2/0.2 = 10, which the bond alone holds, too.
    [Fact]
    public void Bond_and_sleeve_share_by_stiffness()
    {
        Tolerance.Relative(0.8, SharedHold.BondShare(4, 1), 1e-12);
        Tolerance.Relative(12.5, SharedHold.BondLetsGo(10, 0.8), 1e-12);
        Tolerance.Relative(50, SharedHold.Pascals(10, 50, 0.8), 1e-12);
        Tolerance.Relative(10, SharedHold.Pascals(10, 2, 0.8), 1e-12);
        Tolerance.Relative(12, SharedHold.Pascals(10, 2.4, 0.8), 1e-12);
    }

    [Fact]
    public void A_bond_under_a_sleeve_leaks_first_and_the_sleeve_holds_on()
    {
        var burst = With(new(Dome, Plug, Samples.Tied)).Burst();
        var leak = Assert.Single(burst.Leaks);
        Assert.Equal("forward end, bonded plug", leak.Name);
        Assert.Equal(leak, burst.Leak);
        Assert.True(leak.Burst > With(new(Dome, Plug)).Burst().Parts.Single(p => p.Name == "forward end, bonded plug").Burst);
        Assert.DoesNotContain(burst.Parts, p => p.Name == leak.Name);
    }

    [Fact]
    public void Yield_leak_and_burst_are_three_answers_with_names_of_their_own()
    {
        var plate = new FlatClosure(Aluminium, 6.Millimetres()) { Opening = 22.Millimetres() };
        var end = new VesselEnd(plate, Plug, Plug with { Overlap = 40.Millimetres() })
        {
            Fitting = new ThreadedFitting(Aluminium, 24.Millimetres(), 3.Millimetres(), 6.Millimetres())
            {
                Seal = new Seal(SealKind.ORing) { HoldsTo = 30.BarGauge() },
            },
        };
        var burst = With(end).Burst();
        Assert.Equal(burst.Parts.Count, burst.Parts.Select(p => p.Name).Distinct().Count());
        Assert.Equal(burst.Burst, burst.Parts.MinBy(p => p.Burst.Pascals)!.Burst);
        Assert.Equal("forward end, fitting's O-ring", burst.Leak!.Name);
        Assert.Equal(30, burst.Leak.Burst.Bar, 9);
        Assert.Equal("forward end, flat closure", burst.Yield!.Name);
        Assert.True(burst.Yield.Burst < burst.Parts.Single(p => p.Name == "forward end, plate collapse").Burst);
        // A pressure that isn't given isn't assumed.
        Assert.Null(With(end with { Fitting = end.Fitting with { Seal = new Seal(SealKind.ORing) } }).Burst().Leak);
    }

    [Fact]
    public void A_proof_stays_below_first_yield_of_a_closure()
    {
        var soft = With(new(new FlatClosure(Aluminium, 4.Millimetres()), Samples.Tied));
        var rating = soft.Burst().Rate(RuleSets.All[0]);
        Assert.True(!rating.IsRated || rating.ProofPressure.Pascals <= 0.9 * soft.Burst().Yield!.Burst.Pascals * (1 + 1e-9));
    }

    // A plastic plate, a print or a laminate breaks where metal would only yield: 8σt²/(3(3 + ν)r²).
    [Fact]
    public void What_does_not_yield_breaks_at_first_yield()
    {
        var printed = Samples.Stock.Solid("printed PETG, across its layers");
        var plate = new FlatClosure(printed, 10.Millimetres());
        var burst = With(new(plate, Samples.Tied)).Burst();
        Tolerance.Relative(20 * 8 / (3 * 3.38) * (10.0 / 33) * (10.0 / 33),
            burst.Parts.Single(p => p.Name == "forward end, flat closure").Burst.Pascals / 1e6, 1e-9);
        Assert.DoesNotContain(burst.Yields, p => p.Name.StartsWith("forward", StringComparison.Ordinal));
    }

    // Around p·r/(t·cos α), half along; von Mises leaves √3/2 of it: 2·240·2·cos 15°/(√3·34).
    [Fact]
    public void A_cone_by_hand()
    {
        var cone = new ConicalClosure(Aluminium, 2.Millimetres(), 15.Degrees()) { Opening = 40.Millimetres() };
        Tolerance.Relative(2 * 240 * 2 * Math.Cos(Math.PI / 12) / (Math.Sqrt(3) * 34), cone.YieldPressure(66.Millimetres()).Pascals / 1e6,
            1e-9);
        Tolerance.Relative(13 / Math.Tan(Math.PI / 12), cone.DepthInside(66.Millimetres()).Millimeters, 1e-9);
        Tolerance.Relative(Math.PI / 3 * 13 / Math.Tan(Math.PI / 12) * (33 * 33 + 33 * 20 + 20 * 20),
            cone.VolumeInside(66.Millimetres()).CubicMillimeters, 1e-9);
    }

    // Half of the fibres in each direction: 2·½·0.6·σf·t_f/R over a hemisphere, R the outer radius of the dome.
    [Fact]
    public void Cap_discs_add_their_netting_to_a_metal_dome()
    {
        var cloth = Samples.Stock.Cloth("carbon twill 200 g");
        var discs = new CapDiscs(cloth, 2) { Lap = 60.Millimetres() };
        string name = "forward end, domed closure";
        var bare = With(new(Dome, Samples.Tied)).Burst().Parts.Single(p => p.Name == name).Burst;
        var laid = With(new VesselEnd(Dome, Samples.Tied) { Discs = discs }).Burst().Parts.Single(p => p.Name == name).Burst;
        var fibre = 2 * cloth.ArealWeight.Value.KilogramsPerSquareMeter / cloth.Fibre.Density.Value.KilogramsPerCubicMeter;
        Tolerance.Relative(0.6 * cloth.Fibre.TensileStrength.Value.Pascals * fibre / 0.035, laid.Pascals - bare.Pascals, 1e-9);
        // Discs that don't reach the wall hand nothing on to it.
        var loose = With(new VesselEnd(Dome, Samples.Tied) { Discs = discs with { Lap = 0.Millimetres() } }).Burst();
        Assert.Equal(bare.Bar, loose.Parts.Single(p => p.Name == name).Burst.Bar, 9);
    }

    [Fact]
    public void A_moulded_cap_has_half_its_fibres_a_direction_and_does_not_yield()
    {
        var cloth = Samples.Stock.Cloth("carbon twill 200 g");
        var cap = DomedClosure.Moulded(new CapDiscs(cloth, 8), Samples.Stock.Resin("laminating epoxy"), 33.Millimetres());
        Assert.False(cap.IsDuctile);
        Tolerance.Relative(0.5 * 0.4 * 0.45 * cloth.Fibre.TensileStrength.Value.Megapascals, cap.Material.YieldStrength.Value.Megapascals,
            1e-9);
        Assert.True(Weakest(new(cap with { Opening = 20.Millimetres() }, Samples.Tied)) < Weakest(new(cap, Samples.Tied)));
    }

    // A third of the resin's shear strength over π·52·30 mm², times e^(0.15·π/2/√3) for the turn, over π/4·66².
    [Fact]
    public void A_tail_that_is_not_tied_off_holds_by_its_bond_and_the_turn()
    {
        var sleeve = new CarriedSleeve { Neck = 52.Millimetres(), Tail = 30.Millimetres() };
        var part = With(new(Dome, sleeve)).Burst().Parts.Single(p => p.Name == "forward end, sleeve's tail");
        var resin = Samples.Trainer.Resin.ShearStrength.Value.Megapascals;
        Tolerance.Relative(resin / 3 * Math.PI * 52 * 30 * Math.Exp(0.15 * Math.PI / 2 / Math.Sqrt(3)) / (Math.PI / 4 * 66 * 66),
            part.Burst.Pascals / 1e6, 1e-9);
        Assert.DoesNotContain(With(new(Dome, sleeve with { IsTiedOff = true })).Burst().Parts, p => p.Name == part.Name);
    }

    // Shear around the opening, 4·t·0.577σ/d.
    [Fact]
    public void Shoulders_flanges_and_bonds_of_fittings_by_hand()
    {
        var plate = new FlatClosure(Aluminium, 10.Millimetres()) { Opening = 22.Millimetres() };
        Tolerance.Relative(4 * 3 * 0.577 * 240 / 22, Of(new ShoulderedFitting(Aluminium, 3.Millimetres(), 30.Millimetres()),
            "fitting's shoulder"), 1e-9);
        Tolerance.Relative(240 * (30.0 * 30 / 22 / 22 - 1), Of(new ShoulderedFitting(Aluminium, 3.Millimetres(), 30.Millimetres()),
            "edge under the shoulder"), 1e-9);
        var clamped = new ClampedFitting(Aluminium, 20.Millimetres(), 1.5.Millimetres(), 8.Millimetres(), 3.Millimetres(),
            30.Millimetres());
        Tolerance.Relative(4 * 3 * 0.577 * 240 / 22, Of(clamped, "fitting's flange"), 1e-9);
        // Outside the flange holds nothing: half of π·20·8 mm² of thread against the thrust on the opening.
        Tolerance.Relative(0.5 * Math.PI * 20 * 8 * 0.577 * 240 / (Math.PI / 4 * 22 * 22), Of(clamped with { FlangeInside = false },
            "fitting's nut"), 1e-9);
        var bonded = new BondedFitting(Epoxy, 10.Millimetres(), BondSurface.AbradedMetal, BondSurface.AbradedMetal);
        Assert.InRange(Of(bonded, "fitting's bond"), 0.1, Epoxy.OnAbradedMetal.Value.Megapascals * 4 * 10 / 22);

        double Of(Fitting fitting, string name) => With(new VesselEnd(plate, Samples.Tied) { Fitting = fitting }).Burst().Parts
            .Single(p => p.Name == "forward end, " + name).Burst.Pascals / 1e6;
    }

    [Fact]
    public void A_wall_that_grows_more_past_its_plug_peels_it_sooner()
    {
        var context = new EndContext(0.066, 50e6, 0, 0, 0, 30e6, 0.6);
        var shear = PlugStrength.FailurePascals(Plug, context);
        // p(1 + g·p) = p_shear, g the growth over the bond line.
        var growing = context with { GrowthPerPascal = 5e-13 };
        var peeled = PlugStrength.FailurePascals(Plug, growing);
        Tolerance.Relative(shear, peeled * (1 + 5e-13 / 0.3e-3 * peeled), 1e-9);
        Assert.True(PlugStrength.FailurePascals(Plug with { BondLine = 0.6.Millimetres() }, growing) > peeled);
    }

    // G 1000 MPa, h 0.3 mm. Five millimetres between a wall of 50 and a plug of 207 MN/m: ω = √(G/h·(1/50e6 + 1/207e6)) = 287.70/m, slip
    // stiffness G/h·tanh(ω·5 mm)/ω = 1.03511e10 N/m². Forty between two of 207 MN/m: a wall as stiff as the plug sees a peak of 3.595 times
    // the mean, a rigid one 5.076, and the larger counts: coupon (12.7 mm of 1.6 mm sheets, 0.2 mm line) 1.98472 / 5.07631 × 4 × 40/66 of
    // its strength.
    [Fact]
    public void A_plug_s_bond_by_hand()
    {
        var plug = Plug with { Adhesive = Epoxy with { ShearModulus = Property.Measured(1000.Megapascals(), 0, "by definition") } };
        var soft = new EndContext(0.066, 50e6, 0, 0, 0, 30e6, 0.6);
        Tolerance.Relative(1.0351072e10, PlugStrength.SlipStiffness(plug with { Overlap = 5.Millimetres() }, soft), 1e-6);
        Tolerance.Relative(0.9478232 * plug.CouponStrength.Value.Pascals, PlugStrength.FailurePascals(plug with {
            Overlap = 40.Millimetres() }, soft with { WallStiffness = 207e6 }), 1e-6);
    }

    // Ea = 2.7·G: the bond line gives 0.3 mm/2.7 GPa = 1.1111e-13 m/Pa. A wall that grows 5e-11 m/Pa is s = 450 times that:
    // √451 − 1 = 20.2368; a liner that gives 5e-13 m/Pa besides leaves s = 81.82 and √82.82 − 1 = 8.1004.
    [Fact]
    public void The_mouth_gives_by_bond_line_and_liner()
    {
        var plug = Plug with { Adhesive = Epoxy with { ShearModulus = Property.Measured(1000.Megapascals(), 0, "by definition") } };
        var context = new EndContext(0.066, 50e6, 0, 0, 5e-11, 30e6, 0.6);
        Tolerance.Relative(20.236761, MouthPeel.OverPressure(plug, context), 1e-6);
        Tolerance.Relative(8.1004495, MouthPeel.OverPressure(plug, context with { LinerGive = 5e-13 }), 1e-6);
    }

    // Finite differences of a beam on its hoop stiffness 1, with s more of it over the plug, pressed outside only: pull at the mouth.
    [Theory]
    [InlineData(4, 1.2360)]
    [InlineData(25, 4.0987)]
    [InlineData(88, 8.4322)]
    public void The_mouth_of_a_bond_peels_as_a_beam_on_two_foundations(double stiffness, double pull) =>
        Tolerance.Relative(pull, MouthPeel.OverPressure(stiffness), 5e-4);

    [Fact]
    public void A_wall_that_grows_much_peels_the_mouth_of_its_bond_and_a_soft_liner_spares_it()
    {
        var context = new EndContext(0.066, 50e6, 0, 0, 5e-11, 30e6, 0.6);
        var peel = MouthPeel.FailurePascals(Plug, context);
        Tolerance.Relative(peel, PlugStrength.FailurePascals(Plug, context), 1e-9);
        Assert.True(MouthPeel.FailurePascals(Plug, context with { LinerGive = 5e-13 }) > peel);
        Assert.Equal(double.PositiveInfinity, MouthPeel.FailurePascals(Plug, context with { GrowthPerPascal = 0 }));
        // The coupon's sheets of 1.6 mm, k of the published case at its pull, k/2·(P/t)·√(6·Ea·t/(E·h)).
        var pull = Plug.CouponStrength.Value.Pascals * 12.7e-3;
        var k = LapJoint.MomentFactor(ForcePerLength.FromNewtonsPerMeter(pull), 1.6.Millimetres(), 6.35.Millimetres(), 70.Gigapascals(),
            0.33);
        Tolerance.Relative(k / 2 * pull / 1.6e-3 * Math.Sqrt(6 * 2.7 * Epoxy.ShearModulus.Value.Pascals * 1.6 / (70e9 * 0.2)),
            MouthPeel.CouponPascals(Plug), 1e-9);
    }

    [Fact]
    public void What_is_said_of_both_ends_is_said_once()
    {
        VesselEnd end = new(Dome, new CarriedSleeve { Neck = 52.Millimetres() });
        var findings = (With(end) with { NozzleEnd = end }).Burst().Findings;
        Assert.Single(findings, f => f.Message.StartsWith("Both ends: the tail", StringComparison.Ordinal));
        Assert.DoesNotContain(findings, f => f.Message.Contains("orward end: the tail", StringComparison.Ordinal));
    }

    [Fact]
    public void What_is_not_known_of_an_end_is_said_with_a_number()
    {
        var bare = With(new(Dome, new CarriedSleeve { Neck = 52.Millimetres() })).Burst();
        var tail = Assert.Single(bare.Findings, f => f.Message.StartsWith("Forward end: the tail", StringComparison.Ordinal));
        Assert.Equal(FindingSeverity.Warning, tail.Severity);
        // A tail as long as it says holds as much as the sleeve.
        var wanted = SleeveStrength.TailFor(new CarriedSleeve { Neck = 52.Millimetres() }, bare.Wall.Context(bare.Layers),
            bare.Parts.Single(p => p.Name == "forward end, sleeve carried over").Burst.Pascals);
        var tailed = With(new(Dome, new CarriedSleeve { Neck = 52.Millimetres(), Tail = (1000 * wanted).Millimetres() })).Burst();
        Tolerance.Relative(tailed.Parts.Single(p => p.Name == "forward end, sleeve carried over").Burst.Pascals,
            tailed.Parts.Single(p => p.Name == "forward end, sleeve's tail").Burst.Pascals, 1e-9);
        Assert.DoesNotContain(tailed.Findings, f => f.Message.StartsWith("Forward end: the tail", StringComparison.Ordinal));

        // Of a deep dome the crown is too sharp for the hole.
        var deep = new DomedClosure(Aluminium, 2.Millimetres(), 66.Millimetres()) { Opening = 30.Millimetres() };
        Assert.Contains(With(new(deep, Samples.Tied)).Burst().Findings, f => f.Severity == FindingSeverity.Warning
            && f.Message.StartsWith("Forward end: first yield at the rim of the opening of 30 mm is not known", StringComparison.Ordinal));
        Assert.DoesNotContain(With(new(Dome with { Opening = 20.Millimetres() }, Samples.Tied)).Burst().Findings,
            f => f.Message.Contains("first yield at the rim", StringComparison.Ordinal));
        Assert.Contains("neck is 75 mm, wider than the vessel", Errors(new(Dome, new CarriedSleeve { Neck = 75.Millimetres() })),
            StringComparison.Ordinal);
    }

    // The shown working holds second answers: of the plate near its closed form, of the boss by area, of the sleeve's path over the dome.
    [Fact]
    public void Ends_show_cross_checks_beside_what_they_are_rated_on()
    {
        var plate = new FlatClosure(Aluminium, 10.Millimetres()) { Opening = 22.Millimetres() };
        Assert.Contains(Checks(new(plate, Samples.Tied)), s => s.What.Contains("four edge conditions", StringComparison.Ordinal));
        var elastic = new AnnularPlate(33.Millimetres(), 11.Millimetres(), 10.Millimetres(), Aluminium.Modulus.Value,
            Aluminium.PoissonRatio.Value, PlateRim.Supported).FirstYield(Aluminium.YieldStrength.Value);
        Assert.InRange(elastic / plate.YieldPressure(66.Millimetres()), 0.8, 1.001);
        var boss = new ThreadedFitting(Aluminium, 20.Millimetres(), 1.5.Millimetres(), 12.Millimetres()) { Boss = 30.Millimetres() };
        var checks = Checks(new VesselEnd(Dome with { Opening = 20.Millimetres() }, Samples.Tied) { Fitting = boss });
        Assert.Contains(checks, s => s.What.Contains("area replaced", StringComparison.Ordinal));
        // sin θ at the hole is sin θ0·r/R.
        var path = Assert.Single(checks, s => s.What.Contains("path of the sleeve", StringComparison.Ordinal));
        var onWall = Samples.Trainer.Layup().Plies[0].Angle!.Value;
        var atHole = Angle.FromDegrees(Math.Asin(Math.Sin(onWall.Radians) * 10 / 35) * 180 / Math.PI);
        Assert.StartsWith($"{atHole.Show()} at the hole", path.Answer, StringComparison.Ordinal);
        Assert.Contains(checks, s => s.What.Contains("pulls all yarns alike", StringComparison.Ordinal));

        static IReadOnlyList<WorkingStep> Checks(VesselEnd end) => [.. With(end).Burst().Working.Steps.Where(s =>
            s.What.StartsWith("Forward end: Cross-check", StringComparison.Ordinal))];
    }

    [Fact]
    public void Bad_ends_are_refused_in_one_sentence()
    {
        var plate = new FlatClosure(Aluminium, 10.Millimetres()) { Opening = 22.Millimetres() };
        Assert.Contains("engagement of the fitting is 0 mm; it must be 1 mm to 200 mm", Errors(new(plate, Samples.Tied)
        {
            Fitting = new ThreadedFitting(Aluminium, 24.Millimetres(), 3.Millimetres(), 0.Millimetres()),
        }), StringComparison.OrdinalIgnoreCase);
        Assert.Contains("The surface of the plug is an untreated plastic", Errors(new(plate, Plug
            with { PlugSurface = BondSurface.UntreatedPlastic })), StringComparison.Ordinal);
        Assert.Contains("overlap of the bonded plug is −5 mm", Errors(new(plate, Plug
            with { Overlap = (-5).Millimetres() })).Replace('-', '−'),
            StringComparison.OrdinalIgnoreCase);
        Assert.Contains("neck is 3 mm, which carbon sleeve 65 mm heavy can't close down to", Errors(new(Dome, new CarriedSleeve
        {
            Neck = 3.Millimetres(),
        })), StringComparison.Ordinal);
        Assert.Contains("has nothing to fill", Errors(new(Dome, Samples.Tied)
        {
            Fitting = new ShoulderedFitting(Aluminium, 3.Millimetres(), 30.Millimetres()),
        }), StringComparison.Ordinal);
    }

    [Fact]
    public void Fittings_discs_and_tails_weigh()
    {
        var end = new VesselEnd(Dome with { Opening = 20.Millimetres() }, Samples.Tied);
        var discs = new CapDiscs(Samples.Stock.Cloth("carbon twill 200 g"), 3);
        var bore = 66.Millimetres();
        var fitting = new ShoulderedFitting(Aluminium, 3.Millimetres(), 30.Millimetres()) { Mass = 40.Grams() };
        var whole = end with { Discs = discs, Fitting = fitting };
        Tolerance.Relative(40 + discs.MassOver(end.Closure, bore).Grams, whole.MassOf(bore).Grams - end.MassOf(bore).Grams, 1e-9);
        // Each disc covers the dome's meridian, π/2·33 mm, and 25 mm of wall to both sides.
        var cut = Assert.Single(CutList.Of(With(whole).Layup()).Pieces, p => p.Ply == "cap discs, forward end");
        Assert.Equal(3, cut.Count);
        Tolerance.Relative(2 * (Math.PI / 2 * 33 + 25), cut.Along.Millimeters, 1e-9);
        var sleeve = With(end).Layup().Plies[0];
        var tailed = With(end with { Joints = [Samples.Tied with { Tail = 40.Millimetres() }] }).Layup().Plies[0];
        Tolerance.Relative(40 / sleeve.Fit!.LengthFactor, tailed.CutLength.Millimeters - sleeve.CutLength.Millimeters, 1e-6);
    }

    [Fact]
    public void Samples_name_the_parts_that_the_prediction_lists()
    {
        var vessel = With(new VesselEnd(Dome with { Opening = 20.Millimetres() }, Plug, Samples.Tied)
        {
            Fitting = new ShoulderedFitting(Samples.Stock.Solid("printed PETG, across its layers"), 1.Millimetres(), 30.Millimetres()),
        });
        var sampled = vessel.SampleBursts(500);
        Assert.Equal("forward end, fitting's shoulder", vessel.Burst().WeakestPart.Name);
        Assert.Equal("forward end, fitting's shoulder", sampled.WeakestParts.MaxBy(p => p.Share.Percent).Part);
    }
}

using NotebookKit.Quantities;
using NotebookKit.Tests.Aerodynamics;
using UnitsNet;

namespace NotebookKit.Tests.Published.Aerodynamics;

public class DragTests
{
    private const string Plate = "H. Schlichting, Boundary-Layer Theory, ch. XXI; S. F. Hoerner, Fluid-Dynamic Drag, 1965, ch. II; "
        + "worked independently";

    // Values to six decimals: half a unit of the last.
    [Theory]
    [PublishedCase("F10", Plate)]
    [InlineData(1e5, 0.004200, 0.007156, 0.007179)]
    [InlineData(5e5, 0.001878, 0.005106, 0.005057)]
    [InlineData(1e6, 0.001328, 0.004471, 0.004409)]
    [InlineData(1e7, 0.000420, 0.003004, 0.002934)]
    [InlineData(1e8, 0.000133, 0.002128, 0.002072)]
    public void Plate_friction(double reynolds, double laminar, double turbulent, double schoenherr)
    {
        Tolerance.Absolute(laminar, Friction.Laminar(reynolds), 6e-7);
        Tolerance.Absolute(turbulent, Friction.Turbulent(reynolds), 6e-7);
        Tolerance.Absolute(schoenherr, Friction.TurbulentSchoenherr(reynolds), 6e-7);
    }

    [Theory]
    [PublishedCase("F10", Plate)]
    [InlineData(1e6, 0.002771)]
    [InlineData(1e7, 0.002834)]
    [InlineData(1e8, 0.002111)]
    public void Plate_with_transition_at_half_a_million(double reynolds, double expected) =>
        Tolerance.Absolute(expected, Friction.Mixed(reynolds, 5e5), 6e-7);

    // At 1e5 the relation gives a negative value: the plate is laminar there. At the transition itself it dips below laminar: held there.
    [Fact]
    [PublishedCase("F10", Plate)]
    public void Plate_is_laminar_up_to_transition()
    {
        Assert.Equal(Friction.Laminar(1e5), Friction.Mixed(1e5, 5e5));
        Assert.Equal(Friction.Laminar(5e5), Friction.Mixed(5.0e5, 5e5));
        Assert.True(Friction.Mixed(5.1e5, 5e5) >= Friction.Laminar(5.1e5));
    }

    [Theory]
    [PublishedCase("F11", Plate)]
    [InlineData(5, 0.002555, 0.002477, 3.0239e7)]
    [InlineData(20, 0.003230, 0.003268, 7.1619e6)]
    [InlineData(60, 0.003956, 0.004071, 2.2872e6)]
    public void Rough_plate(double micrometres, double logarithmic, double power, double critical)
    {
        var (length, roughness) = (1.8.Metres(), micrometres.Micrometres());
        Tolerance.Absolute(logarithmic, Friction.Rough(length, roughness), 6e-7);
        Tolerance.Absolute(power, Friction.RoughPowerLaw(length, roughness), 6e-7);
        Tolerance.Relative(critical, Friction.CriticalReynolds(length, roughness), 5e-5);
    }

    [Theory]
    [PublishedCase("F12", "S. F. Hoerner, 1965; J. S. Barrowman, 1967; USAF DATCOM; worked independently")]
    [InlineData(10, 1.054434, 1.05, 1.085)]
    [InlineData(20, 1.017646, 1.025, 1.0575)]
    [InlineData(30, 1.009388, 1.016667, 1.077222)]
    [InlineData(40, 1.006039, 1.0125, 1.100938)]
    public void Form_factors(double fineness, double hoerner, double barrowman, double datcom)
    {
        Tolerance.Absolute(hoerner, FormFactor.Body(fineness, FormFactorLaw.Hoerner), 6e-7);
        Tolerance.Absolute(barrowman, FormFactor.Body(fineness), 6e-7);
        Tolerance.Absolute(datcom, FormFactor.Body(fineness, FormFactorLaw.Datcom), 6e-7);
    }

    [Theory]
    [PublishedCase("F13", "E. Fleeman, Tactical Missile Design, 2001")]
    [InlineData(0, 0.1200)]
    [InlineData(0.3, 0.1317)]
    [InlineData(0.5, 0.1525)]
    [InlineData(0.8, 0.2032)]
    [InlineData(0.9, 0.2253)]
    public void Base_drag_by_Mach(double mach, double expected) => Tolerance.Absolute(expected, PressureDrag.BaseByMach(mach), 6e-5);

    [Theory]
    [PublishedCase("F14", "J. S. Barrowman, M.S. thesis, 1967, ch. 4; worked independently")]
    [InlineData(0.3, 0.040111)]
    [InlineData(0.5, 0.127456)]
    [InlineData(0.8, 0.531165)]
    [InlineData(0.9, 0.998756)]
    public void Round_leading_edge(double mach, double expected)
        => Tolerance.Absolute(expected, PressureDrag.LeadingEdge(FinEdge.Rounded, mach), 6e-7);

    [Theory]
    [PublishedCase("F14", "S. F. Hoerner, 1965, ch. III; J. S. Barrowman, M.S. thesis, 1967, ch. 4; worked independently")]
    [InlineData(0.3, 0.85 * 1.022703, 0.1317)]
    [InlineData(0.5, 0.85 * 1.064072, 0.1525)]
    [InlineData(0.8, 0.85 * 1.170402, 0.2032)]
    [InlineData(0.9, 0.85 * 1.219229, 0.2253)]
    public void Square_leading_edge_and_all_trailing_edges(double mach, double leading, double trailing)
    {
        Tolerance.Absolute(leading, PressureDrag.LeadingEdge(FinEdge.Square, mach), 6e-7);
        Tolerance.Absolute(trailing, PressureDrag.TrailingEdge(FinEdge.Square, mach), 6e-5);
        Tolerance.Absolute(trailing / 2, PressureDrag.TrailingEdge(FinEdge.Rounded, mach), 6e-5);
        Assert.Equal(0, PressureDrag.TrailingEdge(FinEdge.Sharp, mach));
    }

    // The series of the stagnation coefficient isn't printed for Mach 0.7.
    [Fact]
    [PublishedCase("F15", "Prandtl-Glauert rule; worked independently")]
    public void Prandtl_and_Glauert_at_Mach_0_7() => Tolerance.Absolute(1.400280, PressureDrag.PrandtlGlauert(0.7), 6e-7);

    [Fact]
    [PublishedCase("F13", "S. F. Hoerner, Fluid-Dynamic Drag, 1965, ch. III")]
    public void Base_drag_by_the_fore_bodys_friction() => Tolerance.Absolute(0.049806, PressureDrag.BaseByFriction(0.339020), 6e-7);

    [Theory]
    [PublishedCase("F15", "Prandtl-Glauert rule; isentropic stagnation pressure; worked independently")]
    [InlineData(0.3, 1.048285, 1.022703)]
    [InlineData(0.5, 1.154701, 1.064072)]
    [InlineData(0.8, 1.666667, 1.170402)]
    [InlineData(0.9, 2.294157, 1.219229)]
    public void Compressibility(double mach, double prandtlGlauert, double stagnation)
    {
        Tolerance.Absolute(prandtlGlauert, PressureDrag.PrandtlGlauert(mach), 6e-7);
        Tolerance.Absolute(stagnation, PressureDrag.Stagnation(mach), 6e-7);
        // The series 1 + M²/4 + M⁴/40 is within 3e-4 of it, relative.
        Tolerance.Relative(stagnation, 1 + (mach * mach / 4) + (Math.Pow(mach, 4) / 40), 3e-4);
    }

    // The case leaves the cos² of the sweep out of the leading edge; it is taken out here before comparing.
    [Fact]
    [PublishedCase("F16", Plate)]
    public void Build_up_of_a_smooth_turbulent_body_at_100_metres_per_second()
    {
        var result = SampleBodies.ThreeFins.Drag(100.MetresPerSecond(), AirConditions.SeaLevel, DragAssumptions.SmoothTurbulent);
        var parts = result.Components.ToDictionary(c => c.Name);
        Tolerance.Relative(1.232270e7, result.Reynolds, 1e-5);
        Tolerance.Relative(0.0304410, SampleBodies.ThreeFins.Parts[0].WettedArea.SquareMeters, 3e-6);
        Tolerance.Relative(0.3244941, SampleBodies.ThreeFins.Parts.Sum(p => p.WettedArea.SquareMeters), 1e-6);
        Tolerance.Absolute(0.339020, parts["Body friction"].Middle, 1e-6);
        Tolerance.Absolute(0.049806, parts["Base"].Low, 1e-6);
        Tolerance.Absolute(0.131226, parts["Base"].High, 1e-6);
        Tolerance.Absolute(0.052751, parts["Fin friction"].Middle, 1e-6);
        Tolerance.Absolute(0.012531, parts["Fin trailing edges"].Middle, 1e-6);
        var cosSquare = 3600.0 / (3600 + 1600);
        Tolerance.Absolute(0.003665, parts["Fin leading edges"].Middle / cosSquare, 1e-6);
        Tolerance.Absolute(0.457773, result.Low + (parts["Fin leading edges"].Middle * ((1 / cosSquare) - 1)), 3e-6);
    }

    // The case rounds the stagnation coefficient to 1 + M²/4: 2e-4 of it.
    [Fact]
    [PublishedCase("F16", Plate)]
    public void Square_leading_edges_cost_twenty_times_as_much()
    {
        var body = SampleBodies.ThreeFins;
        var square = body with { Fins = [body.Fins[0] with { LeadingEdge = FinEdge.Square }] };
        var result = square.Drag(100.MetresPerSecond(), AirConditions.SeaLevel, DragAssumptions.SmoothTurbulent);
        Tolerance.Relative(0.082921, result.Components.First(c => c.Name == "Fin leading edges").Middle / (3600.0 / 5200), 2.5e-4);
    }

    // Arrow with short vanes in a magnetic suspension: drag coefficient 1.56 on shaft area at Re 1.2e4 on the diameter. Shaft 5.24 mm by
    // 625 mm (recalled). Friction all laminar is 0.53, all turbulent 1.98: transition owns the answer, so the band must hold the
    // measurement.
    [Fact]
    [PublishedCase("N41", "Arrows in a magnetic suspension, MDPI Proceedings 49 (2020) 56, drag at Re 1.2e4")]
    public void Laminar_and_turbulent_limits_bracket_a_measured_arrow()
    {
        var shaft = new FinnedBody(
            [Nose.TangentOgive(15.Millimetres(), 5.24.Millimetres()), new BodyTube(610.Millimetres(), 5.24.Millimetres())], []);
        var speed = Speed.FromMetersPerSecond(1.2e4 * AirConditions.SeaLevel.Viscosity.PascalSeconds / (1.225 * 5.24e-3));
        var result = shaft.Drag(speed, assumptions: new DragAssumptions { Roughness = Length.Zero, EarlyTransition = 0,
            LateTransition = 1e7 });
        var friction = result.Components.First(c => c.Name == "Body friction");
        Tolerance.Relative(0.53, friction.Low, 0.03);
        Tolerance.Relative(1.98, friction.High, 0.03);
        Assert.InRange(1.56, result.Low, result.High);
    }

    // At Re 0.78e6 to 1.65e6 a streamlined point keeps the layer laminar; a turbulent law over-predicts about threefold there.
    [Theory]
    [PublishedCase("N42", "Mukaiyama et al., arrow point shape and transition, 2011, Re 0.78e6 to 1.65e6")]
    [InlineData(0.78e6)]
    [InlineData(1.65e6)]
    public void Turbulent_friction_is_about_three_times_laminar_on_a_clean_slender_body(double reynolds) =>
        Assert.InRange(Friction.Turbulent(reynolds) / Friction.Laminar(reynolds), 2.5, 4.2);

    // Three streamline bodies of 60 in, transition fixed, with wing interference: 0.046 to 0.057 on frontal area (base assumed). Their
    // fineness is not at hand; five to six is assumed, with a wetted area of three quarters of a cylinder's. Fair within 20 %.
    [Theory]
    [PublishedCase("N43", "E. C. Draley, High-speed drag tests of several fuselage shapes in combination with a wing, NACA WR L-542, 1940")]
    [InlineData(5)]
    [InlineData(6)]
    public void Streamline_fuselages(double fineness)
    {
        var wettedOverFrontal = 0.75 * 4 * fineness;
        var coefficient = Friction.Turbulent(17.4e6) * wettedOverFrontal * FormFactor.Body(fineness, FormFactorLaw.Hoerner);
        Assert.InRange(coefficient, 0.046 / 1.2, 0.057 * 1.2);
    }

    // Found is that no one figure fits: the often quoted 0.2 of projectiles depends on the fore-body's length and boundary layer, falling
    // as both grow, to Mach 0.8; a data sheet's method fits its data to 0.015, twice that is allowed here. So the build-up of short to long
    // cylinders must give a band that holds 0.2 for the short ones, whose low end falls with length, and that never passes 0.2. Hoerner's
    // 0.029/√C is remembered.
    [Theory]
    [PublishedCase("N46", "S. F. Hoerner, 1950: base drag of a cylinder without boat-tail often quoted as 0.2, depends on fore-body and "
        + "boundary layer; ESDU 96012, fit to 0.015")]
    [InlineData(0.3)]
    [InlineData(0.5)]
    [InlineData(0.78)]
    public void Base_drag_of_a_body_falls_with_the_fore_bodys_friction_and_stays_below_the_projectiles(double mach)
    {
        double[] lengths = [5, 10, 20, 40];
        var bases = lengths.Select(l => new FinnedBody([Nose.TangentOgive(180.Millimetres(), 60.Millimetres()),
            new BodyTube((60 * (l - 3)).Millimetres(), 60.Millimetres())], [])
            .Drag(mach * AirConditions.SeaLevel.SpeedOfSound,
                assumptions: DragAssumptions.SmoothTurbulent).Components.Single(c => c.Name == "Base")).ToArray();
        for (var i = 1; i < bases.Length; i++) Assert.True(bases[i].Low < bases[i - 1].Low);
        Assert.All(bases, b => Assert.InRange(b.High, b.Low, 0.2 + 0.03));
        Assert.True(bases[^1].Low < 0.2 / 3);
        if (mach > 0.7) Assert.All(bases, b => Assert.InRange(0.2, b.Low, b.High + 0.03));
    }
}

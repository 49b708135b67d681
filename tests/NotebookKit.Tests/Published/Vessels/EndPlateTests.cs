using System.Globalization;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Ends.Modes;
using UnitsNet;

namespace NotebookKit.Tests.Published.Vessels;

public class EndPlateTests
{
    private const string Roark = "Young and Budynas, Roark's Formulas for Stress and Strain, 7th ed. 2002, Table 11.2, case ";
    private const string Timoshenko = "Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed. 1959, §17, Table 3 (from " +
        "memory; figures re-computed)";
    private const string HopkinsPrager = "Hopkins and Prager, J. Mech. Phys. Solids 2, 1953 (unverified); met by a lower-bound linear " +
        "programme";
    private static readonly double[] Ratios = [0.1, 0.2, 0.3, 0.5, 0.7, 0.9];

    // Any size does: the factors carry none.
    private static readonly Length A = 50.Millimetres();
    private static readonly Length T = 2.Millimetres();

    private static AnnularPlate Plate(double holeOverRim, PlateRim rim, PlateHole hole = PlateHole.Free) =>
        new(A, A * holeOverRim, T, 70.Gigapascals(), 0.3, rim) { Hole = hole, Cover = HoleCover.HeldElsewhere };

    private static PlateBending Pressed(double holeOverRim, PlateRim rim, PlateHole hole = PlateHole.Free) =>
        Plate(holeOverRim, rim, hole).BendingAt(1.BarGauge());

    private static PlateBending Ring(double holeOverRim, PlateRim rim, PlateHole hole = PlateHole.Free) =>
        Plate(holeOverRim, rim, hole).BendingAt(GaugePressure.Zero, ForcePerLength.FromNewtonsPerMillimeter(10));

    // Roark's factors: y = K·q·a⁴/D or K·w·a³/D; M = K·q·a² or K·w·a.
    private static double Deflection(PlateBending b, Length at) =>
        b.DeflectionAt(at).Meters * b.Plate.Stiffness.NewtonMetersPerMeter / Load(b, 4, 3);

    private static double LargestDeflection(PlateBending b) =>
        b.MaximumDeflection.Meters * b.Plate.Stiffness.NewtonMetersPerMeter / Load(b, 4, 3);

    private static double Radial(PlateBending b, Length at) => b.RadialStressAt(at).Pascals * T.Meters * T.Meters / 6 / Load(b, 2, 1);

    private static double Around(PlateBending b, Length at) => b.AroundStressAt(at).Pascals * T.Meters * T.Meters / 6 / Load(b, 2, 1);

    private static double Load(PlateBending b, int even, int ring) => b.Pressure.Pascals > 0
        ? b.Pressure.Pascals * Math.Pow(A.Meters, even)
        : b.EdgeLoad.NewtonsPerMeter * Math.Pow(A.Meters, ring);

    /// <summary>Half a unit of the last printed digit.</summary>
    private static void Printed(string printed, double actual)
    {
        var decimals = printed.Length - printed.IndexOf('.') - 1;
        Tolerance.Absolute(double.Parse(printed, CultureInfo.InvariantCulture), actual, 0.5001 * Math.Pow(10, -decimals));
    }

    [Fact]
    [PublishedCase("E01", Roark + "2a (unverified); figures re-computed from the general solution")]
    public void Supported_with_a_free_hole()
    {
        double[] y = [0.06866, 0.07447, 0.07613, 0.06244, 0.03245, 0.00484], m = [0.39651, 0.36541, 0.32723, 0.24044, 0.14688, 0.04967];
        for (var i = 0; i < Ratios.Length; i++)
        {
            var bent = Pressed(Ratios[i], PlateRim.Supported);
            Tolerance.Absolute(y[i], Deflection(bent, bent.Plate.HoleRadius), 5e-5);
            Tolerance.Absolute(m[i], Around(bent, bent.Plate.HoleRadius), 5e-5);
        }
    }

    [Fact]
    [PublishedCase("E02", Roark + "2e, printed −.0166 −.0132 −.0053 −.0009 and −.1246 −.1135 −.0800 −.0361 −.00470")]
    public void Clamped_with_a_free_hole()
    {
        double[] y = [0.01661, 0.01605, 0.01316, 0.00527, 0.00086, 0.00001];
        double[] rim = [-0.12458, -0.12160, -0.11351, -0.08000, -0.03613, -0.00470],
            hole = [0.14483, 0.11207, 0.07776, 0.02712, 0.00517, 0.00016];
        for (var i = 0; i < Ratios.Length; i++)
        {
            var bent = Pressed(Ratios[i], PlateRim.Clamped);
            Tolerance.Absolute(y[i], Deflection(bent, bent.Plate.HoleRadius), 5.1e-6);
            Tolerance.Absolute(rim[i], Radial(bent, A), 5.1e-6);
            Tolerance.Absolute(hole[i], Around(bent, bent.Plate.HoleRadius), 5.1e-6);
        }

        Assert.True(Pressed(0.1, PlateRim.Clamped).IsAround);
        Assert.False(Pressed(0.3, PlateRim.Clamped).IsAround);
    }

    [Theory]
    [PublishedCase("E04", Roark + "2c and 2d, as printed")]
    [InlineData(0.1, "-.2401", "-.2459", .00607, .00403, .0706)]
    [InlineData(0.3, "-.0463", "-.0939", .00286, .00142, .0552)]
    [InlineData(0.5, "-.0101", "-.0393", .00079, .00036, .0303)]
    [InlineData(0.7, "-.0015", "-.01257", .00010, .00005, .0112)]
    public void Supported_with_a_held_boss(double ratio, string around, string radial, double supportedDeflection, double heldDeflection,
        double inSpan)
    {
        var supported = Pressed(ratio, PlateRim.Supported, PlateHole.Supported);
        var held = Pressed(ratio, PlateRim.Supported, PlateHole.Held);
        Printed(around, Around(supported, supported.Plate.HoleRadius));
        Printed(radial, Radial(held, held.Plate.HoleRadius));
        Tolerance.Absolute(supportedDeflection, LargestDeflection(supported), 5.1e-6);
        Tolerance.Absolute(heldDeflection, LargestDeflection(held), 5.1e-6);
        var b = ratio * A;
        var largest = Enumerable.Range(0, 401).Max(i => Radial(supported, UnitMath.Min(b + (A - b) * i / 400, A)));
        Tolerance.Relative(inSpan, largest, 0.02);
    }

    [Fact]
    [PublishedCase("E05", Roark + "1a (unverified: .0364 .1266 .1934 .1927 .0938); figures re-computed")]
    public void Ring_load_on_the_hole_of_a_supported_plate()
    {
        double[] y = [0.03639, 0.08097, 0.12656, 0.19335, 0.19273, 0.09381], m = [0.33736, 0.50589, 0.62099, 0.77573, 0.88142, 0.96380];
        for (var i = 0; i < Ratios.Length; i++)
        {
            var bent = Ring(Ratios[i], PlateRim.Supported);
            Tolerance.Absolute(y[i], Deflection(bent, bent.Plate.HoleRadius), 5.1e-6);
            Tolerance.Absolute(m[i], Around(bent, bent.Plate.HoleRadius), 5.1e-6);
        }
    }

    [Fact]
    [PublishedCase("E06", Roark + "1e: form; figures computed independently from the general solution")]
    public void Ring_load_on_the_hole_of_a_clamped_plate()
    {
        double[] y = [0.01433, 0.02734, 0.03299, 0.02330, 0.00705, 0.00031], m = [0.23070, 0.27335, 0.25027, 0.14123, 0.04844, 0.00484];
        double[] rim = [-0.05280, -0.11162, -0.16868, -0.23794, -0.21241, -0.09110];
        for (var i = 0; i < Ratios.Length; i++)
        {
            var bent = Ring(Ratios[i], PlateRim.Clamped);
            Tolerance.Absolute(y[i], Deflection(bent, bent.Plate.HoleRadius), 5.1e-6);
            Tolerance.Absolute(m[i], Around(bent, bent.Plate.HoleRadius), 5.1e-6);
            Tolerance.Absolute(rim[i], Radial(bent, A), 5.1e-6);
        }
    }

    [Fact]
    [PublishedCase("E07", Roark + "2f: form; figures computed independently from the general solution")]
    public void Clamped_with_a_guided_hole()
    {
        double[] y = [0.01370, 0.01026, 0.00683, 0.00211, 0.00030, 0], hole = [0.11462, 0.09647, 0.07671, 0.04073, 0.01491, 0.00167];
        double[] rim = [-0.12137, -0.11134, -0.09661, -0.06013, -0.02521, -0.00316];
        for (var i = 0; i < Ratios.Length; i++)
        {
            var bent = Pressed(Ratios[i], PlateRim.Clamped, PlateHole.Guided);
            Tolerance.Absolute(y[i], Deflection(bent, bent.Plate.HoleRadius), 5.1e-6);
            Tolerance.Absolute(hole[i], Radial(bent, bent.Plate.HoleRadius), 5.1e-6);
            Tolerance.Absolute(rim[i], Radial(bent, A), 5.1e-6);
        }
    }

    private static double K1(PlateBending b) => Math.Abs(b.MaximumStress.Pascals) * T.Meters * T.Meters / Force(b, 2);

    private static double K2(PlateBending b) => Math.Abs(b.MaximumDeflection.Meters) * 70e9 * Math.Pow(T.Meters, 3) / Force(b, 4);

    // Over q·a² and q·a⁴, or the whole ring load P and P·a².
    private static double Force(PlateBending b, int power) => b.Pressure.Pascals > 0
        ? b.Pressure.Pascals * Math.Pow(A.Meters, power)
        : 2 * Math.PI * b.Plate.HoleRadius.Meters * b.EdgeLoad.NewtonsPerMeter * Math.Pow(A.Meters, power - 2);

    [Theory]
    [PublishedCase("E08", Timoshenko)]
    [InlineData(1.25, .592, .184)]
    [InlineData(1.5, .977, .414)]
    [InlineData(2, 1.443, .682)]
    [InlineData(3, 1.881, .824)]
    [InlineData(4, 2.082, .830)]
    [InlineData(5, 2.192, .813)]
    public void Table_of_a_supported_plate(double ratio, double k1, double k2)
    {
        Tolerance.Absolute(k1, K1(Pressed(1 / ratio, PlateRim.Supported)), 3e-3);
        Tolerance.Absolute(k2, K2(Pressed(1 / ratio, PlateRim.Supported)), 3e-3);
    }

    [Theory]
    [PublishedCase("E09", Timoshenko)]
    [InlineData(1.25, ".105", ".00199", ".0717", ".00068")]
    [InlineData(1.5, ".259", ".0139", ".1825", ".0050")]
    [InlineData(2, ".480", ".0575", ".361", ".0230")]
    [InlineData(3, ".657", ".130", ".546", ".0636")]
    [InlineData(4, ".710", ".162", ".627", ".0927")]
    [InlineData(5, ".730", ".175", ".668", ".112")]
    public void Table_of_a_clamped_plate(double ratio, string freeStress, string freeDeflection, string guidedStress,
        string guidedDeflection)
    {
        var (free, guided) = (Pressed(1 / ratio, PlateRim.Clamped), Pressed(1 / ratio, PlateRim.Clamped, PlateHole.Guided));
        Printed(freeStress, K1(free));
        Printed(freeDeflection, K2(free));
        Printed(guidedStress, K1(guided));
        Printed(guidedDeflection, K2(guided));
    }

    [Theory]
    [PublishedCase("E10", Timoshenko)]
    [InlineData(1.25, ".1144", ".00129", ".341", 1.104)]
    [InlineData(1.5, ".2195", ".0064", ".519", 1.240)]
    [InlineData(2, ".4051", ".0238", ".672", 1.482)]
    [InlineData(3, ".7028", ".0620", ".734", 1.869)]
    [InlineData(4, ".9346", ".0923", ".724", 2.170)]
    [InlineData(5, "1.123", ".1148", ".704", 2.415)]
    public void Table_of_a_load_on_the_hole(double ratio, string guidedStress, string guidedDeflection, string freeDeflection,
        double freeStress)
    {
        var (guided, free) = (Ring(1 / ratio, PlateRim.Clamped, PlateHole.Guided), Ring(1 / ratio, PlateRim.Supported));
        Printed(guidedStress, K1(guided));
        Printed(guidedDeflection, K2(guided));
        Printed(freeDeflection, K2(free));
        Tolerance.Relative(freeStress, K1(free), 1e-3);
    }

    private static AnnularPlate Worked(PlateRim rim, double hole = 10) =>
        new(50.Millimetres(), hole.Millimetres(), 12.Millimetres(), 70.Gigapascals(), 0.33, rim);

    [Fact]
    [PublishedCase("E11", "general solution, Timoshenko and Woinowsky-Krieger 1959, §17; figures computed independently")]
    public void Worked_end_with_its_plug()
    {
        var plate = Worked(PlateRim.Supported);
        Tolerance.Relative(1.1312e4, plate.Stiffness.NewtonMetersPerMeter, 1e-3);
        var alone = (plate with { Cover = HoleCover.HeldElsewhere }).BendingAt(80.BarGauge());
        Tolerance.Relative(0.32870, alone.MaximumDeflection.Millimeters, 1e-3);
        Tolerance.Relative(306.92, alone.MaximumStress.Megapascals, 1e-3);
        var plugged = plate.BendingAt(80.BarGauge());
        Tolerance.Relative(40, plugged.EdgeLoad.NewtonsPerMillimeter, 1e-9);
        Tolerance.Relative(0.36473, plugged.MaximumDeflection.Millimeters, 1e-3);
        Tolerance.Relative(349.67, plugged.MaximumStress.Megapascals, 1e-3);
        var clamped = Worked(PlateRim.Clamped).BendingAt(80.BarGauge());
        Tolerance.Relative(0.08430, clamped.MaximumDeflection.Millimeters, 1e-3);
        Tolerance.Relative(118.29, clamped.AroundStressAt(10.Millimetres()).Megapascals, 1e-3);
        Tolerance.Relative(-111.06, clamped.RadialStressAt(50.Millimetres()).Megapascals, 1e-3);
    }

    [Fact]
    [PublishedCase("E12", "Timoshenko and Woinowsky-Krieger 1959, §16: whole plates; figures re-computed")]
    public void Whole_plates()
    {
        var supported = Worked(PlateRim.Supported, 0).BendingAt(80.BarGauge());
        Tolerance.Relative(0.27678, supported.MaximumDeflection.Millimeters, 1e-3);
        Tolerance.Relative(173.44, supported.MaximumStress.Megapascals, 1e-3);
        var clamped = Worked(PlateRim.Clamped, 0).BendingAt(80.BarGauge());
        Tolerance.Relative(0.06906, clamped.MaximumDeflection.Millimeters, 1e-3);
        Tolerance.Relative(-104.17, clamped.MaximumStress.Megapascals, 1e-3);
        Tolerance.Relative(69.27, clamped.RadialStressAt(Length.Zero).Megapascals, 1e-3);
    }

    private static PlateCollapse Collapse(double hole, PlateRim rim, PlateYieldRule rule = PlateYieldRule.Tresca,
        HoleCover cover = HoleCover.SupportedAtEdge) =>
        new(50.Millimetres(), (50 * hole).Millimetres(), 12.Millimetres(), 240.Megapascals(), rim) { Rule = rule, Cover = cover };

    [Fact]
    [PublishedCase("E13", HopkinsPrager)]
    public void Whole_plate_collapses_by_Tresca()
    {
        Tolerance.Relative(6, Collapse(0, PlateRim.Supported).Limit().Factor, 1e-12);
        var clamped = Collapse(0, PlateRim.Clamped).Limit();
        Printed("11.259", clamped.Factor);
        Printed(".7300", clamped.HingeCircle!.Value / 50.Millimetres());
    }

    [Fact]
    [PublishedCase("E14", "Hopkins and Wang, J. Mech. Phys. Solids 3, 1954 (unverified: 6.51, 12.5); plate equation integrated " +
        "independently")]
    public void Whole_plate_collapses_by_the_other_rules()
    {
        Tolerance.Relative(6.516, Collapse(0, PlateRim.Supported, PlateYieldRule.VonMises).Limit().Factor, 1e-3);
        Tolerance.Relative(12.552, Collapse(0, PlateRim.Clamped, PlateYieldRule.VonMises).Limit().Factor, 1e-3);
        Tolerance.Relative(6, Collapse(0, PlateRim.Supported, PlateYieldRule.MaximumMoment).Limit().Factor, 1e-9);
        Tolerance.Relative(12, Collapse(0, PlateRim.Clamped, PlateYieldRule.MaximumMoment).Limit().Factor, 1e-9);
    }

    [Theory]
    [PublishedCase("E15", HopkinsPrager)]
    [InlineData(0, 1)]
    [InlineData(.25, 1.2)]
    [InlineData(.5, 1.5)]
    [InlineData(1, 3)]
    public void Load_on_a_circle_in_the_middle(double circle, double factor) =>
        Tolerance.Relative(factor * 2 * Math.PI * 8640,
            Collapse(0, PlateRim.Supported).CentralLoadLimit((50 * circle).Millimetres()).Newtons, 1e-9);

    [Theory]
    [PublishedCase("E16", "plate with a hole, pressure outside the hole alone: closed form and a lower-bound linear programme, computed " +
        "independently")]
    [InlineData(.1, 5.5556)]
    [InlineData(.2, 5.3571)]
    [InlineData(.25, 5.3333)]
    [InlineData(.3, 5.3571)]
    [InlineData(.5, 6)]
    public void Holed_plate_without_its_plug_s_load(double hole, double factor) =>
        Tolerance.Relative(factor, Collapse(hole, PlateRim.Supported, cover: HoleCover.HeldElsewhere).Limit().Factor, 2e-5);

    [Theory]
    [PublishedCase("E17", "plate with a hole, the plug's load on its edge: closed form and a lower-bound linear programme, computed " +
        "independently")]
    [InlineData(.1, 5.4054)]
    [InlineData(.2, 4.8387)]
    [InlineData(.3, 4.3165)]
    [InlineData(.5, 3.4286)]
    public void Holed_plate_with_its_plug_s_load(double hole, double factor)
    {
        Tolerance.Relative(factor, Collapse(hole, PlateRim.Supported).Limit().Factor, 2e-5);
        Tolerance.Relative(2 * Math.PI * 8640, Collapse(hole, PlateRim.Supported).EdgeLoadLimit().Newtons, 1e-9);
    }

    // Lower-bound linear programme (600 rings by Tresca, 400 rings and a yield polygon of 96 sides around the ellipse by von Mises).
    [Theory]
    [PublishedCase("E18", "clamped plates with a hole: lower-bound linear programme (HiGHS), computed independently")]
    [InlineData(.1, 10.596, 10.9127, 12.0059)]
    [InlineData(.2, 9.9795, 11.1432, 11.1483)]
    [InlineData(.3, 9.4627, 11.9767, 10.4767)]
    [InlineData(.5, 9.0301, 16.5706, 10.1362)]
    [InlineData(.7, 10.6406, 33.7687, 12.0959)]
    public void Clamped_plates_with_a_hole(double hole, double plugged, double alone, double mises)
    {
        Tolerance.Relative(plugged, Collapse(hole, PlateRim.Clamped).Limit().Factor, 5e-4);
        Tolerance.Relative(alone, Collapse(hole, PlateRim.Clamped, cover: HoleCover.HeldElsewhere).Limit().Factor, 5e-4);
        Tolerance.Relative(mises, Collapse(hole, PlateRim.Clamped, PlateYieldRule.VonMises).Limit().Factor, 3e-3);
    }

    [Fact]
    [PublishedCase("E19", "closed forms and lower-bound linear programme; figures computed independently")]
    public void Worked_end_collapses()
    {
        var plugged = Collapse(.2, PlateRim.Supported);
        Tolerance.Relative(8640, plugged.FullMoment.NewtonMetersPerMeter, 1e-9);
        Tolerance.Relative(20.74, Collapse(0, PlateRim.Supported).Limit().Pressure.Pascals / 1e6, 1e-3);
        Tolerance.Relative(16.72, plugged.Limit().Pressure.Pascals / 1e6, 1e-3);
        Tolerance.Relative(34.49, Collapse(.2, PlateRim.Clamped).Limit().Pressure.Pascals / 1e6, 1e-3);
        var first = Worked(PlateRim.Supported, 0).FirstYield(240.Megapascals());
        Tolerance.Relative(11.07, first.Pascals / 1e6, 1e-3);
        Tolerance.Relative(1.873, Collapse(0, PlateRim.Supported).Limit().Pressure / first, 1e-3);
    }
}

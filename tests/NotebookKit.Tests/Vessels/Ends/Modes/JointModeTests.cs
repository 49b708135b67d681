using CsCheck;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Ends;
using NotebookKit.Vessels.Ends.Modes;
using UnitsNet;

namespace NotebookKit.Tests.Vessels.Ends.Modes;

public class JointModeTests
{
    private static readonly TubeMember Tube = new(33.Millimetres(), 35.Millimetres(), 20.Gigapascals()) { ShearModulus = 8.Gigapascals() };
    private static readonly TubeMember Plug = new(28.Millimetres(), 32.7.Millimetres(),
        69.Gigapascals()) { ShearModulus = 26.Gigapascals() };
    private static readonly BondedTube Joint = new(Tube, Plug, 32.85.Millimetres(), 1000.Megapascals(), 0.3.Millimetres(),
        40.Millimetres());
    private static readonly ScrewedCap Cap = new(ThreadLimits.Named("M24"), 18.Millimetres(), 20.Millimetres(), 140.Megapascals(),
        140.Megapascals());

    [Fact]
    public void More_overlap_lowers_the_peak_and_never_below_its_limit() => Gen.Double[5, 300].Sample(length =>
    {
        Pressure low = (Joint with { Overlap = length.Millimetres() }).StressAt(60.BarGauge()).Peak,
            high = (Joint with { Overlap = (1.1 * length).Millimetres() }).StressAt(60.BarGauge()).Peak;
        return high.Pascals <= low.Pascals * (1 + 1e-12);
    });

    [Fact]
    public void Parts_of_equal_stiffness_shear_alike_at_both_ends()
    {
        // The same G·J: the outer tube's wall is chosen for it.
        var inner = new TubeMember(20.Millimetres(), 22.5.Millimetres(), 70.Gigapascals()) { ShearModulus = 26.Gigapascals() };
        var outside = Math.Pow(Math.Pow(22.8, 4) + Math.Pow(22.5, 4) - Math.Pow(20, 4), 0.25);
        var outer = new TubeMember(22.8.Millimetres(), outside.Millimetres(), 70.Gigapascals()) { ShearModulus = 26.Gigapascals() };
        var shear = new BondedTube(inner, outer, 22.65.Millimetres(), 1200.Megapascals(), 0.3.Millimetres(), 20.Millimetres())
            .Twisted(Torque.FromNewtonMeters(200));
        Tolerance.Relative(shear.AtFirst.Pascals, shear.AtSecond.Pascals, 1e-9);
    }

    [Fact]
    public void A_wide_thin_bond_meets_the_flat_overlap()
    {
        // E·A over the circumference is E·t where the walls are thin against the radius.
        var round = new BondedTube(new(1000.1.Millimetres(), 1001.1.Millimetres(), 20.Gigapascals()),
            new(996.9.Millimetres(), 999.9.Millimetres(), 70.Gigapascals()), 1000.Millimetres(), 1000.Megapascals(), 0.2.Millimetres(),
            30.Millimetres());
        var load = ForcePerLength.FromNewtonsPerMillimeter(100);
        var flat = new ShearLag(20.Gigapascals(), 1.Millimetres(), 70.Gigapascals(), 3.Millimetres(), 1000.Megapascals(),
            0.2.Millimetres(), 30.Millimetres());
        Tolerance.Relative(flat.Peak(load).Pascals, round.Pulled(Force.FromNewtons(100_000 * 2 * Math.PI)).Peak.Pascals, 2e-3);
    }

    [Fact]
    public void A_stiffer_ring_peaks_where_it_stops()
    {
        var shear = Joint.StressAt(60.BarGauge());
        Assert.True(shear.AtFirst > shear.AtSecond);
        Assert.True(shear.Middle < shear.Mean);
        Assert.Contains(shear.Findings, f => f.Severity == FindingSeverity.Warning);
        Assert.Equal(3, shear.Working.Steps.Count);
    }

    [Fact]
    public void Bad_bonds_are_refused_in_words()
    {
        Assert.Contains("overlap is −5 mm; it must be 1 mm to 1000 mm",
            Assert.Throws<InvalidDesignException>(() => (Joint with { Overlap = (-5).Millimetres() }).StressAt(60.BarGauge())).Message,
            StringComparison.Ordinal);
        Assert.Contains("Check which of the radii is a diameter",
            Assert.Throws<InvalidDesignException>(() => (Joint with { BondRadius = 66.Millimetres() }).StressAt(60.BarGauge())).Message,
            StringComparison.Ordinal);
        var silent = Joint with { First = Tube with { ShearModulus = null } };
        Assert.Contains("shear modulus of a bonded part is not given",
            Assert.Throws<InvalidDesignException>(() => silent.Twisted(Torque.FromNewtonMeters(1))).Message, StringComparison.Ordinal);
        Assert.True(silent.StressAt(60.BarGauge()).Peak.Pascals > 0);
        Assert.Throws<InvalidDesignException>(() =>
            (Joint with { First = Tube with { OuterRadius = 30.Millimetres() } }).StressAt(60.BarGauge()));
    }

    [Fact]
    public void A_short_overlap_of_a_tough_adhesive_is_refused()
    {
        var tough = new ToughAdhesive(40.Megapascals(), 3.Percent(), 30.Percent(), 0.2.Millimetres());
        var sheet = ForcePerLength.FromNewtonsPerMillimeter(112_000);
        var refused = Assert.Throws<OutOfRangeException>(() => LapJoint.LongOverlap(sheet, sheet, tough, 20.Millimetres()));
        Assert.StartsWith("overlap is 20 mm", refused.Message, StringComparison.Ordinal);
        Assert.True(LapJoint.LongOverlap(sheet, sheet, tough, LapJoint.LongEnough(sheet, sheet, tough)).NewtonsPerMeter > 0);
        Assert.Throws<InvalidDesignException>(() =>
            LapJoint.LongOverlap(sheet, sheet, tough with { PlasticStrain = (-1).Percent() }, 200.Millimetres()));
    }

    [Fact]
    public void Bending_at_a_lap_falls_with_its_load() => Gen.Double[1, 1e4].Sample(load =>
    {
        double Factor(double p) =>
            LapJoint.MomentFactor(ForcePerLength.FromNewtonsPerMillimeter(p), 1.6.Millimetres(), 6.25.Millimetres(), 70.Gigapascals(),
            0.33);
        return Factor(1.1 * load) < Factor(load) && Factor(load) is > 0.2612 and < 1;
    });

    [Fact]
    public void A_thread_holds_with_its_length_up_to_one_diameter()
    {
        Tolerance.Relative(2, (Cap with { Engagement = 18.Millimetres() }).Strips().PullOut / (Cap with { Engagement = 9.Millimetres() })
            .Strips().PullOut, 1e-9);
        var longer = (Cap with { Engagement = 40.Millimetres() }).Strips();
        Assert.Equal((Cap with { Engagement = 24.Millimetres() }).Strips().PullOut.Newtons, longer.PullOut.Newtons, 6);
        Assert.Contains(longer.Findings, f => f.Message.Contains("are counted", StringComparison.Ordinal));
        Assert.Contains((Cap with { Engagement = 5.Millimetres() }).Strips().Findings, f => f.Severity == FindingSeverity.Warning);
    }

    [Fact]
    public void The_weaker_thread_goes()
    {
        Assert.True(Cap.Strips().ExternalGoes);
        var soft = (Cap with { InternalShear = 30.Megapascals() }).Strips();
        Assert.False(soft.ExternalGoes);
        Tolerance.Relative(30, soft.InternalShearAt(soft.Pressure).Megapascals, 1e-9);
    }

    [Fact]
    public void Bad_threads_are_refused_in_words()
    {
        Assert.Contains("engagement of the thread is 0 mm",
            Assert.Throws<InvalidDesignException>(() => (Cap with { Engagement = Length.FromMillimeters(0) }).Strips()).Message,
            StringComparison.Ordinal);
        Assert.Throws<OutOfRangeException>(() => ThreadArea.ExternalStrips(Cap.Thread, Length.FromMillimeters(0)));
        Assert.Contains("it has M12, M16, M20, M24, M30", Assert.Throws<ArgumentException>(() => ThreadLimits.Named("M99")).Message,
            StringComparison.Ordinal);
        Assert.Throws<OutOfRangeException>(() => ThreadArea.Stress(12.Millimetres(), 5.Millimetres()));
        Assert.Throws<InvalidDesignException>(() => (Cap with { Thread = Cap.Thread with { InternalMinor = 23.Millimetres() } }).Strips());
    }

    [Fact]
    public void Every_thread_of_the_library_is_valid() => Assert.All(ThreadLimits.Metric, t => Assert.Empty(t.Validate()));
}

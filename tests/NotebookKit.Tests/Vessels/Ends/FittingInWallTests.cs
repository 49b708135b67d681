using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Vessels.Ends;

/// <summary>What a fitting holds ends with the metal that is there for it.</summary>
public class FittingInWallTests
{
    private static readonly IsotropicMaterial Aluminium = Samples.Stock.Solid("aluminium 6061-T6");

    private static readonly DomedClosure Dome = DomedClosure.Ellipsoid(Aluminium, 3.Millimetres(), 66.Millimetres())
        with { Opening = 18.Millimetres() };

    private static PressureVessel With(Fitting fitting) => Samples.Trainer with
    {
        NozzleEnd = new VesselEnd(Dome, Samples.Tied) { Fitting = fitting },
    };

    private static ThreadedFitting Thread(double engagement, double? boss = null) =>
        new(Aluminium, 20.Millimetres(), 1.5.Millimetres(), engagement.Millimetres()) { Boss = boss?.Millimetres() };

    private static PartMargin ThreadOf(Fitting fitting) =>
        With(fitting).Burst().Parts.Single(p => p.Name == "nozzle end, fitting's thread");

    // 12 mm of thread in a dome of 3 mm: there is metal for 3 mm.
    [Fact]
    public void A_thread_without_a_boss_engages_no_more_than_the_wall()
    {
        Assert.Equal(ThreadOf(Thread(3)).Burst, ThreadOf(Thread(12)).Burst);
        Assert.True(ThreadOf(Thread(12, 40)).Burst.Bar > 3.9 * ThreadOf(Thread(12)).Burst.Bar);
        Assert.Contains(With(Thread(12)).Validate(), f => f.Severity == FindingSeverity.Warning
            && f.Message.Contains("Engagement of the fitting is 12 mm in a wall of 3 mm without a boss", StringComparison.Ordinal));
        Assert.Contains(With(Thread(12)).Validate(), f => f.Message.Contains("Fewer than three turns engage (2)",
            StringComparison.Ordinal));
        Assert.DoesNotContain(With(Thread(12, 40)).Validate(), f => f.Message.Contains("without a boss", StringComparison.Ordinal));
        Assert.DoesNotContain(With(Thread(3)).Validate(), f => f.Message.Contains("without a boss", StringComparison.Ordinal));
    }

    // By hand: the ring of a boss of 21 mm around a thread of 20 mm takes 276 MPa × (21² / 20² − 1) = 28.3 MPa of pressure.
    [Fact]
    public void A_thin_boss_is_torn_off_before_its_thread_strips()
    {
        var yield = Aluminium.YieldStrength.Value.Megapascals;
        var thin = ThreadOf(Thread(12, 21));
        Tolerance.Relative(10 * yield * (21.0 * 21 / 400 - 1), thin.Burst.Bar, 1e-9);
        Assert.Contains("boss around the fitting's thread torn off", thin.Cause, StringComparison.Ordinal);
        Assert.Contains("stripped", ThreadOf(Thread(12, 40)).Cause, StringComparison.Ordinal);
        Assert.Equal(ThreadOf(Thread(12, 40)).Burst, ThreadOf(Thread(12, 60)).Burst);
        // A boss without a wall holds nothing.
        Assert.Equal(0, ThreadOf(Thread(12, 20)).Burst.Bar, 9);
    }

    [Fact]
    public void A_bond_longer_than_the_wall_says_that_its_boss_is_not_computed()
    {
        BondedFitting Bond(double overlap) => new(Samples.Stock.Adhesive("structural epoxy"), overlap.Millimetres(),
            BondSurface.AbradedMetal, BondSurface.AbradedMetal);
        Assert.Contains(With(Bond(15)).Validate(), f => f.Severity == FindingSeverity.Warning
            && f.Message.Contains("Overlap of the bonded fitting is 15 mm in a wall of 3 mm", StringComparison.Ordinal));
        Assert.DoesNotContain(With(Bond(3)).Validate(), f => f.Message.Contains("Overlap of the bonded fitting", StringComparison.Ordinal));
    }
}

using NotebookKit.Quantities;

namespace NotebookKit.Tests.Vessels;

/// <summary>Invented vessels that the tests share; none is a design.</summary>
public static class Samples
{
    public static MaterialLibrary Stock => MaterialLibrary.Typical;

    /// <summary>The sleeve carried over an end and tied off on a neck that every sleeve in stock closes down to freely.</summary>
    public static CarriedSleeve Tied { get; } = new() { Neck = 54.Millimetres(), IsTiedOff = true };

    /// <summary>A 70 mm-class vessel: PVC tube, one heavy carbon sleeve carried over both ends, a veil.</summary>
    public static PressureVessel Trainer { get; } = new(
        "test vessel",
        new Liner(Stock.Solid("PVC-U"), 66.Millimetres(), 1.5.Millimetres()),
        450.Millimetres(),
        Stock.Resin("laminating epoxy"),
        [new BraidedSleeve(Stock.Braid("carbon sleeve 65 mm heavy")), new VeilWrap(Stock.Veil("glass veil 30 g"))],
        NozzleEnd: new VesselEnd(new FlatClosure(Stock.Solid("aluminium 6061-T6"), 10.Millimetres()) { Opening = 22.Millimetres() },
            Tied),
        ForwardEnd: new VesselEnd(DomedClosure.Ellipsoid(Stock.Solid("aluminium 6061-T6"), 2.Millimetres(), 66.Millimetres()), Tied));

    /// <summary>Invented twins of a vessel that were taken to burst, each at its wall, near the low end of its prediction.</summary>
    public static VesselEvidence Twins(PressureVessel vessel, int count = 5) => new(
        [.. new[] { 1.02, 0.94, 1.08, 0.98, 1.05 }.Take(count).Select((share, i) => new BurstTest(vessel, $"twin {i + 1}",
            vessel.Burst().WallLow * share, BurstTest.Wall))]);

    /// <summary>A 50 mm-class short chamber: PVC tube, one light carbon sleeve, a veil.</summary>
    public static PressureVessel ShortChamber { get; } = Trainer with
    {
        Name = "short chamber",
        Liner = new Liner(Stock.Solid("PVC-U"), 50.Millimetres(), 1.5.Millimetres()),
        Length = 150.Millimetres(),
        Plies = [new BraidedSleeve(Stock.Braid("carbon sleeve 50 mm light")), new VeilWrap(Stock.Veil("glass veil 30 g"))],
        NozzleEnd = Trainer.NozzleEnd with { Joints = [Tied with { Neck = 40.Millimetres() }] },
        ForwardEnd = new VesselEnd(DomedClosure.Ellipsoid(Stock.Solid("aluminium 6061-T6"), 2.Millimetres(), 50.Millimetres()),
            Tied with { Neck = 40.Millimetres() }),
    };
}

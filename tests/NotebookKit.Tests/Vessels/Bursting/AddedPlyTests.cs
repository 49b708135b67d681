using CsCheck;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Vessels.Bursting;

/// <summary>A ply laid over what is there never weakens a vessel.</summary>
public class AddedPlyTests
{
    private static readonly BondedPlug Plug = new(Samples.Stock.Adhesive("structural epoxy"), 30.Millimetres(),
        BondSurface.AbradedPlastic, BondSurface.AbradedMetal);

    private static readonly Gen<Ply> AnyPly = Gen.OneOf(
        Of(Samples.Stock.AllOf<Braid>()).Select(b => (Ply)new BraidedSleeve(b)),
        Gen.Select(Of(Samples.Stock.AllOf<Cloth>().Where(c => c.WarpShare.Percent < 90)), Gen.Int[1, 3],
            Of([ClothLay.WarpAxial, ClothLay.WarpAround, ClothLay.Bias]))
            .Where((c, _, lay) => lay != ClothLay.Bias || Math.Abs(c.WarpShare.Percent - 50) < 2)
            .Select((c, n, lay) => (Ply)new ClothWrap(c, n, lay) { Overlap = 200.Millimetres() }),
        Gen.Select(Of(Samples.Stock.AllOf<Cloth>().Where(c => c.WarpShare.Percent >= 90)), Gen.Int[1, 4])
            .Select((c, n) => (Ply)new HoopWrap(c, 2 * n)),
        Gen.Const((Ply)new VeilWrap(Samples.Stock.Veil("glass veil 30 g"))));

    private static readonly Gen<(PressureVessel Before, PressureVessel After)> Layups = Gen.Select(
        Gen.Double[45, 75], Gen.Bool, Gen.Int[0, 2], AnyPly.List[0, 3], AnyPly).Select((bore, isMetal, held, plies, added) =>
        {
            var liner = isMetal ? new Liner(Samples.Stock.Solid("aluminium 6061-T6"), bore.Millimetres(), 0.5.Millimetres())
                : new Liner(Samples.Stock.Solid("PVC-U"), bore.Millimetres(), 1.5.Millimetres());
            var before = Samples.Trainer with
            {
                Liner = liner,
                Plies = [new BraidedSleeve(Samples.Stock.Braid("carbon sleeve 65 mm heavy")), .. plies],
                ForwardEnd = Samples.Trainer.ForwardEnd with
                {
                    Joints = held switch { 0 => [new CarriedSleeve()], 1 => [Plug], _ => [new CarriedSleeve(), Plug] },
                    Closure = DomedClosure.Ellipsoid(Samples.Stock.Solid("aluminium 6061-T6"), 2.Millimetres(), bore.Millimetres()),
                },
            };
            return (before, before with { Plies = [.. before.Plies, added] });
        }).Where(v => v.Item2.Validate().All(f => f.Severity != FindingSeverity.Error));

    [Fact]
    public void A_further_ply_never_lowers_burst_or_lower_bound() => Layups.Sample(
        v => v.After.Burst() is var after && Lowered(v.Before.Burst(), after).Length == 0 && after.WallLow <= after.WallBurst,
        print: v => $"{Words(v.Before)}, then {Words(v.After)}: {Lowered(v.Before.Burst(), v.After.Burst())}",
        iter: 5000);

    // Before this was held, a light glass cloth over one sleeve took a fifth off the burst.
    [Fact]
    public void A_glass_cloth_over_a_sleeve_does_not_weaken_it()
    {
        foreach (var cloth in Samples.Stock.AllOf<Cloth>().Where(c => c.Name.Contains("glass", StringComparison.Ordinal)))
        {
            var before = Samples.Trainer.Burst();
            var after = (Samples.Trainer with { Plies = [.. Samples.Trainer.Plies, new ClothWrap(cloth)] }).Burst();
            Assert.True(NotBelow(before.WallBurst, after.WallBurst), $"{cloth}: {before.WallBurst} to {after.WallBurst}");
        }
    }

    private static string Lowered(BurstPrediction before, BurstPrediction after) => string.Join("; ", new[]
    {
        ("wall", before.WallBurst, after.WallBurst), ("low end of the wall", before.WallLow, after.WallLow),
        ("burst", before.Burst, after.Burst), ("lower bound", before.Low, after.Low), ("band", after.WallLow, after.WallBurst),
    }.Where(x => !NotBelow(x.Item2, x.Item3)).Select(x => $"{x.Item1} from {x.Item2.Bar:R} to {x.Item3.Bar:R} bar"));

    private static string Words(PressureVessel vessel) =>
        $"{vessel.Liner.Material} {vessel.Liner.Bore}, {string.Join(" + ", vessel.Plies.Select(p => p.Name))}, "
            + string.Join(" + ", vessel.ForwardEnd.Joints.Select(j => j.Name)) + $", weakest {vessel.Burst().WeakestPart}";

    private static Gen<T> Of<T>(IEnumerable<T> choices)
    {
        T[] all = [.. choices];
        return Gen.Int[0, all.Length - 1].Select(i => all[i]);
    }

    private static bool NotBelow(GaugePressure before, GaugePressure after) => after.Pascals >= before.Pascals * (1 - 1e-9);
}

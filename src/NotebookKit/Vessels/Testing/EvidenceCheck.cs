using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Bursting;
using NotebookKit.Vessels.Design;
using UnitsNet;

namespace NotebookKit.Vessels.Testing;

/// <summary>Whether tests bear out the prediction that a rating rests on, or contradict it.</summary>
internal static class EvidenceCheck
{
    /// <summary>What the tests say of the prediction; an error where an end of this design let go below what was predicted of it.</summary>
    public static IEnumerable<Finding> Find(PressureVessel vessel, IReadOnlyList<VesselTest> tests)
    {
        foreach (var test in tests.Distinct())
        {
            var predicted = test.Vessel.Burst();
            var end = predicted.Parts.Skip(1).MinBy(p => p.Burst.Pascals);
            var (low, high) = (At(test.Vessel, f => f.EfficiencyLow), At(test.Vessel, f => f.EfficiencyHigh));
            if (test is BurstTest { WallBurst: false } && end is not null && test.Pressure < end.Burst)
                yield return OfEnd(vessel, test, end);
            else if (test is BurstTest { WallBurst: true } && test.Pressure < low.WallLow)
                yield return VesselsFindings.WallBurstBelowPrediction(test.Id, test.Pressure, low.WallLow);
            var most = test switch
            {
                BurstTest { WallBurst: true } => high.WallBurst,
                BurstTest => GaugePressure.FromPascals(high.Parts.Skip(1).Select(p =>
                    p.Burst.Pascals).DefaultIfEmpty(high.WallBurst.Pascals).Max()),
                _ => high.Burst,
            };
            if (test.Pressure > most)
                yield return VesselsFindings.VesselHeldAbovePrediction(test.Id, test is BurstTest, test.Pressure, most);
        }
    }

    /// <summary>Errors where the proof of a rating would reach a pressure that has burst a vessel of the same wall or the same
    /// end.</summary>
    public static IEnumerable<Finding> FindProof(PressureVessel vessel, IReadOnlyList<VesselTest> tests, GaugePressure proof) =>
        tests.Distinct().OfType<BurstTest>().Where(t => t.Pressure <= proof
            && (t.WallBurst ? HasSameWall(vessel, t.Vessel) : SharesEnd(vessel, t.Vessel))).Select(t
            => VesselsFindings.PartOfSameDesignGaveWay(
            t.WallBurst, t.Id, t.Pressure, proof));

    /// <summary>Whether two vessels share an end: the same closure, held the same way, in the same bore. What the model makes of it doesn't
    /// count.</summary>
    public static bool SharesEnd(PressureVessel one, PressureVessel other)
    {
        if (ReferenceEquals(one, other)) return true;
        VesselEnd[] ends = [one.NozzleEnd, one.ForwardEnd], others = [other.NozzleEnd, other.ForwardEnd];
        return Same(one.Liner.Bore, other.Liner.Bore) && ends.Any(e => others.Any(o => IsSame(e, Sleeves(one), o, Sleeves(other))));
    }

    private static Finding OfEnd(PressureVessel vessel, VesselTest test, PartMargin end)
    {
        var seen = $"Vessel {test.Id} let go at an end, bond or fitting at {test.Pressure}, where its weakest, the {end.Name}, was "
            + $"predicted to hold to {end.Burst}";
        return SharesEnd(vessel, test.Vessel)
            ? VesselsFindings.EndModelIsContradicted(seen, vessel.Name)
            : VesselsFindings.OtherEndsShareContradictedModel(seen, vessel.Name);
    }

    private static BurstPrediction At(PressureVessel vessel, Func<Fabrication, Ratio> efficiency) =>
        (vessel with { Fabrication = vessel.Fabrication with { Efficiency = efficiency(vessel.Fabrication) } }).Burst();

    private static bool HasSameWall(PressureVessel one, PressureVessel other) =>
        Same(one.Liner.Bore, other.Liner.Bore) && Same(one.Liner.Wall, other.Liner.Wall) && one.Plies.SequenceEqual(other.Plies);

    private static int Sleeves(PressureVessel vessel) => vessel.Plies.Count(p => p is BraidedSleeve);

    private static bool IsSame(VesselEnd one, int sleeves, VesselEnd other, int otherSleeves) =>
        one.Closure.Shape == other.Closure.Shape && one.Closure.Material.Name == other.Closure.Material.Name
        && Same(one.Closure.Wall, other.Closure.Wall) && Same(one.Closure.Opening, other.Closure.Opening)
        && (one.Fitting is null || other.Fitting is null || one.Fitting.Equals(other.Fitting)) && Equals(one.Discs, other.Discs)
        && one.Joints.Count == other.Joints.Count && one.Joints.Zip(other.Joints,
            (a, b) => IsSame(a, sleeves, b, otherSleeves)).All(s => s);

    // A share that a bent sleeve delivers is the model's, not the end's: another figure is no other end.
    private static bool IsSame(EndJoint one, int sleeves, EndJoint other, int otherSleeves) => (one, other) switch
    {
        (BondedPlug a, BondedPlug b) => Same(a.Overlap, b.Overlap) && a.Adhesive.Name == b.Adhesive.Name
            && a.VesselSurface == b.VesselSurface
            && a.PlugSurface == b.PlugSurface && Same(a.BondLine, b.BondLine) && Same(a.SkirtWall, b.SkirtWall),
        (CarriedSleeve, CarriedSleeve) => sleeves == otherSleeves,
        _ => one.Equals(other),
    };

    private static bool Same(Length one, Length other) => Math.Abs(one.Millimeters - other.Millimeters) < 0.05;
}

using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Bursting;
using NotebookKit.Vessels.Design;
using UnitsNet;

namespace NotebookKit.Vessels.Testing;

/// <summary>Whether tests bear out the prediction that a rating rests on, or contradict it.</summary>
internal static class EvidenceCheck
{
    // Common practice, no source: past this a gauge or a unit is wrong.
    private const double MaximumRatio = 2;

    // Common practice, no source: an end of another design that let go this close to its prediction bears the model out.
    private const double OtherEndsBearOut = 0.9;

    // Two closures of one shape, wall and opening whose meridians agree at one bore have the same depth.
    private static readonly Length AnyBore = 60.Millimetres();

    /// <summary>What the tests say of the prediction; errors where a test can't be of this design, or its pressure can't be true.</summary>
    public static IEnumerable<Finding> Find(PressureVessel vessel, IReadOnlyList<VesselTest> tests, TestedVessels? known = null)
    {
        known ??= new();
        foreach (var test in tests.Distinct())
        {
            if (!HasSameWall(vessel, test.Vessel))
            {
                yield return VesselsFindings.TestIsOfAnotherLayup(test.Id, LayupOf(test.Vessel), vessel.Name, LayupOf(vessel));
                continue;
            }

            if (GrowthVerbs.Compare(test, known) is { IsTooMuch: true } grown) yield return grown.Findings[0];
            var burst = test as BurstTest;
            var failed = burst is null ? null : known.Of(test.Vessel).Burst.Parts.FirstOrDefault(p => burst.IsOf(p.Name));
            var (low, high) = (known.Of(test.Vessel).Low, known.Of(test.Vessel).High);
            if (failed is not null && !burst!.IsOfWall
                && test.Sure < (SharesEnd(vessel, test.Vessel) ? failed.Burst : OtherEndsBearOut * failed.Burst))
                yield return OfEnd(vessel, test, failed);
            else if (burst is { IsOfWall: true } && test.Sure < low.WallLow)
                yield return VesselsFindings.WallBurstBelowPrediction(test.Id, test.Pressure, low.WallLow);
            var most = burst is { IsOfWall: true } ? high.WallBurst : failed?.Burst ?? high.Burst;
            // An end may be far stronger than its wide band says; what nothing on the vessel could bear is no reading.
            var all = GaugePressure.FromPascals(high.Parts.Max(p => p.Burst.Pascals));
            if (test.Pressure > MaximumRatio * all)
                yield return VesselsFindings.VesselHeldFarAbovePrediction(test.Id, burst is not null, test.Pressure, all, MaximumRatio);
            else if (test.Pressure > most)
                yield return VesselsFindings.VesselHeldAbovePrediction(test.Id, burst is not null, test.Pressure, most);
        }
    }

    /// <summary>What growths measured in tests of this wall say that calls for no check.</summary>
    public static IEnumerable<Finding> FindGrowths(PressureVessel vessel, IReadOnlyList<VesselTest> tests, TestedVessels known) =>
        tests.Distinct().Where(t => HasSameWall(vessel, t.Vessel)).Select(t => GrowthVerbs.Compare(t, known))
            .Where(g => g is { IsTooMuch: false }).Select(g => g!.Findings[0]);

    /// <summary>Leaks that a test showed below the proof of the next vessel.</summary>
    public static IEnumerable<Finding> FindLeaks(IReadOnlyList<VesselTest> tests, GaugePressure proof) =>
        tests.Distinct().Select(t => (t.Id, Seen: t.Leak)).Where(t => t.Seen?.Pressure < proof)
            .Select(t => VesselsFindings.TwinLeaked(t.Id, t.Seen!.Where, t.Seen.Pressure, t.Seen.DropsPerMinute, proof));

    /// <summary>Errors where the proof of a rating would reach a pressure that has burst a vessel of the same wall or the same
    /// end.</summary>
    public static IEnumerable<Finding> FindProof(PressureVessel vessel, IReadOnlyList<VesselTest> tests, GaugePressure proof) =>
        tests.Distinct().OfType<BurstTest>().Where(t => t.Sure <= proof
            && (t.IsOfWall ? HasSameWall(vessel, t.Vessel) : SharesEnd(vessel, t.Vessel))).Select(t
            => VesselsFindings.PartOfSameDesignGaveWay(t.IsOfWall, t.Id, t.Pressure, proof));

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
        var seen = $"The {end.Name} of vessel {test.Id} let go at {test.Pressure}, where it was predicted to hold to {end.Burst}";
        return SharesEnd(vessel, test.Vessel)
            ? VesselsFindings.EndModelIsContradicted(seen, vessel.Name)
            : VesselsFindings.OtherEndsShareContradictedModel(seen, vessel.Name);
    }

    /// <summary>Whether two vessels have the same layup on the same liner.</summary>
    private static bool HasSameWall(PressureVessel one, PressureVessel other) =>
        Same(one.Liner.Bore, other.Liner.Bore) && Same(one.Liner.Wall, other.Liner.Wall)
        && one.Liner.Material?.Name == other.Liner.Material?.Name && one.Resin.Name == other.Resin.Name
        && one.Plies.SequenceEqual(other.Plies);

    private static string LayupOf(PressureVessel vessel) =>
        $"{string.Join(" + ", vessel.Plies.Select(p => p.Name).DefaultIfEmpty("no ply"))} in {vessel.Resin.Name} on "
        + $"{vessel.Liner.Material?.Name ?? "no liner"}, bore {vessel.Liner.Bore.Show()}, {vessel.Liner.Wall.Show()} thick";

    /// <summary>Whether the nozzle or the forward ends of two vessels are of one design, so that a test of one tells of the
    /// other.</summary>
    public static bool SharesEnd(PressureVessel one, PressureVessel other, Func<PressureVessel, VesselEnd> end) =>
        ReferenceEquals(one, other)
        || (Same(one.Liner.Bore, other.Liner.Bore) && IsSame(end(one), Sleeves(one), end(other), Sleeves(other)));

    /// <summary>Whether what holds the nozzle or the forward closures of two vessels is of one design: sleeve, tail and bond don't know of
    /// the hole in the closure and what fills it.</summary>
    public static bool SharesHold(PressureVessel one, PressureVessel other, Func<PressureVessel, VesselEnd> end) =>
        ReferenceEquals(one, other)
        || (Same(one.Liner.Bore, other.Liner.Bore) && HoldsAlike(end(one), Sleeves(one), end(other), Sleeves(other)));

    /// <summary>Whether an end of one vessel is of the design of an end of another, whichever ends those are; of what holds them
    /// alone, or of hole and fitting as well.</summary>
    public static bool AreAlike(PressureVessel one, Func<PressureVessel, VesselEnd> end, PressureVessel other,
        Func<PressureVessel, VesselEnd> otherEnd, bool holdAlone) =>
        Same(one.Liner.Bore, other.Liner.Bore) && (holdAlone
            ? HoldsAlike(end(one), Sleeves(one), otherEnd(other), Sleeves(other))
            : IsSame(end(one), Sleeves(one), otherEnd(other), Sleeves(other)));

    private static int Sleeves(PressureVessel vessel) => vessel.Plies.Count(p => p is BraidedSleeve);

    private static bool IsSame(VesselEnd one, int sleeves, VesselEnd other, int otherSleeves) =>
        Same(one.Closure.Opening, other.Closure.Opening)
        && (one.Fitting is null || other.Fitting is null || one.Fitting.Equals(other.Fitting))
        && HoldsAlike(one, sleeves, other, otherSleeves);

    private static bool HoldsAlike(VesselEnd one, int sleeves, VesselEnd other, int otherSleeves) =>
        one.Closure.Shape == other.Closure.Shape && one.Closure.Material.Name == other.Closure.Material.Name
        && Same(one.Closure.Wall, other.Closure.Wall) && Same(one.Closure.Meridian(AnyBore), other.Closure.Meridian(AnyBore))
        && Equals(one.Discs, other.Discs) && one.Joints.Count == other.Joints.Count
        && one.Joints.Zip(other.Joints, (a, b) => IsSame(a, sleeves, b, otherSleeves)).All(s => s);

    // What a bent sleeve delivers and its friction are the model's, not the end's: another figure is no other end. Another neck or tail is.
    private static bool IsSame(EndJoint one, int sleeves, EndJoint other, int otherSleeves) => (one, other) switch
    {
        (BondedPlug a, BondedPlug b) => Same(a.Overlap, b.Overlap) && a.Adhesive.Name == b.Adhesive.Name
            && a.VesselSurface == b.VesselSurface
            && a.PlugSurface == b.PlugSurface && Same(a.BondLine, b.BondLine) && Same(a.SkirtWall, b.SkirtWall),
        (CarriedSleeve a, CarriedSleeve b) => sleeves == otherSleeves && a with { Delivers = b.Delivers, Friction = b.Friction } == b,
        _ => one.Equals(other),
    };

    private static bool Same(Length one, Length other) => Math.Abs(one.Millimeters - other.Millimeters) < 0.05;
}

using NotebookKit.Provenance;
using NotebookKit.Vessels.Bursting;
using NotebookKit.Vessels.Design;
using NotebookKit.Vessels.Ends;
using NotebookKit.Vessels.Testing;
using UnitsNet;

namespace NotebookKit.Vessels.Uncertainty;

/// <summary>From a burst prediction and tests of whole vessels to evidence part by part. Source: <see cref="PartEvidence"/>.</summary>
public static class PartVerbs
{
    // Parts predicted past this can't be the weakest of a vessel that is taken here.
    private const double MaximumBar = 5000;

    private const string Nozzle = "nozzle end", Forward = "forward end";

    /// <summary>
    /// Every part of a predicted vessel. The wall stands at the low end of its prediction and grows with its plies' volume; ends don't
    /// grow.
    /// A part that is predicted past 5000 bar, or not at all, is left out. Source: as <see cref="BurstPrediction"/>.
    /// </summary>
    /// <param name="prediction">The burst prediction of the very vessel.</param>
    public static IReadOnlyList<PredictedPart> PredictedParts(this BurstPrediction prediction)
    {
        ArgumentNullException.ThrowIfNull(prediction);
        var vessel = prediction.Vessel;
        return
        [
            new PredictedPart(prediction.Parts[0].Name, prediction.WallLow)
            {
                Stressed = Stressed(prediction, vessel.Length), Prior = PartPrior.Of(vessel.Fabrication),
            },
            .. prediction.Parts.Skip(1).Where(p => p.Burst.Bar <= MaximumBar).Select(p => new PredictedPart(p.Name, p.Burst)),
        ];
    }

    /// <summary>The test part by part: what gave way is a measurement, all else held at least as much. Source: as
    /// <see cref="PartEvidence"/>.</summary>
    /// <param name="test">The test; of a burst the part that gave way is given.</param>
    /// <exception cref="InvalidDesignException">The test isn't valid.</exception>
    public static PartTest ToPartTest(this VesselTest test)
    {
        ArgumentNullException.ThrowIfNull(test);
        InvalidDesignException.ThrowIfAny($"Test of {test.Id}", VesselEvidence.Of(test).Validate());
        return Of(test, test.Vessel.Burst().PredictedParts());
    }

    /// <summary>
    /// What tests teach of every part of a vessel. An end of another design than the vessel's own says nothing of it. What is compared with
    /// a test is the prediction of the vessel in hand: a part that is the same can't be predicted otherwise for a twin. Source: see the
    /// result's model card.
    /// </summary>
    /// <param name="evidence">The tests, oldest first, all of the vessel's own layup.</param>
    /// <param name="vessel">The vessel in hand.</param>
    /// <exception cref="InvalidDesignException">A test isn't valid, or is of another layup.</exception>
    public static PartLearning LearnParts(this VesselEvidence evidence, PressureVessel vessel)
    {
        ArgumentNullException.ThrowIfNull(evidence);
        ArgumentNullException.ThrowIfNull(vessel);
        InvalidDesignException.ThrowIfAny("Vessel tests",
            [.. evidence.Validate(), .. EvidenceCheck.Find(vessel, evidence.Tests).Where(f => f.Severity == FindingSeverity.Error)]);
        return evidence.LearnParts(vessel.Burst());
    }

    /// <summary>The same, of checked tests.</summary>
    internal static PartLearning LearnParts(this VesselEvidence evidence, BurstPrediction prediction, TestedVessels? known = null)
    {
        var parts = prediction.PredictedParts();
        known ??= new();
        return PartEvidence.Of([.. evidence.Tests.Select(t => WithOtherEnd(Of(t, PartsOf(t.Vessel, prediction, parts, known)), t,
            prediction.Vessel, parts))]).Learn(parts, evidence.Batch);
    }

    /// <summary>The parts of a test that may be made on such a vessel, or on a short twin of it.</summary>
    internal static IReadOnlyList<PredictedPart> Shortened(this BurstPrediction prediction, Length length) =>
        [.. prediction.PredictedParts().Select(p => p.Stressed is null ? p : p with { Stressed = Stressed(prediction, length) })];

    private static PartTest Of(VesselTest test, IReadOnlyList<PredictedPart> parts) => test is BurstTest burst
        ? new PartBurst(test.Id, test.Sure, NameOf(burst, parts), parts) { Batch = test.Batch }
        : new PartHeld(test.Id, test.Sure, parts) { Batch = test.Batch };

    private static string NameOf(BurstTest burst, IReadOnlyList<PredictedPart> parts)
    {
        var named = parts.FirstOrDefault(p => p.Is(burst.Failed!));
        return named?.Name ?? parts.First(p => p.Is(Other(burst.Failed!, burst.Vessel))).Name;
    }

    private static List<PredictedPart> PartsOf(PressureVessel tested, BurstPrediction own, IReadOnlyList<PredictedPart> parts,
        TestedVessels known)
    {
        if (ReferenceEquals(tested, own.Vessel)) return [.. parts];
        var list = new List<PredictedPart> { parts[0] with { Stressed = Stressed(own, tested.Length) } };
        foreach (var part in known.Of(tested).Burst.PredictedParts().Skip(1))
        {
            var same = SharesSide(part.Name, own.Vessel, tested) ? parts.FirstOrDefault(p => p.Is(part.Name)) : null;
            list.Add(same ?? part with { Name = Other(part.Name, tested) });
        }

        return list;
    }

    // An end that let go tells of every end of its design, at whichever end of the vessel: the other one is not taken to have held.
    private static PartTest WithOtherEnd(PartTest test, VesselTest of, PressureVessel own, IReadOnlyList<PredictedPart> parts)
    {
        if (test is not PartBurst burst || of is not BurstTest { IsOfWall: false, Failed: { } failed }) return test;
        var nozzle = failed.Trim().StartsWith(Nozzle, StringComparison.OrdinalIgnoreCase);
        Func<PressureVessel, VesselEnd> tested = nozzle ? v => v.NozzleEnd : v => v.ForwardEnd,
            other = nozzle ? v => v.ForwardEnd : v => v.NozzleEnd;
        var name = failed.Trim() is var whole && whole.IndexOf(", ", StringComparison.Ordinal) is > 0 and var cut
            ? $"{(nozzle ? Forward : Nozzle)}{whole[cut..]}" : "";
        return parts.FirstOrDefault(p => p.Is(name)) is { } like
            && EvidenceCheck.AreAlike(of.Vessel, tested, own, other, EndModel.IsOfHold(like.Name, other(own)))
            ? burst with { AtOtherEnd = like.Name } : test;
    }

    private static bool SharesSide(string part, PressureVessel one, PressureVessel other)
    {
        Func<PressureVessel, VesselEnd> end = part.StartsWith("nozzle end", StringComparison.OrdinalIgnoreCase) ? v => v.NozzleEnd
            : v => v.ForwardEnd;
        return EndModel.IsOfHold(part, end(one)) ? EvidenceCheck.SharesHold(one, other, end) : EvidenceCheck.SharesEnd(one, other, end);
    }

    private static string Other(string part, PressureVessel tested) => $"{part.Trim()} of {tested.Name}";

    /// <summary>Volume of what bears the load: of the plies, of the liner where there is none.</summary>
    private static Volume Stressed(BurstPrediction prediction, Length length)
    {
        var thickness = prediction.Wall.Thickness > 0 ? prediction.Wall.Thickness : prediction.Vessel.Liner.Wall.Meters;
        return Volume.FromCubicMeters(2 * Math.PI * prediction.Wall.Radius * thickness * length.Meters);
    }
}

using System.Collections.Frozen;
using NotebookKit.Clearance.Cards;
using NotebookKit.Clearance.Service;
using NotebookKit.DesignFiles;
using NotebookKit.DesignFiles.Parts;
using NotebookKit.Proofing.Records;
using NotebookKit.Provenance;

namespace NotebookKit.Clearance;

/// <content>What the papers of a day say where nothing is computed: the label against the service record, the tests against those of the
/// proof; and the card of a vehicle that can't be flown.</content>
public static partial class DayVerbs
{
    private static string Own(Design design, int stage) => design.Stages.Count == 1 ? "" : stage == 0 ? "booster: " : "sustainer: ";

    // A card that can't be computed is a no with its reason, not no card.
    private static CardWithoutFlight Without(Design design, FlightDay day, IReadOnlyList<ProofRecord> proofs,
        IReadOnlyList<ServiceRecord> services, Dictionary<string, string> missing, IReadOnlyList<Finding> reasons)
    {
        List<(string Own, StageEvidence Evidence)> stages = [.. design.Stages.Select((s, i) => (Own(design, i), (StageEvidence)
            new StackStageEvidence
            {
                Vessel = Proved(s, day.Vessels[i], proofs, missing, Own(design, i)),
                Service = ServiceOf(day.Vessels[i], services, missing, Own(design, i)),
                VesselTemperature = day.Vessels[i].WallTemperature, ResinMoisture = day.Vessels[i].ResinMoisture,
                Label = day.Vessels[i].Label,
            }))];
        return new(design.Name, design.Site, day.Day, day.Flight, stages, missing.ToFrozenDictionary(StringComparer.Ordinal), reasons);
    }

    private static IEnumerable<Finding> Papers(DesignStage stage, VesselOfDay vessel, bool hasGear, IReadOnlyList<ServiceRecord> services,
        Dictionary<string, string> missing, string own)
    {
        if (vessel.Label is null) missing[$"{own}{VesselJudge.Label}"] = ClearanceFindings.DayGivesNoLabel(vessel.Serial);
        // One pad fills both stages; that nobody named its parts is said once.
        if (!hasGear) missing[$"{own}{StageJudge.GearToday}"] = ClearanceFindings.DayNamesNoGear(
            [.. (stage.Pad?.Parts ?? []).Where(p => p.IsGiven).Select(p => p.Name)]);
        return ServiceOf(vessel, services, missing, own) is not { } service ? []
            : TestsSinceProof(stage.TestMarks, [.. service.Events.OfType<Proved>()], vessel.Serial, own);
    }

    // A test that was deleted or altered after the proof makes the vessel look better than the proof took it to be.
    private static IEnumerable<Finding> TestsSinceProof(IReadOnlyList<TestMark> now, IReadOnlyList<Proved> proofs, string serial,
        string own)
    {
        if (proofs is not [.., var last]) yield break;
        if (last.Tests is not { } then)
        {
            yield return ClearanceFindings.ProofDoesNotListTests(own, serial);
            yield break;
        }

        List<TestMark> gone = [.. then.Except(now)], come = [.. now.Except(then)];
        foreach (var test in gone)
        {
            yield return come.Exists(t => t.Name == test.Name) ? ClearanceFindings.TestWasAltered(own, serial, test.Name, last.Day)
                : ClearanceFindings.TestIsGone(own, serial, test.Name, last.Day);
        }

        foreach (var test in come.Where(t => !gone.Exists(g => g.Name == t.Name)))
            yield return ClearanceFindings.TestIsNew(own, serial, test.Name, last.Day);
        foreach (var earlier in proofs.SkipLast(1))
            foreach (var test in (earlier.Tests ?? []).Except(then))
                yield return ClearanceFindings.TestWasLeftOutBeforeProof(own, serial, test.Name, earlier.Day, last.Day);
    }
}

using NotebookKit.Clearance.Service;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Clearance.Cards;

/// <summary>Holds the papers of one vessel against each other: its proof, its service record, its label, its temperature.</summary>
internal sealed class VesselJudge(CardJudgement card, DateOnly? day, LifeLimits life, string own)
{
    /// <summary>Name of the label among the pieces of evidence.</summary>
    public const string Label = "label of the vessel";

    // A service record keeps pressures with a few digits.
    private const double HeldRoundingPa = 1000;

    /// <summary>Judges all of it.</summary>
    /// <param name="evidence">What was handed over.</param>
    public void Judge(StageEvidence evidence)
    {
        var (vessel, service) = (evidence.Vessel, evidence.Service);
        var isProved = card.Shown($"{own}proved vessel", vessel is not null, vessel?.ToString() ?? "",
            "An accepted proof record makes one: record.ToProvedVessel(rating).");
        var hasService = card.Shown($"{own}service record", service is not null,
            service is null ? "" : $"{service.Vessel} {service.Serial}, {service.Events.Count} events, last line "
            + $"{Short(service.HeadFingerprint)}", "Read the service file of the vessel.");
        if (evidence.Label is not null || card.Misses($"{own}{Label}"))
            card.Shown($"{own}{Label}", evidence.Label is not null, $"mark {evidence.Label}", "Read the mark on the vessel's label.");
        card.Shown($"{own}{ResinHeat.Evidence}", evidence.VesselTemperature is not null,
            evidence.VesselTemperature?.Show(UnitsNet.Units.TemperatureUnit.DegreeCelsius) ?? "", ResinHeat.Remedy);
        if (isProved)
        {
            if (day is { } today && vessel!.Day > today)
                card.Add(ClearanceFindings.ProofIsAfterFlight(own, vessel.Day, today));
            foreach (var finding in vessel!.Findings.Where(f => f.Severity == FindingSeverity.Warning)) card.Add(finding);
        }

        if (!hasService) return;
        Service(service!, vessel);
        if (evidence.Label is { } label && label != service!.EndMark)
        {
            var at = service.Entries.ToList().FindIndex(e => e.EndMark == label);
            card.Add(at < 0 ? ClearanceFindings.LabelIsNotOfRecord(own, service.Serial, label)
                : ClearanceFindings.RecordGoesOnAfterLabel(own, service.Serial, label, service.Entries.Count - 1 - at));
        }
    }

    private void Service(ServiceRecord service, Proofing.Records.ProvedVessel? vessel)
    {
        if (!service.IsIntact)
            card.AddRange(service.Findings.Where(f => f.Severity == FindingSeverity.Error).Select(f => f
                with { Message = $"{own}service record: {f.Message}" }));
        if (vessel is not null)
        {
            if (!Same(service.Vessel, vessel.Vessel) || !Same(service.Serial, vessel.Serial))
                card.Add(ClearanceFindings.ServiceRecordIsOfAnotherVessel(
                    own, $"{service.Vessel} {service.Serial}", $"{vessel.Vessel} {vessel.Serial}"));
            // By the day of the proof, not by its place in the file: an old proof may be written down late.
            var last = (day is { } asked ? Standing(service, asked).LastProof : null) ?? service.Events.OfType<Proved>().LastOrDefault();
            if (last is null)
                card.Add(ClearanceFindings.ServiceRecordHoldsNoProof(own));
            else if (!string.Equals(last.Record, vessel.Fingerprint, StringComparison.OrdinalIgnoreCase))
                card.Add(ClearanceFindings.ProofIsNotTheLast(own, last.Record, vessel.Fingerprint));
            else if (last.Day != vessel.Day)
                card.Add(ClearanceFindings.ProofDatesDiffer(own, last.Day, vessel.Day));
            else if (last.Held.Pascals > vessel.Held.Pascals + HeldRoundingPa)
                card.Add(ClearanceFindings.HeldIsNotThatOfProof(own, last.Held, vessel.Held));
            if (last is { Rules.Length: > 0 } && !Same(last.Rules, vessel.RuleSet))
                card.Add(ClearanceFindings.RuleIsNotThatOfProof(own, service.Serial, last.Rules, vessel.RuleSet, last.Day));
        }

        if (day is not { } on) return;
        var status = Standing(service, on);
        if (status.InspectionDue)
            card.Add(ClearanceFindings.InspectionOfDayIsMissing(own, $"{service.Vessel} {service.Serial}", on));
        card.AddRange(status.Findings.Select(f => f with { Message = own + f.Message }));
    }

    // Limits of one's own may be stricter than the club's; looser ones change nothing.
    public ServiceStatus Standing(ServiceRecord service, DateOnly on)
    {
        var given = service.StatusOn(on, life);
        var club = service.StatusOn(on, LifeLimits.Club);
        return given.Standing == ServiceStanding.InService ? club : given;
    }

    private static bool Same(string one, string other) => string.Equals(one.Trim(), other.Trim(), StringComparison.OrdinalIgnoreCase);

    private static string Short(string fingerprint) => fingerprint.Length > 12 ? fingerprint[..12] : fingerprint;
}

using NotebookKit.Provenance;

namespace NotebookKit.Clearance.Service;

/// <summary>What was written to a service record. It lies on the disk when this is in hand.</summary>
/// <param name="Entry">The event with its number and fingerprint.</param>
/// <param name="Findings">What was found at the end of the file and mended.</param>
public sealed record ServiceReceipt(ServiceEntry Entry, IReadOnlyList<Finding> Findings);

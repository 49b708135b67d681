namespace NotebookKit.Record;

/// <summary>Something outside the record that requirements and decisions rest on, such as the proof of a vessel, with the fingerprint it had then.</summary>
/// <param name="Name">Name, unique in its record: "proof of Curlew C-1".</param>
/// <param name="Fingerprint">SHA-256 of the evidence, 64 hexadecimal digits: another fingerprint is other evidence.</param>
/// <param name="What">What it is, one line.</param>
public sealed record EvidenceMark(string Name, string Fingerprint, string What);

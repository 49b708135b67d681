using NotebookKit.Provenance;

namespace NotebookKit.Clearance.Service;

/// <summary>Reads a service record from its bytes and names all that is wrong with it.</summary>
internal sealed class ServiceRecordReader
{
    private const string Distrust = "the record isn't to be trusted from there on";
    private readonly List<ServiceEntry> _entries = [];
    private readonly List<Finding> _findings = [];
    private string _vessel = "", _serial = "";
    private int _next = 1;
    private DateTimeOffset _lastAt = DateTimeOffset.MinValue;

    private ServiceRecordReader()
    {
    }

    public static ServiceRecord Read(ReadOnlyMemory<byte> bytes, string? knownHead)
    {
        var reader = new ServiceRecordReader();
        var lines = reader.Lines(bytes);
        var fingerprints = lines.Select(l => ServiceLine.Fingerprint(l.Span)).ToList();
        if (reader.ReadHeader(lines))
            for (var i = 1; i < lines.Count; i++) reader.ReadEvent(i + 1, lines[i], fingerprints[i], fingerprints[i - 1],
                ServiceLine.IsWhole(lines[i - 1].Span));
        if (knownHead is not null && !fingerprints.Contains(knownHead, StringComparer.OrdinalIgnoreCase))
            reader.Wrong($"The line whose fingerprint was kept elsewhere ({knownHead}) isn't in this record: lines at its end were taken "
                + "away, or the record was replaced. Look for the right file.");
        return new ServiceRecord(reader._vessel, reader._serial, [.. reader._entries], [.. reader._findings],
            fingerprints.Count > 0 ? fingerprints[^1] : "");
    }

    /// <summary>The complete lines, without line feeds, and what stands after the last line feed.</summary>
    public static (IReadOnlyList<ReadOnlyMemory<byte>> Lines, ReadOnlyMemory<byte> Remainder) Split(ReadOnlyMemory<byte> bytes)
    {
        var lines = new List<ReadOnlyMemory<byte>>();
        while (bytes.Span.IndexOf((byte)'\n') is var end and >= 0)
        {
            lines.Add(bytes[..end]);
            bytes = bytes[(end + 1)..];
        }

        return (lines, bytes);
    }

    private IReadOnlyList<ReadOnlyMemory<byte>> Lines(ReadOnlyMemory<byte> bytes)
    {
        var (lines, rest) = Split(bytes);
        if (rest.Length == 0) return lines;
        if (ServiceLine.IsWhole(rest.Span))
        {
            _findings.Add(ClearanceFindings.LastLineLacksLineEnd(lines.Count + 1));
            return [.. lines, rest];
        }

        _findings.Add(ClearanceFindings.LastLineIsCutOff(lines.Count + 1, rest.Length));
        return lines;
    }

    private bool ReadHeader(IReadOnlyList<ReadOnlyMemory<byte>> lines)
    {
        if (lines.Count == 0) return Wrong("The file has no whole first line: it isn't a service record, or was cut off when it was "
            + "made. Make the record again under another name.");
        if (ServiceLineReader.Open(lines[0]) is not { } line) return Wrong("Line 1 isn't one JSON object: this isn't a service record, "
            + "or its first line was spoiled.");
        if (!line.IsHeader || line.Format != ServiceLine.Format) return Wrong("Line 1 isn't the first line of a service record: the "
            + $"line that says \"{ServiceLine.Format}\" is missing.");
        var version = line.Version;
        if (version > ServiceLine.Version)
            return Wrong($"Line 1 says version {version}; this program reads version {ServiceLine.Version}, and nothing of the record "
                + "was read. Use the newer program.");
        (_vessel, _serial) = (line.Vessel, line.Serial);
        if (version < 1) Wrong($"Line 1 says version {version}, which there is none of.");
        foreach (var words in line.Wrong) Wrong($"Line 1 {words}.");
        if (!ServiceLine.IsWhole(lines[0].Span)) Wrong($"Line 1 was changed after it was written (its check sum doesn't fit): {Distrust}.");
        return true;
    }

    private void ReadEvent(int number, ReadOnlyMemory<byte> bytes, string fingerprint, string before, bool beforeIsWhole)
    {
        var due = _next++;
        if (ServiceLineReader.Open(bytes) is not { } line)
        {
            Wrong($"Line {number} isn't one JSON object: it was spoiled, and {Distrust}.");
            return;
        }

        if (!ServiceLine.IsWhole(bytes.Span)) Wrong($"Line {number} was changed after it was written (its check sum doesn't "
            + $"fit): {Distrust}.");
        var (vessel, serial) = (line.Vessel, line.Serial);
        if (line.IsHeader)
        {
            Wrong($"Line {number} is a second first line, of {vessel} {serial}: two records were run together. Go back to the files "
                + "before that.");
            return;
        }

        if (line.Wrong.Count == 0 && (vessel, serial) != (_vessel, _serial))
            Wrong($"Line {number} is of {vessel} {serial}, but this is the record of {_vessel} {_serial}: {Distrust}.");
        CheckPlace(number, line, due, before, beforeIsWhole);
        var at = line.At;
        if (line.Wrong.Count == 0)
        {
            if (at.UtcDateTime.Date < _lastAt.UtcDateTime.Date)
                Wrong($"Line {number} is dated {Day(at)}, before an earlier line's {Day(_lastAt)}: a clock was set back, or "
                    + "lines were moved.");
            else _lastAt = at;
        }

        if (line.RemovedBytes is > 0 and var removed)
            _findings.Add(ClearanceFindings.CutOffLineWasTakenAway(number, removed));
        if (line.Event(at) is { } happened) _entries.Add(new(number, _next - 1, at, happened, fingerprint));
        foreach (var words in line.Wrong.Distinct()) Wrong($"Line {number} {words}.");
    }

    private void CheckPlace(int number, ServiceLineReader line, int due, string before, bool beforeIsWhole)
    {
        var (sequence, previous) = (line.Sequence, line.Previous);
        if (line.Wrong.Count > 0) return;
        if (sequence > due)
        {
            Wrong($"Before line {number}, {(sequence - due == 1 ? "a line is" : $"{sequence - due} lines are")} missing: it has number "
                + $"{sequence} where {due} is due, and {Distrust}.");
            _next = sequence + 1;
        }
        else if (sequence < due)
        {
            Wrong($"Line {number} has number {sequence} where {due} is due: lines were moved or are there twice, and {Distrust}.");
            _next = sequence + 1;
        }
        else if (beforeIsWhole && previous != before)
        {
            Wrong($"Line {number} doesn't follow from line {number - 1}: that line was changed, or another was put in its place, "
                + $"and {Distrust}.");
        }
    }

    private static string Day(DateTimeOffset at) => ServiceText.Of(DateOnly.FromDateTime(at.UtcDateTime));

    private bool Wrong(string sentence)
    {
        _findings.Add(Finding.Error(sentence));
        return false;
    }
}

using System.Globalization;
using NotebookKit.Numerics;
using NotebookKit.Numerics.Disks;
using NotebookKit.Provenance;

namespace NotebookKit.Clearance.Service;

/// <summary>
/// A vessel's service record on disk: a plain file, one JSON line an event, appended and never rewritten. Several programs may append at
/// once; a line that was reported
/// as written is on the disk. Folders on a network may not hold the lock that this rests on: keep the file on a disk of the machine.
/// </summary>
/// <remarks>Source: FIPS 180-4, Secure Hash Standard, 2015, for the fingerprints.</remarks>
public sealed class ServiceFile
{
    private const int LongestName = 60;
    private const long LargestFile = 64 << 20;

    // About ten seconds; a write takes some thousandths of one.
    private const int LockTries = 8000;

    // Windows says that a file is shared or locked; Linux and macOS that waiting would block.
    private static readonly int[] InUse = [unchecked((int)0x80070020), unchecked((int)0x80070021), 11, 35];
    private readonly TimeProvider _clock;

    private ServiceFile(string location, string vessel, string serial, TimeProvider? clock)
    {
        (Location, Vessel, Serial) = (location, vessel, serial);
        _clock = clock ?? TimeProvider.System;
    }

    /// <summary>Path of the file.</summary>
    public string Location { get; }

    /// <summary>Name of the vessel.</summary>
    public string Vessel { get; }

    /// <summary>Serial of the vessel.</summary>
    public string Serial { get; }

    /// <summary>Begins the record of a vessel.</summary>
    /// <param name="path">Path of the file, for example "curlew-c1.service.jsonl"; it must not exist.</param>
    /// <param name="vessel">Name of the vessel.</param>
    /// <param name="serial">Serial of the vessel.</param>
    /// <param name="clock">Clock that gives events their time; the system's unless given.</param>
    /// <exception cref="InvalidDesignException">Name or serial is missing or too long.</exception>
    /// <exception cref="ServiceFileException">The file exists, or can't be written.</exception>
    public static ServiceFile Create(string path, string vessel, string serial, TimeProvider? clock = null)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        InvalidDesignException.ThrowIfAny(
            "Service record", [.. new[] { ServiceText.Find(vessel, "vessel", LongestName),
                ServiceText.Find(serial, "serial", LongestName) }.OfType<Finding>()]);
        // Whole or not at all: written beside it, then put in its place.
        try
        {
            WorkRun.Current.Disk.Put(path, $"{path}.{Guid.NewGuid():N}.part",
                stream => stream.Write([.. ServiceLine.Header(vessel, serial), (byte)'\n']), overwrite: false);
        }
        catch (Exception error) when (Disk.IsFault(error))
        {
            throw new ServiceFileException(
                File.Exists(path) ? $"{path} is there already; a record is never begun anew over another. Choose another name."
                    : $"\"{path}\" can't be written ({error.Message.TrimEnd('.')}). Make room, check the folder and your rights there, or "
                        + "choose another place.", error);
        }

        return new(path, vessel, serial, clock);
    }

    /// <summary>Opens a record for appending. Use <see cref="Read"/> to look at one.</summary>
    /// <param name="path">Path of the file.</param>
    /// <param name="clock">Clock that gives events their time; the system's unless given.</param>
    /// <exception cref="ServiceFileException">There is no such file, or its first line isn't that of a service record of this
    /// version.</exception>
    public static ServiceFile Open(string path, TimeProvider? clock = null)
    {
        ArgumentNullException.ThrowIfNull(path);
        using var stream = Locked(path, FileAccess.Read, FileShare.Read);
        var (vessel, serial) = Header(path, ServiceRecordReader.Split(All(stream, path)).Lines);
        return new(path, vessel, serial, clock);
    }

    /// <summary>Reads a record. What is wrong with it is in its findings. Source: as the type.</summary>
    /// <param name="path">Path of the file.</param>
    /// <param name="knownHead">A <see cref="ServiceRecord.HeadFingerprint"/> that was kept elsewhere; the record must still hold that line.
    /// None: lines taken away at the end can't be seen.</param>
    /// <exception cref="ServiceFileException">There is no such file, or it can't be opened.</exception>
    public static ServiceRecord Read(string path, string? knownHead = null)
    {
        ArgumentNullException.ThrowIfNull(path);
        using var stream = Locked(path, FileAccess.Read, FileShare.Read);
        return ServiceRecordReader.Read(All(stream, path), knownHead);
    }

    /// <summary>Appends an event. When this returns, the line is on the disk.</summary>
    /// <param name="happened">The event; without a time it gets the clock's.</param>
    /// <exception cref="InvalidDesignException">The event makes no sense; all reasons are in it.</exception>
    /// <exception cref="ServiceFileException">The record's end can't be trusted, the day lies before the last event's or in the future, or
    /// the file can't be written.</exception>
    public ServiceReceipt Append(ServiceEvent happened)
    {
        ArgumentNullException.ThrowIfNull(happened);
        using var stream = Locked(Location, FileAccess.ReadWrite, FileShare.None);
        var now = _clock.GetUtcNow();
        var at = (happened.At ?? now).ToUniversalTime();
        at = new(at.Ticks - at.Ticks % TimeSpan.TicksPerSecond, TimeSpan.Zero);
        happened = happened with { At = at };
        InvalidDesignException.ThrowIfAny($"Event \"{happened.Kind}\"", happened.Validate());

        var bytes = All(stream, Location);
        var (lines, rest) = ServiceRecordReader.Split(bytes);
        var restIsWhole = ServiceLine.IsWhole(rest.Span);
        if (restIsWhole) lines = [.. lines, rest];
        if (Header(Location, lines) != (Vessel, Serial)) throw new ServiceFileException($"{Location} is no longer the record of {Vessel} "
            + $"{Serial}: the file was replaced. Look for the right one.");
        var (sequence, last) = End(lines);
        if (at.Date < last.Date)
            throw new ServiceFileException($"The event's day, {Day(at)}, lies before that of the last event, {Day(last)}; events are "
                + "written in their order. Set the clock right, or write it with today's day and the true day in its notes.");
        if (at > now.AddDays(1)) throw new ServiceFileException($"The event's day, {Day(at)}, lies in the future; today is {Day(now)}. "
            + "Correct the clock or the day: later events could not be written after it.");

        var cut = restIsWhole ? 0 : rest.Length;
        var line = ServiceLine.Event(Vessel, Serial, sequence + 1, at, happened, cut, ServiceLine.Fingerprint(lines[^1].Span));
        Write(stream, bytes.Length - cut, restIsWhole ? [(byte)'\n', .. line, (byte)'\n'] : [.. line, (byte)'\n']);
        return new(
            new(lines.Count + 1, sequence + 1, at, happened, ServiceLine.Fingerprint(line)),
            cut == 0 ? [] : [ClearanceFindings.LastLineWasCutOff(cut)]);
    }

    private void Write(Stream stream, long from, byte[] bytes)
    {
        try
        {
            if (stream.Length > from) stream.SetLength(from);
            stream.Position = from;
            stream.Write(bytes);
            WorkRun.Current.Disk.Flush(stream);
        }
        catch (Exception error) when (Disk.IsFault(error))
        {
            try
            {
                stream.SetLength(from);
            }
            catch (Exception e) when (Disk.IsFault(e))
            {
                // A line that was cut off, or the whole one: which can't be told here, and it must not be written twice.
                throw new ServiceFileException($"Whether the event was written to {Location} can't be told ({error.Message.TrimEnd('.')}). "
                    + "Repair the disk, look at the record, and write the event again only where it isn't the last line.", error);
            }

            throw new ServiceFileException($"The event wasn't written to {Location} ({error.Message.TrimEnd('.')}). Make room, or repair "
                + "the disk, and write the event again.", error);
        }
    }

    private (int Sequence, DateTimeOffset At) End(IReadOnlyList<ReadOnlyMemory<byte>> lines)
    {
        if (lines.Count == 1) return (0, DateTimeOffset.MinValue);
        if (ServiceLine.IsWhole(lines[^1].Span) && ServiceLineReader.Open(lines[^1]) is { IsHeader: false } line)
        {
            var end = (line.Sequence, line.At);
            if (line.Wrong.Count == 0) return end;
        }

        throw new ServiceFileException($"Line {lines.Count} of {Location}, the last, was changed or spoiled; nothing is written after "
            + $"it. Keep the file, ground {Vessel} {Serial}, and begin a new record with a proof.");
    }

    private static (string Vessel, string Serial) Header(string path, IReadOnlyList<ReadOnlyMemory<byte>> lines)
    {
        if (lines.Count > 0 && ServiceLineReader.Open(lines[0]) is { IsHeader: true } line && line.Format == ServiceLine.Format)
        {
            if (line.Version > ServiceLine.Version)
                throw new ServiceFileException($"{path} is of version {line.Version}; this program writes version {ServiceLine.Version}. "
                    + "Use the newer program.");
            var names = (line.Vessel, line.Serial);
            if (line.Wrong.Count == 0 && ServiceLine.IsWhole(lines[0].Span)) return names;
        }

        throw new ServiceFileException($"{path} doesn't begin as a service record does, or its first line was changed; nothing is "
            + "written to it. Begin a record with another name.");
    }

    private static string Day(DateTimeOffset at) => at.UtcDateTime.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static ReadOnlyMemory<byte> All(Stream stream, string path)
    {
        if (stream.Length > LargestFile) throw new ServiceFileException($"{path} has {stream.Length >> 20} MiB; a service record has at "
            + $"most {LargestFile >> 20}. Look whether it is the right file.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }

    // The file itself is the lock: the system lets go of it when its holder ends, however that ends.
    private static Stream Locked(string path, FileAccess access, FileShare share)
    {
        for (var tries = 1; ; tries++)
        {
            try
            {
                return WorkRun.Current.Disk.Open(path, access, share);
            }
            catch (Exception error) when (error is FileNotFoundException or DirectoryNotFoundException or ArgumentException)
            {
                throw new ServiceFileException($"There is no {path}; begin a record, or look whether the name is right.", error);
            }
            catch (UnauthorizedAccessException error)
            {
                throw new ServiceFileException($"{path} can't be opened: {error.Message} Look whether it is a file that "
                    + "you may write.", error);
            }
            catch (IOException error) when (InUse.Contains(error.HResult))
            {
                if (tries == LockTries) throw new ServiceFileException($"{path} stays in use by another program; close that, "
                    + "and try again.", error);
                Thread.Sleep(1);
            }
            catch (IOException error)
            {
                throw new ServiceFileException($"\"{path}\" can't be opened ({error.Message.TrimEnd('.')}). Look whether its disk is "
                    + "there, and check the file and your rights there.", error);
            }
        }
    }
}

/// <summary>What was written to a service record. It lies on the disk when this is in hand.</summary>
/// <param name="Entry">The event with its number and fingerprint.</param>
/// <param name="Findings">What was found at the end of the file and mended.</param>
public sealed record ServiceReceipt(ServiceEntry Entry, IReadOnlyList<Finding> Findings);

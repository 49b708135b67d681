using System.Globalization;
using System.Text;
using NotebookKit.Numerics;

namespace NotebookKit.Runner.Notebooks;

/// <summary>Writes files whole or not at all: beside the target first, then in its place in one step.</summary>
internal static class AtomicFile
{
    private const string PartMark = ".part";

    /// <summary>Writes the text; folders are made as needed.</summary>
    /// <param name="path">Target file.</param>
    /// <param name="text">Its whole text, written as UTF-8 without a mark.</param>
    public static void Write(string path, string text) => Write(path, stream =>
    {
        using var writer = new StreamWriter(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), leaveOpen: true);
        writer.Write(text);
    });

    /// <summary>Writes whatever is written to a stream; folders are made as needed.</summary>
    /// <param name="path">Target file.</param>
    /// <param name="write">Writes it.</param>
    public static void Write(string path, Action<Stream> write)
    {
        var full = Path.GetFullPath(path);
        var disk = WorkRun.Current.Disk;
        disk.MakeFolder(Path.GetDirectoryName(full)!);
        // Machines that share a folder may have processes of one number.
        disk.Put(full, $"{full}.{Environment.MachineName}.{Environment.ProcessId}{PartMark}", write, overwrite: true);
    }

    /// <summary>Deletes a file where that is possible.</summary>
    /// <param name="path">File.</param>
    /// <returns>Whether it is gone, or never was there.</returns>
    public static bool TryDelete(string path) => WorkRun.Current.Disk.TryDelete(path);

    /// <summary>Deletes the half files that killed processes left below a folder. What a running process of this machine writes stays, and
    /// so does what another machine has touched within a day.</summary>
    /// <param name="folder">Folder; one that isn't there has none.</param>
    public static void ClearParts(string folder)
    {
        var seen = new EnumerationOptions { RecurseSubdirectories = true, IgnoreInaccessible = true };
        try
        {
            if (!Directory.Exists(folder)) return;
            foreach (var file in Directory.EnumerateFiles(folder, "*" + PartMark, seen).ToList())
                if (IsLeftover(file)) TryDelete(file);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // A folder that can't be looked through is named when something is written there.
        }
    }

    // "page.html.machine.1234.part"
    private static bool IsLeftover(string file)
    {
        var words = Path.GetFileName(file)[..^PartMark.Length].Split('.');
        if (words.Length < 3 || !int.TryParse(words[^1], NumberStyles.None, CultureInfo.InvariantCulture, out var process)) return false;
        var ours = Path.GetFileName(file).EndsWith(
            string.Create(CultureInfo.InvariantCulture, $".{Environment.MachineName}.{process}{PartMark}"), StringComparison.Ordinal);
        return ours ? !IsWriting(process, File.GetLastWriteTimeUtc(file))
            : DateTime.UtcNow - File.GetLastWriteTimeUtc(file) > TimeSpan.FromDays(1);
    }

    // Numbers of processes come again: one that began after the last write is another.
    private static bool IsWriting(int process, DateTime written)
    {
        try
        {
            using var running = System.Diagnostics.Process.GetProcessById(process);
            return running.StartTime.ToUniversalTime() <= written;
        }
        catch (Exception e) when (e is ArgumentException or InvalidOperationException or System.ComponentModel.Win32Exception)
        {
            return e is not ArgumentException and not InvalidOperationException;
        }
    }
}

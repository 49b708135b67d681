using System.Globalization;
using NotebookKit.Flight.Dispersion;

namespace NotebookKit.Runner.Batch;

/// <summary>Names of the files of a batch. Every node of a job array writes files of its own; none reads another's.</summary>
internal static class ShardFiles
{
    private const string ShardEnding = ".shard.json";
    private const string MergedEnding = ".merged.json";

    /// <summary>Name of the file that holds a part.</summary>
    /// <param name="shard">The part.</param>
    public static string Name(DispersionShard shard) => shard.Plan.Fingerprint + Ending(shard.Part);

    /// <summary>Name of the file that holds a whole dispersion.</summary>
    /// <param name="fingerprint">Its fingerprint.</param>
    public static string MergedName(string fingerprint) => fingerprint + MergedEnding;

    /// <summary>The files of one part of any dispersion in a folder; none where there is no such folder.</summary>
    /// <param name="folder">Folder.</param>
    /// <param name="part">The part.</param>
    public static IReadOnlyList<string> Of(string folder, ShardNumber part) =>
        Directory.Exists(folder) ? [.. Directory.EnumerateFiles(folder, "*" + Ending(part)).Order(StringComparer.Ordinal)] : [];

    /// <summary>All parts in a folder and those below it.</summary>
    /// <param name="folder">Folder.</param>
    public static IEnumerable<string> Below(string folder) =>
        Directory.EnumerateFiles(folder, "*" + ShardEnding, SearchOption.AllDirectories).Order(StringComparer.Ordinal);

    /// <summary>The file with a whole dispersion in a folder or below it; none where there is none.</summary>
    /// <param name="folder">Folder.</param>
    /// <param name="fingerprint">Its fingerprint.</param>
    public static string? MergedBelow(string folder, string fingerprint) =>
        Directory.EnumerateFiles(folder, MergedName(fingerprint),
            SearchOption.AllDirectories).Order(StringComparer.Ordinal).FirstOrDefault();

    /// <summary>Reads a file with a part or a whole.</summary>
    /// <param name="file">File.</param>
    /// <exception cref="FormatException">It holds none.</exception>
    public static DispersionShard Read(string file)
    {
        using var stream = File.OpenRead(file);
        return DispersionShard.Read(stream);
    }

    // With as many digits as the last has, so that a listing is in order.
    private static string Ending(ShardNumber part)
    {
        var of = part.Of.ToString(CultureInfo.InvariantCulture);
        return $".{part.Number.ToString(CultureInfo.InvariantCulture).PadLeft(of.Length, '0')}-of-{of}{ShardEnding}";
    }
}

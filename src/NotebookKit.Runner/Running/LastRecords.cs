using NotebookKit.Numerics;
using NotebookKit.Record;
using NotebookKit.Runner.Notebooks;

namespace NotebookKit.Runner.Running;

/// <summary>
/// The design records that a notebook's last run made. A run that failed, or that was asked to use other givens, leaves them as they are:
/// they stay what the next run is held against.
/// </summary>
/// <param name="Records">The records, one a title.</param>
/// <param name="Note">What kept one from being read, a sentence; empty where nothing did.</param>
internal sealed record LastRecords(IReadOnlyList<DesignRecord> Records, string Note)
{
    private const string Ending = ".json";

    /// <summary>Reads them.</summary>
    /// <param name="options">Where they are.</param>
    /// <param name="notebook">Name of the notebook.</param>
    public static LastRecords Read(RunOptions options, string notebook)
    {
        var records = new List<DesignRecord>();
        var note = "";
        foreach (var path in FilesOf(options, notebook))
        {
            try
            {
                records.Add(DesignRecord.FromJson(File.ReadAllText(path)));
            }
            catch (Exception e) when (e is FormatException or IOException or UnauthorizedAccessException)
            {
                note = $"The last record {Path.GetFileName(path)} can't be read, so nothing is compared with it: {e.Message}";
            }
        }

        return new(records, note);
    }

    private static IReadOnlyList<string> FilesOf(RunOptions options, string notebook)
    {
        if (options.LastRecord is { } file) return [file];
        try
        {
            return Directory.Exists(options.RecordFolder(notebook))
                ? [.. Directory.GetFiles(options.RecordFolder(notebook), "*" + Ending).Order(StringComparer.Ordinal)] : [];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    /// <summary>Keeps a run's records for the next one.</summary>
    /// <param name="options">Where they go.</param>
    /// <param name="notebook">Name of the notebook.</param>
    /// <param name="records">Its records, one a title.</param>
    public static void Keep(RunOptions options, string notebook, IReadOnlyList<DesignRecord> records)
    {
        var folder = options.RecordFolder(notebook);
        var names = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var record in records)
        {
            var name = string.Concat(record.Title.Select(c => char.IsAsciiLetterOrDigit(c) ? char.ToLowerInvariant(c) : '-')).Trim('-');
            if (name.Length == 0) name = "record";
            while (!names.Add(name)) name += "-x";
            AtomicFile.Write(Path.Combine(folder, name + Ending), record.ToJson() + "\n");
        }

        if (!Directory.Exists(folder)) return;
        foreach (var file in Directory.GetFiles(folder, "*" + Ending))
            if (!names.Contains(Path.GetFileNameWithoutExtension(file))) WorkRun.Current.Disk.Delete(file);
    }
}

using NotebookKit.Provenance;

namespace NotebookKit.Logs;

/// <summary>A log as it lies in a club's folder.</summary>
/// <param name="File">Name of the file.</param>
/// <param name="Kind">What was logged, by the units of its columns.</param>
/// <param name="Quality">How good its rows are, in one line, or why it wasn't read.</param>
/// <param name="Finding">What is wrong with it; none where nothing is.</param>
public sealed record ClubLog(string File, LogKind Kind, string Quality, Finding? Finding)
{
    // A million rows take a second; a check is made at each save.
    private const long LongestRead = 4_000_000;

    internal static ClubLog Of(string path)
    {
        var name = Path.GetFileName(path);
        try
        {
            if (new FileInfo(path).Length is var length and > LongestRead)
                return new(name, LogKind.Unknown, FormattableString.Invariant($"{length / 1_000_000} MB; not read here"), null);
            var table = LogReader.Read(path);
            return new(name, KindOf(table), table.Quality.Line, null);
        }
        catch (LogFormatException wrong)
        {
            return new(name, LogKind.Unknown, "can't be read", Finding.Warning(wrong.Message));
        }
    }

    /// <summary>What a log is of, by the units of its columns.</summary>
    /// <param name="table">The log.</param>
    public static LogKind KindOf(LogTable table)
    {
        ArgumentNullException.ThrowIfNull(table);
        bool Has(string unit) => table.Columns.Any(c => c.Unit == unit);
        return Has("bar gauge") ? LogKind.Gauge : Has("bar absolute") || Has("m") || Has(LogUnit.Unreferenced) ? LogKind.Altimeter
            : Has("N") ? LogKind.Force : Has("g") ? LogKind.Scale : LogKind.Unknown;
    }
}

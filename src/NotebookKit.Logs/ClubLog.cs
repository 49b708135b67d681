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
            var kind = KindOf(table);
            return new(name, kind, table.Quality.Line, kind == LogKind.Unknown && table.Columns.Any(c => c.Unit == LogUnit.Unreferenced)
                ? Finding.Warning($"{name} has a pressure that doesn't say what it is read against; write 'gauge' or 'absolute' behind its "
                    + $"unit, or {MappingFile.Write(path, MappingFile.Member("pressure", table.Columns.First(c => c.Unit
                        == LogUnit.Unreferenced).Name, "bar gauge"))}.") : null);
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
        return Has("bar gauge") ? LogKind.Gauge : Has("bar absolute") || Has("m") || table.Columns.Any(IsOfAir) ? LogKind.Altimeter
            : Has("N") ? LogKind.Force : Has("g") ? LogKind.Scale : LogKind.Unknown;
    }

    // A pressure that doesn't say what it is read against is an altimeter's only where it could be that of the air.
    private static bool IsOfAir(Quantities.Series column) => column.Unit == LogUnit.Unreferenced
        && column.Values.All(v => double.IsNaN(v) || v is > 0.1 and < 1.2);
}

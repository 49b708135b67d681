using System.Globalization;

namespace NotebookKit.Logs;

/// <summary>A log can't be read; says in which file, line and column, what was found and what is allowed.</summary>
public sealed class LogFormatException : FormatException
{
    /// <summary>Creates the exception.</summary>
    /// <param name="file">File as it was asked for.</param>
    /// <param name="line">Line, the first is 1; 0 where the whole file is meant.</param>
    /// <param name="column">Name of the column; empty where the whole line is meant.</param>
    /// <param name="found">What was found.</param>
    /// <param name="allowed">What is allowed, or what to do.</param>
    public LogFormatException(string file, int line, string column, string found, string allowed)
        : base(Sentence(file, line, column, found, allowed))
    {
        File = file;
        Line = line;
        Column = column;
        Found = found;
        Allowed = allowed;
    }

    /// <summary>File as it was asked for.</summary>
    public string File { get; }

    /// <summary>Line, the first is 1; 0 where the whole file is meant.</summary>
    public int Line { get; }

    /// <summary>Name of the column; empty where the whole line is meant.</summary>
    public string Column { get; }

    /// <summary>What was found.</summary>
    public string Found { get; }

    /// <summary>What is allowed, or what to do.</summary>
    public string Allowed { get; }

    private static string Sentence(string file, int line, string column, string found, string allowed)
    {
        var where = line > 0 ? string.Create(CultureInfo.InvariantCulture, $"{file}, line {line}") : file;
        return $"{where}{(column.Length > 0 ? $", column '{column}'" : "")}: {found}; {allowed}";
    }
}

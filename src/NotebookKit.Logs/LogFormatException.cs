using System.Globalization;

namespace NotebookKit.Logs;

/// <summary>A log can't be read; says in which file, line and column, what was found and what is allowed.</summary>
public sealed class LogFormatException : FormatException
{
    // What a file holds may be a megabyte; what is said of it isn't.
    private const int LongestText = 1000;

    /// <summary>Creates the exception.</summary>
    /// <param name="file">File as it was asked for.</param>
    /// <param name="line">Line, the first is 1; 0 where the whole file is meant.</param>
    /// <param name="column">Name of the column; empty where the whole line is meant.</param>
    /// <param name="found">What was found.</param>
    /// <param name="allowed">What is allowed, or what to do.</param>
    public LogFormatException(string file, int line, string column, string found, string allowed)
        : base(Sentence(Excerpt.Of(file, LongestText), line, Excerpt.Of(column), Excerpt.Of(found, LongestText),
            Excerpt.Of(allowed, LongestText)))
    {
        File = file;
        Line = line;
        Column = Excerpt.Of(column);
        Found = Excerpt.Of(found, LongestText);
        Allowed = Excerpt.Of(allowed, LongestText);
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

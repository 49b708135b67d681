namespace NotebookKit.Provenance;

/// <summary>One thing a model or a check has to say about its input or its answer.</summary>
/// <param name="Severity">Error, warning or note.</param>
/// <param name="Message">One sentence: what, why, and the range or the remedy.</param>
public sealed record Finding(FindingSeverity Severity, string Message)
{
    /// <summary>An error.</summary>
    /// <param name="message">What, why, and the range.</param>
    public static Finding Error(string message) => new(FindingSeverity.Error, message);

    /// <summary>A warning.</summary>
    /// <param name="message">What, why, and the range.</param>
    public static Finding Warning(string message) => new(FindingSeverity.Warning, message);

    /// <summary>A note.</summary>
    /// <param name="message">What is worth knowing.</param>
    public static Finding Note(string message) => new(FindingSeverity.Note, message);

    /// <summary>The errors' sentences one after the other; each that follows another begins with a capital.</summary>
    internal static string Errors(IEnumerable<Finding> findings) =>
        Join(findings.Where(f => f.Severity == FindingSeverity.Error).Select(f => f.Message));

    /// <summary>Sentences one after the other; each that follows another begins with a capital.</summary>
    internal static string Join(IEnumerable<string> sentences) => string.Join(' ', sentences.Where(s => s.Length > 0)
        .Select((s, i) => i > 0 && IsWord(s) ? char.ToUpperInvariant(s[0]) + s[1..] : s));

    // A file's name keeps its letters.
    private static bool IsWord(string sentence) =>
        char.IsLower(sentence[0]) && sentence.Split(' ', 2)[0].TrimEnd(',', ':').All(c => char.IsLetter(c) || c is '-' or '\'');

    /// <summary>For example "warning: ...".</summary>
    public override string ToString() => $"{Severity.ToString().ToLowerInvariant()}: {Message}";
}

/// <summary>Whether a finding stops the work or only qualifies it.</summary>
public enum FindingSeverity
{
    /// <summary>Worth knowing.</summary>
    Note,

    /// <summary>The answer stands, with this reservation.</summary>
    Warning,

    /// <summary>No answer is given until this is mended.</summary>
    Error,
}

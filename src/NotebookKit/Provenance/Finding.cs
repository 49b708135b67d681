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

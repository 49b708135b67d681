namespace NotebookKit.Record;

/// <summary>Which side of a limit is right.</summary>
public enum Limit
{
    /// <summary>The value must not pass the limit upward.</summary>
    AtMost,

    /// <summary>The value must not pass the limit downward.</summary>
    AtLeast,
}

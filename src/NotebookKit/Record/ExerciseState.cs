namespace NotebookKit.Record;

/// <summary>Where an exercise stands.</summary>
public enum ExerciseState
{
    /// <summary>Nobody has answered.</summary>
    Open,

    /// <summary>The answer isn't right yet.</summary>
    NotYet,

    /// <summary>The answer is right.</summary>
    Right,
}

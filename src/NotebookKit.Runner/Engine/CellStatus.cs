namespace NotebookKit.Runner.Engine;

/// <summary>The ways a cell can end. After the last five the session and its variables are gone.</summary>
internal enum CellStatus
{
    /// <summary>Ran to its end.</summary>
    Succeeded,

    /// <summary>Didn't compile, or threw.</summary>
    Failed,

    /// <summary>Stopped because it was asked to.</summary>
    Interrupted,

    /// <summary>Was asked to stop, didn't, and was ended with its session.</summary>
    Abandoned,

    /// <summary>Ran longer than allowed and was stopped.</summary>
    TimedOut,

    /// <summary>Wrote more than allowed and was stopped.</summary>
    Flooded,

    /// <summary>Ended the whole worker process.</summary>
    Crashed,

    /// <summary>The engine itself couldn't start or answer.</summary>
    EngineFailed,
}

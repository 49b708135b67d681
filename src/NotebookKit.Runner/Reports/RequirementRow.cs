namespace NotebookKit.Runner.Reports;

/// <summary>One requirement of a design, after a run.</summary>
/// <param name="Name">Its name.</param>
/// <param name="State">Whether it holds.</param>
/// <param name="Now">The value this run computed, with its unit; empty where it computed none.</param>
/// <param name="Condition">What is required: "at least 400 m"; empty where it isn't known.</param>
/// <param name="Before">What the last record says: "held, 446 m"; empty where it says nothing.</param>
/// <param name="Remark">Why it can't be told; empty where it can.</param>
internal sealed record RequirementRow(string Name, RequirementState State, string Now, string Condition, string Before, string Remark);

/// <summary>What can be said of a requirement.</summary>
internal enum RequirementState
{
    /// <summary>It holds.</summary>
    Holds,

    /// <summary>It held in the last record and doesn't hold now.</summary>
    NoLongerHolds,

    /// <summary>It doesn't hold, and didn't before or wasn't stated before.</summary>
    DoesNotHold,

    /// <summary>This run computed no value for it.</summary>
    CannotTell,
}

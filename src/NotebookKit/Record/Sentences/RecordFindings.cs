using NotebookKit.Provenance;

namespace NotebookKit.Record;

/// <summary>The sentences of record's findings, in one place.</summary>
internal static partial class RecordFindings
{
    // Record/DesignRecord
    internal static Finding RequirementDoesNotHold(string name, string liveValue, string condition, string why) =>
        Finding.Warning($"{name} is {liveValue}, required {condition}. {why}");

    internal static Finding DecisionNoLongerHolds(
        string name, string chosen, string staysRightWhileName, string liveValue, string condition) =>
        Finding.Warning(
            $"The decision \"{name}: {chosen}\" no longer holds: {staysRightWhileName} is {liveValue}, and the decision is "
            + $"right only while {condition}.");

    internal static Finding GivenWasOverridden(string name, string value) => Finding.Note($"{name} was set to {value} for this run.");
}

using NotebookKit.Provenance;

namespace NotebookKit.Clearance;

internal static partial class ClearanceFindings
{
    // Clearance/DesignCheck
    internal static Finding RequirementNoLongerHolds(string name, string of, string value, string condition, string why) =>
        Finding.Error($"no longer holds: {name}. The {of} is {value}; it must be {condition}. {why}");

    internal static Finding RequirementCannotBeTold(string name, string of, string reason) =>
        Finding.Warning($"can't tell whether \"{name}\" holds, for the {of} can't be computed: {reason}");

    internal static Finding DecisionWantsAnotherLook(string name, string chosen, string requirement) =>
        Finding.Warning($"the decision \"{name}\" ({chosen}) was to stay right while \"{requirement}\" holds. Decide again.");

    internal static string WindIsNotGiven() => "the design's site gives no wind. Add \"wind\" to the site.";

    internal static string SiteIsNotGiven() => "the design gives no site. Add \"site\".";

    internal static string FillIsNotGiven(string stage) => $"the design gives no fill pressure of {stage}. Add \"charge\".";
}

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

    internal static string NoSweep(string text) =>
        $"\"{(text.Length > 80 ? text[..80] : text)}\" isn't a sweep; write \"fill pressure=20..60 bar gauge/9\" for nine values "
            + "from 20 to 60, or \"throat=11 mm; 13 mm; 15 mm\".";

    internal static string SweepCount(string text, int most) =>
        $"The sweep \"{text}\" has to go through 2 to {most} values between two that differ.";

    internal static Finding SweepTooLarge(long count, int most) =>
        Finding.Error($"the sweep has {(count >= int.MaxValue ? "over two thousand million" : count.ToString(
            System.Globalization.CultureInfo.InvariantCulture))} designs; it must have 1 to {most}. Take fewer values, or sweep one value "
            + "after the other.");

    internal static Finding SweptTwice() => Finding.Error("one value is swept twice. Name every value once.");

    internal static Finding SweepCounted(int holding, int count) =>
        Finding.Note($"{holding} of {count} designs meet every requirement.");

    internal static Finding NoSuchFigure(string figure, IEnumerable<string> known) =>
        Finding.Error($"there is no figure \"{figure}\". Take one of: {string.Join(", ", known)}.");
}

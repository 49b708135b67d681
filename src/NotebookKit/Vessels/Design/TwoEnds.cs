using NotebookKit.Provenance;

namespace NotebookKit.Vessels.Design;

/// <summary>What is said of one end as of the other is said once.</summary>
internal static class TwoEnds
{
    private const string OfNozzle = "Nozzle end: ", OfForward = "Forward end: ", OfBoth = "Both ends: ";

    /// <summary>The findings of both ends, those that differ in the end's name alone put together.</summary>
    /// <param name="nozzle">Findings of the nozzle end; each begins with its name.</param>
    /// <param name="forward">Findings of the forward end.</param>
    public static IEnumerable<Finding> Together(IEnumerable<Finding> nozzle, IEnumerable<Finding> forward)
    {
        var others = forward.ToList();
        foreach (var finding in nozzle)
        {
            var twin = finding.Message.StartsWith(OfNozzle, StringComparison.Ordinal)
                ? finding with { Message = OfForward + finding.Message[OfNozzle.Length..] } : null;
            yield return twin is not null && others.Remove(twin) ? finding with { Message = OfBoth + finding.Message[OfNozzle.Length..] }
                : finding;
        }

        foreach (var finding in others) yield return finding;
    }
}

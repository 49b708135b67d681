using System.Numerics;
using NotebookKit.Vessels.Laying;

namespace NotebookKit.Vessels.Bursting;

/// <summary>Which plies of a wall are counted as carrying nothing, one choice after the other.</summary>
/// <remarks>
/// Each of up to six plies is left off alone and with any others. Of more plies those of one kind are left off together; of more than six
/// kinds each of the five outermost plies alone and with any others, and all beneath them together.
/// </remarks>
internal static class LeftOffPlies
{
    /// <summary>Most plies, or kinds of them, whose every choice is followed: 62 walls.</summary>
    public const int Most = 6;

    private static readonly uint[][] Choices = [.. Enumerable.Range(0, Most + 1).Select(plies => Enumerable.Range(1,
        Math.Max((1 << plies) - 2, 0)).Select(k => (uint)k).OrderByDescending(BitOperations.PopCount).ThenBy(k => k).ToArray())];

    /// <summary>Number of the group that each ply is left off with; groups in the order of the plies.</summary>
    public static int[] Groups(Layup layup, IReadOnlyList<int> plies)
    {
        if (plies.Count <= Most) return [.. Enumerable.Range(0, plies.Count)];
        var kinds = plies.Select(i => layup.Plies[i].Ply).Distinct().ToList();
        if (kinds.Count <= Most) return [.. plies.Select(i => kinds.IndexOf(layup.Plies[i].Ply))];
        return [.. plies.Select((_, k) => Math.Max(k - (plies.Count - Most), 0))];
    }

    /// <summary>Every choice of groups kept, as bits: the most kept first, of as many those without the last groups.</summary>
    /// <param name="groups">How many groups there are.</param>
    public static IReadOnlyList<uint> Orders(int groups) => Choices[groups];

    /// <summary>Whether a ply is kept by a choice.</summary>
    public static bool Keeps(uint kept, int[] groups, int ply) => (kept >> groups[ply] & 1) == 1;
}

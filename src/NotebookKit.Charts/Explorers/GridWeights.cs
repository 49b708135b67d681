namespace NotebookKit.Charts.Explorers;

/// <summary>
/// Weights of the neighbours of a place on a row of equally spaced values: cubic through four of them where there are four, bent to the two
/// nearest at the ends. The page's script holds the same rule. Source: Catmull and Rom, A class of local interpolating splines, 1974
/// (unverified).
/// </summary>
internal static class GridWeights
{
    /// <summary>Up to four neighbours with their weights; the weights add up to one.</summary>
    /// <param name="place">Place in steps from the first value [-]; 0 to count - 1.</param>
    /// <param name="count">How many values the row has; 2 or above.</param>
    /// <param name="linear">Whether only the two nearest count.</param>
    public static (int Index, double Weight)[] At(double place, int count, bool linear)
    {
        var i = Math.Clamp((int)Math.Floor(place), 0, count - 2);
        var t = place - i;
        if (linear || count == 2) return [(i, 1 - t), (i + 1, t)];
        double t2 = t * t, t3 = t2 * t;
        var (h00, h10, h01, h11) = ((2 * t3) - (3 * t2) + 1, t3 - (2 * t2) + t, (3 * t2) - (2 * t3), t3 - t2);
        // Slopes at both ends of the cell: central where there is a neighbour beyond, of the parabola through three values at the rim.
        if (i == 0) return [(0, h00 - (1.5 * h10) - (0.5 * h11)), (1, h01 + (2 * h10)), (2, (0.5 * h11) - (0.5 * h10))];
        if (i == count - 2) return [(i - 1, (0.5 * h11) - (0.5 * h10)), (i, h00 - (2 * h11)), (i + 1, h01 + (0.5 * h10) + (1.5 * h11))];
        return [(i - 1, -0.5 * h10), (i, h00 - (0.5 * h11)), (i + 1, h01 + (0.5 * h10)), (i + 2, 0.5 * h11)];
    }
}

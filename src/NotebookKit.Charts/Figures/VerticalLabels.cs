namespace NotebookKit.Charts.Figures;

/// <summary>Keeps upright labels apart: where two lines stand close together the second label starts below the first.</summary>
internal static class VerticalLabels
{
    private const double LetterPx = 6.4;

    /// <summary>How far below the top each label starts [px], in the order given.</summary>
    /// <param name="labels">Places on the axis and texts.</param>
    /// <param name="closeTo">Distance on the axis below which two labels would touch.</param>
    public static IReadOnlyList<double> Offsets(IReadOnlyList<(double At, string Text)> labels, double closeTo)
    {
        var offsets = new double[labels.Count];
        var order = Enumerable.Range(0, labels.Count).OrderBy(i => labels[i].At).ToList();
        for (var k = 1; k < order.Count; k++)
        {
            var (before, here) = (order[k - 1], order[k]);
            if (labels[here].At - labels[before].At < closeTo) offsets[here] = offsets[before] + (LetterPx * labels[before].Text.Length) +
                8;
        }
        return offsets;
    }
}

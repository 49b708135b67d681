namespace NotebookKit.Charts.Figures;

/// <summary>How many rows a legend takes below the plot, guessed from the length of its names, so that nothing is drawn over it.</summary>
internal static class LegendSize
{
    /// <summary>Height of one row [px].</summary>
    public const int RowHeight = 21;

    // Width of the plot on our pages, of the sample line before a name, and of a letter of the legend's type.
    private const double Plot = 640, Sample = 46, Letter = 7;

    public static int Rows(EngineeringChart chart)
    {
        if (!chart.HasLegend) return 0;
        var (rows, used) = (1, 0.0);
        foreach (var name in chart.Marks.Select(m => m.Name).Where(n => n.Length > 0))
        {
            var width = Sample + (Letter * name.Length);
            if (used > 0 && used + width > Plot) (rows, used) = (rows + 1, 0);
            used += width;
        }

        return rows;
    }
}

using NotebookKit.Charts.Marks;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Engineering;

/// <summary>Measured points laid over a prediction and the band it allows.</summary>
public static class OverlayChart
{
    /// <summary>Draws both.</summary>
    /// <param name="title">What it shows.</param>
    /// <param name="x">Horizontal values of the prediction.</param>
    /// <param name="predicted">The prediction.</param>
    /// <param name="measuredX">Horizontal values of the measurement.</param>
    /// <param name="measured">The measurement.</param>
    /// <param name="lower">Lower edge of what the prediction allows; none draws no band.</param>
    /// <param name="upper">Upper edge of what the prediction allows.</param>
    /// <exception cref="InvalidDesignException">Units that differ, columns of different length, or one edge of the band without the
    /// other.</exception>
    public static EngineeringChart Draw(string title, Series x, Series predicted, Series measuredX, Series measured, Series? lower = null,
        Series? upper = null)
    {
        if (lower is null != upper is null)
            throw new InvalidDesignException($"Chart '{title}'",
                [Finding.Error("A band needs both a lower and an upper edge; one is missing.")]);
        List<Mark> marks = [];
        if (lower is not null && upper is not null) marks.Add(new Band(x, lower, upper) { Slot = 0 });
        marks.Add(new Curve(x, predicted) { Slot = 0, Name = $"{predicted.Name}, predicted" });
        marks.Add(new Points(measuredX, measured) { Slot = 1, Size = measured.Count > 200 ? 3.5 : 7, Name = $"{measured.Name}, measured" });
        return new EngineeringChart(title, Axis.For(x), Axis.For(predicted)) { Marks = marks }.Checked();
    }
}

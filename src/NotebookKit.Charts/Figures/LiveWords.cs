using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Pictures;

namespace NotebookKit.Charts.Figures;

/// <summary>
/// The words of a live figure in the places that a still picture gives them. A place is a share of the drawing area and a word keeps its
/// size, so that a word that is free in the smallest area lies over nothing in any larger one.
/// </summary>
/// <param name="Frame">Scales of the smallest area; none where nothing has to be placed and the figure chooses its own ranges.</param>
/// <param name="Words">The words in their places.</param>
/// <param name="Key">Words that found none, with the letters that stand for them.</param>
internal sealed record LiveWords(PlotFrame? Frame, IReadOnlyList<PlacedWord> Words, IReadOnlyList<(string Sign, string Text)> Key)
{
    public static LiveWords Of(EngineeringChart chart)
    {
        var named = chart.Marks.OfType<Points>().Any(p => p.LabelsShown && p.Labels.Count > 0);
        if (chart.Up is not null || (chart.Limits.Count + chart.Events.Count + chart.Spans.Count + chart.Callouts.Count == 0 && !named))
            return new LiveWords(null, [], []);
        var frame = PlotFrame.For(chart, PictureForm.Live, 0);
        var (words, key) = PictureLabels.Place(chart, frame, PictureForm.Live.Text);
        return new LiveWords(frame, words, key);
    }

    /// <summary>The name of a point: its lines and the side of the point on which it stands; none where it found no place.</summary>
    public (string Text, string Side)? NameOf(Points points, int index)
    {
        if (Words.FirstOrDefault(w => w.Names is var (of, at) && ReferenceEquals(of, points) && at == index) is not { } word) return null;
        var row = word.Down switch { Edge.Low => "bottom", Edge.High => "top", _ => "middle" };
        var column = word.Across switch { Edge.Low => "right", Edge.High => "left", _ => "center" };
        return (LabelBuilder.Text(word), $"{row} {column}");
    }
}

using NotebookKit.Quantities;
using NotebookKit.Vessels.Bursting;
using NotebookKit.Vessels.Uncertainty;

namespace NotebookKit.Vessels.Ratings;

/// <summary>Tests that a club may make next. Hours, a twin's length and an evening: common practice, no source.</summary>
internal static class UsualTests
{
    public const double HoursOfEvening = 3;
    private const double ShortMillimetres = 150;

    public static IReadOnlyList<TestOption> Of(BurstPrediction prediction, PartLearning learning, GaugePressure proof)
    {
        IReadOnlyList<PredictedPart> parts = [.. learning.Parts.Select(p => p.Part)];
        var shorter = prediction.Shortened(Math.Min(ShortMillimetres, prediction.Vessel.Length.Millimeters).Millimetres());
        List<TestOption> options =
        [
            new("burst of a twin", 6.Hours(), parts),
            new($"burst of a short twin of {ShortMillimetres.Millimetres().Show()}", 4.Hours(), shorter),
        ];
        foreach (var side in new[] { "nozzle end", "forward end" })
        {
            List<PredictedPart> end = [.. parts.Where(p => p.Name.StartsWith(side, StringComparison.OrdinalIgnoreCase))];
            if (end.Count > 0) options.Add(new($"burst of the {side} alone, on a stub that outlasts it", 3.Hours(), end));
        }

        if (proof.Bar is >= 0.5 and <= 1000) options.Add(new($"proof of one vessel more at {proof}", 2.Hours(), parts) { Proof = proof });
        return options;
    }
}

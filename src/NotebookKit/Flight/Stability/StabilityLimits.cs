using NotebookKit.Provenance;

namespace NotebookKit.Flight.Stability;

/// <summary>The static margin a vehicle is held to. Source: common practice, no source.</summary>
/// <param name="Least">Minimum margin at any time [calibres]; 0.5 to 10.</param>
/// <param name="Most">Margin above which it turns into the wind too readily [calibres]; 1 to 20.</param>
public sealed record StabilityLimits(double Least = 1, double Most = 4)
{
    /// <summary>Minimum margin at any time [calibres]; 0.5 to 10.</summary>
    public double Minimum { get; init => field = CheckMinimum(value); } = CheckMinimum(Least);

    /// <summary>Margin above which it turns into the wind too readily [calibres]; 1 to 20.</summary>
    public double Maximum { get; init => field = CheckMaximum(value); } = CheckMaximum(Most);

    private static double CheckMinimum(double value) =>
        new ValidRange<double>(0.5, 10).Check(value, "minimum static margin", "One calibre is usual; a long body in wind needs more.");

    private static double CheckMaximum(double value) =>
        new ValidRange<double>(1, 20).Check(value, "maximum static margin", "Some four calibres is usual.");
}

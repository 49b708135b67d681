using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Building.Calendars;

/// <summary>One step of a build: hands for a while, then a wait that needs none.</summary>
/// <param name="Name">What is done; every task has a name of its own.</param>
/// <param name="Hands">Time somebody works on it without a break; 0 to 24 h.</param>
/// <param name="Waits">Time it then takes by itself: a cure, paint that dries; 0 to 60 days.</param>
/// <param name="After">Names of what has to be finished before, its wait included.</param>
public sealed record BuildTask(string Name, Duration Hands, Duration Waits, params IReadOnlyList<string> After)
{
    internal TimeSpan HandsSpan => TimeSpan.FromMinutes(Math.Round(Hands.Minutes));

    internal TimeSpan WaitSpan => TimeSpan.FromMinutes(Math.Round(Waits.Minutes));

    /// <summary>Everything wrong with it, its place in a plan apart.</summary>
    public IReadOnlyList<Finding> Validate() =>
        new[]
        {
            string.IsNullOrWhiteSpace(Name) ? BuildingFindings.TaskHasNoName() : null,
            new ValidRange<Duration>(Duration.Zero, 24.Hours()).Find(Hands, $"hands-on time of {Name}",
                "Divide a longer one into evenings."),
            new ValidRange<Duration>(Duration.Zero, (24 * 60).Hours()).Find(Waits, $"wait of {Name}", "Check its unit."),
        }.OfType<Finding>().ToList();
}

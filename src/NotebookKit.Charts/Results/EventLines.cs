using NotebookKit.Charts.Notes;

namespace NotebookKit.Charts.Results;

/// <summary>Events of a firing or a flight as lines on a time axis in seconds.</summary>
internal static class EventLines
{
    public static IReadOnlyList<EventLine> From(IEnumerable<FiringEvent> events)
        => [.. events.Select(e => new EventLine(e.Time.Seconds, e.Name))];
}

using NotebookKit.Numerics;
using UnitsNet;

namespace NotebookKit.Building.Calendars;

/// <summary>Sets tasks one by one by priority, several times, and keeps the plan that ends first.</summary>
internal static class CalendarModel
{
    private const int Tries = 64;

    public static IReadOnlyList<ScheduledTask> Schedule(BuildCalendar calendar)
    {
        var path = new CriticalPath(calendar.Tasks);
        IReadOnlyList<ScheduledTask>? best = null;
        for (var k = 0; k < Tries; k++)
        {
            var plan = Set(calendar, path, k);
            if (best is null || End(plan) < End(best)) best = plan;
        }

        return best!;
    }

    private static DateTime End(IReadOnlyList<ScheduledTask> plan) => plan.Max(t => t.Ready);

    // The first try goes by the longest chain behind each task; the others shuffle that by up to a half, which now and then fills an
    // evening better.
    private static List<ScheduledTask> Set(BuildCalendar calendar, CriticalPath path, int attempt)
    {
        var samples = new SeededSamples(1);
        var weight = calendar.Tasks.Select((t, i) => (t, i)).ToDictionary(p => p.t,
            p => path.TailOf(p.t).TotalMinutes * (attempt == 0 ? 1 : 0.5 + samples.Uniform(attempt, p.i)));
        Dictionary<string, ScheduledTask> set = [];
        List<List<(DateTime From, DateTime To)>> busy = [.. Enumerable.Range(0,
            calendar.People).Select(_ => new List<(DateTime, DateTime)>())];
        var run = WorkRun.Current;
        while (set.Count < calendar.Tasks.Count)
        {
            run.ThrowIfStopped();
            var next = calendar.Tasks.Where(t => !set.ContainsKey(t.Name) && t.After.All(set.ContainsKey)).MaxBy(t => weight[t])!;
            var from = next.After.Select(b => set[b].Ready).DefaultIfEmpty(calendar.Start).Max();
            var (person, start) = busy.Select((b, i) => (i, Start: Free(calendar.Hours, b, from, next.HandsSpan))).MinBy(p => p.Start);
            if (next.HandsSpan > TimeSpan.Zero) busy[person].Add((start, start + next.HandsSpan));
            set[next.Name] = new(next, start, start + next.HandsSpan, start + next.HandsSpan + next.WaitSpan,
                Duration.FromMinutes(path.SlackOf(next).TotalMinutes));
        }

        return [.. set.Values.OrderBy(t => t.Start).ThenBy(t => t.Ready)];
    }

    // Earliest stretch within the hours that meets nothing the person does already.
    private static DateTime Free(BenchHours hours, List<(DateTime From, DateTime To)> busy, DateTime from, TimeSpan work)
    {
        for (var start = hours.Next(from, work); ;)
        {
            var clash = busy.Where(b => b.From < start + work && start < b.To).ToList();
            if (clash.Count == 0) return start;
            start = hours.Next(clash.Max(b => b.To), work);
        }
    }
}

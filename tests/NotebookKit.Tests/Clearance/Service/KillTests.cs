using NotebookKit.Clearance.Service;

namespace NotebookKit.Tests.Clearance.Service;

public sealed class KillTests : IDisposable
{
    private readonly SampleRecord sample = new();

    public void Dispose() => sample.Dispose();

    [Fact, Trait("Length", "long")]
    public async Task Two_hundred_kills_lose_no_event_that_was_reported_as_written()
    {
        const int Rounds = 50, AtOnce = 4;
        var random = new Random(20260501);
        var (kills, reports) = (0, 0);
        for (var round = 0; round < Rounds; round++)
        {
            var path = sample.Beside($"round-{round}.service.jsonl");
            var file = ServiceFile.Create(path, "Curlew", "C-1");
            var processes = await Task.WhenAll(Enumerable.Range(0,
                AtOnce).Select(i => AppendingProcess.StartAsync(path, $"p{i}", int.MaxValue)));
            foreach (var process in processes) process.Begin();
            await Task.WhenAll(processes.Select(p => p.KillAfterAsync(random.Next(0, 9))).ToList());
            kills += processes.Length;

            var record = ServiceFile.Read(path);
            Assert.True(record.IsIntact, string.Join(' ', record.Findings));
            var written = record.Entries.ToDictionary(e => e.Sequence, e => ((Flown)e.Event).Flight);
            foreach (var (sequence, flight) in processes.SelectMany(p => p.Reported)) Assert.Equal(flight, written[sequence]);
            reports += processes.Sum(p => p.Reported.Count);
            foreach (var process in processes) process.Dispose();

            // And life goes on, whatever stands at the end.
            var next = file.Append(new Flown("after"));
            Assert.Equal(record.Entries.Count + 1, next.Entry.Sequence);
            Assert.True(ServiceFile.Read(path).IsIntact);
        }

        Assert.Equal(200, kills);
        Assert.True(reports > 400);
    }

    [Fact, Trait("Length", "long")]
    public async Task Two_processes_that_append_at_once_lose_nothing()
    {
        const int Each = 500;
        using var first = await AppendingProcess.StartAsync(sample.Path, "first", Each);
        using var second = await AppendingProcess.StartAsync(sample.Path, "second", Each);
        first.Begin();
        second.Begin();
        var codes = await Task.WhenAll(first.EndAsync(), second.EndAsync());
        Assert.All(codes, code => Assert.Equal(0, code));

        var record = sample.Read();
        Assert.True(record.IsIntact);
        Assert.Empty(record.Findings);
        Assert.Equal(2 * Each, record.Entries.Count);
        var flights = record.Events.Cast<Flown>().Select(f => f.Flight).ToList();
        foreach (var name in new[] { "first", "second" })
            Assert.Equal(Enumerable.Range(0, Each).Select(i => $"{name}-{i}"),
                flights.Where(f => f.StartsWith(name, StringComparison.Ordinal)));
    }
}

using System.Collections.Concurrent;
using NotebookKit.Runner.Tests;

namespace NotebookKit.Notebooks.Tests.Pages;

/// <summary>Every page of the main job is visited once, two at a time; the tests look at what came of it.</summary>
internal sealed class PageVisits(string output) : IDisposable
{
    private readonly ConcurrentDictionary<string, Lazy<Task<PageVisit>>> visits = new();
    private readonly SemaphoreSlim two = new(2);
    private readonly ConcurrentBag<Browser> idle = [];

    /// <summary>Pages and sheets that are printed, in the order of the main job.</summary>
    public static IReadOnlyList<string> Printed { get; } = ["index.html", .. NotebookFolder.Names.Select(n => $"pages/{n}.html"),
        .. Sheets().Select(n => $"sheets/{n}.html"), .. Sheets().Select(n => $"sheets/godwit/{n}.html")];

    /// <summary>What a page showed; the page after it is visited meanwhile, as somebody will ask for it too.</summary>
    public Task<PageVisit> OfAsync(string printed)
    {
        var visit = Begin(printed);
        var next = Printed.SkipWhile(p => p != printed).Concat(Printed).Skip(1).FirstOrDefault(p => !visits.ContainsKey(p));
        if (next is not null) Begin(next);
        return visit;
    }

    /// <summary>What the page of a notebook showed, or the index.</summary>
    public Task<PageVisit> OfPageAsync(string name) => OfAsync(name == "index" ? "index.html" : $"pages/{name}.html");

    /// <summary>Waits for visits that nobody asked for.</summary>
    public async Task EndAsync()
    {
        foreach (var visit in visits.Values) await Task.WhenAny(visit.Value);
        foreach (var browser in idle) await browser.DisposeAsync();
        Dispose();
    }

    public void Dispose() => two.Dispose();

    private Task<PageVisit> Begin(string printed) => visits.GetOrAdd(printed, p => new(() => Task.Run(() => GoAsync(p)))).Value;

    private async Task<PageVisit> GoAsync(string printed)
    {
        await two.WaitAsync();
        try
        {
            var isSheet = printed.StartsWith("sheets/", StringComparison.Ordinal);
            // The same window for all: what it has compiled of the drawing library it keeps.
            var browser = idle.TryTake(out var free) ? free : await Browser.OpenAsync();
            var visit = await PageVisit.ToAsync(browser, Path.Combine(output, printed),
                isSheet ? null : Path.GetFileNameWithoutExtension(printed));
            idle.Add(browser);
            return visit;
        }
        finally
        {
            two.Release();
        }
    }

    // Templates stand at full size, each page a pattern: how full a sheet is, the pattern says.
    private static string[] Sheets() => ["flight-card", "proof-sheet", "pad-sheet", "shopping-list"];
}

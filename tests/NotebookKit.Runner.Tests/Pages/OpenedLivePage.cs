using Microsoft.Playwright;

namespace NotebookKit.Runner.Tests.Pages;

/// <summary>The tests that work on the one live page.</summary>
[CollectionDefinition(Name)]
public sealed class LivePageOnce : ICollectionFixture<OpenedLivePage>
{
    public const string Name = "live page";
}

/// <summary>The live page opened once: to start the library in it takes longer than most tests. Each test begins as a reader does who
/// begins anew.</summary>
public sealed class OpenedLivePage : IAsyncLifetime
{
    private Browser? _browser;

    public Task InitializeAsync() => Task.CompletedTask;

    public async Task DisposeAsync()
    {
        if (_browser is not null) await _browser.DisposeAsync();
    }

    /// <summary>The page with nothing kept, the demo design opened and nothing changed.</summary>
    internal async Task<Browser> BeginAsync(int width = 1280)
    {
        if (_browser is null)
        {
            _browser = await LivePageTests.OpenAsync();
        }
        else
        {
            _browser.Problems.Clear();
            await LivePageTests.GoAsync(_browser, "kept");
            await _browser.Page.ClickAsync("#wipe");
            await LivePageTests.GoAsync(_browser, "design");
            await LivePageTests.NextStateAsync(_browser,
                () => _browser.Page.SelectOptionAsync("#demo", new SelectOptionValue { Index = 1 }));
        }

        await _browser.Page.SetViewportSizeAsync(width, 1000);
        return _browser;
    }
}

using Microsoft.Playwright;

namespace NotebookKit.Runner.Tests;

/// <summary>A page in the machine's own Chromium, without a window. Nothing is downloaded: without one the test is skipped.</summary>
internal sealed class Browser : IAsyncDisposable
{
    private static readonly string[] Places = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];
    private readonly IPlaywright playwright;
    private readonly IBrowser browser;

    private Browser(IPlaywright playwright, IBrowser browser, IPage page)
    {
        this.playwright = playwright;
        this.browser = browser;
        Page = page;
        page.Console += (_, message) =>
        {
            if (message.Type == "error") Problems.Add(message.Text);
        };
        page.PageError += (_, error) => Problems.Add(error);
        page.Request += (_, request) => Requests.Add(request.Url);
    }

    public IPage Page { get; }

    /// <summary>Errors on the page's console.</summary>
    public List<string> Problems { get; } = [];

    /// <summary>Everything the page asked for.</summary>
    public List<string> Requests { get; } = [];

    public static async Task<Browser> OpenAsync()
    {
        var program = Array.Find(Places, File.Exists);
        Skip.If(program is null, "There is no Chromium on this machine; install the chromium package to run the browser tests.");
        var playwright = await Playwright.CreateAsync();
        var browser = await playwright.Chromium.LaunchAsync(new() { ExecutablePath = program, Headless = true, Args = ["--no-sandbox"] });
        return new Browser(playwright, browser, await browser.NewPageAsync());
    }

    /// <summary>Keeps a picture of the page where somebody wants to look at it afterwards.</summary>
    /// <param name="name">File name.</param>
    public async Task KeepAsync(string name)
    {
        if (Environment.GetEnvironmentVariable("NOTEBOOKKIT_EVIDENCE") is { Length: > 0 } folder)
            await Page.ScreenshotAsync(new() { Path = Path.Combine(folder, name), FullPage = true });
    }

    public async ValueTask DisposeAsync()
    {
        await browser.DisposeAsync();
        playwright.Dispose();
    }
}

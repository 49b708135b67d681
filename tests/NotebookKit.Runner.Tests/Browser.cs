using Microsoft.Playwright;

namespace NotebookKit.Runner.Tests;

/// <summary>A page in the machine's own Chromium, without a window, with cookies and storage of its own; the tests of one process share the
/// program. Nothing is downloaded: without one the test is skipped.</summary>
internal sealed class Browser : IAsyncDisposable
{
    private static readonly string[] Places = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];

    // What the driver itself switches off (named again, as the last list alone counts) without what no page here touches, and the hidden
    // pages behind the bar for addresses: two more for every window, a third of what opening one costs.
    private static readonly string[] Unwanted =
    [
        "AvoidUnnecessaryBeforeUnloadCheckSync", "DestroyProfileOnBrowserClose", "DialMediaRouteProvider", "GlobalMediaControls",
        "HttpsUpgrades", "LensOverlay", "MediaRouter", "PaintHolding", "ThirdPartyStoragePartitioning", "Translate", "OptimizationHints",
        "NetworkTimeServiceQuerying", "AimEnabled", "WebUIOmniboxPopup", "WebUIOmniboxAimPopup", "WebUIOmniboxFullPopup",
    ];

    private static readonly Lazy<Task<IBrowser>> Shared = new(LaunchAsync);
    private readonly IBrowserContext context;

    private Browser(IBrowserContext context, IPage page)
    {
        this.context = context;
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
        Skip.If(Program is null, "There is no Chromium on this machine; install the chromium package to run the browser tests.");
        var context = await (await Shared.Value).NewContextAsync();
        context.SetDefaultTimeout(Patience.Milliseconds);
        return new Browser(context, await context.NewPageAsync());
    }

    /// <summary>Keeps a picture of the page where somebody wants to look at it afterwards.</summary>
    /// <param name="name">File name.</param>
    public async Task KeepAsync(string name)
    {
        if (Environment.GetEnvironmentVariable("NOTEBOOKKIT_EVIDENCE") is { Length: > 0 } folder)
            await Page.ScreenshotAsync(new() { Path = Path.Combine(folder, name), FullPage = true });
    }

    public async ValueTask DisposeAsync() => await context.CloseAsync();

    private static string? Program => Array.Find(Places, File.Exists);

    private static async Task<IBrowser> LaunchAsync()
    {
        var playwright = await Playwright.CreateAsync();
        AppDomain.CurrentDomain.ProcessExit += (_, _) => playwright.Dispose();
        return await playwright.Chromium.LaunchAsync(new() { ExecutablePath = Program, Headless = true, Args = ["--no-sandbox",
            $"--disable-features={string.Join(',', Unwanted)}"] });
    }
}

using Microsoft.Playwright;

namespace NotebookKit.Runner.Tests.Jupyter;

/// <summary>The classic notebook front-end, in the machine's own browser, with our kernel; skipped where either is missing.</summary>
[Trait("Length", "long")]
public sealed class ClassicFrontEndTests : IAsyncLifetime
{
    private NotebookServer server = null!;

    public async Task InitializeAsync()
    {
        if (NotebookServer.IsThere) server = await NotebookServer.StartAsync(null, "many-charts.ipynb", "hangs.ipynb", "explores.ipynb",
            "picks.ipynb");
    }

    public async Task DisposeAsync()
    {
        if (server is not null) await server.DisposeAsync();
    }

    [SkippableFact]
    public async Task A_notebook_runs_and_draws_its_charts_without_the_network()
    {
        Skip.IfNot(NotebookServer.IsThere, "The classic notebook front-end is not installed on this machine (Debian: jupyter-notebook).");
        await using var browser = await Browser.OpenAsync();
        await OpenAsync(browser.Page, "many-charts.ipynb");
        await browser.Page.EvaluateAsync("Jupyter.notebook.execute_all_cells()");
        await browser.Page.WaitForFunctionAsync("document.querySelectorAll('svg.main-svg .scatterlayer path.js-line').length === 15");

        Assert.Contains("height [m]", await browser.Page.InnerTextAsync("#notebook"), StringComparison.Ordinal);
        Assert.All(browser.Requests, r => Assert.True(server.Owns(r), r));
    }

    [SkippableFact]
    public async Task The_stop_button_frees_a_stuck_notebook()
    {
        Skip.IfNot(NotebookServer.IsThere, "The classic notebook front-end is not installed on this machine (Debian: jupyter-notebook).");
        await using var browser = await Browser.OpenAsync();
        await OpenAsync(browser.Page, "hangs.ipynb");
        await browser.Page.EvaluateAsync("Jupyter.notebook.execute_all_cells()");
        await browser.Page.WaitForSelectorAsync(".output_stdout pre:has-text('before')");
        await browser.Page.EvaluateAsync("Jupyter.notebook.kernel.interrupt()");
        await browser.Page.WaitForSelectorAsync("text=The session was replaced by a fresh one");
    }

    [SkippableFact]
    public async Task A_dragged_slider_runs_the_computation_and_shows_its_number()
    {
        Skip.IfNot(NotebookServer.IsThere, "The classic notebook front-end is not installed on this machine (Debian: jupyter-notebook).");
        Skip.IfNot(Directory.Exists("/usr/share/jupyter/nbextensions/jupyter-js-widgets"),
            "The front-end's controls are not installed on this machine (Debian: jupyter-nbextension-jupyter-js-widgets).");
        await using var browser = await Browser.OpenAsync();
        await OpenAsync(browser.Page, "explores.ipynb");
        await browser.Page.EvaluateAsync("Jupyter.notebook.execute_all_cells()");
        var slider = browser.Page.Locator(".ui-slider-handle").First;
        await slider.WaitForAsync();
        await browser.Page.WaitForSelectorAsync("td.nk-value:has-text('9 m²/s²')");

        var box = (await browser.Page.Locator(".ui-slider").First.BoundingBoxAsync())!;
        await slider.HoverAsync();
        await browser.Page.Mouse.DownAsync();
        for (var i = 1; i <= 20; i++) await browser.Page.Mouse.MoveAsync((float)(box.X + (box.Width * (0.25 + (0.75 * i / 20)))),
            (float)(box.Y + (box.Height / 2)));
        await browser.Page.Mouse.MoveAsync((float)(box.X + box.Width + 40), (float)(box.Y + (box.Height / 2)));
        await browser.Page.Mouse.UpAsync();
        await browser.Page.WaitForSelectorAsync("td.nk-value:has-text('81 m²/s²')");
        await browser.KeepAsync("classic-notebook-after-a-drag.png");
    }

    [SkippableFact]
    public async Task A_choice_a_drag_and_a_button_each_show_their_number()
    {
        Skip.IfNot(NotebookServer.IsThere, "The classic notebook front-end is not installed on this machine (Debian: jupyter-notebook).");
        Skip.IfNot(Directory.Exists("/usr/share/jupyter/nbextensions/jupyter-js-widgets"),
            "The front-end's controls are not installed on this machine (Debian: jupyter-nbextension-jupyter-js-widgets).");
        await using var browser = await Browser.OpenAsync();
        var page = browser.Page;
        await OpenAsync(page, "picks.ipynb");
        await page.EvaluateAsync("Jupyter.notebook.execute_all_cells()");
        var list = page.Locator("select").Filter(new() { HasText = "Moon" });
        await list.WaitForAsync();
        // v²/2g, by hand: 3 m/s on Earth (g taken as 10 m/s²) 0.45 m, on the Moon (1.62 m/s²) 2.778 m; 9 m/s there 25 m.
        await ShowsAsync("0.45 m");
        await list.SelectOptionAsync("Moon");
        await ShowsAsync("2.778 m");
        await page.ClickAsync("button:has-text('Keep this curve')");
        await page.WaitForSelectorAsync("th:has-text('3 m/s, Moon')");

        var box = (await page.Locator(".ui-slider").First.BoundingBoxAsync())!;
        await page.Locator(".ui-slider-handle").First.HoverAsync();
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync((float)(box.X + (box.Width / 2)), (float)(box.Y + (box.Height / 2)), new() { Steps = 8 });
        await page.Mouse.MoveAsync((float)(box.X + box.Width + 40), (float)(box.Y + (box.Height / 2)), new() { Steps = 8 });
        await page.Mouse.UpAsync();
        await ShowsAsync("25 m");
        await page.WaitForSelectorAsync("td:has-text('2.778 m')");
        await browser.KeepAsync("classic-notebook-after-a-choice.png");

        await list.SelectOptionAsync("nowhere");
        await page.WaitForSelectorAsync(".nk-error:has-text('Without <gravity> nothing comes down.')");
        await page.ClickAsync("button:has-text('Back to the start')");
        await ShowsAsync("0.45 m");
        Assert.Equal("Earth", (await list.InputValueAsync()).Trim());
        Assert.Equal(0, await page.Locator("th:has-text('3 m/s, Moon')").CountAsync());

        async Task ShowsAsync(string text) => await page.WaitForSelectorAsync($"td.nk-value:text-is('{text}')");
    }

    private async Task OpenAsync(IPage page, string notebook)
    {
        await page.GotoAsync(server.Address + "notebooks/" + notebook);
        await page.WaitForFunctionAsync("window.Jupyter && Jupyter.notebook && Jupyter.notebook.kernel && "
            + "Jupyter.notebook.kernel.is_connected()");
    }
}

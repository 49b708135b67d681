namespace NotebookKit.Runner.Tests.Jupyter;

/// <summary>
/// JupyterLab's own notebook component and the current Jupyter widgets, built from their packages into one page (tests/lab-front-end), in
/// the machine's own browser, with our
/// kernel; skipped where something of that is missing.
/// </summary>
[Trait("Length", "long")]
public sealed class LabFrontEndTests : IAsyncLifetime
{
    private static readonly string Page = Path.Combine(TestFolder.Repository, "tests", "lab-front-end", "out");
    private NotebookServer server = null!;

    private static bool IsThere => NotebookServer.IsThere && File.Exists(Path.Combine(Page, "index.js"));

    public async Task InitializeAsync()
    {
        if (IsThere) server = await NotebookServer.StartAsync(Page, "many-charts.ipynb", "hangs.ipynb", "picks.ipynb", "passes.ipynb");
    }

    public async Task DisposeAsync()
    {
        if (server is not null) await server.DisposeAsync();
    }

    [SkippableFact]
    public async Task A_choice_a_drag_and_a_button_each_show_their_number()
    {
        await using var browser = await OpenAsync("picks.ipynb");
        var page = browser.Page;
        await page.EvaluateAsync("void notebook.runAll()");
        var list = page.Locator("select").Filter(new() { HasText = "Moon" });
        await list.WaitForAsync();
        // v²/2g, by hand: 3 m/s on Earth (g taken as 10 m/s²) 0.45 m, on the Moon (1.62 m/s²) 2.778 m; 9 m/s there 25 m.
        await ShowsAsync("0.45 m");
        await list.SelectOptionAsync("Moon");
        await ShowsAsync("2.778 m");
        await page.ClickAsync("button:has-text('Keep this curve')");
        await page.WaitForSelectorAsync("th:has-text('3 m/s, Moon')");

        var box = (await page.Locator(".noUi-target").First.BoundingBoxAsync())!;
        await page.Locator(".noUi-handle").First.HoverAsync();
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync((float)(box.X + (box.Width / 2)), (float)(box.Y + (box.Height / 2)), new() { Steps = 8 });
        await page.Mouse.MoveAsync((float)(box.X + box.Width + 40), (float)(box.Y + (box.Height / 2)), new() { Steps = 8 });
        await page.Mouse.UpAsync();
        await ShowsAsync("25 m");
        await browser.KeepAsync("lab-notebook-after-a-choice.png");

        await list.SelectOptionAsync("nowhere");
        await page.WaitForSelectorAsync(".nk-error:has-text('Without <gravity> nothing comes down.')");
        await page.ClickAsync("button:has-text('Back to the start')");
        await ShowsAsync("0.45 m");
        Assert.Equal("Earth", await list.InputValueAsync());

        async Task ShowsAsync(string text) => await page.WaitForSelectorAsync($"td.nk-value:text-is('{text}')");
    }

    [SkippableFact]
    public async Task A_notebook_runs_and_draws_its_charts_without_the_network()
    {
        await using var browser = await OpenAsync("many-charts.ipynb");
        await browser.Page.EvaluateAsync("void notebook.runAll()");
        await browser.Page.WaitForFunctionAsync("document.querySelectorAll('svg.main-svg .scatterlayer path.js-line').length === 15");
        Assert.All(browser.Requests, r => Assert.True(server.Owns(r), r));
        await browser.KeepAsync("lab-notebook-charts.png");
    }

    [SkippableFact]
    public async Task The_stop_button_frees_a_stuck_notebook()
    {
        await using var browser = await OpenAsync("hangs.ipynb");
        await browser.Page.EvaluateAsync("void notebook.runAll()");
        await browser.Page.WaitForSelectorAsync(".jp-OutputArea-output pre:has-text('before')");
        await browser.Page.EvaluateAsync("void notebook.kernel.interrupt()");
        await browser.Page.WaitForSelectorAsync("text=The session was replaced by a fresh one");
    }

    [SkippableFact]
    public async Task Completion_help_and_restart_work_from_its_own_client()
    {
        await using var browser = await OpenAsync("passes.ipynb");
        var page = browser.Page;
        Assert.Contains("Millimetres", await page.EvaluateAsync<string>("notebook.kernel.requestComplete({ code: '63.Millim', "
            + "cursor_pos: 9 }).then(r => r.content.matches.join())"), StringComparison.Ordinal);
        Assert.Contains("From bar", await page.EvaluateAsync<string>("notebook.kernel.requestInspect({ code: 'GaugePressure.FromBar', "
            + "cursor_pos: 18, detail_level: 0 }).then(r => r.content.data['text/plain'])"), StringComparison.Ordinal);
        Assert.Equal("ok", await page.EvaluateAsync<string>("notebook.kernel.restart().then(() => notebook.kernel.requestExecute({ code: "
            + "'1 + 1' }).done).then(r => r.content.status)"));
    }

    private async Task<Browser> OpenAsync(string notebook)
    {
        Skip.IfNot(NotebookServer.IsThere, "There is no notebook server on this machine (Debian: jupyter-notebook).");
        Skip.IfNot(IsThere, "JupyterLab's notebook component is not built: npm ci --ignore-scripts && node build.mjs out, in "
            + "tests/lab-front-end.");
        var browser = await Browser.OpenAsync();
        await browser.Page.GotoAsync($"{server.Address}nbextensions/page/index.html?path={notebook}");
        await browser.Page.WaitForFunctionAsync("document.body.dataset.ready || document.body.dataset.problem");
        var problem = await browser.Page.EvaluateAsync<string?>("document.body.dataset.problem");
        Assert.True(problem is null, problem);
        return browser;
    }
}

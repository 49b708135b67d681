using System.Globalization;
using System.Net;
using System.Net.Sockets;
using NotebookKit.DesignFiles;
using NotebookKit.Runner.Pages;
using static NotebookKit.Runner.Tests.Pages.LivePageTests;

namespace NotebookKit.Runner.Tests.Pages;

/// <summary>The live page in another browser, and from a web server.</summary>
[Trait("Length", "long")]
public sealed class LivePageElsewhereTests
{
    [SkippableFact]
    public async Task In_Firefox_the_page_computes_a_design_and_a_change_of_it_and_is_no_wider_than_a_phone()
    {
        await using var firefox = await Firefox.OpenAsync(Address);
        await firefox.EvaluateAsync(Waiting("document.documentElement.dataset.ready"));
        var rated = Design.Parse(DesignText("curlew.json")).Rating.WorkingPressure.ToString();
        Assert.Contains(rated, await firefox.EvaluateAsync("document.getElementById('figures').innerText"),
            StringComparison.Ordinal);
        await firefox.EvaluateAsync("""
            { const label = [...document.querySelectorAll("label")].find(l => l.textContent === "Charge fill pressure");
              label.control.value = "62 bar gauge";
              label.control.dispatchEvent(new Event("change", { bubbles: true })); }
            """);
        await firefox.EvaluateAsync(Waiting("document.getElementById('verdict').innerText.includes('does not hold')"));
        await firefox.NarrowAsync(390);
        foreach (var part in Parts)
        {
            await firefox.EvaluateAsync($"location.hash = '{part}'");
            await firefox.EvaluateAsync(Waiting($"document.documentElement.dataset.part === '{part}'"));
            Assert.InRange(double.Parse(await firefox.EvaluateAsync("document.documentElement.scrollWidth"),
                CultureInfo.InvariantCulture), 1, 390);
        }

        Assert.DoesNotContain(firefox.Requests, r => r.StartsWith("http", StringComparison.OrdinalIgnoreCase));
    }

    // A plain server says of every page what its settings say; the mark at the head of the file goes before that.
    [SkippableTheory]
    [InlineData("text/html")]
    [InlineData("text/html; charset=utf-8")]
    [InlineData("text/html; charset=iso-8859-1")]
    public async Task From_a_plain_web_server_the_page_computes_too(string type)
    {
        using var server = new HttpListener();
        var port = FreePort();
        server.Prefixes.Add($"http://127.0.0.1:{port}/");
        server.Start();
        var page = await File.ReadAllBytesAsync(LivePage.Built);
        var serving = Task.Run(async () =>
        {
            while (server.IsListening)
            {
                var asked = await server.GetContextAsync();
                asked.Response.ContentType = type;
                if (asked.Request.Url!.AbsolutePath == "/live.html") await asked.Response.OutputStream.WriteAsync(page);
                else asked.Response.StatusCode = 404;
                asked.Response.Close();
            }
        });
        await using var browser = await Browser.OpenAsync();
        await browser.Page.GotoAsync($"http://127.0.0.1:{port}/live.html");
        await ReadyAsync(browser.Page);
        Assert.Contains("All 5 requirements hold", await browser.Page.InnerTextAsync("#verdict"), StringComparison.Ordinal);
        server.Stop();
        await Assert.ThrowsAnyAsync<Exception>(() => serving);
    }

    // As a full disk leaves it: none of the library's parts are there, or some, or all but the last.
    [SkippableTheory]
    [InlineData(0.1)]
    [InlineData(0.6)]
    [InlineData(0.999)]
    public async Task Where_the_file_was_cut_off_the_page_says_so(double share)
    {
        using var folder = new TestFolder();
        var whole = await File.ReadAllBytesAsync(LivePage.Built);
        var cut = folder["cut.html"];
        await File.WriteAllBytesAsync(cut, whole[..((int)(whole.Length * share) / 2 * 2)]);
        await using var browser = await Browser.OpenAsync();
        await browser.Page.GotoAsync(new Uri(cut).AbsoluteUri);
        await browser.Page.WaitForSelectorAsync("#problem .failure");
        Assert.Contains("its file was cut off", await browser.Page.InnerTextAsync("#problem"), StringComparison.Ordinal);
        // The box stands below the cautions, and only where designs are shown: the line at the top says why, too.
        Assert.Contains("its file was cut off", await browser.Page.InnerTextAsync("#status"), StringComparison.Ordinal);
    }

    // One letter of a packed part is another one.
    [SkippableFact]
    public async Task Where_the_file_is_damaged_the_page_says_so()
    {
        using var folder = new TestFolder();
        var bytes = await File.ReadAllBytesAsync(LivePage.Built);
        bytes[bytes.Length / 4 * 2] ^= 1;
        await File.WriteAllBytesAsync(folder["damaged.html"], bytes);
        await using var browser = await Browser.OpenAsync();
        await browser.Page.GotoAsync(new Uri(folder["damaged.html"]).AbsoluteUri);
        await browser.Page.WaitForSelectorAsync("#problem .failure");
        Assert.Contains("is damaged; copy the file anew.", await browser.Page.InnerTextAsync("#problem"), StringComparison.Ordinal);
    }

    [SkippableFact]
    public async Task Where_the_browser_refuses_a_worker_the_page_says_so()
    {
        await using var browser = await Browser.OpenAsync();
        await browser.Page.AddInitScriptAsync("globalThis.Worker = function () { throw new DOMException('no', 'SecurityError'); };");
        await browser.Page.GotoAsync(Address);
        await browser.Page.WaitForSelectorAsync("#problem .failure");
        Assert.Contains("the browser refused its worker", await browser.Page.InnerTextAsync("#problem"), StringComparison.Ordinal);
    }

    private static int FreePort()
    {
        using var socket = new TcpListener(IPAddress.Loopback, 0);
        socket.Start();
        return ((IPEndPoint)socket.LocalEndpoint).Port;
    }
}

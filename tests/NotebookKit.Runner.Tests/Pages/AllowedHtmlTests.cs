using NotebookKit.Runner.Pages;

namespace NotebookKit.Runner.Tests.Pages;

/// <summary>Text cells of other people's notebooks: what may act on the page is shown as text, what helps reading stays.</summary>
public sealed class AllowedHtmlTests
{
    private const string Hostile = """
        # Theirs

        <meta http-equiv="refresh" content="0; url=https://example.org/">

        <style>main { display: none }</style>

        <script>window.hit = 1</script>

        <iframe src="https://example.org/"></iframe><object data="x"></object><embed src="x"><base href="https://example.org/">

        <form action="https://example.org/"><input><button>Go</button></form>

        <svg onload="window.hit = 2"><a href="javascript:window.hit=3"><text>x</text></a></svg>

        Inline <img src=x onerror="window.hit = 4"> and <b onclick="window.hit = 5" style="position:fixed">bold</b> and
        <a id="bad" href="javascript:window.hit=6">raw link</a> and [link](javascript:window.hit=7) and <javascript:window.hit=8> and
        <a href=" java&#10;script:window.hit=9">split</a> and [page](data:text/html,<script>window.hit=10</script>) and
        <a href="data:text/html;base64,PHNjcmlwdD4=">data</a> and <DIV CLASS="failure" HIDDEN>loud</DIV>

        </section></main><plaintext><textarea><title><s>struck <del>out

        $\href{javascript:window.hit=11}{x}$ $\class{failure}{y}$
        """;

    private readonly TextCells text = new(Path.GetTempPath(), new ContentsList(), new Equations(), name => name == "07-how-high");

    private string Html(string source) => text.ToHtml(source, new Pictures(Path.GetTempPath(), null));

    [Theory]
    [InlineData("<meta")]
    [InlineData("<style")]
    [InlineData("<script")]
    [InlineData("<iframe")]
    [InlineData("<object")]
    [InlineData("<embed")]
    [InlineData("<base")]
    [InlineData("<form")]
    [InlineData("<input")]
    [InlineData("<svg")]
    [InlineData("<title")]
    [InlineData("<textarea")]
    [InlineData("<plaintext")]
    [InlineData("</section")]
    [InlineData("</main")]
    [InlineData("<b onclick")]
    [InlineData("class=\"failure\"")]
    [InlineData("href=\"javascript")]
    [InlineData("href=\"data:")]
    [InlineData("href=\" java")]
    public void What_acts_on_the_page_is_no_markup_any_more(string markup) =>
        Assert.DoesNotContain(markup, Html(Hostile), StringComparison.OrdinalIgnoreCase);

    [Fact]
    public void What_was_taken_out_can_still_be_read()
    {
        var html = Html(Hostile);
        Assert.Contains("&lt;meta http-equiv", html, StringComparison.Ordinal);
        Assert.Contains("<b>bold</b>", html, StringComparison.Ordinal);
        Assert.Contains("<div>loud</div>", html, StringComparison.Ordinal);
    }

    // A line struck through, or a link, that a cell leaves open would run on into the cautions.
    [Theory]
    [InlineData("a <s>b", "<s>")]
    [InlineData("<details><summary>x</summary>\n\nhidden", "<details>")]
    [InlineData("<a href=\"https://example.org/\">a", "<a href=\"https://example.org/\">")]
    [InlineData("<table><tr><td>1", "<table>")]
    public void What_a_cell_opens_ends_with_it(string source, string opened)
    {
        var html = Html(source);
        Assert.Contains(opened, html, StringComparison.Ordinal);
        Assert.Equal(html.Split(opened).Length - 1, html.Split($"</{opened.Trim('<', '>').Split(' ')[0]}>").Length - 1);
    }

    [Theory]
    [InlineData("<details open>\n<summary>More</summary>\n\nText with **stress**.\n\n</details>",
        "<details open>\n<summary>More</summary>", "<strong>stress</strong>", "</details>")]
    [InlineData("H<sub>2</sub>O and m<sup>2</sup>, <kbd>Ctrl</kbd><br/>next", "H<sub>2</sub>O", "m<sup>2</sup>", "<br>next")]
    [InlineData("<table><tr><td colspan=\"2\" style=\"color:red\">a &lt; b</td></tr></table>", "<td colspan=\"2\">a &lt; b</td>",
        "</table>")]
    [InlineData("<a href=\"https://example.org/?a=1&amp;b=2\" target=_top>x</a>", "<a href=\"https://example.org/?a=1&amp;b=2\">x</a>")]
    [InlineData("<a href='07-how-high.ipynb#x'>x</a>", "<a href=\"07-how-high.html#x\">x</a>")]
    [InlineData("<img src=\"data:image/png;base64,AAAA\" width=\"20\" alt=\"a &quot;b&quot;\">",
        "<img src=\"data:image/png;base64,AAAA\" alt=\"a &quot;b&quot;\" width=\"20\">")]
    [InlineData("<img src=\"https://example.org/x.png\" alt=\"afar\">", "picture not found: afar")]
    [InlineData("a <!-- said to nobody --> b", "a  b")]
    [InlineData("if a < b and c > d", "a &lt; b and c &gt; d")]
    [InlineData("<https://example.org/>", "<a href=\"https://example.org/\"")]
    public void What_helps_reading_stays(string source, params string[] kept)
    {
        var html = Html(source);
        Assert.All(kept, k => Assert.Contains(k, html, StringComparison.Ordinal));
    }

    [Fact]
    public void A_megabyte_of_open_brackets_is_read_in_one_go() => Assert.Contains("&lt;", Html(
        "<div>\n" + string.Concat(Enumerable.Repeat("<a <b x=\"' ", 100_000))), StringComparison.Ordinal);

    [SkippableFact, Trait("Length", "long")]
    public async Task In_a_browser_nothing_of_a_strange_cell_runs_leads_away_or_hides_the_page()
    {
        await using var browser = await Browser.OpenAsync();
        using var folder = new TestFolder();
        var path = folder["page.html"];
        await File.WriteAllTextAsync(path, new PageFrame("Theirs").Write(
            $"<main><section class=\"text\">{Html(Hostile)}</section><section class=\"caution\" id=\"after\">Stand off.</section></main>",
            hasCharts: false));
        var address = new Uri(path).AbsoluteUri;
        await browser.Page.GotoAsync(address);
        foreach (var link in await browser.Page.Locator("main a").AllAsync()) await link.ClickAsync(new() { Force = true });
        Assert.True(await browser.Page.EvaluateAsync<bool>("window.hit === undefined"));
        Assert.Equal(address, browser.Page.Url);
        Assert.All(browser.Requests, r => Assert.True(r == address || r.StartsWith("data:", StringComparison.Ordinal), r));
        Assert.True(await browser.Page.Locator("#after").IsVisibleAsync());
        Assert.True(await browser.Page.EvaluateAsync<bool>("document.querySelector('#after').parentElement.tagName === 'MAIN'"));
        Assert.Equal("none", await browser.Page.EvaluateAsync<string>(
            "getComputedStyle(document.querySelector('#after')).textDecorationLine"));
    }
}

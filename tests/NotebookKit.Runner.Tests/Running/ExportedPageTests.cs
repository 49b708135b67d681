using System.Text.RegularExpressions;
using NotebookKit.Charts;
using NotebookKit.Runner.Pages;

namespace NotebookKit.Runner.Tests.Running;

[Collection(AllFixturesTests.Name)]
public sealed partial class ExportedPageTests(AllFixturesRun all)
{
    [Fact]
    public void The_pages_of_a_folder_share_one_copy_of_the_chart_library()
    {
        Assert.Equal(PlotlyScript.Wrapped, File.ReadAllText(Path.Combine(all.Output, "pages", "plotly.min.js")));
        var page = all.Page("many-charts");
        Assert.Empty(Library().Matches(page));
        Assert.Equal(15, ChartData().Count(page));
        var word = SharedScript().Match(page).Groups["word"].Value;
        Assert.Contains($"script-src 'nonce-{word}' ", page, StringComparison.Ordinal);
        Assert.Equal(2, Regex.Count(page, Regex.Escape(word)));
    }

    // What lets the library in is a digest of the body it stands outside of: no text or output can hold it.
    [Fact]
    public void The_word_that_lets_the_library_in_follows_from_the_page()
    {
        var words = new[] { "many-charts", "passes", "hostile" }
            .Select(n => SharedScript().Match(all.Page(n)).Groups["word"].Value).ToList();
        Assert.Equal(3, words.Distinct().Count());
        Assert.All(words, w => Assert.Equal(24, w.Length));
    }

    [Fact]
    public void A_page_without_charts_asks_for_no_library() => Assert.DoesNotContain("plotly.min.js\"", all.Page("throws"),
        StringComparison.Ordinal);

    [Fact]
    public void A_page_of_fifteen_charts_stays_far_below_the_library_that_it_shares() =>
        Assert.InRange(new FileInfo(Path.Combine(all.Output, "pages", "many-charts.html")).Length, 20_000, 1_000_000);

    [Fact]
    public void Nothing_in_a_page_is_fetched_but_the_two_files_beside_it()
    {
        foreach (var file in Directory.EnumerateFiles(all.Output, "*.html", SearchOption.AllDirectories))
        {
            var markup = SharedScript().Replace(File.ReadAllText(file), "").Replace("<link rel=\"stylesheet\" href=\"maths.css\">", "",
                StringComparison.Ordinal);
            markup = Scripts().Replace(markup, "");
            Assert.All(Sources().Matches(markup).Select(m => m.Groups[1].Value),
                source => Assert.StartsWith("data:", source, StringComparison.Ordinal));
            Assert.DoesNotContain("<link", markup, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("@import", markup, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotMatch(@"url\(\s*['""]?https?:", markup);
            Assert.Contains("default-src 'none'", markup, StringComparison.Ordinal);
        }

        Assert.Matches("^@font-face \\{ font-family: \"NotebookKit Math\"; src: url\\(data:font/woff2;base64,[A-Za-z0-9+/=]+\\) "
            + "format\\(\"woff2\"\\); \\}\n$", File.ReadAllText(Path.Combine(all.Output, "pages", "maths.css")));
    }

    [Fact]
    public void The_font_of_equations_is_small_and_its_licence_is_kept()
    {
        Assert.InRange(PageResources.MathFont.Length, 20_000, 150_000);
        var parts = typeof(PageResources).Assembly.GetManifestResourceNames();
        Assert.Contains("notebookkit-math.LICENSE.txt", parts);
        Assert.Contains("notebookkit-math.MANIFEST.txt", parts);
    }

    [Fact]
    public void A_lesson_leads_to_those_beside_it()
    {
        var page = all.Page("passes");
        var nav = Regex.Match(page, "<nav class=\"neighbours\".*?</nav>", RegexOptions.Singleline).Value;
        Assert.All(Regex.Matches(nav, "href=\"([^\"]+)\"").Select(m => m.Groups[1].Value),
            to => Assert.True(File.Exists(Path.Combine(all.Output, "pages", to)), to));
        Assert.Contains("(before)", nav, StringComparison.Ordinal);
    }

    [Fact]
    public void Equations_in_text_are_MathML()
    {
        var page = all.Page("passes");
        Assert.Equal(2, MathElements().Count(page));
        Assert.Contains("<msub><mi>σ</mi><mi>h</mi></msub>", page, StringComparison.Ordinal);
        Assert.DoesNotContain("tex-problem\"", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Text_from_data_stays_text()
    {
        var page = all.Page("hostile");
        var body = page[page.IndexOf("Code [1]", StringComparison.Ordinal)..];
        Assert.DoesNotContain("<script>window.hit", body, StringComparison.Ordinal);
        Assert.DoesNotContain("<img src=x", body, StringComparison.Ordinal);
        Assert.Contains("&lt;img src=x onerror=", body, StringComparison.Ordinal);
        Assert.Contains("<figcaption><b>", body, StringComparison.Ordinal);
        Assert.DoesNotMatch("<figcaption>(<b>|<span>)[^<]*<(?!/b>|/span>)", body);
        Assert.DoesNotContain('<', ChartData().Match(body).Groups["json"].Value);
    }

    [Fact]
    public void Tables_details_links_and_pictures_come_through()
    {
        var page = all.Page("passes");
        Assert.Contains("<td>liner</td>", page, StringComparison.Ordinal);
        Assert.Contains("<details><summary>Solution</summary>", page, StringComparison.Ordinal);
        Assert.Contains("<strong>6</strong>", page, StringComparison.Ordinal);
        Assert.Contains("href=\"throws.html#The-place\"", page, StringComparison.Ordinal);
        Assert.Contains("href=\"https://example.org/a\"", page, StringComparison.Ordinal);
        Assert.DoesNotContain("data.csv", page, StringComparison.Ordinal);
        Assert.Contains("<img src=\"data:image/svg+xml;base64,", page, StringComparison.Ordinal);
        Assert.Contains("alt=\"A drawn circle\"", page, StringComparison.Ordinal);
        Assert.Contains("picture not found: Far away", page, StringComparison.Ordinal);
        Assert.Contains("<img src=\"data:image/png;base64,iVBOR", all.Page("attachment"), StringComparison.Ordinal);
    }

    [Fact]
    public void Headings_are_listed_and_code_is_coloured()
    {
        var page = all.Page("passes");
        Assert.Contains("<a href=\"#The-law\">The law</a>", page, StringComparison.Ordinal);
        Assert.Contains("<h2 id=\"The-law\">", page, StringComparison.Ordinal);
        Assert.Contains("<span class=\"k\">var</span> pressure", page, StringComparison.Ordinal);
        Assert.Contains("<span class=\"c\">// gauge</span>", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_page_opens_with_its_main_numbers_at_three_digits()
    {
        var page = all.Page("passes");
        var answer = Answer().Match(page);
        Assert.InRange(answer.Index, page.IndexOf("</h1>", StringComparison.Ordinal), page.IndexOf("thin wall", StringComparison.Ordinal));
        Assert.Equal(["Apogee 149 m", "Bore 63 mm"], Shown(answer.Value));
        Assert.DoesNotContain("verdict", answer.Value, StringComparison.Ordinal);
        Assert.Contains("<dd>149 m</dd>", File.ReadAllText(Path.Combine(all.Output, "index.html")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_page_says_what_its_card_decides()
    {
        var answer = Answer().Match(all.Page("scatters")).Value;
        const string no = "<p class=\"verdict fails\"><strong>NO-GO</strong> <span>Flight card, Fixture at";
        Assert.Contains(no, answer, StringComparison.Ordinal);
        Assert.Contains("The range safety officer decides.", answer, StringComparison.Ordinal);
    }

    [Fact]
    public void A_notebook_that_failed_has_no_answer() => Assert.DoesNotMatch(Answer(), all.Page("throws"));

    [Fact]
    public void Code_is_folded_unless_it_failed()
    {
        Assert.Contains("<details class=\"code\" id=\"cell-1\"><summary>Code [1]</summary>", all.Page("passes"), StringComparison.Ordinal);
        Assert.DoesNotMatch("<details class=\"code\"[^>]* open", all.Page("passes"));
        Assert.Contains("<details class=\"code\" id=\"cell-2\" open>", all.Page("throws"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_caution_is_said_in_full_once_and_linked_from_every_later_result()
    {
        var page = all.Page("scatters");
        var card = Regex.Match(page, """<div class="nk-out nk-card">.*?<p class="nk-sign">""", RegexOptions.Singleline);
        var first = page.IndexOf("can kill", StringComparison.Ordinal);
        Assert.InRange(first, 1, card.Index);
        // The card is printed by itself.
        Assert.Contains("can kill", card.Value, StringComparison.Ordinal);
        Assert.DoesNotContain("as above", card.Value, StringComparison.Ordinal);
        var later = page[(card.Index + card.Length)..];
        Assert.DoesNotContain("can kill", page[(first + 1)..card.Index] + later, StringComparison.Ordinal);
        var links = Regex.Matches(later, "<a href=\"#(caution-[^\"]+)\">([^<]+)</a>");
        Assert.Equal(["Stored energy", "Flight", "Prediction"], links.Select(l => l.Groups[2].Value));
        Assert.All(links, l => Assert.Equal(1, Regex.Count(page, $"<li id=\"{l.Groups[1].Value}\"><b>{l.Groups[2].Value}\\.</b> ")));
    }

    [Fact]
    public void A_failure_is_said_at_the_top_and_at_its_place()
    {
        var page = all.Page("throws");
        Assert.Contains("Not everything on this page was computed.", page, StringComparison.Ordinal);
        Assert.Contains("cell 2, line 3", page, StringComparison.Ordinal);
        Assert.Equal(2, Regex.Count(page, "<div class=\"failure\""));
    }

    [Fact]
    public void An_intended_error_is_shown_as_such()
    {
        var page = all.Page("fails-on-purpose");
        Assert.Contains("An error, shown on purpose", page, StringComparison.Ordinal);
        Assert.DoesNotContain("Not everything on this page was computed.", page, StringComparison.Ordinal);
        Assert.Contains("and on", page, StringComparison.Ordinal);
        Assert.DoesNotMatch("<div class=\"failure intended\"[^<]*<p>[^\n]*</p><pre>", page);
    }

    private static IEnumerable<string> Shown(string html) =>
        Regex.Matches(html, "<dt>(.*?)</dt><dd>(.*?)</dd>").Select(m => $"{m.Groups[1].Value} {m.Groups[2].Value}");

    [GeneratedRegex("""<section class="answer".*?</section>""", RegexOptions.Singleline)]
    private static partial Regex Answer();

    [GeneratedRegex(@"\* plotly\.js v")]
    private static partial Regex Library();

    [GeneratedRegex("""<script type="application/json" class="chart-data"[^>]*>(?<json>.*?)</script>""", RegexOptions.Singleline)]
    private static partial Regex ChartData();

    [GeneratedRegex("""<script nonce="(?<word>[^"]+)" src="plotly\.min\.js"></script>""")]
    private static partial Regex SharedScript();

    [GeneratedRegex("<script.*?</script>", RegexOptions.Singleline)]
    private static partial Regex Scripts();

    [GeneratedRegex("""<[^>]*\ssrc\s*=\s*["']?([^"'\s>]*)""")]
    private static partial Regex Sources();

    [GeneratedRegex("<math[ >]")]
    private static partial Regex MathElements();
}

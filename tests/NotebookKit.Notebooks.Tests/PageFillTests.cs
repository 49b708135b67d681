using NotebookKit.Runner.Tests;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace NotebookKit.Notebooks.Tests;

/// <summary>Every page of the main job as a printer has it: no sheet but the last is less than half full.</summary>
[Collection(AllNotebooksTests.Name)]
public sealed class PageFillTests(AllNotebooksRun all)
{
    private const double LeastShare = 0.5;

    public static TheoryData<string, string> Prints
    {
        get
        {
            var prints = new TheoryData<string, string>();
            string[] names = ["index.html", .. NotebookFolder.Names.Select(n => $"pages/{n}.html"),
                .. Sheets.Select(n => $"sheets/{n}.html"), .. Sheets.Select(n => $"sheets/godwit/{n}.html")];
            foreach (var name in names)
                foreach (var paper in new[] { "A4", "Letter" }) prints.Add(name, paper);
            return prints;
        }
    }

    // Templates stand at full size, each page a pattern: how full a sheet is, the pattern says.
    private static IReadOnlyList<string> Sheets { get; } = ["flight-card", "proof-sheet", "pad-sheet", "shopping-list"];

    [SkippableTheory, MemberData(nameof(Prints))]
    public async Task No_sheet_of_paper_but_the_last_is_less_than_half_full(string name, string paper)
    {
        await using var browser = await Browser.OpenAsync();
        await browser.Page.GotoAsync(new Uri(Path.Combine(all.Output, name)).AbsoluteUri);
        if (await browser.Page.Locator("figure.chart").CountAsync() > 0)
            await browser.Page.WaitForFunctionAsync("document.documentElement.dataset.drawn === 'yes'", null, new() { Timeout = 120_000 });
        var marginMm = name.StartsWith("sheets", StringComparison.Ordinal) ? 10.0 : 14.0;
        var margin = FormattableString.Invariant($"{marginMm}mm");
        var print = await browser.Page.PdfAsync(new() { Format = paper, PrintBackground = true,
            Margin = new() { Top = margin, Bottom = margin, Left = margin, Right = margin } });
        using var document = PdfDocument.Open(print);
        var shares = document.GetPages().Select(p => ShareOf(p, marginMm / 25.4 * 72)).ToList();
        Assert.NotEmpty(shares);
        Assert.All(shares, s => Assert.InRange(s, 0.001, 1.02));
        Assert.All(shares.SkipLast(1), s => Assert.True(s >= LeastShare,
            $"{name} on {paper}: sheets are full to {string.Join(", ", shares.Select(f => f.ToString("P0", null)))}."));
    }

    // From the upper margin down to the lowest letter, in points.
    private static double ShareOf(Page page, double margin)
    {
        var lowest = page.Letters.Where(l => !string.IsNullOrWhiteSpace(l.Value)).Select(l => l.StartBaseLine.Y)
            .DefaultIfEmpty(page.Height - margin).Min();
        return (page.Height - margin - lowest) / (page.Height - (2 * margin));
    }
}

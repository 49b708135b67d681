using NotebookKit.Runner.Pages;

namespace NotebookKit.Runner.Tests.Pages;

/// <summary>Formulas measured by their ink, in a browser whose machine may have no font for mathematics.</summary>
[Trait("Length", "long")]
public sealed class EquationsInBrowserTests
{
    // First and last row and column of ink in a picture, in px of the page.
    private const string Ink = """
        async ([picture, x, y, width, height]) => {
          const image = new Image();
          image.src = "data:image/png;base64," + picture;
          await image.decode();
          const canvas = document.createElement("canvas");
          canvas.width = image.width; canvas.height = image.height;
          const pen = canvas.getContext("2d");
          pen.drawImage(image, 0, 0);
          const data = pen.getImageData(Math.round(x), Math.round(y), Math.round(width), Math.round(height));
          let top = Infinity, bottom = -1, left = Infinity, right = -1;
          for (let r = 0; r < data.height; r++) for (let c = 0; c < data.width; c++)
            if (data.data[4 * (r * data.width + c)] < 140) {
              top = Math.min(top, r); bottom = Math.max(bottom, r); left = Math.min(left, c); right = Math.max(right, c);
            }
          return [top + y, bottom + y, left + x, right + x];
        }
        """;

    [SkippableFact]
    public async Task A_root_covers_all_that_stands_under_it()
    {
        await using var browser = await OpenAsync(@"\sqrt{\frac{2 m g}{\rho C_D S_0}}");
        var root = (await browser.Page.Locator("msqrt").BoundingBoxAsync())!;
        var under = (await browser.Page.Locator("msqrt mfrac").First.BoundingBoxAsync())!;
        var sign = await InkAsync(browser, root.X, root.Y - 4, under.X - root.X, root.Height + 8);
        var bar = await InkAsync(browser, under.X, root.Y - 4, under.Width, under.Y - root.Y + 2);

        // The sign's own stroke is as tall as the fraction, and its bar runs over the fraction's whole width.
        Assert.InRange(sign[1] - sign[0], 0.9 * under.Height, 1.4 * under.Height);
        Assert.InRange(bar[3] - bar[2], 0.97 * under.Width - 1, under.Width + 1);
        Assert.True(bar[0] < under.Y, $"The bar lies at {bar[0]}, the fraction begins at {under.Y}.");
    }

    // Both brackets begin no lower and end no higher than the fraction's own ink, and aren't taller than it by more than a quarter.
    [SkippableTheory]
    [InlineData(@"\left( \frac{\frac{a}{b}}{c} \right)")]
    [InlineData(@"\left[ \frac{a}{\frac{b}{\frac{c}{d}}} \right]")]
    public async Task Brackets_are_as_tall_as_the_fraction_they_hold(string tex)
    {
        await using var browser = await OpenAsync(tex);
        var (open, close, inside) = await BracketsAsync(browser);
        foreach (var bracket in new[] { open, close })
        {
            Assert.True(bracket[0] <= inside[0] + 2, $"The bracket begins at {bracket[0]} px, the fraction at {inside[0]} px.");
            Assert.True(bracket[1] >= inside[1] - 2, $"The bracket ends at {bracket[1]} px, the fraction at {inside[1]} px.");
            Assert.InRange(bracket[1] - bracket[0], inside[1] - inside[0] - 4, 1.25 * (inside[1] - inside[0]));
        }
    }

    // The measure tells fonts apart: in letters for plain text the same brackets stay short.
    [SkippableFact]
    public async Task Brackets_of_a_font_without_mathematics_are_found_too_short()
    {
        await using var browser = await OpenAsync(@"\left( \frac{\frac{a}{b}}{c} \right)",
            "<style>math, math * { font-family: monospace !important; }</style>");
        var (open, _, inside) = await BracketsAsync(browser);
        Assert.True(open[1] - open[0] < 0.75 * (inside[1] - inside[0]), $"The bracket is {open[1] - open[0]} px tall, the fraction "
            + $"{inside[1] - inside[0]} px.");
    }

    private static async Task<(double[] Open, double[] Close, double[] Inside)> BracketsAsync(Browser browser)
    {
        var fraction = (await browser.Page.Locator("mfrac").First.BoundingBoxAsync())!;
        var signs = browser.Page.Locator("mo");
        var (open, close) = ((await signs.First.BoundingBoxAsync())!, (await signs.Last.BoundingBoxAsync())!);
        // The ink of a bracket may be taller than its box: all that stands in its columns is looked at.
        var (top, height) = (Math.Max(0, fraction.Y - 60), fraction.Height + 120);
        return (await InkAsync(browser, open.X, top, open.Width, height), await InkAsync(browser, close.X, top, close.Width, height),
            await InkAsync(browser, fraction.X, top, fraction.Width, height));
    }

    private static async Task<Browser> OpenAsync(string tex, string style = "")
    {
        var browser = await Browser.OpenAsync();
        using var folder = new TestFolder();
        var body = $"{style}<main style=\"font-size: 40px\">{new Equations().ToMathML(tex, display: true)}</main>";
        File.WriteAllText(folder["page.html"], new PageFrame("Trial").Write(body, hasCharts: false));
        await browser.Page.GotoAsync(new Uri(folder["page.html"]).AbsoluteUri);
        await browser.Page.EvaluateAsync("document.fonts.ready");
        return browser;
    }

    private static async Task<double[]> InkAsync(Browser browser, double x, double y, double width, double height)
    {
        var picture = Convert.ToBase64String(await browser.Page.ScreenshotAsync());
        return await browser.Page.EvaluateAsync<double[]>(Ink, new object[] { picture, x, y, width, height });
    }
}

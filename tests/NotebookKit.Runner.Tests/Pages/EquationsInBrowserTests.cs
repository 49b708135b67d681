using NotebookKit.Runner.Pages;

namespace NotebookKit.Runner.Tests.Pages;

/// <summary>Formulas measured by their ink, in a browser whose machine may have no font for mathematics.</summary>
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

    [SkippableFact]
    public async Task Brackets_grow_with_what_they_hold()
    {
        await using var browser = await OpenAsync(@"\left(1 - \frac{\frac{a}{b}}{c}\right)");
        var inside = (await browser.Page.Locator("mfrac").First.BoundingBoxAsync())!;
        var bracket = (await browser.Page.Locator("mo[fence], mo").First.BoundingBoxAsync())!;
        var ink = await InkAsync(browser, bracket.X, bracket.Y, bracket.Width, bracket.Height);
        Assert.InRange(ink[1] - ink[0], 0.9 * inside.Height, 2 * inside.Height);
    }

    private static async Task<Browser> OpenAsync(string tex)
    {
        var browser = await Browser.OpenAsync();
        using var folder = new TestFolder();
        var body = $"<main style=\"font-size: 40px\">{new Equations().ToMathML(tex, display: true)}</main>";
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

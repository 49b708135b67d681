using System.Globalization;
using System.Text.Json;
using System.Xml.Linq;
using NotebookKit.Charts.Tests.Browser;

namespace NotebookKit.Charts.Tests.Drawings;

/// <summary>Drawings can be read on a phone: letters of nine pixels and more, none on top of another, none cut off, and the same in
/// words.</summary>
public sealed class DrawingTextTests
{
    // What is left of a screen of 1280 px beside the contents.
    private const int Desk = 760;
    private const double Screen = 360, Least = 9;

    public static TheoryData<string> Names => [.. AllDrawings.All.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void Letters_are_nine_pixels_high_on_a_narrow_screen(string name)
    {
        var svg = XElement.Parse(AllDrawings.SvgOf(AllDrawings.All[name]));
        var width = double.Parse(svg.Attribute("viewBox")!.Value.Split(' ')[2], CultureInfo.InvariantCulture);
        var texts = svg.Descendants().Where(e => e.Name.LocalName == "text").ToList();
        Assert.NotEmpty(texts);
        Assert.All(texts, t => Assert.True(double.Parse(t.Attribute("font-size")!.Value, CultureInfo.InvariantCulture) * Screen / width
            >= Least, $"{name}: \"{t.Value}\" is {t.Attribute("font-size")!.Value} of {width}."));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_same_is_said_in_words(string name)
    {
        var svg = XElement.Parse(AllDrawings.SvgOf(AllDrawings.All[name]));
        Assert.Equal("img", svg.Attribute("role")!.Value);
        Assert.Equal(AllDrawings.All[name].Description, svg.Elements().Single(e => e.Name.LocalName == "desc").Value);
        Assert.True(AllDrawings.All[name].Description.Length > 60, name);
        Assert.DoesNotContain("NaN", svg.ToString(), StringComparison.Ordinal);
    }

    // Boxes as the browser lays them out, in its own letters.
    [SkippableTheory, Trait("Length", "long")]
    [InlineData(false)]
    [InlineData(true)]
    public void No_words_lie_over_others_or_leave_the_paper(bool wide)
    {
        Skip.If(HeadlessBrowser.WhyNot.Length > 0, HeadlessBrowser.WhyNot);
        var places = string.Concat(AllDrawings.All.Select(d => $"<div class='d' data-name='{d.Key}'>"
            + $"{(wide ? d.Value.Svg : AllDrawings.SvgOf(d.Value))}</div>"));
        var style = wide ? $"body{{margin:0;width:{Desk}px}}svg{{max-width:100%;height:auto;display:block}}"
            : "body{margin:0;width:360px}svg{width:360px;height:auto;display:block}";
        var seen = HeadlessBrowser.Run($$"""
            <!DOCTYPE html><meta charset="utf-8"><style>{{style}}</style><body>{{places}}<script>
            const wrong = [];
            for (const d of document.querySelectorAll(".d")) {
              const paper = d.querySelector("svg").getBoundingClientRect();
              const scale = paper.width / d.querySelector("svg").viewBox.baseVal.width;
              for (const t of d.querySelectorAll("text")) if (parseFloat(t.getAttribute("font-size")) * scale < {{Least}})
                wrong.push(`${d.dataset.name}: "${t.textContent}" has letters of ${(parseFloat(t.getAttribute("font-size")) * scale).toFixed(1)} px`);
              const texts = [...d.querySelectorAll("text")].map(t => ({ t: t.textContent, b: t.getBoundingClientRect() }));
              for (let i = 0; i < texts.length; i++) {
                const a = texts[i];
                if (a.b.left < paper.left - 0.5 || a.b.right > paper.right + 0.5 || a.b.top < paper.top - 0.5 || a.b.bottom > paper.bottom + 0.5)
                  wrong.push(`${d.dataset.name}: "${a.t}" leaves the paper by ${(a.b.right - paper.right).toFixed(1)} px`);
                for (let k = i + 1; k < texts.length; k++) {
                  const b = texts[k], w = Math.min(a.b.right, b.b.right) - Math.max(a.b.left, b.b.left);
                  // A box is higher than its letters: an eighth of it above and below is empty.
                  const h = Math.min(a.b.bottom, b.b.bottom) - Math.max(a.b.top, b.b.top) - 0.25 * Math.min(a.b.height, b.b.height);
                  if (w > 0.5 && h > 0.5) wrong.push(`${d.dataset.name}: "${a.t}" lies over "${b.t}"`);
                }
              }
            }
            const p = document.createElement("pre"); p.id = "result"; p.textContent = JSON.stringify(wrong); document.body.append(p);
            </script>
            """);
        var wrong = JsonSerializer.Deserialize<string[]>(seen)!;
        Assert.True(wrong.Length == 0, string.Join('\n', wrong));
    }
}

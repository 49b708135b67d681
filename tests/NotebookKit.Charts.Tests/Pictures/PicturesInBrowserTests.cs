using System.Text.Json;
using NotebookKit.Charts.Tests.Browser;

namespace NotebookKit.Charts.Tests.Pictures;

/// <summary>Still pictures as a browser lays them out, in its own letters: on a desk and on a phone.</summary>
[Trait("Length", "long")]
public sealed class PicturesInBrowserTests
{
    [SkippableTheory]
    [InlineData(720)]
    [InlineData(356)]
    public void Words_are_legible_whole_and_over_no_line_and_no_other_word(int width)
    {
        Skip.If(HeadlessBrowser.WhyNot.Length > 0, HeadlessBrowser.WhyNot);
        var places = string.Concat(Gallery.All.Select(p => $"<div class='d' data-name='{p.Key}'>"
            + $"{(width > 400 ? p.Value().ToSvg() : p.Value().ToNarrowSvg())}</div>"));
        var seen = HeadlessBrowser.Run($$"""
            <!DOCTYPE html><meta charset="utf-8"><style>body{margin:0;width:{{width}}px}svg{max-width:100%;height:auto;display:block}</style><body>{{places}}<script>
            const wrong = [];
            // A box is higher than its letters: an eighth of it above and below is empty.
            const over = (a, b) => Math.min(a.right, b.right) - Math.max(a.left, b.left) > 0.5 && Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 0.25 * Math.min(a.height, b.height, a.width, b.width) + 0.5;
            for (const d of document.querySelectorAll(".d")) {
              const svg = d.querySelector("svg"), paper = svg.getBoundingClientRect();
              const texts = [...d.querySelectorAll("text")].map(t => ({ t: t.textContent, e: t, b: t.getBoundingClientRect() }));
              const dots = [];
              for (const line of d.querySelectorAll("g[clip-path] polyline")) {
                // A level line is thin, and its own name interrupts it.
                if (parseFloat(line.getAttribute("stroke-width")) < 1) continue;
                const matrix = line.getScreenCTM(), length = line.getTotalLength(), count = Math.ceil(length);
                for (let i = 0; i <= count; i++) dots.push(line.getPointAtLength(length * i / count).matrixTransform(matrix));
              }
              texts.forEach((a, i) => {
                const size = parseFloat(a.e.getAttribute("font-size")) * paper.width / svg.viewBox.baseVal.width;
                if (size < 11.9) wrong.push(`${d.dataset.name}: "${a.t}" has letters of ${size.toFixed(1)} px`);
                if (a.b.left < paper.left - 0.5 || a.b.right > paper.right + 0.5 || a.b.top < paper.top - 0.5 || a.b.bottom > paper.bottom + 0.5)
                  wrong.push(`${d.dataset.name}: "${a.t}" leaves the paper`);
                texts.slice(i + 1).forEach(b => { if (over(a.b, b.b)) wrong.push(`${d.dataset.name}: "${a.t}" lies over "${b.t}"`); });
                const s = a.b.height > 30 ? 0 : 0.15 * a.b.height;
                if (dots.some(p => p.x > a.b.left && p.x < a.b.right && p.y > a.b.top + s && p.y < a.b.bottom - s)) wrong.push(`${d.dataset.name}: "${a.t}" lies over a line`);
              });
            }
            const p = document.createElement("pre"); p.id = "result"; p.textContent = JSON.stringify({ wrong, texts: document.querySelectorAll("text").length }); document.body.append(p);
            </script>
            """);
        using var answer = JsonDocument.Parse(seen);
        Assert.True(answer.RootElement.GetProperty("texts").GetInt32() > 10 * Gallery.All.Count);
        var wrong = answer.RootElement.GetProperty("wrong").EnumerateArray().Select(w => w.GetString()).ToList();
        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }
}

using System.Text.Json;
using NotebookKit.Charts.Explorers;
using NotebookKit.Charts.Tests.Browser;

namespace NotebookKit.Charts.Tests.Explorers;

[Trait("Length", "long")]
public sealed class ExplorerInBrowserTests
{
    [SkippableFact]
    public void The_page_answers_as_the_library_does()
    {
        Skip.If(HeadlessBrowser.WhyNot.Length > 0, HeadlessBrowser.WhyNot);
        // One parameter in equal ratios, one in equal steps.
        var explorer = Explorer.Build("Throw", new Axis("Distance", "m"), new Axis("Height", "m"),
            [Ballistics.Parameters[0] with { Logarithmic = true }, Ballistics.Parameters[1]], Ballistics.Numbers, Ballistics.Limited);
        double[][] settings = [[10, 10], [11.3, 17.7], [23.4, 45.6], [33.3, 79.9], [36, 12], [42, 45], [50, 80]];
        var asked = JsonSerializer.Serialize(settings);
        var answer = HeadlessBrowser.Run($$"""
            <!DOCTYPE html><meta charset="utf-8"><body>{{explorer.ToHtml()}}<script>{{ExplorerScript.Text}}</script><script>
            const root = document.querySelector(".nk-explorer");
            const slider = root.querySelector("input");
            slider.value = 400;
            slider.dispatchEvent(new Event("input"));
            const result = { states: {{asked}}.map(s => root.nkStateAt(s)), sliders: root.querySelectorAll("input").length, still: !!root.querySelector(".nk-explorer-still"), reason: root.querySelector(".nk-error").textContent, bold: root.querySelectorAll("b").length };
            const p = document.createElement("pre"); p.id = "result"; p.textContent = JSON.stringify(result); document.body.append(p);
            </script>
            """);
        using var result = JsonDocument.Parse(answer);
        var states = result.RootElement.GetProperty("states").EnumerateArray().ToList();
        for (var i = 0; i < settings.Length; i++)
        {
            var ours = explorer.At(settings[i]);
            if (ours.RefusedBecause.Length > 0)
            {
                Assert.Equal(ours.RefusedBecause, states[i].GetProperty("reason").GetString());
                continue;
            }
            // The page holds 16 bits a number: half a step of 1/65000 of the range, a little more after weighting.
            Assert.Equal(ours.Numbers, states[i].GetProperty("numbers").EnumerateArray().Select(v => v.GetDouble()),
                (a, b) => Math.Abs(a - b) < 170 / 65_000.0);
            Assert.Equal(ours.Y, states[i].GetProperty("ys").EnumerateArray().Select(v => v.GetDouble()),
                (a, b) => Math.Abs(a - b) < 130 / 65_000.0);
        }
        Assert.Equal(2, result.RootElement.GetProperty("sliders").GetInt32());
        Assert.False(result.RootElement.GetProperty("still").GetBoolean());
        // Dragged to the end it says why there is no answer, as text.
        Assert.Equal("Speed is above 40 m/s; <b>refused</b>.", result.RootElement.GetProperty("reason").GetString());
        Assert.Equal(0, result.RootElement.GetProperty("bold").GetInt32());
    }
}

using System.Text.Json;
using NotebookKit.Charts.Explorers;
using NotebookKit.Charts.Tests.Browser;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Charts.Tests.Explorers;

public sealed class ExploreTests
{
    private enum Ground
    {
        MownGrass,
        Sand,
    }

    private static readonly Series Time = new("Time", "s", [0, 1, 2]);

    // A fall from rest: v = g t, and the height it takes, by hand.
    private static Explored Fall(Duration duration, double g) => g == 0
        ? throw new InvalidDesignException("Fall", [Finding.Error("Nothing falls without <gravity>.")])
        : Explored.Curve(Time, new Series("Speed", "m/s", [0, g, 2 * g])).With("Height",
            (g * duration.Seconds * duration.Seconds / 2).Metres()).With("Steps", duration.Seconds);

    private static Explorer Falling() => Explore.Over(
        "Fall", ExplorerInput.Between("Time", 1.Seconds(), 5.Seconds(), start: 2.Seconds()),
            ExplorerInput.Among("World", [("Earth", 9.81), ("Moon", 1.62), ("nowhere", 0.0)]), Fall);

    [Fact]
    public void Knobs_give_the_model_what_they_say()
    {
        var explorer = Falling();
        Assert.Equal(["m", "-"], explorer.Numbers.Select(n => n.Unit));
        Assert.Equal("Speed [m/s]", explorer.Y.Title);
        Assert.Equal(9.81 * 4.5, explorer.At(3, 0).Numbers[0], 9);
        Assert.Equal(1.62 * 4.5, explorer.At(3, 1).Numbers[0], 9);
        Assert.Equal([0, 1.62, 3.24], explorer.At(3, 1).Y);
    }

    [Fact]
    public void Nothing_lies_between_two_alternatives()
    {
        var explorer = Falling();
        Assert.Equal(explorer.At(3, 1).Numbers, explorer.At(3, 0.6).Numbers);
        Assert.Equal("Nothing falls without <gravity>.", explorer.At(3, 2).RefusedBecause);
        // Beside a refused alternative the others keep their cubic, exact for this parabola.
        Assert.Equal(1.62 * 2.3 * 2.3 / 2, explorer.At(2.3, 1).Numbers[0], 9);
        Assert.InRange(explorer.Error.Checked, 1, 96);
        Assert.InRange(explorer.Error.Numbers[0], 0, 1e-9);
    }

    [Fact]
    public void Where_all_is_picked_nothing_is_interpolated()
    {
        var explorer = Explore.Over("Ground", ExplorerInput.Among<Ground>("Ground"),
            ground => Explored.Curve(Time, Time).With("Place", (double)ground));
        Assert.Equal(["mown grass", "sand"], explorer.Parameters[0].Choices);
        Assert.Contains("Every setting was computed", explorer.ErrorText(), StringComparison.Ordinal);
        Assert.Contains("pick ground (mown grass; sand)", explorer.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_reader_starts_with_the_alternative_that_is_named()
    {
        var input = ExplorerInput.Among("Wind", [3.MetresPerSecond(), 5.MetresPerSecond()], w => w.Show(), start: "5 m/s");
        Assert.Equal("5 m/s", input.Parameter.Show(input.Parameter.Start));
        Assert.Contains("There is no alternative 'calm'", Assert.Throws<InvalidDesignException>(() => ExplorerInput.Among("Wind",
            [3.MetresPerSecond(), 5.MetresPerSecond()], w => w.Show(), "calm")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Curves_of_any_length_are_brought_to_one()
    {
        var explorer = Explore.Over("Ramp", ExplorerInput.Between("Points", 5.0, 9.0, start: 5, points: 5), n =>
        {
            double[] ramp = [.. Enumerable.Range(0, (int)n).Select(i => (double)i)];
            return Explored.Curve(new Series("x", "m", ramp), new Series("y", "m", [.. ramp.Select(v => 2 * v)]));
        });
        Assert.Equal([0, 2, 4, 6, 8], explorer.At(9).X);
        Assert.Equal([0, 4, 8, 12, 16], explorer.At(9).Y);
    }

    [Fact]
    public void Numbers_keep_the_unit_they_started_with()
    {
        var explorer = Explore.Over("Length", ExplorerInput.Among("Unit", [("metres", 1.5.Metres()), ("millimetres", 200.Millimetres())]),
            length => Explored.Curve(Time, Time).With("Length", length).With("Pressure", 5.BarGauge()));
        Assert.Equal(0.2, explorer.At(1).Numbers[0], 12);
        Assert.Equal("bar gauge", explorer.Numbers[1].Unit);
    }

    [Fact]
    public void A_start_that_is_refused_says_why() => Assert.Contains(
        "starts with: Nothing falls", Assert.Throws<InvalidDesignException>(() => Explore.Over("Fall",
            ExplorerInput.Among("World", [("nowhere", 0.0), ("Earth", 9.81)]), g => Fall(1.Seconds(), g))).Message,
            StringComparison.Ordinal);

    [Theory]
    [InlineData("has 1 alternatives", "one")]
    [InlineData("are called 'a'", "a", "a")]
    [InlineData("has no name", "a", " ")]
    public void Alternatives_that_can_not_be_told_apart_are_refused(string reason, params string[] names) => Assert.Contains(
        reason, Assert.Throws<InvalidDesignException>(() => ExplorerInput.Among("List", names)).Message, StringComparison.Ordinal);

    [Fact]
    public void Numbers_that_come_and_go_are_refused_where_they_do()
    {
        var explorer = Explore.Over("Odd", ExplorerInput.Among("n", [("one", 1), ("two", 2)]),
            n => n == 1 ? Explored.Curve(Time, Time).With("A", 1) : Explored.Curve(Time, Time).With("B", 1));
        Assert.Contains("give the same ones everywhere", explorer.At(1).RefusedBecause, StringComparison.Ordinal);
    }

    [SkippableFact, Trait("Length", "long")]
    public void On_a_page_a_list_is_picked_from_and_a_button_goes_back()
    {
        Skip.If(HeadlessBrowser.WhyNot.Length > 0, HeadlessBrowser.WhyNot);
        var answer = HeadlessBrowser.Run($$"""
            <!DOCTYPE html><meta charset="utf-8"><body>{{Falling().ToHtml()}}<script>{{ExplorerScript.Text}}</script><script>
            const root = document.querySelector(".nk-explorer"), list = root.querySelector("select"), said = [];
            const read = () => said.push(root.querySelector(".nk-explorer-numbers dd").textContent);
            read();
            for (const i of [1, 2]) { list.selectedIndex = i; list.dispatchEvent(new Event("change")); read(); }
            const reason = root.querySelector(".nk-error").textContent;
            root.querySelector("button").click();
            read();
            const p = document.createElement("pre"); p.id = "result"; p.textContent = JSON.stringify({ said, reason, start: list.value, between: root.nkStateAt([3, 0.6]).numbers[0] }); document.body.append(p);
            </script>
            """);
        using var result = JsonDocument.Parse(answer);
        // g t²/2 for 2 s: 19.62 m on Earth, 3.24 m on the Moon.
        Assert.Equal(["19.6 m", "3.24 m", "–", "19.6 m"], result.RootElement.GetProperty("said").EnumerateArray().Select(s =>
            s.GetString()!));
        Assert.Equal("Nothing falls without <gravity>.", result.RootElement.GetProperty("reason").GetString());
        Assert.Equal("Earth", result.RootElement.GetProperty("start").GetString());
        Assert.Equal(1.62 * 4.5, result.RootElement.GetProperty("between").GetDouble(), 2);
    }
}

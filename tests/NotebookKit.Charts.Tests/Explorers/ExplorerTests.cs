using CsCheck;
using NotebookKit.Charts.Explorers;
using NotebookKit.Provenance;

namespace NotebookKit.Charts.Tests.Explorers;

public sealed class ExplorerTests
{
    [Fact]
    public void Computed_settings_are_met_exactly()
    {
        var explorer = Ballistics.Build();
        foreach (var setting in new[] { new[] { 10.0, 10 }, [20, 40], [50, 80] })
        {
            var (found, truth) = (explorer.At(setting), Ballistics.Throw(setting));
            Assert.Equal(truth.Numbers, found.Numbers, (a, b) => Math.Abs(a - b) < 1e-9);
            Assert.Equal(truth.Y, found.Y, (a, b) => Math.Abs(a - b) < 1e-9);
        }
    }

    [Fact]
    public void Between_them_the_stated_error_holds()
    {
        var explorer = Ballistics.Build();
        Assert.Equal(96, explorer.Error.Checked);
        Gen.Select(Gen.Double[10, 50], Gen.Double[10, 80]).Sample((speed, angle) =>
        {
            var (found, truth) = (explorer.At(speed, angle), Ballistics.Throw([speed, angle]));
            // The stated error is the largest of 96 places, not of all: a quarter on top.
            for (var n = 0; n < 2; n++) Assert.InRange(Math.Abs(found.Numbers[n] - truth.Numbers[n]), 0, 1.25 * explorer.Error.Numbers[n]);
        });
    }

    // A cubic through equal steps is exact for parabolas: v² of the height is one in v.
    [Fact]
    public void A_parabola_is_met_exactly_from_rim_to_rim()
    {
        var explorer = Explorer.Build("t", new Axis("x", "m"), new Axis("y", "m"), [new ExplorerParameter("a", "-", 0, 5, 6, 1)],
            [new ExplorerNumber("b", "-")],
            s => new ExplorerState { X = [0, 1], Y = [0, s[0]], Numbers = [(3 * s[0] * s[0]) - s[0] + 2] });
        for (var a = 0.0; a <= 5; a += 0.01) Assert.Equal((3 * a * a) - a + 2, explorer.At(a).Numbers[0], 9);
    }

    [Fact]
    public void Halving_the_steps_cuts_the_error_by_its_order()
    {
        double Error(int points) => Explorer.Build("t", new Axis("x", "m"), new Axis("y", "m"),
            [new ExplorerParameter("a", "-", 0, 3, points, 1)], [new ExplorerNumber("b", "-")],
            s => new ExplorerState { X = [0, 1], Y = [0, 1], Numbers = [Math.Exp(s[0])] }).Error.Numbers[0];
        // The slope at the rim is second order, so the value there is third: a factor of eight.
        Assert.InRange(Error(11) / Error(21), 6.5, 9.5);
    }

    [Fact]
    public void A_refused_corner_refuses_its_cells_with_its_reason_and_no_others()
    {
        var explorer = Ballistics.Build(Ballistics.Limited);
        Assert.Equal("", explorer.At(40, 45).RefusedBecause);
        Assert.StartsWith("Speed is above 40 m/s", explorer.At(40.5, 45).RefusedBecause, StringComparison.Ordinal);
        // Beside the refused cells the cubic has no fourth neighbour and gives way to a straight line.
        Assert.InRange(explorer.At(38, 45).Numbers[0], 120, 163);
    }

    [Fact]
    public void The_answer_does_not_depend_on_the_number_of_threads()
        => Assert.Equal(Ballistics.Build().ToHtml(), Ballistics.Build().ToHtml());

    [Fact]
    public void It_states_its_error_and_holds_its_data_safely()
    {
        var html = (Ballistics.Build(Ballistics.Limited) with { Remark = "<i>fixed</i>" }).ToHtml();
        Assert.Contains("Maximum error found at", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<b>refused", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<i>", html, StringComparison.Ordinal);
        Assert.Contains("nk-explorer-still", html, StringComparison.Ordinal);
        Assert.Single(System.Text.RegularExpressions.Regex.Matches(html, "</script>"));
    }

    [Theory]
    [InlineData(9.9, 45)]
    [InlineData(20, 80.1)]
    [InlineData(double.NaN, 45)]
    public void A_setting_outside_is_refused(double speed, double angle)
        => Assert.Throws<OutOfRangeException>(() => Ballistics.Build().At(speed, angle));

    [Fact]
    public void Bad_parameters_are_all_named()
    {
        ExplorerParameter[] bad = [new("", "", 2, 1, 1, 9)];
        var refusal = Assert.Throws<InvalidDesignException>(() => Explorer.Build("t", new Axis("x", "m"), new Axis("y", "m"), bad,
            [new ExplorerNumber("n", "")], Ballistics.Throw));
        Assert.Equal(6, refusal.Findings.Count);
    }

    [Fact]
    public void Too_many_settings_are_refused_before_they_are_computed() =>
        Assert.Contains("20 000 in all", Assert.Throws<InvalidDesignException>(() =>
            Explorer.Build("t", new Axis("x", "m"), new Axis("y", "m"),
                [.. Enumerable.Repeat(new ExplorerParameter("p", "-", 0, 1, 41, 0), 3)], [],
                _ => throw new InvalidOperationException())).Message, StringComparison.Ordinal);

    [Fact]
    public void A_model_that_refuses_everything_says_why() =>
        Assert.Contains("too heavy", Assert.Throws<InvalidDesignException>(() => Ballistics.Build(_ =>
            ExplorerState.Refused("too heavy"))).Message, StringComparison.Ordinal);

    [Fact]
    public void Curves_that_do_not_match_are_refused() =>
        Assert.Throws<InvalidDesignException>(() => Ballistics.Build(s => Ballistics.Throw(s) is var state && s[0] > 20
            ? state with { X = [0, 1], Y = [0, 1] } : Ballistics.Throw(s)));

    [Fact]
    public void Equal_ratios_follow_an_inverse_far_better_than_equal_steps()
    {
        double Error(bool ratios) => Explorer.Build("t", new Axis("x", "m"), new Axis("y", "m"),
            [new ExplorerParameter("a", "-", 1, 16, 9, 4) { Logarithmic = ratios }], [new ExplorerNumber("b", "-")],
            s => new ExplorerState { X = [0, 1], Y = [0, 1], Numbers = [1 / s[0]] }).Error.Numbers[0];
        Assert.True(Error(ratios: true) < 0.1 * Error(ratios: false));
    }
}

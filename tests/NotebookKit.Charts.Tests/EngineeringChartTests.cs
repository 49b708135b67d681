using NotebookKit.Charts.Engineering;
using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Notes;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Tests;

public sealed class EngineeringChartTests
{
    private static readonly Series Time = new("Time", "s", [0, 1, 2]);
    private static readonly Series Bar = new("Pressure", "bar gauge", [10, 20, 30]);
    private static readonly Series Psi = new("Pressure", "psi", [145, 290, 435]);

    [Fact]
    public void Bar_and_psi_can_not_share_an_axis()
    {
        var refusal = Assert.Throws<InvalidDesignException>(() => LineChart.Draw("Pressure", Time, Bar, Psi));
        Assert.Contains("'Pressure' is in psi and the axis 'Pressure' in bar gauge", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Gauge_and_absolute_can_not_share_an_axis() =>
        Assert.Throws<InvalidDesignException>(() => LineChart.Draw("Pressure", Time, Bar, Bar with { Unit = "bar absolute" }));

    [Fact]
    public void The_horizontal_column_must_have_the_unit_of_its_axis() =>
        Assert.Contains("in ms and the axis 'Time' in s", Assert.Throws<InvalidDesignException>(() =>
            LineChart.Draw("Pressure", Time, Bar).With(new Curve(Time with { Unit = "ms" }, Bar)).Checked()).Message,
                StringComparison.Ordinal);

    [Fact]
    public void All_problems_are_reported_at_once()
    {
        var chart = new EngineeringChart("", Axis.For(Time), Axis.For(Bar))
        {
            Marks = [new Curve(Time, Psi), new Curve(Time, Bar with { Values = [1] }), new Curve(Time, Bar) { OnRight = true }],
            Events = [new EventLine(double.NaN, "nowhere")],
        };
        var messages = chart.Validate().Select(f => f.Message).ToList();
        Assert.Equal(5, messages.Count);
        Assert.Contains(messages, m => m.Contains("has no title", StringComparison.Ordinal));
        Assert.Contains(messages, m => m.Contains("psi", StringComparison.Ordinal));
        Assert.Contains(messages, m => m.Contains("has 1 values where the column beside it has 3", StringComparison.Ordinal));
        Assert.Contains(messages, m => m.Contains("no axis", StringComparison.Ordinal));
        Assert.Contains(messages, m => m.Contains("'nowhere'", StringComparison.Ordinal));
        Assert.Throws<InvalidDesignException>(chart.ToFigureJson);
        Assert.Throws<InvalidDesignException>(chart.ToSvg);
    }

    [Fact]
    public void An_empty_chart_is_refused() =>
        Assert.Contains("nothing to draw", Assert.Throws<InvalidDesignException>(() => new EngineeringChart("Empty", Axis.For(Time),
            Axis.For(Bar)).ToFigureJson()).Message, StringComparison.Ordinal);

    [Fact]
    public void A_logarithmic_axis_refuses_zero() =>
        Assert.Contains("zero or below", Assert.Throws<InvalidDesignException>(() =>
            (LineChart.Draw("Pressure", Time, Bar) is var c ? c with { X = c.X.Logarithmic() } : null)!.Checked()).Message,
                StringComparison.Ordinal);

    [Fact]
    public void A_column_of_nothing_finite_is_refused() =>
        Assert.Contains("no finite value", Assert.Throws<InvalidDesignException>(() => LineChart.Draw("Pressure", Time,
            Bar with { Values = [double.NaN, double.NaN, double.NaN] })).Message, StringComparison.Ordinal);

    [Fact]
    public void A_variant_leaves_the_original_as_it_was()
    {
        var chart = LineChart.Draw("Pressure", Time, Bar);
        var before = chart.ToFigureJson();
        var marked = chart.With(new LimitLine(25, "rated")).With(new EventLine(1, "shut")).With(new Callout(1, 20,
            "here")).With(new ShadedSpan(0, 1, "fill")) with { Remark = "more" };
        Assert.NotEqual(before, marked.ToFigureJson());
        Assert.Equal(before, chart.ToFigureJson());
    }

    [Fact]
    public void Its_plotly_chart_is_a_fresh_one_each_time() => Assert.NotSame(LineChart.Draw("Pressure", Time, Bar).ToPlotly(),
        LineChart.Draw("Pressure", Time, Bar).ToPlotly());

    [Fact]
    public void It_says_in_words_what_it_shows() =>
        Assert.Equal("Pressure: Pressure [bar gauge] over Time [s], 0 to 3. Pressure: maximum 9 bar gauge at 2 s, minimum 1 bar gauge at "
            + "0 s. Line: rated.",
            LineChart.Draw("Pressure", new Series("Time", "s", [0, 1, 2, 3]), new Series("Pressure", "bar gauge", [1, 4, 9, 2]))
                .With(new LimitLine(8, "rated")).ToString());
}

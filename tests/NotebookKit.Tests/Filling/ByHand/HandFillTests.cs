using NotebookKit.Filling.ByHand;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Filling.ByHand;

public class HandFillTests
{
    private static readonly PadFill Fill = new()
    {
        Chamber = new Chamber(2.5.Litres(), 66.Millimetres(), 45.BarGauge()), Supply = 45.BarGauge(), Target = 40.BarGauge(),
        Restrictor = new SonicRestrictor(0.1.LitresPerSecondBar(), 0.35), WaterFraction = 32.Percent(), Heat = FillHeat.Wall,
    };

    private static HandFillPlan Plan(params HandAction[] actions) => new HandFill { Fill = Fill, Actions = actions }.Plan();

    [Fact]
    public void Opening_to_a_gauge_reading_takes_the_time_of_the_plain_fill()
    {
        var step = Assert.Single(Plan(HandAction.OpenTo(40.BarGauge())).Steps);
        Tolerance.Relative(Fill.Run().Duration.Seconds, step.Time.Seconds, 1e-6);
        Tolerance.Relative(40, step.Gauge.Bar, 1e-7);
        Assert.True(step.Shortest < step.Time && step.Time < step.Longest);
    }

    // A hole that passes a tenth more fills in about a tenth less.
    [Fact]
    public void The_shortest_and_longest_time_come_from_the_restrictor_and_the_wall()
    {
        var step = (new HandFill { Fill = Fill, Actions = [HandAction.OpenTo(20.BarGauge())], FilmSpread = 0 }).Plan().Steps[0];
        Tolerance.Relative(1 / 1.1, step.Shortest / step.Time, 0.01);
        Tolerance.Relative(1 / 0.9, step.Longest / step.Time, 0.01);
    }

    [Fact]
    public void A_hold_ends_when_the_gas_has_cooled_so_far_and_the_gauge_has_fallen_in_proportion()
    {
        var plan = Plan(HandAction.OpenTo(40.BarGauge()), HandAction.HoldUntilCooled(5.KelvinsOfChange()));
        Assert.InRange(plan.Temperature.Values[^1], 24.99, 25.01);
        var shut = plan.Time.Values.ToList().FindIndex(t => t >= plan.Steps[0].After.Seconds - 1e-9);
        var (hot, at) = (plan.Temperature.Values[shut] + 273.15, plan.Steps[0].Gauge.Pascals + 101325);
        Tolerance.Relative(at * 298.15 / hot, plan.Gauge.Pascals + 101325, 1e-6);
    }

    [Fact]
    public void Topping_up_settles_at_the_target()
    {
        var plan = HandFill.ToSettleAt(Fill, 0.5.Bar(), 3.KelvinsOfChange()).Plan();
        Assert.InRange(plan.Gauge.Bar, 39.5, 40);
        Assert.True(plan.Steps.Count >= 4);
        Assert.All(plan.Pressure.Values, p => Assert.True(p <= 40 + 1e-6));
        Assert.Equal(plan.Steps.Count, plan.Lines.Count);
    }

    [Fact]
    public void Clicks_rise_a_little_each_and_are_refused_past_the_rating()
    {
        var plan = Plan(HandAction.OpenTo(30.BarGauge()), HandAction.Clicks(5, 1.Seconds(), 2.Seconds()));
        Tolerance.Relative(15, plan.Steps[1].Time.Seconds, 1e-9);
        Assert.True(plan.Gauge > 30.BarGauge());
        var strong = new HandFill { Fill = Fill with { Supply = 60.BarGauge(), Restrictor = new SonicRestrictor(1.LitresPerSecondBar(),
            0.35) },
            Actions = [HandAction.Clicks(20, 2.Seconds(), 1.Seconds())] };
        Assert.Contains("past its rated pressure of 45 bar gauge", Assert.Throws<InvalidDesignException>(() => strong.Plan()).Message,
            StringComparison.Ordinal);
    }

    // Too small a restrictor taken out, and the rest filled by clicks through the larger passage.
    [Fact]
    public void A_restrictor_that_is_too_small_is_taken_out_and_the_rest_is_clicked()
    {
        var open = new SonicRestrictor(1.LitresPerSecondBar(), 0.35);
        var plan = Plan(HandAction.OpenTo(10.BarGauge()), HandAction.Fit(open), HandAction.Clicks(3, 0.3.Seconds(), 5.Seconds()));
        var slow = Plan(HandAction.OpenTo(10.BarGauge()), HandAction.Clicks(3, 0.3.Seconds(), 5.Seconds()));
        var none = Plan(HandAction.OpenTo(10.BarGauge()), HandAction.Hold(15.9.Seconds()));
        // Ten times the conductance, choked: ten times the rise, less what the hotter gas gives to the wall meanwhile.
        Assert.InRange((plan.Gauge.Bar - none.Gauge.Bar) / (slow.Gauge.Bar - none.Gauge.Bar), 8.5, 10.5);
        Assert.Contains("shut", plan.Steps[1].WhenOff, StringComparison.Ordinal);
    }

    [Fact]
    public void A_reading_that_nothing_explains_is_told_from_one_that_is()
    {
        var step = Plan(HandAction.OpenTo(40.BarGauge()), HandAction.Hold(60.Seconds())).Steps[1];
        Assert.True(step.Explains(step.Gauge, 60.Seconds()));
        Assert.False(step.Explains((step.Gauge.Bar - 4).BarGauge(), 60.Seconds()));
        Assert.Contains("is a leak", step.WhenOff, StringComparison.Ordinal);
    }

    [Fact]
    public void What_cannot_be_done_says_what_would_help()
    {
        void Refused(string sentence, PadFill fill, params HandAction[] actions) => Assert.Contains(sentence,
            Assert.Throws<InvalidDesignException>(() => new HandFill { Fill = fill, Actions = actions }.Plan()).Message,
            StringComparison.Ordinal);

        Refused("say what is done", Fill);
        Refused("raise the regulator within the rating", Fill with { Supply = 41.BarGauge() }, HandAction.OpenTo(44.BarGauge()));
        Refused("no more than the vessel's rated pressure", Fill, HandAction.OpenTo(50.BarGauge()));
        Refused("time of a click", Fill, HandAction.Clicks(3, 0.01.Seconds(), 1.Seconds()));
        Refused("rest of the gas's heat", Fill, HandAction.HoldUntilCooled(0.KelvinsOfChange()));
    }
}

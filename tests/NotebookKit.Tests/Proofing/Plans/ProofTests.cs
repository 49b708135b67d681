using CsCheck;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Proofing.Plans;

public class ProofTests
{
    private static readonly Proof Curlew = new()
    {
        Vessel = "Curlew",
        Volume = 2.5.Litres(),
        WorkingPressure = 40.BarGauge(),
        Wall = new WallExpansion(1.2.Percent(), 60.BarGauge(), Source.CommonPractice("test")),
        TrappedAir = 5.Millilitres(),
        Support = new HorizontalSupport(66.Millimetres(), 1.Millimetres(), 60.Centimetres(), Density.FromKilogramsPerCubicMeter(1450),
            10.Gigapascals()),
    };

    [Fact]
    public void Steps_rise_to_proof_and_come_down_to_working_pressure_for_leaks()
    {
        var plan = Curlew.Plan();
        Assert.Equal([15.0, 30.0, 45.0, 54.0, 60.0, 40.0], plan.Steps.Select(s => Math.Round(s.Pressure.Bar, 9)));
        Assert.Equal(120, plan.Steps[4].Hold.Seconds);
        Assert.Equal(30, plan.Steps[4].WallExpansion.Milliliters, 9);
        Assert.Equal(ResultStatus.Completed, plan.Status);
    }

    [Fact]
    public void Says_that_air_would_hold_hundreds_of_times_the_energy_and_that_the_floor_governs()
    {
        var plan = Curlew.Plan();
        Assert.True(plan.EnergyIfAir / (plan.EnergyInWater + plan.EnergyInWall + plan.EnergyInTrappedAir) > 100);
        Assert.True(plan.StandOff.FloorGoverns);
        Assert.Equal(30, plan.StandOff.Distance.Meters);
        Assert.Contains(plan.Findings, f => f.Message.Contains("floor governs", StringComparison.Ordinal));
        Assert.Contains(plan.Cautions, c => c == Cautions.Proof);
    }

    // Proof 1.5 times the maximum pressure expected, which is 5 % above the working pressure: 1.575 times working, and the working pressure
    // stays the rating's own.
    [Fact]
    public void A_rating_s_rule_proves_to_the_rating_s_proof_pressure()
    {
        var rating = Vessels.Samples.Trainer.Rate();
        var proof = Curlew with { WorkingPressure = rating.WorkingPressure, Rule = ProofRule.For(rating) };
        Tolerance.Relative(1.575, proof.Rule.Factor, 1e-12);
        Tolerance.Relative(rating.ProofPressure.Bar, proof.Plan().ProofPressure.Bar, 1e-12);
        Assert.Equal(rating.WorkingPressure, proof.Plan().Proof.WorkingPressure);
    }

    [Fact]
    public void Checklist_holds_every_step_and_the_cautions()
    {
        var plan = Curlew.Plan();
        var text = string.Join("\n", plan.Checklist);
        Assert.All(plan.Steps, s => Assert.Contains(s.Pressure.ToString(), text, StringComparison.Ordinal));
        Assert.Contains("Never proof with air", text, StringComparison.Ordinal);
        Assert.Contains("5 % of the total expansion", text, StringComparison.Ordinal);
    }

    // A twentieth of 60 bar is 3 bar, half of that either way; a tenth of 40 bar is 4 bar.
    [Fact]
    public void Checklist_says_by_how_much_a_reading_may_be_off()
    {
        var plan = (Curlew with { WorkingPressure = 40.BarGauge() }).Plan();
        var line = plan.Checklist.Single(l => l.Contains("off the planned pressure", StringComparison.Ordinal));
        Assert.Equal(60, plan.ProofPressure.Bar, 1e-9);
        Assert.Contains("no more than 2.5 %, or 0.5 bar where that is more: at proof 1.5 bar", line, StringComparison.Ordinal);
        Assert.Contains("at 40 bar gauge 4 bar", line, StringComparison.Ordinal);
    }

    [Fact]
    public void Falls_and_rises_are_read_in_bar_as_the_gauge_has_them()
    {
        var plan = Curlew.Plan();
        Assert.EndsWith(" bar", plan.DropPerMillilitre.Show(), StringComparison.Ordinal);
        Assert.EndsWith(" bar", plan.RisePerKelvin.Show(), StringComparison.Ordinal);
    }

    [Fact]
    public void Working_shows_formula_numbers_answer_and_source()
    {
        var steps = Curlew.Plan().Working.Steps;
        Assert.True(steps.Count >= 10);
        Assert.All(steps, s => Assert.False(string.IsNullOrWhiteSpace(s.Formula) || string.IsNullOrWhiteSpace(s.Numbers)
            || string.IsNullOrWhiteSpace(s.Answer)));
        Assert.Contains(steps, s => s.Answer == "30 mL");
    }

    [Fact]
    public void Refuses_a_proof_with_air()
    {
        var error = Assert.Throws<InvalidDesignException>(() => (Curlew with { Medium = ProofMedium.Air }).Plan());
        Assert.Contains("must be water", error.Message, StringComparison.Ordinal);
        Assert.Contains("60 bar gauge", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Refuses_more_trapped_air_than_the_limit_and_says_what_to_do()
    {
        var error = Assert.Throws<InvalidDesignException>(() => (Curlew with { TrappedAir = 20.Millilitres() }).Plan());
        Assert.Contains("trapped air is 20 mL", error.Message, StringComparison.Ordinal);
        Assert.Contains("12.5", error.Message, StringComparison.Ordinal);
        Assert.Contains("bleed again", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Says_everything_that_is_wrong_at_once()
    {
        var bad = Curlew with
        {
            Vessel = " ",
            Volume = Volume.Zero,
            WorkingPressure = 600.BarGauge(),
            Rule = ProofRule.Club with { Factor = double.NaN },
            Steps = [50.Percent(), 40.Percent()],
            Wall = Curlew.Wall with { VolumeRatio = 50.Percent() },
        };
        var errors = bad.Validate().Where(f => f.Severity == FindingSeverity.Error).Select(f => f.Message).ToList();
        string[] wanted = ["no name", "volume of the vessel", "working pressure", "proof factor", "steps", "relative expansion"];
        Assert.All(wanted, w => Assert.Contains(errors, e => e.Contains(w, StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData(5)]
    [InlineData(3000)]
    public void Refuses_a_proof_hold_outside_its_range(double seconds) =>
        Assert.Contains("hold at proof pressure", Assert.Throws<InvalidDesignException>(() => (Curlew
            with { ProofHold = seconds.Seconds() }).Plan()).Message, StringComparison.Ordinal);

    [Fact]
    public void Warns_of_supports_too_far_apart()
    {
        var plan = (Curlew with { Support = Curlew.Support! with { Span = 3.Metres() } }).Plan();
        Assert.Contains(plan.Findings, f => f.Severity == FindingSeverity.Warning
            && f.Message.Contains("Move them closer", StringComparison.Ordinal));
    }

    [Fact]
    public void Warns_that_a_rule_is_from_memory() =>
        Assert.Contains((Curlew with { Rule = ProofRule.Of(RuleSets.GlassCylinder) }).Plan().Findings,
            f => f.Message.Contains("unverified", StringComparison.Ordinal));

    [Fact]
    public void Losing_water_and_its_fall_in_pressure_are_inverse() =>
        Gen.Select(Gen.Double[0.01, 5], Gen.Double[5, 90]).Sample((millilitres, bar) =>
        {
            var filled = Curlew.Filled;
            var back = filled.LossFor(filled.DropFor(millilitres.Millilitres(), bar.BarGauge()), bar.BarGauge());
            return Math.Abs(back.Milliliters / millilitres - 1) < 1e-12;
        });

    [Fact]
    public void Water_to_pump_rises_with_pressure_and_its_slope_is_the_compliance() =>
        Gen.Double[1, 90].Sample(bar =>
        {
            var filled = Curlew.Filled;
            const double step = 1e-3;
            var slope = (filled.WaterToPump((bar + step).BarGauge()) - filled.WaterToPump((bar - step).BarGauge())).Milliliters / (2 *
                step);
            return slope > 0 && Math.Abs(slope * filled.DropFor(1.Millilitres(), bar.BarGauge()).Bars - 1) < 1e-6;
        });

    [Fact]
    public void A_rating_brings_its_proof_with_it()
    {
        var rating = Tests.Vessels.Samples.Trainer.Rate();
        var proof = Proof.For(rating);
        Tolerance.Relative(rating.ProofPressure.Bar, proof.ProofPressure.Bar, 1e-12);
        Tolerance.Relative(rating.Vessel.Expansion(rating.ProofPressure).ElasticExpansion.Milliliters,
            proof.Filled.WallExpansion(rating.ProofPressure).Milliliters, 1e-9);
        Assert.Equal(rating.Vessel.Length, proof.Support!.Span);
        Assert.Equal(ResultStatus.Completed, proof.Plan().Status);
    }
}

using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Filling.Fills;

public class FillThroughWaterTests
{
    private static readonly PadFill Fill = new()
    {
        Chamber = new Chamber(2.5.Litres(), 66.Millimetres(), 40.BarGauge()), Supply = 38.BarGauge(), Target = 36.BarGauge(),
            WaterFraction = 32.Percent(),
        Restrictor = new Orifice(0.5.Millimetres(), 0.8), Port = PortPosition.UnderWater,
    };

    // 50 mL through 0.6 of a 0.5 mm hole, the vessel squeezed to 1.01325 bar × (1.7/1.65)^1.4 = 1.056493 bar: 5e-5 / (1.178097e-7 × √(2 ×
    // 37.956757e5/1000)) s.
    [Fact]
    public void Water_in_the_line_goes_first_and_its_longest_time_is_told()
    {
        var result = (Fill with { WaterInLine = 50.Millilitres(), HasCheckValve = true }).Run();
        Tolerance.Relative(5e-5 / (1.178097e-7 * Math.Sqrt(2 * 37.956757e5 / 1000)), result.WaterFirst!.Value.Seconds, 1e-6);
        Tolerance.Absolute(result.Duration.Seconds + result.WaterFirst.Value.Seconds, result.DurationWithWater!.Value.Seconds, 1e-9);
        Assert.Contains(result.Lines, l => l.Name == "Fill time with water in the line");
        Assert.Contains(result.Findings, f => f.Severity == FindingSeverity.Warning
            && f.Message.Contains("by up to 4.87 s", StringComparison.Ordinal));
        Assert.DoesNotContain(result.Findings, f => f.Message.Contains("runs back", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(null, "whether a check valve is fitted isn't given")]
    [InlineData(false, "Fit a check valve")]
    public void Without_a_check_valve_water_may_run_back(bool? valve, string said) =>
        Assert.Contains((Fill with { HasCheckValve = valve }).Run().Findings,
            f => f.Severity == FindingSeverity.Warning && f.Message.Contains(said, StringComparison.Ordinal));

    [Fact]
    public void What_cannot_be_computed_is_said_with_its_reason()
    {
        string Warned(PadFill fill) => fill.Run().Findings.Single(f => f.Message.Contains("moves first", StringComparison.Ordinal)).Message;
        Assert.Contains("isn't given", Warned(Fill), StringComparison.Ordinal);
        Assert.Contains("where the filling port lies isn't given", Warned(Fill with { Port = PortPosition.NotGiven }),
            StringComparison.Ordinal);
        Assert.Contains("over half", Warned(Fill with { WaterInLine = 1.Litres() }), StringComparison.Ordinal);
        Assert.Contains("hardly above", Warned(Fill with { WaterInLine = 50.Millilitres(), Start = 35.5.BarGauge() }),
            StringComparison.Ordinal);
        Assert.Contains("by fits", Warned(Fill with { WaterInLine = 50.Millilitres(), Valve = new ValvePulses(1.Seconds(), 2.Seconds()) }),
            StringComparison.Ordinal);
        Assert.Null(Fill.Run().WaterFirst);
        Assert.Null(Fill.Run().DurationWithWater);
    }

    [Fact]
    public void A_port_above_the_water_or_a_dry_vessel_says_nothing_of_water()
    {
        Assert.DoesNotContain((Fill with { Port = PortPosition.AboveWater }).Run().Findings,
            f => f.Message.Contains("ater", StringComparison.Ordinal));
        Assert.DoesNotContain((Fill with { WaterFraction = 0.Percent() }).Run().Findings,
            f => f.Message.Contains("ater", StringComparison.Ordinal));
    }

    [Fact]
    public void Nonsense_is_refused()
    {
        var wrong = Assert.Throws<InvalidDesignException>(() => (Fill
            with { Port = (PortPosition)9, WaterInLine = 0.Litres() }).Run()).Message;
        Assert.Contains("position of the filling port", wrong, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("water in the line", wrong, StringComparison.OrdinalIgnoreCase);
    }
}

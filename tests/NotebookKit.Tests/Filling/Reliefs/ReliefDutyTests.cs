using NotebookKit.Filling.Networks;
using NotebookKit.Filling.Reliefs;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Filling.Reliefs;

public class ReliefDutyTests
{
    private static readonly ReliefDuty Duty = new()
    {
        Valve = new(42.BarGauge(), Area.FromSquareMillimeters(20), 0.6) { Overpressure = 10.Percent() },
        Chamber = new Chamber(2.5.Litres(), 66.Millimetres(), 45.BarGauge()), Passage = new Orifice(1.Millimetres(), 0.8),
        Cylinder = 200.BarGauge(), Gas = Gas.Air with { Real = null },
    };

    // The full cylinder through 1 mm: 0.8 π/4 mm² × 0.684731 × 201.01325 bar/√(R T) = 29.8 g/s.
    [Fact]
    public void What_comes_in_is_choked_from_the_full_cylinder()
    {
        var result = Duty.Run();
        var choked = 0.8 * Math.PI / 4 * 1e-6 * 0.684731 * 201.01325e5 / Math.Sqrt(287.05287 * 293.15);
        Tolerance.Relative(1000 * choked, result.Inflow.GramsPerSecond, 1e-5);
        // Air at 200 bar and 20 °C chokes at some 8 % more than an ideal gas.
        Assert.InRange((Duty with { Gas = Gas.Air }).Run().Inflow / result.Inflow, 1.03, 1.15);
    }

    [Fact]
    public void A_valve_that_is_large_enough_and_set_low_enough_protects()
    {
        var result = Duty.Run();
        Assert.True(result.Protects);
        Assert.Empty(result.Findings);
        Assert.True(result.Capacity > result.Inflow);
        var same = (Duty with { Valve = Duty.Valve with { FlowArea = result.RequiredArea } }).Run();
        Tolerance.Relative(1, same.Capacity / same.Inflow, 1e-9);
    }

    [Fact]
    public void A_valve_too_small_too_high_or_too_late_says_what_would_help()
    {
        void Says(ReliefDuty wrong, string sentence)
        {
            var result = wrong.Run();
            Assert.False(result.Protects);
            Assert.Contains(result.Findings, f => f.Severity == FindingSeverity.Error && f.Message.Contains(sentence,
                StringComparison.Ordinal));
        }

        Says(Duty with { Valve = Duty.Valve with { FlowArea = Area.FromSquareMillimeters(1) } }, "or a smaller restrictor");
        Says(Duty with { Valve = Duty.Valve with { Set = 46.BarGauge() } }, "set the valve to 45 bar gauge at most");
        Says(Duty with { Valve = Duty.Valve with { Set = 45.BarGauge() } }, "smaller overpressure");
        Assert.Contains((Duty with { FillsTo = 41.BarGauge() }).Run().Findings, f => f.Message.Contains("may simmer",
            StringComparison.Ordinal));
        Assert.Throws<InvalidDesignException>(() => (Duty with { Valve = Duty.Valve with { Discharge = 2 } }).Run());
    }

    // Set to 0.5 bar with 10 %: 1.56325 bar abs, so the air outside is at 0.64817 of it and nothing chokes. Isentropic nozzle by hand: flow
    // over the choked one is 0.96478 (Python, from p, T and Mach number).
    [Fact]
    public void A_valve_that_opens_low_passes_less_than_a_choked_one()
    {
        ReliefValve low = new(0.5.BarGauge(), Area.FromSquareMillimeters(20), 0.6);
        var choked = low.Relieving(AbsolutePressure.StandardSeaLevel).Pascals * 0.684731 * 20e-6 * 0.6 / Math.Sqrt(287.05287 * 293.15);
        var r = 1.01325 / 1.56325;
        var mach = Math.Sqrt(5 * (Math.Pow(r, -1 / 3.5) - 1));
        var share = mach * Math.Sqrt(1.4) * Math.Pow(1 + (0.2 * mach * mach), -3) / 0.684731;
        Assert.InRange(share, 0.95, 0.99);
        Tolerance.Relative(choked * share, low.Capacity(Gas.Air, 293.15.Kelvins(), AbsolutePressure.StandardSeaLevel).KilogramsPerSecond,
            1e-4);
        Tolerance.Relative(1, ReliefValve.Subcritical(0.528281787, 1.4), 1e-9);
        Tolerance.Absolute(0, ReliefValve.Subcritical(1, 1.4), 1e-9);
    }

    // Warm gas in the vessel: less mass through the relief valve, more enthalpy, so the pressure that is held is no higher than what the
    // capacity at the temperature of the inflow has it: the network follows both.
    [Fact]
    public void A_valve_sized_for_gas_as_warm_as_the_inflow_holds_gas_that_filling_has_heated()
    {
        var passage = new Orifice(1.Millimetres(), 0.8);
        var needed = (Duty with { Cylinder = 60.BarGauge() }).Run().RequiredArea;
        var valve = new Orifice(Length.FromMillimeters(Math.Sqrt(needed.SquareMillimeters * 4 / Math.PI)), 0.6);
        PadNetwork pad = new()
        {
            Nodes = [new SupplyNode("supply", 60.BarGauge()),
                new VesselNode("vessel", new(2.5.Litres(), 66.Millimetres(), 60.BarGauge())),
                new OutsideNode()],
            Links = [new("supply", "vessel", [new PassagePart("hole", passage)]),
                new("vessel", "outside", [new ReliefPart("relief", valve, 42.BarGauge())])],
        };
        Assert.InRange(pad.Fill(10.Minutes()).Highest("vessel").Bar, 42, 46.2001);
    }

    // Rated 45 bar, expected up to 5 % more, 47.25: 42.9 × 1.1 = 47.19 opens in time, 43 × 1.1 = 47.3 doesn't.
    [Theory]
    [InlineData(42.9, 0.10, true)]
    [InlineData(43, 0.10, false)]
    [InlineData(45, 0.04, true)]
    [InlineData(45.1, 0.01, false)]
    public void A_valve_is_set_to_the_rating_at_most_and_open_by_a_twentieth_above(double set, double over, bool protects)
    {
        var valve = Duty.Valve with { Set = set.BarGauge(), Overpressure = Ratio.FromDecimalFractions(over) };
        var result = (Duty with { Valve = valve }).Run();
        Assert.Equal(protects, result.Protects);
        Assert.Equal(protects, result.Findings.Count == 0);
    }

    [Theory]
    [InlineData(0.999, false)]
    [InlineData(1.001, true)]
    public void A_valve_that_passes_a_thousandth_less_than_comes_in_is_too_small(double share, bool protects)
    {
        var result = (Duty with { Valve = Duty.Valve with { FlowArea = Duty.Run().RequiredArea * share } }).Run();
        Assert.Equal(protects, result.Protects);
        Assert.Equal(!protects, result.Findings.Any(f => f.Message.Contains("or a smaller restrictor", StringComparison.Ordinal)));
    }

    // Nine tenths of 42 bar are 37.8.
    [Theory]
    [InlineData(37.7, false)]
    [InlineData(37.9, true)]
    public void A_fill_over_nine_tenths_of_the_set_pressure_may_simmer(double bar, bool isSaid) =>
        Assert.Equal(isSaid, (Duty with { FillsTo = bar.BarGauge() }).Run().Findings.Any(f => f.Message.Contains("may simmer",
            StringComparison.Ordinal)));

    // ISO 4126-1: the capacity goes as 1/√Z; Z 1.08 takes 3.775 % of it.
    [Fact]
    public void A_gas_less_dense_than_an_ideal_one_leaves_slower() => Tolerance.Relative(1 / Math.Sqrt(1.08),
        (Duty with { Valve = Duty.Valve with { Compressibility = 1.08 } }).Run().Capacity / Duty.Run().Capacity, 1e-9);
}

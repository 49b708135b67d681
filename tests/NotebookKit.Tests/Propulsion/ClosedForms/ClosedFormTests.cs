using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Propulsion.ClosedForms;

public class ClosedFormTests
{
    private static readonly Density Water = 1000.KilogramsPerCubicMetre();
    private static readonly AbsolutePressure Air = AbsolutePressure.StandardSeaLevel;

    [Theory]
    [InlineData(-0.1)]
    [InlineData(1)]
    [InlineData(double.NaN)]
    public void An_area_ratio_that_narrows_nothing_is_refused(double ratio)
    {
        Assert.Throws<OutOfRangeException>(() => WaterExpulsion.JetSpeed(5.BarGauge(), Water, ratio));
        Assert.Throws<OutOfRangeException>(() => WaterExpulsion.Thrust(5.BarGauge(), 1.SquareCentimetres(), ratio));
        Assert.Throws<OutOfRangeException>(() => WaterExpulsion.StartingTimeConstant(5.BarGauge(), Water, 0.1.Metres(), ratio));
    }

    [Fact]
    public void Suction_is_refused() =>
        Assert.Contains("pressure above ambient", Assert.Throws<OutOfRangeException>(() => WaterExpulsion.JetSpeed((-1).BarGauge(),
            Water)).Message, StringComparison.Ordinal);

    [Fact]
    public void Gas_that_would_be_spent_is_refused() =>
        Assert.Throws<OutOfRangeException>(() => WaterExpulsion.EmptyingTime(
            2.BarAbsolute(), 0.1.Litres(), 3.Litres(), 1.4, 1.SquareCentimetres(), Air, Water));

    [Fact]
    public void Exponents_outside_1_to_1_7_are_refused()
    {
        Assert.Throws<OutOfRangeException>(() => WaterExpulsion.ExpansionWork(2.BarAbsolute(), 1.Litres(), 2.Litres(), 0.5, Air));
        Assert.Throws<OutOfRangeException>(() => WaterExpulsion.GasShareForMaximumWork(2));
        Assert.Throws<OutOfRangeException>(() => WaterExpulsion.GasShareForMaximumImpulseInVacuum(double.NaN));
    }

    [Fact]
    public void Isothermal_work_is_the_limit_of_polytropic_work()
    {
        var isothermal = WaterExpulsion.ExpansionWork(40.BarAbsolute(), 2.Litres(), 3.Litres(), 1, Air).Joules;
        Tolerance.Relative(isothermal, WaterExpulsion.ExpansionWork(40.BarAbsolute(), 2.Litres(), 3.Litres(), 1 + 1e-7, Air).Joules, 1e-6);
    }

    [Fact]
    public void Flow_and_thrust_are_continuous_where_choking_ends()
    {
        var critical = GasFlow.CriticalPressureRatio() * 10;
        double Flow(double back) => GasFlow.MassFlow(10.BarAbsolute(), 300.Kelvins(), 1.SquareCentimetres(), back.BarAbsolute(),
            Gas.Air).KilogramsPerSecond;
        double Thrust(double back) => GasFlow.Thrust(10.BarAbsolute(), 300.Kelvins(), 1.SquareCentimetres(), back.BarAbsolute(),
            Gas.Air).Newtons;
        Tolerance.Relative(Flow(critical - 1e-6), Flow(critical + 1e-6), 1e-9);
        Tolerance.Relative(Thrust(critical - 1e-6), Thrust(critical + 1e-6), 1e-6);
        Assert.Equal(0, Flow(10));
        Assert.Equal(0, Flow(12));
    }

    [Fact]
    public void The_tail_of_another_gas_has_no_closed_form() =>
        Assert.Throws<OutOfRangeException>(() => new GasBlowDown(1.Litres(), 1.SquareCentimetres(), 10.BarAbsolute(), 300.Kelvins(),
            Gas.Hydrogen).UnchokedTime(Air));

    [Fact]
    public void Mach_numbers_below_zero_are_refused()
    {
        Assert.Throws<OutOfRangeException>(() => GasFlow.PressureRatio(-1));
        Assert.Throws<OutOfRangeException>(() => GasFlow.AreaRatio(0));
        Assert.Throws<OutOfRangeException>(() => GasFlow.TemperatureRatio(1, 0.9));
    }

    // 10 bar outside standard air unchokes at 1.918 bar.
    [Fact]
    public void A_blow_down_past_choking_is_refused_with_the_remedy()
    {
        var vessel = new GasBlowDown(1.Litres(), 1.SquareCentimetres(), 10.BarAbsolute(), 300.Kelvins(), Gas.Air);
        var end = vessel.UnchokingTime(Air);
        Tolerance.Relative(vessel.UnchokingPressure(Air).Bar, vessel.PressureAt(end).Bar, 1e-9);
        Action[] late =
        [
            () => vessel.PressureAt(end * 1.01), () => vessel.TemperatureAt(end * 1.01), () => vessel.IsothermalPressureAt(end * 2),
            () => vessel.ChokedImpulse(end * 1.01, Air), () => vessel.TimeTo(1.9.BarAbsolute()), () => vessel.TimeTo(11.BarAbsolute()),
            () => vessel.PressureAt((-1).Seconds()),
        ];
        Assert.All(late, l => Assert.Contains("static firing", Assert.Throws<OutOfRangeException>(l).Message, StringComparison.Ordinal));
        Assert.Throws<OutOfRangeException>(() => (vessel with { Start = 1.5.BarAbsolute() }).UnchokingTime(Air));
        Assert.True((vessel with { Ambient = AbsolutePressure.FromPascals(0) }).PressureAt(end * 2).Bar < 1);
    }
}

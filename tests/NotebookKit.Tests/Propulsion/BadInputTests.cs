using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Propulsion;

/// <summary>Every closed form refuses what it doesn't hold for, with a sentence that says what, its value and the range.</summary>
public class BadInputTests
{
    private static readonly AbsolutePressure Air = AbsolutePressure.StandardSeaLevel;
    private static readonly Temperature Room = 293.15.Kelvins();
    private static readonly Area Jet = 78.SquareMillimetres();
    private static readonly Density Water = 1000.KilogramsPerCubicMetre();
    private static readonly GasBlowDown Vessel = new(4.Litres(), 100.SquareMillimetres(), 30.BarAbsolute(), Room, Gas.Air);
    private static readonly Hose Hose = new(6.Millimetres(), 10.Metres());
    private static readonly Orifice Hole = new(1.Millimetres(), 0.8);

    public static TheoryData<string, Action> Refused => new()
    {
        { "gas temperature is −10 K", () => GasFlow.MassFlow(5.BarAbsolute(), Temperature.FromKelvins(-10), Jet, Air, Gas.Air) },
        { "gas pressure at rest is 0 bar absolute", () => GasFlow.Thrust(0.BarAbsolute(), Room, Jet, 0.BarAbsolute(), Gas.Air) },
        { "ratio of heat capacities of air is not a number",
            () => GasFlow.Thrust(5.BarAbsolute(), Room, Jet, Air, Gas.Air with { HeatCapacityRatio = double.NaN }) },
        { "volume of the vessel is −1 L", () => _ = (Vessel with { Volume = (-1).Litres() }).TimeConstant },
        { "gas temperature is −4 K", () => (Vessel with { StartTemperature = Temperature.FromKelvins(-4) }).PressureAt(0.01.Seconds()) },
        { "effective nozzle area is 0", () => (Vessel with { EffectiveArea = 0.SquareMillimetres() }).TimeTo(10.BarAbsolute()) },
        { "pressure outside is 1.01 bar absolute", () => (Vessel with { Start = 0.5.BarAbsolute() }).UnchokedTime(Air) },
        { "pressure outside is 0 bar absolute", () => Vessel.UnchokedTime(0.BarAbsolute()) },
        { "density of the water is 0", () => WaterExpulsion.JetSpeed(30.BarGauge(), 0.KilogramsPerCubicMetre()) },
        { "height of the water is −1 m", () => WaterExpulsion.JetSpeedWithHead(30.BarGauge(), Water, (-1).Metres(), Acceleration.Zero) },
        { "acceleration of the vehicle is −20", () => WaterExpulsion.JetSpeedWithHead(30.BarGauge(), Water, 1.Metres(),
            Acceleration.FromMetersPerSecondSquared(-20)) },
        { "area of the jet is −1 mm²", () => WaterExpulsion.Thrust(30.BarGauge(), (-1).SquareMillimetres()) },
        { "gas volume at the end is 2 L", () => WaterExpulsion.EmptyingTime(40.BarAbsolute(), 3.Litres(), 2.Litres(), 1.4, Jet, Air,
            Water) },
        { "air pressure outside is 1.01 bar absolute", () => WaterExpulsion.EmptyingTime(0.5.BarAbsolute(), 2.Litres(), 3.Litres(), 1.4,
            Jet, Air, Water) },
        { "air pressure outside is 0 bar absolute", () => WaterExpulsion.EmptyingTime(40.BarAbsolute(), 2.Litres(), 3.Litres(), 1.4, Jet,
            0.BarAbsolute(), Water) },
        { "gas volume at the end is 2 L", () => WaterExpulsion.EmptyingTimeInVacuum(40.BarAbsolute(), 3.Litres(), 2.Litres(), 1.4, Jet,
            Water) },
        { "gas volume at the end is 2 L", () => WaterExpulsion.WaterImpulse(20.BarAbsolute(), 3.Litres(), 2.Litres(), 1.4, Air, Water) },
        { "gas volume at the start is 0 L", () => WaterExpulsion.ExpansionWork(20.BarAbsolute(), 0.Litres(), 2.Litres(), 1, Air) },
        { "air pressure outside is 1.01 bar absolute", () => WaterExpulsion.StoredEnergy(0.5.BarAbsolute(), 2.Litres(), 1.4, Air) },
        { "jet speed is 0 m/s", () => WaterExpulsion.TimeAtConstantPressure(1.Litres(), Jet, Speed.Zero) },
        { "mass without water is 0 kg", () => WaterExpulsion.IdealSpeedGain(80.MetresPerSecond(), 0.Kilograms(), 1.Kilograms()) },
        { "mass of the water is −2 kg", () => WaterExpulsion.IdealSpeedGain(80.MetresPerSecond(), 1.Kilograms(), (-2).Kilograms()) },
        { "pressure above ambient is 0 bar gauge", () => WaterExpulsion.StartingTimeConstant(GaugePressure.Zero, Water, 0.1.Metres(), 0.01)
            },
        { "gas temperature is −3 K", () => Hole.Flow(10.BarAbsolute(), Temperature.FromKelvins(-3), Air, Gas.Air) },
        { "gas pressure at rest is 0 bar absolute", () => Hole.Flow(0.BarAbsolute(), Room, 0.BarAbsolute(), Gas.Air) },
        { "diameter of the orifice is −1 mm", () => new Orifice((-1).Millimetres(), 0.8).Flow(10.BarAbsolute(), Room, Air, Gas.Air) },
        { "pressure at the end of the hose is 0 bar absolute",
            () => Hose.IsothermalFlow(60.BarAbsolute(), Room, 0.BarAbsolute(), Gas.Air) },
        { "flow through the hose is −1 kg/s", () => Hose.DarcyDrop(MassFlow.FromKilogramsPerSecond(-1), 60.BarAbsolute(), Room, Gas.Air) },
        { "flow through the hose is 1 kg/s", () => Hose.DarcyDrop(MassFlow.FromKilogramsPerSecond(1), 60.BarAbsolute(), Room, Gas.Air) },
        { "bore of the hose is −6 mm", () => new Hose((-6).Millimetres(), 10.Metres()).DarcyDrop(MassFlow.Zero, 60.BarAbsolute(), Room,
            Gas.Air) },
        { "Kv as a flow of water is −1", () => FlowCapacity.AreaOfKv(VolumeFlow.FromCubicMetersPerHour(-1)) },
        { "Cv as a flow of water is", () => FlowCapacity.KvOfCv(VolumeFlow.FromUsGallonsPerMinute(-1)) },
        { "discharge coefficient is 0", () => FlowCapacity.DrillFor(0.1.LitresPerSecondBar(), 0) },
        { "behind the regulator is 200 bar absolute", () => RealGas.Air.Throttled(RealGas.Air.At(60.BarAbsolute(), Room),
            200.BarAbsolute()) },
        { "after charging is 20 bar absolute", () => RealGas.Air.Charged(RealGas.Air.At(60.BarAbsolute(), Room),
            RealGas.Air.At(60.BarAbsolute(), Room), 20.BarAbsolute()) },
        { "after charging is 80 bar absolute", () => RealGas.Air.Charged(RealGas.Air.At(1.BarAbsolute(), Room),
            RealGas.Air.At(60.BarAbsolute(), Room), 80.BarAbsolute()) },
        { "ahead of the nozzle is 1000 bar absolute", () => RealGas.Air.CriticalFlowFactor(RealGas.Air.At(1000.BarAbsolute(),
            200.Kelvins())) },
    };

    [Theory]
    [MemberData(nameof(Refused))]
    public void Refuses_with_what_value_and_range(string said, Action computing)
    {
        var refused = Assert.ThrowsAny<ArgumentException>(computing);
        Assert.True(refused is OutOfRangeException or InvalidDesignException, refused.GetType().Name);
        Assert.Contains(said, refused.Message, StringComparison.Ordinal);
        Assert.Contains("must be", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_state_of_another_gas_is_refused() =>
        Assert.Contains("of hydrogen; it must be of air", Assert.Throws<ArgumentException>(() =>
            RealGas.Air.Throttled(RealGas.Hydrogen.At(100.BarAbsolute(), Room), 20.BarAbsolute())).Message, StringComparison.Ordinal);

    // At the pressure where ṁ √(R T) = A p the isothermal formula has its maximum: the end of its range.
    [Fact]
    public void The_isothermal_hose_ends_where_its_flow_no_longer_rises()
    {
        var refused = Assert.Throws<OutOfRangeException>(() => Hose.IsothermalFlow(60.BarAbsolute(), Room, 2.BarAbsolute(), Gas.Air));
        var lowest = double.Parse(refused.Minimum.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture);
        double At(double bar) => Hose.IsothermalFlow(60.BarAbsolute(), Room, bar.BarAbsolute(), Gas.Air).KilogramsPerSecond;
        var flow = At(lowest + 0.02);
        Assert.True(flow > At(lowest + 1) && At(lowest + 1) > At(30));
        Tolerance.Relative(flow * Math.Sqrt(287.05287 * 293.15), Math.PI / 4 * 36e-6 * lowest * 1e5, 0.01);
    }

    [Fact]
    public void Water_that_the_gas_is_too_weak_for_gives_no_impulse()
    {
        Impulse To(double litres) => WaterExpulsion.WaterImpulse(2.BarAbsolute(), 1.Litres(), litres.Litres(), 1.4, Air, Water);
        // 1 L from 2 bar is at ambient with 1.625 L.
        Tolerance.Relative(To(1.7).NewtonSeconds, To(30).NewtonSeconds, 1e-12);
        Assert.True(To(1.5) < To(1.7));
        Assert.Equal(0, WaterExpulsion.WaterImpulse(0.9.BarAbsolute(), 1.Litres(), 2.Litres(), 1.4, Air, Water).NewtonSeconds);
    }
}

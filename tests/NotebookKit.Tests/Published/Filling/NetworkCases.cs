using NotebookKit.Filling.Networks;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Published.Filling;

public class NetworkCases
{
    private static readonly Chamber Donor = new(10.Litres(), 140.Millimetres(), 250.BarGauge()),
        Receiver = new(3.Litres(), 90.Millimetres(), 250.BarGauge());

    private static GaugePressure Bars(double absolute) => absolute.BarAbsolute().ToGauge(AbsolutePressure.StandardSeaLevel);

    private static double Conductance(params IRestrictor[] chain)
    {
        var curve = chain.Skip(1).Aggregate(FlowCurve.Of(chain[0], Gas.Air), (c, next) => c.Then(FlowCurve.Of(next, Gas.Air)));
        return curve.Flow(1e6, 293.15, 1) / (1e6 * 1.185) * 1e8;
    }

    private static SonicRestrictor Iso(double conductance, double ratio) => new(conductance.LitresPerSecondBar(), ratio);

    [Fact]
    [PublishedCase("L11a", "ISO 6358 in series, Eckersten 1975 as in Beater, Pneumatic Drives, 2007; equal to a bisection of both "
        + "ellipses")]
    public void Two_parts_in_series_that_choke_behind() => Tolerance.Relative(1.8048277, Conductance(Iso(2, 0.3), Iso(3, 0.4)), 1e-8);

    [Fact]
    [PublishedCase("L11b", "The same with the first part choked")]
    public void Two_parts_in_series_that_choke_ahead() => Tolerance.Relative(1, Conductance(Iso(1, 0.3), Iso(4, 0.4)), 1e-8);

    [Fact]
    [PublishedCase("L12", "Two and three equal parts of C 2, b 0.3 in series")]
    public void Equal_parts_in_series()
    {
        var pair = Conductance(Iso(2, 0.3), Iso(2, 0.3));
        Tolerance.Relative(1.5144311, pair, 1e-8);
        // Pairwise, as the standard has it: the pair counts as one part of its own C and b, and takes the third behind it.
        static double Ratio(double all, (double C, double B) one, (double C, double B) other) =>
            1 - all * all * ((1 - one.B) / (one.C * one.C) + (1 - other.B) / (other.C * other.C));
        var ratio = Ratio(pair, (2, 0.3), (2, 0.3));
        Tolerance.Relative(0.197274455, ratio, 1e-8);
        var three = Conductance(Iso(pair, ratio), Iso(2, 0.3));
        Tolerance.Relative(1.26966472, three, 1e-8);
        Tolerance.Relative(0.153674535, Ratio(three, (pair, ratio), (2, 0.3)), 1e-8);
        // The chain itself, marched back through three ellipses by bisection in plain Python: a line is run on this one, 0.2 % above.
        Tolerance.Relative(1.2722771638, Conductance(Iso(2, 0.3), Iso(2, 0.3), Iso(2, 0.3)), 1e-8);
    }

    [Theory]
    [InlineData(2, 0.80745833)]
    [InlineData(3, 0.699374309)]
    [InlineData(4, 0.626894473)]
    [PublishedCase("L14", "Equal ideal orifices in series into vacuum, St Venant and Wantzel, computed")]
    public void Equal_orifices_in_series(int count, double share)
    {
        var hole = new Orifice(1.Millimetres(), 1);
        Tolerance.Relative(share, Conductance([.. Enumerable.Repeat<IRestrictor>(hole, count)]) / Conductance(hole), 1e-8);
    }

    // Two open valves from one supply into one vessel pass the sum of both.
    [Fact]
    [PublishedCase("L13", "ISO 6358-3 in parallel: C = 2 + 3; at 7 and 5.6 bar the exact sum is 25.4504348 units of C p")]
    public void Parts_in_parallel()
    {
        var sum = FlowCurve.Of(Iso(2, 0.3), Gas.Air).Flow(7e5, 293.15, 5.6e5) + FlowCurve.Of(Iso(3, 0.4), Gas.Air).Flow(7e5, 293.15, 5.6e5);
        Tolerance.Relative(25.4504348, sum / 1e5 / 1.185 * 1e8, 1e-8);
    }

    [Fact]
    [PublishedCase("L16", "A check valve that cracks at 0.3 bar: the vessel stops at 49.7 and stays there when the supply is vented")]
    public void Check_valve_holds()
    {
        PadNetwork pad = new()
        {
            Nodes = [new CylinderNode(new("bottle", 200.Litres(), 50.BarGauge())), new VesselNode("vessel", new(1.Litres(),
                60.Millimetres(), 60.BarGauge())) { Heat = FillHeat.Isothermal }, new OutsideNode()],
            Links = [new("bottle", "vessel", [new CheckValvePart("check valve", Iso(0.1, 0.3), 0.3.Bar())]),
                new("bottle", "outside", [new ValvePart("vent", Iso(50, 0.3)) { Openings = [new(2.Minutes(), 10.Minutes())] }])],
        };
        var run = pad.Fill(5.Minutes());
        var kept = run.Time.Values.Zip(run.Pressure("vessel").Values).Where(p => p.First >= 121).Select(p => p.Second).ToList();
        var bottle = run.Time.Values.Zip(run.Pressure("bottle").Values).First(p => p.First >= 119).Second;
        Tolerance.Absolute(bottle - 0.3, run.Time.Values.Zip(run.Pressure("vessel").Values).First(p => p.First >= 119).Second, 1e-3);
        Assert.All(kept, p => Tolerance.Relative(kept[0], p, 1e-9));
        // Empty: to what the steps are computed to.
        Assert.InRange(run.End("bottle").Bar, -1e-8, 1e-3);
    }

    [Fact]
    [PublishedCase("L22", "Supply effect 1 %, set 50 bar at an inlet of 200, inlet down to 80; droop 3 bar at full flow: makers' rule")]
    public void Regulator_outlet_rises_as_the_cylinder_empties()
    {
        RegulatorPart regulator = new("regulator", 50.BarGauge()) { SupplyEffect = 0.01, SetAtInlet = 200.BarGauge(), Droop = 3.Bar(),
            DroopFlow = MassFlow.FromGramsPerSecond(10) };
        Tolerance.Relative(51.2, regulator.OutletAt(80.BarGauge(), MassFlow.Zero).Bar, 1e-9);
        Tolerance.Relative(49.7, regulator.OutletAt(80.BarGauge(), MassFlow.FromGramsPerSecond(5)).Bar, 1e-9);
    }

    [Theory]
    [InlineData(10, 12.282)]
    [InlineData(20, 23.393)]
    [InlineData(30, 42.470)]
    [InlineData(40, 73.849)]
    [PublishedCase("P55", "IAPWS-IF97 saturation table: 12.282, 23.393, 42.470 and 73.849 mbar (unverified)")]
    public void Vapour_that_the_water_of_a_vessel_may_add(double celsius, double mbar)
    {
        PadNetwork pad = new()
        {
            Nodes = [new SupplyNode("supply", 10.BarGauge()), new VesselNode("vessel", new(1.Litres(), 60.Millimetres(), 60.BarGauge()))
                { WaterFraction = 30.Percent(), Heat = FillHeat.Isothermal }],
            Links = [new("supply", "vessel", [new PassagePart("hole", Iso(0.1, 0.3))])], Temperature = celsius.Celsius(),
        };
        Tolerance.Relative(mbar, pad.Fill(1.Minutes()).SaturatedVapour("vessel")!.Value.Pascals / 100, 2e-4);
    }

    [Fact]
    [PublishedCase("L30", "Two vessels, donor isentropic, no heat: 10 L at 200 bar abs and 3 L at ambient, first law")]
    public void Two_vessels_level_out()
    {
        PadNetwork pad = new()
        {
            Nodes = [new VesselNode("donor", Donor) { Start = Bars(200) }, new VesselNode("receiver", Receiver)],
            Links = [new("donor", "receiver", [new PassagePart("hole", Iso(0.5, 0.3))])],
            Temperature = 293.15.Kelvins(), Tolerance = 1e-10,
        };
        var run = pad.Fill(10.Minutes());
        Tolerance.Relative(154.079981, run.End("donor").ToAbsolute(AbsolutePressure.StandardSeaLevel).Bar, 1e-7);
        Tolerance.Relative(154.079981, run.End("receiver").ToAbsolute(AbsolutePressure.StandardSeaLevel).Bar, 1e-7);
        Tolerance.Relative(272.096593 - 273.15, run.Temperature("donor").Values[^1], 1e-4);
        Tolerance.Relative(395.036059 - 273.15, run.Temperature("receiver").Values[^1], 1e-5);
        Assert.InRange(run.EnergyError, 0, 1e-9);
    }

    [Fact]
    [PublishedCase("L31", "Cascade: 10 L at 200 bar abs fills 3 L thrice, settled at one temperature")]
    public void Cascade_of_three_fills()
    {
        var holds = 200.0;
        foreach (var expected in (double[])[154.07998, 118.756889, 91.58528])
        {
            PadNetwork pad = new()
            {
                Nodes = [new VesselNode("donor", Donor) { Start = Bars(holds), Heat = FillHeat.Isothermal },
                    new VesselNode("receiver", Receiver) { Heat = FillHeat.Isothermal }],
                Links = [new("donor", "receiver", [new PassagePart("hole", Iso(0.5, 0.3))])],
                Tolerance = 1e-9,
            };
            holds = pad.Fill(10.Minutes()).End("donor").ToAbsolute(AbsolutePressure.StandardSeaLevel).Bar;
            Tolerance.Relative(expected, holds, 1e-7);
        }
    }

    [Fact]
    [PublishedCase("L35", "Torn hose of 6 mm at 80 bar gauge, momentum theorem; energy of 10 m by three formulas, computed")]
    public void Hose_that_whips()
    {
        var whip = new HosePart("hose", new Hose(6.Millimetres(), 10.Metres())).Whip(80.BarGauge(), AbsolutePressure.StandardSeaLevel);
        Tolerance.Relative(287.554298, whip.Force.Newtons, 1e-7);
        Tolerance.Relative(5654.867, whip.Brode.Joules, 1e-6);
        Tolerance.Relative(4088.843, whip.Isentropic.Joules, 1e-6);
        Tolerance.Relative(7774.183, whip.Availability.Joules, 1e-6);
        var grown = new HosePart("hose", new Hose(6.Millimetres(), 10.Metres())) { GrowthPerBar = 5e-4 };
        Tolerance.Relative(1.04, grown.VolumeAt(80.BarGauge()) / whip.Held, 1e-9);
    }
}

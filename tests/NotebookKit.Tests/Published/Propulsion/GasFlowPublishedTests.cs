using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Published.Propulsion;

public class GasFlowPublishedTests
{
    private const double Printed = 1e-6;
    private const string Dutton = "Choked isentropic blow-down: standard gas dynamics; J. C. Dutton, R. E. Coverdill, Int. J. Engng Ed. "
        + "13 (1997) 123; independent integration, 2025";

    private static readonly AbsolutePressure Air = AbsolutePressure.StandardSeaLevel;

    private static readonly GasBlowDown Vessel = new(
        4.Litres(), Circle(12) * 0.95, 30.BarGauge().ToAbsolute(Air), 293.15.Kelvins(), Gas.Air);

    [Fact]
    [PublishedCase("P40", "NACA Report 1135 (1953); White, Fluid Mechanics quotes 0.685 p0 A/sqrt(R T0)")]
    public void Critical_ratio_and_flow()
    {
        Tolerance.Relative(0.528281788, GasFlow.CriticalPressureRatio(), 1e-8);
        var flow = GasFlow.MassFlow(30.BarGauge().ToAbsolute(Air), 293.15.Kelvins(), Circle(10), Air, Gas.Air);
        Tolerance.Relative(0.574951942, flow.KilogramsPerSecond, Printed);
    }

    [Theory]
    [PublishedCase("P41", "NACA Report 1135 (1953), Tables I and II, γ = 1.4")]
    [InlineData(0.5, 0.8430192, 0.9523810, 0.8851701, 1.3398438)]
    [InlineData(1, 0.5282818, 0.8333333, 0.6339381, 1)]
    [InlineData(2, 0.1278045, 0.5555556, 0.2300481, 1.6875)]
    [InlineData(3, 0.0272237, 0.3571429, 0.0762263, 4.2345679)]
    public void Isentropic_table(double mach, double pressure, double temperature, double density, double area)
    {
        Tolerance.Absolute(pressure, GasFlow.PressureRatio(mach), 5.1e-8);
        Tolerance.Absolute(temperature, GasFlow.TemperatureRatio(mach), 5.1e-8);
        Tolerance.Absolute(density, GasFlow.DensityRatio(mach), 5.1e-8);
        Tolerance.Absolute(area, GasFlow.AreaRatio(mach), 5.1e-8);
    }

    [Fact]
    [PublishedCase("P42", Dutton)]
    public void Choked_blow_down()
    {
        Tolerance.Relative(0.187429453, Vessel.TimeConstant.Seconds, Printed);
        Tolerance.Relative(21.554033, Vessel.PressureAt(0.05.Seconds()).Bar, Printed);
        Tolerance.Relative(15.251733, Vessel.PressureAt(0.1.Seconds()).Bar, Printed);
        Tolerance.Relative(8.007283, Vessel.PressureAt(0.2.Seconds()).Bar, Printed);
        Tolerance.Relative(239.345204, Vessel.TemperatureAt(0.1.Seconds()).Kelvins, Printed);
        Tolerance.Relative(1.918010, Vessel.UnchokingPressure(Air).Bar, Printed);
        Tolerance.Relative(0.457546125, Vessel.UnchokingTime(Air).Seconds, Printed);
        Tolerance.Relative(132.357, Vessel.TemperatureAt(Vessel.UnchokingTime(Air)).Kelvins, 4e-6);
    }

    [Fact]
    [PublishedCase("P43", "Unchoked tail for γ = 7/5: derivation of the reference, same form as Dutton and Coverdill 1997, eqs 3-5; 2025")]
    public void Unchoked_tail()
    {
        Tolerance.Relative(0.195031396, Vessel.UnchokedTime(Air).Seconds, Printed);
        Tolerance.Relative(0.652577521, (Vessel.UnchokingTime(Air) + Vessel.UnchokedTime(Air)).Seconds, Printed);
    }

    [Fact]
    [PublishedCase("P44", "Momentum theorem for a choked converging nozzle, C_F0 = 1.267876; independent arithmetic, 2025")]
    public void Choked_thrust_and_impulse()
    {
        var flow = GasFlow.MassFlow(Vessel.Start, Vessel.StartTemperature, Vessel.EffectiveArea, Air, Gas.Air).KilogramsPerSecond;
        var thrust = GasFlow.Thrust(Vessel.Start, Vessel.StartTemperature, Vessel.EffectiveArea, Air, Gas.Air).Newtons;
        Tolerance.Relative(0.786534257, flow, Printed);
        Tolerance.Relative(411.587540, thrust, Printed);
        Tolerance.Relative(523.29258, thrust / flow, Printed);
        Tolerance.Relative(54.932231, Vessel.ChokedImpulse(Vessel.UnchokingTime(Air), Air).NewtonSeconds, Printed);
    }

    [Fact]
    [PublishedCase("P46", "10 ft3 tank at 100 psia through a 0.1 in orifice: a NASA network-flow verification case (geometry "
        + "unverified); formula re-computed, 2025")]
    public void Slow_tank()
    {
        var tank = new GasBlowDown(
            Volume.FromCubicFeet(10), Circle(2.54), 100.PsiAbsolute(), Temperature.FromDegreesFahrenheit(80), Gas.Air);
        double[] times = [50, 100, 150, 200], pressures = [78.0984, 61.5102, 48.8284, 39.0481];
        for (var i = 0; i < 4; i++) Tolerance.Relative(pressures[i], tank.PressureAt(times[i].Seconds()).Psi, 2e-6);
        Tolerance.Relative(278.20086, tank.TimeConstant.Seconds, Printed);
        Tolerance.Relative(69.8058, tank.IsothermalPressureAt(100.Seconds()).Psi, 2e-6);
        Tolerance.Relative(48.7286, tank.IsothermalPressureAt(200.Seconds()).Psi, 2e-6);
    }

    private static Area Circle(double millimetres) => (Math.PI / 4 * millimetres * millimetres).SquareMillimetres();
}

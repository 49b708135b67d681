using NotebookKit.Quantities;

namespace NotebookKit.Tests.Published.Propulsion;

/// <summary>
/// Vessels that were emptied on a bench, gas only, with heat from the wall by a published law that isn't tuned. Throat coefficients
/// are free where the source doesn't print them. Figures are sampled from published diagrams, 1 % of full scale.
/// </summary>
public class MeasuredDischargeTests
{
    private const string Air = "Air from 16.2 L at 790 kPa; attributed to J. C. Dutton, R. E. Coverdill, Int. J. Engng Ed. 13 (1997) 123";
    private const string Nitrogen = "Nitrogen from 89.2 L at 150 bar: M. A. Haque et al., Trans. IChemE 70B (1992) 3, experiment I1";
    private const string Hydrogen = "Hydrogen from 49.9 L at 138 bar: J. Byrnes, R. Reid, F. Ruccia, Ind. Eng. Chem. Process Des. Dev. "
        + "3 (1964) 206";

    private static readonly (double Time, double Kilopascal)[] AirPressure =
    [
        (4.14, 567.48), (8.06, 423.27), (12.0, 325.82), (15.7, 262.13), (19.6, 208.84), (23.6, 171.12), (27.6, 141.2), (31.5, 120.37),
            (35.2, 108.63),
    ];

    [Fact]
    [PublishedCase("N01", Air)]
    public void Adiabatic_and_isothermal_theory_bracket_the_air_vessel()
    {
        var cold = AirVessel(FlowModel.Real);
        var warm = AirVessel(FlowModel.Plain with { AirPhase = Expansion.Isothermal });
        foreach (var (time, pressure) in AirPressure.Where(p => p.Time < 30))
        {
            Assert.True(At(cold, cold.Pressure, time) * 100 < pressure * 1.01);
            Assert.True(At(warm, warm.Pressure, time) * 100 > pressure * 0.99);
        }
    }

    // The closed forms, from the first reading of 768.8 kPa at 0.23 s through 4.85 mm² (the coefficient is the tool's that kept the
    // record): 0.53, 0.55, 0.63 at 7.83 s.
    [Fact]
    [PublishedCase("P47", Air + ": discharge lies between the adiabatic and the isothermal theory (abstract)")]
    public void Closed_forms_bracket_the_air_vessel_while_it_is_choked()
    {
        var vessel = new GasBlowDown(16.18.Litres(), 4.85.SquareMillimetres(), 7.688.BarAbsolute(), 298.Kelvins(),
            Gas.Air) { Ambient = 1.BarAbsolute() };
        Tolerance.Absolute(0.53, vessel.PressureAt(7.83.Seconds()).Bar / 7.688, 0.006);
        Tolerance.Absolute(0.63, vessel.IsothermalPressureAt(7.83.Seconds()).Bar / 7.688, 0.006);
        foreach (var (time, pressure) in AirPressure.Where(p => p.Time is > 5 and < 17))
        {
            Assert.True(vessel.PressureAt((time - 0.23).Seconds()).Bar * 100 < pressure);
            Assert.True(vessel.IsothermalPressureAt((time - 0.23).Seconds()).Bar * 100 > pressure);
        }
    }

    [Fact]
    [PublishedCase("N01", Air + "; pressure within 6 %, coldest gas 256.4 K within 6 K")]
    public void Heat_from_the_wall_explains_the_air_vessel()
    {
        var curve = AirVessel(FlowModel.Real with { WallWarming = new() { Law = FilmLaw.Horizontal,
            Wall = ThermalWall.Steel(8.18.Millimetres()) } }, 0.86);
        foreach (var (time, pressure) in AirPressure) Tolerance.Relative(pressure, At(curve, curve.Pressure, time) * 100, 0.06);
        Tolerance.Absolute(256.4, Coldest(curve, 60).Kelvins, 6);
    }

    [Fact]
    [PublishedCase("N02", Nitrogen + "; pressure within 6 % to 50 s with the coefficient free, gas between its top and bottom, ± 5 K")]
    public void Heat_from_the_wall_explains_the_nitrogen_vessel()
    {
        // The record starts to fall at 0.3 s. Coefficient 0.72 by hand; 0.80 is quoted by others for another heat law.
        var curve = NitrogenVessel(FlowModel.Real with { WallWarming = WallWarming.FreeConvection
            with { Wall = ThermalWall.Steel(25.Millimetres()) } });
        (double, double)[] pressures = [(0.3, 150), (5.3, 92.6), (10.2, 65.7), (15.1, 50.6), (19.8, 39.2), (24.7, 31.7), (29.8, 25.8),
            (39.6, 17.5), (49.4, 12.0)];
        foreach (var (time, bar) in pressures) Tolerance.Relative(bar, At(curve, curve.Pressure, time - 0.3), 0.06);
        (double Time, double Bottom, double Top)[] temperatures = [(10, 228.2, 238.2), (20, 203.8, 213.6), (30, 192.0, 206.7),
            (40, 187.7, 206.7)];
        foreach (var (time, bottom, top) in temperatures) Assert.InRange(At(curve, curve.Temperature, time) + 273.15, bottom - 5, top + 5);
    }

    [Fact]
    [PublishedCase("N02", Nitrogen)]
    public void An_ideal_gas_misses_the_mass_of_nitrogen_at_150_bar()
    {
        // Equation of state of Span et al. 2000: 15.4 kg; ideal 15.65 kg.
        var real = NitrogenVessel(FlowModel.Real).Gas[0];
        var ideal = NitrogenVessel(FlowModel.Plain).Gas[0];
        Assert.InRange(ideal / real, 1.01, 1.03);
    }

    [Fact]
    [PublishedCase("N03", Hydrogen + "; throat fitted to pressure, temperature tested, ± 6 K")]
    public void Hydrogen_cools_more_the_faster_it_leaves()
    {
        // 14 s, 30 s and 480 s; coldest gas 194.9 K, 222.5 K, 273.3 K. In eight minutes the bath of the stand feeds the wall: it is held at
        // its temperature there.
        var fast = Coldest(HydrogenVessel(140, 294.6, 3.783, ThermalWall.Steel(7.2.Millimetres())), 13.9);
        var middle = Coldest(HydrogenVessel(136, 293, 2.70, ThermalWall.Steel(7.2.Millimetres())), 29.7);
        var slow = Coldest(HydrogenVessel(137, 291.8, 0.70, null), 478);
        Tolerance.Absolute(194.9, fast.Kelvins, 6);
        Tolerance.Absolute(222.5, middle.Kelvins, 6);
        Tolerance.Absolute(273.3, slow.Kelvins, 6);
        Assert.True(fast.Kelvins < middle.Kelvins && middle.Kelvins < slow.Kelvins);
    }

    [Fact]
    [PublishedCase("N06", "G. Thorncroft, J. S. Patton, R. Gordon, ASEE AC 2007-2695: the polytropic exponent is not constant; it falls "
        + "as the throat shrinks")]
    public void The_effective_exponent_falls_as_the_throat_shrinks()
    {
        double Exponent(double millimetres)
        {
            var firing = new StaticFiring(
                new Charge(new Chamber(16.18.Litres(), 200.Millimetres(), 20.BarGauge()), 0.Percent(), 6.9.BarGauge(), 298.Kelvins()),
                new Nozzle(millimetres.Millimetres()), 1.BarAbsolute()) {
                    Flow = FlowModel.Real with { WallWarming = WallWarming.FreeConvection } };
            var curve = firing.Fire().Curve;
            var half = Enumerable.Range(0, curve.Time.Count).First(i => curve.Pressure[i] < 3);
            return Math.Log(curve.Pressure[0] / curve.Pressure[half]) / Math.Log(curve.Gas[0] / curve.Gas[half]);
        }

        double[] exponents = [.. new[] { 20.0, 8, 3, 1 }.Select(Exponent)];
        for (var i = 1; i < exponents.Length; i++) Assert.True(exponents[i] < exponents[i - 1], string.Join(", ", exponents));
        Assert.InRange(exponents[0], 1.35, 1.42);
        Assert.InRange(exponents[^1], 1, 1.15);
    }

    private static ThrustCurve AirVessel(FlowModel flow, double coefficient = 0.84) => new StaticFiring(
        new Charge(new Chamber(16.18.Litres(), 200.Millimetres(), 20.BarGauge()), 0.Percent(), 6.9.BarGauge(), 298.Kelvins()),
        new Nozzle(2.71.Millimetres()) { AirDischargeCoefficient = coefficient }, 1.BarAbsolute()) { Flow = flow }.Fire().Curve;

    private static ThrustCurve NitrogenVessel(FlowModel flow) => new StaticFiring(
        new Charge(new Chamber(89.2.Litres(), 273.Millimetres(), 200.BarGauge()), 0.Percent(), 148.98675.BarGauge(),
            288.Kelvins()) { Gas = Gas.Nitrogen },
        new Nozzle(6.35.Millimetres()) { AirDischargeCoefficient = 0.72 }, AbsolutePressure.StandardSeaLevel) { Flow = flow }.Fire().Curve;

    private static ThrustCurve HydrogenVessel(double bar, double kelvins, double millimetres, ThermalWall? wall) => new StaticFiring(
        new Charge(new Chamber(49.9.Litres(), 217.Millimetres(), 200.BarGauge()), 0.Percent(), (bar - 1.01325).BarGauge(),
            kelvins.Kelvins()) { Gas = Gas.Hydrogen },
        new Nozzle(millimetres.Millimetres()) { AirDischargeCoefficient = 0.8 }, AbsolutePressure.StandardSeaLevel)
    {
        Flow = FlowModel.Real with { WallWarming = WallWarming.FreeConvection with { Wall = wall } },
    }.Fire().Curve;

    private static double At(ThrustCurve curve, Series series, double time)
    {
        var i = Enumerable.Range(1, curve.Time.Count - 1).First(k => curve.Time[k] >= time);
        var length = curve.Time[i] - curve.Time[i - 1];
        return series[i - 1] + (series[i] - series[i - 1]) * (time - curve.Time[i - 1]) / length;
    }

    private static (double Kelvins, double Time) Coldest(ThrustCurve curve, double until)
    {
        var (value, index) = curve.Temperature.Values.Select((t, i) => (t, i)).Where(p => curve.Time[p.i] <= until).MinBy(p => p.t);
        return (value + 273.15, curve.Time[index]);
    }
}

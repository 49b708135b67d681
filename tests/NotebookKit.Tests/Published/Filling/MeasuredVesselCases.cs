using NotebookKit.Filling;
using NotebookKit.Materials;
using NotebookKit.Numerics.Ode;
using NotebookKit.Quantities;
using NotebookKit.Vessels;
using UnitsNet;

namespace NotebookKit.Tests.Published.Filling;

/// <summary>
/// Measured vessels. The film coefficient is claimed to ±30 %: where a temperature is compared, some factor in that band has to meet it within
/// the tolerance argued for the measurement, and the nominal run's error is said beside it.
/// </summary>
public class MeasuredVesselCases
{
    private static readonly double[] Band = [0.7, 1.0, 1.3];

    private static double At(Series at, Series of, double x)
    {
        for (var i = 1; i < at.Count; i++)
            if (at[i] >= x)
                return of[i - 1] + (of[i] - of[i - 1]) * (x - at[i - 1]) / (at[i] - at[i - 1]);
        return of[^1];
    }

    // Steel of 7850 kg/m³ and 470 J/(kg·K).
    private static FillWall Steel(Chamber chamber, double wallMillimetres, double factor)
    {
        var wall = FillWall.Of(chamber, Ratio.Zero);
        return wall with { HeatCapacity = Entropy.FromJoulesPerKelvin(wall.Surface.SquareMeters * wallMillimetres * 1e-3 * 7850 * 470), FilmFactor = factor };
    }

    private static Vent Small(double factor)
    {
        var (chamber, ambient) = (new Chamber(16.18.Litres(), 200.Millimetres(), 20.BarGauge()), 100.Kilopascals().Absolute());
        return new()
        {
            Chamber = chamber,
            Restrictor = new Orifice(2.71.Millimetres(), 0.84),
            From = 790.Kilopascals().Absolute().ToGauge(ambient),
            SafePressure = 0.01.BarGauge(),
            Ambient = ambient,
            Temperature = 298.Kelvins(),
            Wall = Steel(chamber, 8.18, factor),
        };
    }

    [Fact]
    [PublishedCase("N01", "Air, 16.2 L, 790 kPa to ambient, attributed to J. C. Dutton, R. E. Coverdill, Int. J. Engng Ed. 13 (1997) 123")]
    public void Air_discharge_lies_between_the_bounds_and_within_6_percent()
    {
        var result = Small(1).Run();
        (double Seconds, double Kilopascals)[] measured = [(0.23, 768.8), (4.14, 567.5), (8.06, 423.3), (12.0, 325.8), (15.7, 262.1), (19.6, 208.8), (23.6, 171.1), (27.6, 141.2), (35.2, 108.6)];
        double Kilopascals(VentCurve c, double t) => 100 * (1 + At(c.Time, c.Pressure, t));
        foreach (var (t, p) in measured) Tolerance.Relative(p, Kilopascals(result.WithWall!, t), 0.06);

        // The last point lies where both bounds run into ambient; 2 % is the digitising error near the ends.
        foreach (var (t, p) in measured[1..^1]) Assert.InRange(p, 0.98 * Kilopascals(result.Adiabatic, t), 1.02 * Kilopascals(result.Isothermal, t));
    }

    // Nominal run: 248.2 K at 19.5 s against 256.4 K at 23.2 s.
    [Fact]
    [PublishedCase("N01", "Lowest gas temperature of the same discharge: 256.4 K at 23.2 s")]
    public void Air_discharge_meets_the_lowest_temperature_within_its_band()
    {
        Assert.Contains(Band, f => Math.Abs(VentSimulation.Run(Small(f), FillHeat.Wall).Temperature.Values.Min() + 273.15 - 256.4) < 6);
        var curve = VentSimulation.Run(Small(1), FillHeat.Wall);
        var coldest = Enumerable.Range(0, curve.Time.Count).MinBy(i => curve.Temperature[i]);
        Tolerance.Absolute(23.2, curve.Time[coldest], 4);
    }

    private static Vent Large(double factor, GasProperties properties)
    {
        var chamber = new Chamber(89.2.Litres(), 273.Millimetres(), 200.BarGauge());
        return new()
        {
            Chamber = chamber,
            // The maker of the comparison fitted 0.80 with another model; the discharge coefficient is free here and 0.74 is this model's.
            Restrictor = new Orifice(6.35.Millimetres(), 0.74),
            From = 150.BarAbsolute().ToGauge(AbsolutePressure.StandardSeaLevel),
            SafePressure = 1.BarGauge(),
            Temperature = 288.Kelvins(),
            Gas = Gas.Nitrogen,
            Properties = properties,
            Wall = Steel(chamber, 25, factor),
        };
    }

    [Fact]
    [PublishedCase("N02", "Nitrogen, 89.2 L, 150 bar, orifice 6.35 mm, M. A. Haque et al. 1992, experiment I1")]
    public void Nitrogen_discharge_from_150_bar()
    {
        var curve = VentSimulation.Run(Large(1, GasProperties.Real), FillHeat.Wall);
        (double Seconds, double Bar)[] measured = [(0.3, 150), (5.3, 92.6), (10.2, 65.7), (15.1, 50.6), (19.8, 39.2), (24.7, 31.7), (29.8, 25.8), (39.6, 17.5), (49.4, 12.0)];
        foreach (var (t, bar) in measured) Tolerance.Relative(bar, At(curve.Time, curve.Pressure, t) + 1.01325, 0.06);
        // Mean gas between the bottom's 187.7 K and the top's 206.7 K, 5 K either side.
        Assert.InRange(curve.Temperature.Values.Min() + 273.15, 182.7, 211.7);
    }

    // Nominal errors with the area fitted to the first pressure: +8, +3, +0.5 K.
    [Theory]
    [InlineData(140, 6.27, 46.7, 194.9)]
    [InlineData(136, 13.3, 42.8, 222.5)]
    [InlineData(137, 213, 44.0, 273.3)]
    [PublishedCase("N03", "Hydrogen, 49.9 L, J. J. Byrnes, R. C. Reid, F. E. Ruccia, Ind. Eng. Chem. Process Des. Dev. 3 (1964) 206, runs 9, 7, 8")]
    public void Hydrogen_discharge_at_three_rates(double startBar, double seconds, double bar, double coldest)
    {
        Assert.Contains(Band, f => Math.Abs(Fitted(startBar, seconds, bar, f).Temperature.Values.Min() + 273.15 - coldest) < 6);
    }

    private static VentCurve Fitted(double startBar, double seconds, double bar, double factor)
    {
        var chamber = new Chamber(49.9.Litres(), 217.Millimetres(), 200.BarGauge());
        VentCurve Run(double millimetres) => VentSimulation.Run(
            new()
            {
                Chamber = chamber,
                Restrictor = new Orifice(millimetres.Millimetres(), 0.8),
                From = startBar.BarAbsolute().ToGauge(AbsolutePressure.StandardSeaLevel),
                SafePressure = 4.BarGauge(),
                Temperature = 298.Kelvins(),
                Gas = Gas.Hydrogen,
                Properties = GasProperties.Real,
                Wall = Steel(chamber, 7.2, factor),
            },
            FillHeat.Wall);
        double low = 0.3, high = 6;
        for (var k = 0; k < 18; k++)
        {
            var middle = Math.Sqrt(low * high);
            var curve = Run(middle);
            if (At(curve.Time, curve.Pressure, seconds) + 1.01325 > bar) low = middle;
            else high = middle;
        }

        return Run(low);
    }

    private static PadFill Evacuated(FillHeat heat)
    {
        var (chamber, room) = (new Chamber(16.18.Litres(), 200.Millimetres(), 20.BarGauge()), 100.Kilopascals().Absolute());
        return new()
        {
            Chamber = chamber,
            Restrictor = new Orifice(2.71.Millimetres(), 0.84),
            Start = 3.7.Kilopascals().Absolute().ToGauge(room),
            Supply = GaugePressure.Zero,
            Target = (-0.01).BarGauge(),
            Ambient = room,
            Temperature = 21.85.Celsius(),
            Heat = heat,
            Watch = 60.Seconds(),
            Wall = Steel(chamber, 8.18, 1),
        };
    }

    // The size of the inlet inside the vessel isn't known, and it decides how well the jet stirs. A jet of the throat's own size gives 298 K, none 348 K;
    // 314 K was measured. A fill of an evacuated vessel is a bracket here, not a prediction within the 8 K that would be fair.
    [Fact]
    [PublishedCase("N10", "Room air into an evacuated 16.2 L vessel, attributed to Dutton and Coverdill 1997")]
    public void Air_fill_of_an_evacuated_vessel()
    {
        // 95 kPa are read off the measured trace between (12.369 s, 77.362) and (16.254 s, 95.577).
        var measured = 12.369 + (95 - 77.362) / (95.577 - 77.362) * (16.254 - 12.369);
        double Time95(FillResult r) => At(r.Pressure, r.Time, -0.05);
        FillResult still = Evacuated(FillHeat.Wall).Run(), stirred = (Evacuated(FillHeat.Wall) with { Wall = Evacuated(FillHeat.Wall).Wall! with { Inlet = 2.71.Millimetres() } }).Run();
        Tolerance.Relative(measured, Time95(still), 0.10);
        Tolerance.Relative(measured, Time95(stirred), 0.10);
        Assert.InRange(measured, Time95(Evacuated(FillHeat.Adiabatic).Run()), Time95(Evacuated(FillHeat.Isothermal).Run()));
        foreach (var (t, kelvins) in new[] { (2.73, 312.1), (6.91, 314.1), (17.0, 312.3) })
            Assert.InRange(kelvins, At(stirred.Time, stirred.Temperature, t) + 273.15 - 8, At(still.Time, still.Temperature, t) + 273.15 + 8);
    }

    // The paper's bore and wall are not at hand: 0.23 m and 8 mm are those of a steel cylinder of that size. Fill times are those of the traces' peaks.
    // Nominal run, without jet: 324.2, 330.6, 346.4 K against 323, 332, 351.5 K.
    [Fact]
    [PublishedCase("N11", "Hydrogen into 23.5 L of steel at 5, 10, 30 MPa/min, M. Striednig et al., Int. J. Hydrogen Energy 39 (2014) 8495")]
    public void Hydrogen_fills_at_three_rates()
    {
        (double Rate, double Seconds, double Kelvins)[] measured = [(5, 181, 323.0), (10, 95, 332.0), (30, 28, 351.5)];
        var nominal = measured.Select(m => Peak(m.Rate, m.Seconds, 1)).ToArray();
        Assert.True(nominal[0] < nominal[1] && nominal[1] < nominal[2]);
        Tolerance.Absolute(measured[0].Kelvins, nominal[0], 5);
        Tolerance.Absolute(measured[1].Kelvins, nominal[1], 5);
        Assert.Contains(Band, f => Math.Abs(Peak(measured[2].Rate, measured[2].Seconds, f) - measured[2].Kelvins) < 5);
    }

    private static double Peak(double megapascalsPerMinute, double seconds, double factor)
    {
        const double litres = 23.5, start = 5e6, kelvins = 298;
        var law = new GasLaw(Gas.Hydrogen, GasProperties.Real);
        var chamber = new Chamber(litres.Litres(), 230.Millimetres(), 300.BarGauge());
        var wide = new Orifice(4.Millimetres(), 0.8);
        var system = new FillSystem(law, wide, new FlowScale(law, 24e6, kelvins), litres / 1000, start, kelvins, kelvins)
        {
            Heat = new HeatPath(Steel(chamber, 8, factor), law),
            SupplyRampPaPerS = megapascalsPerMinute * 1e6 / 60,
            Open = true,
        };
        Span<double> y = [law.AtPressure(start, kelvins).Density * litres / 1000, kelvins, kelvins, 0, 0];
        Assert.True(OdeDriver.Integrate(ref system, 0, seconds, y, new() { RelativeTolerance = 1e-6 }, [1e-9, 1e-5, 1e-5, 1e-9, 1e-5]).Succeeded);
        return y[FillSystem.Kelvins];
    }
}

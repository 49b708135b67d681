using NotebookKit.Numerics;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Published.Filling;

/// <summary>
/// Measured vessels, with heat from or to the wall by the published law for a vessel that stands or lies, as it stands. Only what a source
/// leaves unsaid is fitted: throat coefficients to the pressures, which are then tested for their shape and not their level, and a mouth's
/// bore to one temperature of five. Temperatures decide.
/// </summary>
public class MeasuredVesselCases
{
    private static double At(Series at, Series of, double x)
    {
        for (var i = 1; i < at.Count; i++)
            if (at[i] >= x)
                return of[i - 1] + (of[i] - of[i - 1]) * (x - at[i - 1]) / (at[i] - at[i - 1]);
        return of[^1];
    }

    private static FillWall Steel(Chamber chamber, double wallMillimetres, FilmLaw law = FilmLaw.Vertical) =>
        FillWall.Of(chamber, Ratio.Zero, ThermalWall.Steel(wallMillimetres.Millimetres())) with { Law = law };

    private static double Kilopascals(VentCurve curve, double t) => 100 * (1 + At(curve.Time, curve.Pressure, t));

    private static double Kelvins(VentCurve curve, double t) => At(curve.Time, curve.Temperature, t) + 273.15;

    // The source leaves the throat's coefficient open (0.84 in the file, 0.82 to 0.95 from its own pressures and temperatures).
    private static Vent LyingVessel(double coefficient)
    {
        var (chamber, ambient) = (new Chamber(16.18.Litres(), 200.Millimetres(), 20.BarGauge()), 100.Kilopascals().Absolute());
        return new()
        {
            Chamber = chamber,
            Restrictor = new Orifice(2.71.Millimetres(), coefficient),
            From = 790.Kilopascals().Absolute().ToGauge(ambient),
            SafePressure = 0.01.BarGauge(),
            Ambient = ambient,
            Temperature = 298.Kelvins(),
            Wall = Steel(chamber, 8.18, FilmLaw.Horizontal),
        };
    }

    private const string LyingAir = "Air, lying steel vessel of 16.2 L, 790 kPa to ambient, attributed to J. C. Dutton, R. E. Coverdill, "
        + "Int. J. Engng Ed. 13 (1997) 123";

    [Fact]
    [PublishedCase("N01", LyingAir)]
    public void Air_discharge_lies_between_the_bounds_and_within_6_percent()
    {
        var result = LyingVessel(0.86).Run();
        (double Seconds, double Kilopascals)[] measured = [(0.23, 768.8), (4.14, 567.5), (8.06, 423.3), (12.0, 325.8), (15.7, 262.1),
            (19.6, 208.8), (23.6, 171.1), (27.6, 141.2), (35.2, 108.6)];
        foreach (var (t, p) in measured) Tolerance.Relative(p, Kilopascals(result.WithWall!, t), 0.06);

        // The last point lies where both bounds run into ambient; 2 % is the digitising error near the ends.
        foreach (var (t, p) in measured[1..^1]) Assert.InRange(p, 0.98 * Kilopascals(result.Adiabatic, t),
            1.02 * Kilopascals(result.Isothermal, t));
    }

    [Fact]
    [PublishedCase("N01", LyingAir + "; lowest gas temperature 256.4 K within 6 K")]
    public void Air_discharge_meets_the_lowest_temperature()
    {
        var curve = VentSimulation.Run(LyingVessel(0.86), FillHeat.Wall);
        Tolerance.Absolute(256.4, curve.Temperature.Values.Min() + 273.15, 6);
    }

    // The gas can't have been at the 285.9 K that were read after 3.58 s: at the pressure of that moment no law of heat brings it above 277
    // K. So the thermometer lags; the lag that explains this first reading, 2 to 3 s, is carried to the others. Without it the coldest gas
    // comes 4.8 s too early.
    [Fact]
    [PublishedCase("N01", LyingAir + "; the lowest reading at 23.2 s within 4 s, by a thermometer whose lag is taken from its "
        + "first reading")]
    public void Air_discharge_meets_the_time_of_the_lowest_reading()
    {
        var curve = VentSimulation.Run(LyingVessel(0.86), FillHeat.Wall);
        Assert.True(Kelvins(curve, 3.58) < 278);
        var lag = BracketedRoot.Solve(tau => Reading(curve, tau, 3.58).Last - 285.9, 0.5, 6);
        Assert.InRange(lag, 1.5, 3.5);
        var (_, lowest, when) = Reading(curve, lag, 60);
        Tolerance.Absolute(256.4, lowest, 6);
        Tolerance.Absolute(23.2, when, 4);
    }

    // A thermometer of first order: it goes towards the gas by its lag.
    private static (double Last, double Lowest, double When) Reading(VentCurve curve, double lagSeconds, double until)
    {
        const double step = 0.01;
        double reading = Kelvins(curve, 0), lowest = reading, when = 0;
        for (var t = step; t <= until; t += step)
        {
            reading += (Kelvins(curve, t) - reading) * (1 - Math.Exp(-step / lagSeconds));
            if (reading < lowest) (lowest, when) = (reading, t);
        }

        return (reading, lowest, when);
    }

    [Fact]
    [PublishedCase("N02", "Nitrogen, 89.2 L, 150 bar, orifice 6.35 mm, M. A. Haque et al., Trans. IChemE 70B (1992) 3, experiment I1")]
    public void Nitrogen_discharge_from_150_bar()
    {
        var chamber = new Chamber(89.2.Litres(), 273.Millimetres(), 200.BarGauge());
        Vent vent = new()
        {
            Chamber = chamber,
            // The discharge coefficient is free; 0.72 by hand, as for the same vessel on the stand. 0.80 is quoted by others for another
            // law of heat.
            Restrictor = new Orifice(6.35.Millimetres(), 0.72),
            From = 150.BarAbsolute().ToGauge(AbsolutePressure.StandardSeaLevel),
            SafePressure = 1.BarGauge(),
            Temperature = 288.Kelvins(),
            Gas = Gas.Nitrogen,
            Properties = GasProperties.Real,
            Wall = Steel(chamber, 25),
        };
        var curve = VentSimulation.Run(vent, FillHeat.Wall);
        (double Seconds, double Bar)[] measured = [(0.3, 150), (5.3, 92.6), (10.2, 65.7), (15.1, 50.6), (19.8, 39.2), (24.7, 31.7),
            (29.8, 25.8), (39.6, 17.5), (49.4, 12.0)];
        // The record starts to fall at 0.3 s.
        foreach (var (t, bar) in measured) Tolerance.Relative(bar, At(curve.Time, curve.Pressure, t - 0.3) + 1.01325, 0.06);
        (double Seconds, double Bottom, double Top)[] temperatures = [(10, 228.2, 238.2), (20, 203.8, 213.6), (30, 192.0, 206.7),
            (40, 187.7, 206.7)];
        foreach (var (t, bottom, top) in temperatures) Assert.InRange(Kelvins(curve, t), bottom - 5, top + 5);
    }

    // The first readings of gas temperature are 294.6, 293 and 291.8 K. In eight minutes the bath of the stand feeds the wall: it is held
    // at its temperature there. A series of run 7 begins at 300.0 K, its first gas reading is 293 K; which series that is isn't known here.
    // In runs 9 and 8 the wall begins 1.7 and 1.6 K above the gas, so 7 K is no lag of theirs. From 293 K the coldest gas comes to 219.5 K,
    // from 300 K to 225.4 K, against 222.5 K measured: both lie within 6 K, so the coldest reading doesn't tell which is right.
    // Nor does the pressure: see below.
    [Theory]
    [InlineData(140, 294.6, 6.27, 46.7, 14, 194.9)]
    [InlineData(136, 293, 13.3, 42.8, 29.7, 222.5)]
    [InlineData(136, 300, 13.3, 42.8, 29.7, 222.5)]
    [InlineData(137, 291.8, 213, 44.0, 478, 273.3)]
    [PublishedCase("N03", "Hydrogen, 49.9 L, J. J. Byrnes, R. C. Reid, F. E. Ruccia, Ind. Eng. Chem. Process Des. Dev. 3 (1964) 206, "
        + "runs 9, 7, 8; valve fitted to pressure, temperature within 6 K")]
    public void Hydrogen_discharge_at_three_rates(double startBar, double startKelvins, double seconds, double bar, double until,
        double coldest)
    {
        VentCurve Run(double millimetres) => Discharge(millimetres, startBar, startKelvins, until > 100);
        double low = 0.3, high = 6;
        for (var k = 0; k < 18; k++)
        {
            var middle = Math.Sqrt(low * high);
            var trial = Run(middle);
            if (At(trial.Time, trial.Pressure, seconds) + 1.01325 > bar) low = middle;
            else high = middle;
        }

        var curve = Run(low);
        Tolerance.Absolute(coldest, Enumerable.Range(0, curve.Time.Count).Where(i => curve.Time[i] <= until).Min(i => curve.Temperature[i])
            + 273.15, 6);
    }

    // The start that would meet the coldest reading of run 7 lies half-way, and the pressures of both starts lie closer together than a
    // figure is read off a diagram (1 % of full scale, 1.4 bar): the published figures at hand don't decide it.
    [Fact]
    [PublishedCase("N03", "Hydrogen, Byrnes, Reid, Ruccia 1964, run 7: start at 293 or 300 K, undecided")]
    public void Neither_temperature_nor_pressure_tells_where_run_7_began()
    {
        (double Coldest, double Last) From(double kelvins)
        {
            VentCurve Run(double bore) => Discharge(bore, 136, kelvins, false);
            var curve = Run(BracketedRoot.Solve(d => Run(d) is var c ? At(c.Time, c.Pressure, 13.3) + 1.01325 - 42.8 : 0, 2, 4, 1e-5));
            return (curve.Temperature.Values.Min() + 273.15, At(curve.Time, curve.Pressure, 29.7));
        }

        var (cold, warm) = (From(293), From(300));
        Assert.True(cold.Coldest < 222.5 - 2 && warm.Coldest > 222.5 + 2);
        Tolerance.Absolute(296.6, 293 + 7 * (222.5 - cold.Coldest) / (warm.Coldest - cold.Coldest), 0.3);
        Assert.True(Math.Abs(cold.Last - warm.Last) < 0.07, $"{cold.Last} {warm.Last}");
    }

    private static VentCurve Discharge(double millimetres, double startBar, double startKelvins, bool isBathed)
    {
        var chamber = new Chamber(49.9.Litres(), 217.Millimetres(), 200.BarGauge());
        return VentSimulation.Run(
            new()
            {
                Chamber = chamber,
                Restrictor = new Orifice(millimetres.Millimetres(), 0.8),
                From = startBar.BarAbsolute().ToGauge(AbsolutePressure.StandardSeaLevel),
                SafePressure = 4.BarGauge(),
                Temperature = startKelvins.Kelvins(),
                Gas = Gas.Hydrogen,
                Properties = GasProperties.Real,
                Wall = isBathed ? Steel(chamber, 7.2) with { HeatCapacity = null } : Steel(chamber, 7.2),
            },
            FillHeat.Wall);
    }

    private static PadFill Evacuated(FillHeat heat, double? inletMillimetres = null, JetStirring stirring = JetStirring.Throughout)
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
            Wall = Steel(chamber, 8.18, FilmLaw.Horizontal) with
            {
                Inlet = inletMillimetres?.Millimetres(),
                Stirring = stirring,
            },
        };
    }

    // 95 kPa are read off the measured trace between (12.369 s, 77.362) and (16.254 s, 95.577).
    [Fact]
    [PublishedCase("N10", EvacuatedAir + "; 95 kPa within 10 %, between the bounds")]
    public void Air_fill_of_an_evacuated_vessel_takes_its_time()
    {
        var measured = 12.369 + (95 - 77.362) / (95.577 - 77.362) * (16.254 - 12.369);
        double Time95(PadFill fill) => fill.Run() is var r ? At(r.Pressure, r.Time, -0.05) : 0;
        Tolerance.Relative(measured, Time95(Evacuated(FillHeat.Wall)), 0.10);
        Tolerance.Relative(measured, Time95(Evacuated(FillHeat.Wall, 33)), 0.10);
        Assert.InRange(measured, Time95(Evacuated(FillHeat.Adiabatic)), Time95(Evacuated(FillHeat.Isothermal)));
    }

    // How wide the vessel's mouth is behind the throat isn't published, and it decides how well the entering air stirs. It is fitted to one
    // reading (309.9 K at 1.12 s) and the others are tested while the air flows in. After that the trace cools more slowly than the model:
    // 9 K apart at 22 s, not claimed.
    [Fact]
    [PublishedCase("N10", EvacuatedAir + "; gas temperature within 8 K, mouth fitted to the first reading")]
    public void Air_fill_of_an_evacuated_vessel_stays_as_cool_as_measured()
    {
        double At1(double millimetres) => Evacuated(FillHeat.Wall, millimetres).Run() is var r ? At(r.Time, r.Temperature, 1.12) + 273.15 :
            0;
        var mouth = BracketedRoot.Solve(d => At1(d) - 309.9, 10, 90);
        Assert.InRange(mouth, 15, 60);
        var result = Evacuated(FillHeat.Wall, mouth).Run();
        foreach (var (t, kelvins) in new[] { (2.73, 312.1), (6.91, 314.1), (12.5, 313.7), (17.0, 312.3) })
            Tolerance.Absolute(kelvins, At(result.Time, result.Temperature, t) + 273.15, 8);
    }

    // By the criterion the jet of the fitted mouth stirs for 6 s of 19 s and leaves layers after that. The reading doesn't: without
    // stirring the gas would be over 12 K hotter than read, from the tenth second to the thirteenth. So the trace above stays stirred
    // throughout, and says so by its warning. The mouth isn't published; by the throat itself, 2.71 mm, the criterion has the jet stir
    // almost to the end, as it was read.
    [Fact]
    [PublishedCase("N10", EvacuatedAir + "; the criterion of P. F. Peterson 1994 (unverified) and the trace disagree")]
    public void The_criterion_calls_the_evacuated_vessel_layered_where_the_reading_calls_it_stirred()
    {
        var layered = Evacuated(FillHeat.Wall, 33, JetStirring.WhileItMixes).Run();
        Assert.InRange(layered.StirsUntil!.Value.Seconds, 4, 8);
        foreach (var (t, kelvins) in new[] { (9.5, 313.9), (12.5, 313.7) })
            Assert.True(At(layered.Time, layered.Temperature, t) + 273.15 > kelvins + 12);
        var stirred = Evacuated(FillHeat.Wall, 33).Run();
        Assert.Contains(stirred.Findings, f => f.Severity == NotebookKit.Provenance.FindingSeverity.Warning
            && f.Message.Contains("the gas may be hotter than said", StringComparison.Ordinal));
        var throat = Evacuated(FillHeat.Wall, 2.71, JetStirring.WhileItMixes).Run();
        Assert.True(throat.StirsUntil!.Value > 0.9 * throat.Duration);
    }

    private const string EvacuatedAir = "Room air into an evacuated horizontal vessel of 16.2 L, attributed to J. C. Dutton, R. E. "
        + "Coverdill 1997";

    // The paper's bore, wall and inlet are not at hand: 0.23 m and 8 mm are those of a steel cylinder of that size. Fill times are those of
    // the traces' peaks. No jet, and any jet of 8 mm or wider by the criterion, which leaves the two slower fills in layers after a second.
    [Theory]
    [InlineData(null)]
    [InlineData(8.0)]
    [InlineData(12.0)]
    [InlineData(20.0)]
    [PublishedCase("N11", "Hydrogen into 23.5 L of steel at 5, 10, 30 MPa/min, M. Striednig et al., Int. J. Hydrogen Energy "
        + "39 (2014) 8495")]
    public void Hydrogen_fills_at_three_rates(double? inletMillimetres)
    {
        (double Rate, double Seconds, double Kelvins)[] measured = [(5, 181, 323.0), (10, 95, 332.0), (30, 28, 351.5)];
        var peaks = measured.Select(m => Fill(m.Rate, m.Seconds, inletMillimetres).Hottest.Kelvins).ToArray();
        Assert.True(peaks[0] < peaks[1] && peaks[1] < peaks[2]);
        for (var i = 0; i < 3; i++) Tolerance.Absolute(measured[i].Kelvins, peaks[i], 5);
    }

    // Inlets so narrow as 2 mm still leave the two slower fills in layers, within 2 K of the reading; the fast fill tells that its inlet
    // was wider than 6 mm. Stirred throughout, the two faster fills would be 11 and 29 K too cold.
    [Fact]
    [PublishedCase("N11", "Hydrogen at 5, 10, 30 MPa/min, Striednig et al. 2014, by the criterion of P. F. Peterson 1994 (unverified)")]
    public void The_criterion_decides_the_hydrogen_fills_as_they_were_measured()
    {
        foreach (var inlet in new[] { 2.0, 5.0 })
        {
            Tolerance.Absolute(323.0, Fill(5, 181, inlet).Hottest.Kelvins, 2);
            Tolerance.Absolute(332.0, Fill(10, 95, inlet).Hottest.Kelvins, 2);
        }

        Assert.True(Fill(30, 28, 5).Hottest.Kelvins < 351.5 - 5);
        Assert.True(Fill(10, 95, 8, JetStirring.Throughout).Hottest.Kelvins < 332.0 - 9);
        Assert.True(Fill(30, 28, 8, JetStirring.Throughout).Hottest.Kelvins < 351.5 - 25);
    }

    // 5 m/s in the inlet at the end of the fill, which fast fills of hydrogen are reported to need against layers (T. Terada et al., SAE
    // 2008-01-0463, recalled, unverified), is a bore of 4.8, 6.7 and 12 mm here: a wider inlet leaves layers by that rule too.
    [Theory]
    [InlineData(5, 181, 4.8)]
    [InlineData(10, 95, 6.7)]
    [InlineData(30, 28, 12.0)]
    [PublishedCase("N11", "Hydrogen at 5, 10, 30 MPa/min, Striednig et al. 2014, by the speed of 5 m/s (Terada et al. 2008, unverified)")]
    public void Five_metres_a_second_asks_for_a_narrow_inlet(double rate, double seconds, double millimetres)
    {
        var fill = Fill(rate, seconds, null);
        var density = RealGas.Hydrogen.At(fill.ShutPressure.ToAbsolute(AbsolutePressure.StandardSeaLevel), fill.ShutTemperature).Density;
        var flow = fill.GasTaken.Kilograms / fill.Duration.Seconds;
        Tolerance.Absolute(millimetres, 1000 * Math.Sqrt(4 * flow / (Math.PI * 5 * density.KilogramsPerCubicMeter)), 0.1);
    }

    private static FillResult Fill(double megapascalsPerMinute, double seconds, double? inletMillimetres,
        JetStirring stirring = JetStirring.WhileItMixes)
    {
        var chamber = new Chamber(23.5.Litres(), 230.Millimetres(), 300.BarGauge());
        var end = (5 + megapascalsPerMinute * seconds / 60) * 10;
        var fill = new PadFill
        {
            Chamber = chamber,
            Gas = Gas.Hydrogen,
            Properties = GasProperties.Real,
            Restrictor = new Orifice(4.Millimetres(), 0.8),
            Start = 50.BarAbsolute().ToGauge(AbsolutePressure.StandardSeaLevel),
            Target = end.BarAbsolute().ToGauge(AbsolutePressure.StandardSeaLevel),
            Supply = 240.BarAbsolute().ToGauge(AbsolutePressure.StandardSeaLevel),
            SupplyRise = PressureChangeRate.FromMegapascalsPerMinute(megapascalsPerMinute),
            Temperature = 24.85.Celsius(),
            Heat = FillHeat.Wall,
            Wall = Steel(chamber, 8) with { Inlet = inletMillimetres?.Millimetres(), Stirring = stirring },
        };
        var result = fill.Run();
        Tolerance.Absolute(seconds, result.Duration.Seconds, 0.05 * seconds);
        return result;
    }
}

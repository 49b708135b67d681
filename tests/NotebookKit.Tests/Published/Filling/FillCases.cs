using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Published.Filling;

/// <summary>Regulator at 65 bar gauge, restrictor 1.0 mm with Cd 0.8, 2 L of gas, 293.15 K.</summary>
public class FillCases
{
    private static readonly PadFill Choked = new()
    {
        Chamber = new Chamber(2.Litres(), 60.Millimetres(), 90.BarGauge()),
        Supply = 65.BarGauge(),
        Restrictor = new Orifice(1.Millimetres(), 0.8),
        Target = 30.BarGauge(),
        Temperature = 293.15.Kelvins(),
    };

    [Theory]
    [InlineData(FillHeat.Adiabatic, 5.767070, 5.201949)]
    [InlineData(FillHeat.Isothermal, 4.119335, 7.282728)]
    [PublishedCase("P80", "Energy balance of charging (Cengel and Boles) with choked flow (NACA Report 1135)")]
    public void Choked_fill_is_linear(FillHeat heat, double barPerSecond, double seconds)
    {
        var result = (Choked with { Heat = heat }).Run();
        Tolerance.Relative(0.00979051, result.FirstFlow.KilogramsPerSecond, 1e-6);
        Tolerance.Relative(seconds, result.Duration.Seconds, 1e-6);
        for (var i = 1; i < result.Time.Count; i++) Tolerance.Relative(barPerSecond, result.Pressure[i] / result.Time[i], 1e-6);
    }

    [Theory]
    [InlineData(FillHeat.Adiabatic, 11.243747)]
    [InlineData(FillHeat.Isothermal, 15.741246)]
    [PublishedCase("P81", "Whole fill to 60 bar gauge, isentropic orifice law, by quadrature")]
    public void Whole_fill_through_an_orifice(FillHeat heat, double seconds) =>
        Tolerance.Relative(seconds, (Choked with { Target = 60.BarGauge(), Heat = heat }).Run().Duration.Seconds, 1e-6);

    [Theory]
    [InlineData(0.528, 60, 11.251522)]
    [InlineData(0.3, 60, 12.082572)]
    [InlineData(0.528, 65, 14.354780)]
    [InlineData(0.3, 65, 15.844456)]
    [PublishedCase("P82", "ISO 6358 ellipse in closed form, the time to line pressure being finite")]
    public void Whole_fill_through_a_sheet_restrictor(double b, double bar, double seconds)
    {
        var restrictor = new SonicRestrictor(Choked.Restrictor.Conductance, b);
        Tolerance.Relative(seconds, (Choked with { Target = bar.BarGauge(), Restrictor = restrictor }).Run().Duration.Seconds, 1e-6);
    }

    [Theory]
    [InlineData(0, 61.01325, 410.41, 43.580893)]
    [InlineData(1.01325, 61.01325, 407.701711, 43.870393)]
    [InlineData(1.01325, 31.01325, 405.115702, 22.441821)]
    [InlineData(31, 61, 341.076431, 52.428571)]
    [PublishedCase("P48", "Y. A. Cengel, M. A. Boles, Thermodynamics, charging of a rigid tank (unverified)")]
    public void Adiabatic_charging_and_cooling(double fromBar, double toBar, double kelvins, double settledBar)
    {
        var hot = Charging.TemperatureAfter(fromBar.BarAbsolute(), toBar.BarAbsolute(), 293.15.Kelvins(), 293.15.Kelvins(), Gas.Air);
        Tolerance.Relative(kelvins, hot.Kelvins, 1e-8);
        Tolerance.Relative(settledBar, Charging.Settled(toBar.BarAbsolute(), hot, 293.15.Kelvins()).Bar, 1e-7);
    }

    // The fill itself, step by step: 10 mL from 200 L that hardly notice it, from a thousandth of an atmosphere to 60 bar absolute.
    [Theory]
    [InlineData(0, 402.036, 42.601)]
    [InlineData(200, 371.450, 46.284)]
    [PublishedCase("P65 P66", "E. W. Lemmon et al., J. Phys. Chem. Ref. Data 29 (2000) 331: adiabatic fill of an evacuated vessel to 60 "
        + "bar, from a line and behind a regulator from 200 bar")]
    public void Real_fill_of_an_evacuated_vessel(double cylinderBar, double kelvins, double settledBar)
    {
        var air = AbsolutePressure.StandardSeaLevel;
        var result = new PadFill
        {
            Chamber = new Chamber(10.Millilitres(), 20.Millimetres(), 90.BarGauge()),
            Supply = 60.BarAbsolute().ToGauge(air),
            Restrictor = new Orifice(1.Millimetres(), 0.8),
            Start = (-1.01213).BarGauge(),
            Target = 60.BarAbsolute().ToGauge(air),
            Temperature = 293.15.Kelvins(),
            Properties = GasProperties.Real,
            Cylinder = cylinderBar > 0 ? new("A", 200.Litres(), cylinderBar.BarAbsolute().ToGauge(air)) : null,
        }.Run();
        Tolerance.Absolute(kelvins, result.ShutTemperature.Kelvins, 0.02);
        Tolerance.Absolute(settledBar, result.SettledPressure.ToAbsolute(air).Bar, 3e-3);
    }

    [Fact]
    [PublishedCase("P48", "To settle at 60 bar gauge in one fast fill the vessel has to see 85.013 bar absolute")]
    public void Overshoot_is_a_rating_trap()
    {
        var goal = Choked with { Target = 60.BarGauge(), Goal = FillGoal.AfterCooling, Supply = 120.BarGauge() };
        Tolerance.Relative(85.01325, goal.ShutPressure.ToAbsolute(AbsolutePressure.StandardSeaLevel).Bar, 1e-9);
        Tolerance.Relative(60, goal.Run().SettledPressure.Bar, 1e-9);
        var trap = goal with { Chamber = goal.Chamber with { RatedPressure = 65.BarGauge() } };
        var error = Assert.Throws<InvalidDesignException>(() => trap.Run());
        Assert.Contains("84 bar gauge hot", error.Message, StringComparison.Ordinal);
        Assert.Contains("rated pressure of 65 bar gauge", error.Message, StringComparison.Ordinal);
    }
}

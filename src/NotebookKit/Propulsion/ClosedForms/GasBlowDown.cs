using NotebookKit.Materials.Fluids;
using NotebookKit.Propulsion.Flow;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Propulsion.ClosedForms;

/// <summary>Closed forms for a vessel that blows its gas down through a converging nozzle without taking up heat.</summary>
/// <remarks>
/// Ideal gas, isentropic expansion of what remains. Source: standard gas dynamics; J. C. Dutton, R. E. Coverdill, Experiments to study the
/// gaseous discharge and filling of vessels, Int. J. Engng Ed. 13 (1997) 123, eqs 3-5 (unverified); unchoked tail for γ = 7/5 by own
/// derivation.
/// </remarks>
/// <param name="Volume">Volume of the vessel; 1 ml to 1000 L.</param>
/// <param name="EffectiveArea">Discharge coefficient times throat area; 0.0001 mm² to 1 m².</param>
/// <param name="Start">Pressure at the start; above ambient, to 2000 bar absolute.</param>
/// <param name="StartTemperature">Temperature at the start; 50 K to 2000 K.</param>
/// <param name="Gas">The gas.</param>
public sealed record GasBlowDown(Volume Volume, Area EffectiveArea, AbsolutePressure Start, Temperature StartTemperature, Gas Gas)
{
    /// <summary>Pressure outside, which ends the choked flow that the closed forms hold for; standard sea level unless given, 0 for a
    /// vacuum.</summary>
    public AbsolutePressure Ambient { get; init; } = AbsolutePressure.StandardSeaLevel;

    private double Gamma => Gas.HeatCapacityRatio;

    private double R => Gas.GasConstant.JoulesPerKilogramKelvin;

    /// <summary>Time constant of the choked part, V/(A √(γ R T₀) (2/(γ + 1))^((γ + 1)/(2(γ − 1)))). Source: Dutton and Coverdill
    /// 1997.</summary>
    /// <exception cref="OutOfRangeException">Volume, area, pressure, temperature or a constant of the gas is outside.</exception>
    public Duration TimeConstant
    {
        get
        {
            Check();
            return (Volume.CubicMeters / (EffectiveArea.SquareMeters * Math.Sqrt(Gamma * R * StartTemperature.Kelvins)
                * Math.Pow(2 / (Gamma + 1), (Gamma + 1) / (2 * (Gamma - 1))))).Seconds();
        }
    }

    /// <summary>Pressure while the flow is choked, p₀ [1 + (γ − 1)/2 t/τ]^(−2γ/(γ − 1)). Source: Dutton and Coverdill 1997.</summary>
    /// <param name="time">Time from the start; 0 to the end of choked flow.</param>
    /// <exception cref="OutOfRangeException">The flow isn't choked any more by then.</exception>
    public AbsolutePressure PressureAt(Duration time) => AbsolutePressure.FromPascals(Start.Pascals * Math.Pow(Growth(Choked(time)),
        -2 * Gamma / (Gamma - 1)));

    /// <summary>Temperature while the flow is choked, T₀ [1 + (γ − 1)/2 t/τ]^(−2). Source: Dutton and Coverdill 1997.</summary>
    /// <param name="time">Time from the start; 0 to the end of choked flow.</param>
    /// <exception cref="OutOfRangeException">The flow isn't choked any more by then.</exception>
    public Temperature TemperatureAt(Duration time) => (StartTemperature.Kelvins * Math.Pow(Growth(Choked(time)), -2)).Kelvins();

    /// <summary>Pressure of a vessel kept at its temperature while the flow is choked, p₀ exp(−t/τ). Source: Dutton and Coverdill
    /// 1997.</summary>
    /// <param name="time">Time from the start; 0 to the end of choked flow.</param>
    /// <exception cref="OutOfRangeException">The flow isn't choked any more by then.</exception>
    public AbsolutePressure IsothermalPressureAt(Duration time) =>
        AbsolutePressure.FromPascals(Start.Pascals * Math.Exp(-(ChokedAtOneTemperature(time) / TimeConstant)));

    /// <summary>Pressure at which the flow stops being choked. Source: NACA Report 1135.</summary>
    /// <param name="ambient">Pressure outside; above 0.</param>
    public AbsolutePressure UnchokingPressure(AbsolutePressure ambient)
        => AbsolutePressure.FromPascals(ambient.Pascals / GasFlow.CriticalPressureRatio(Gamma));

    /// <summary>Time at which the flow stops being choked. Source: Dutton and Coverdill 1997.</summary>
    /// <param name="ambient">Pressure outside; above 0.</param>
    /// <exception cref="OutOfRangeException">The flow isn't choked at the start.</exception>
    public Duration UnchokingTime(AbsolutePressure ambient)
    {
        var end = UnchokingPressure(ambient);
        new ValidRange<AbsolutePressure>(end, 1e5.BarAbsolute()).Check(Start, "pressure at the start",
            "Below that the flow is never choked; run a static firing instead.");
        return TimeFor(end);
    }

    /// <summary>Time to a pressure while the flow is choked. Source: Dutton and Coverdill 1997.</summary>
    /// <param name="pressure">Pressure to reach; from where choked flow ends to the pressure at the start.</param>
    /// <exception cref="OutOfRangeException">The pressure is outside that range.</exception>
    public Duration TimeTo(AbsolutePressure pressure)
    {
        new ValidRange<AbsolutePressure>(AbsolutePressure.FromPascals(Math.Max(1, UnchokingPressure(Ambient).Pascals)), Start)
            .Check(pressure, "pressure to reach", $"Outside it is {Ambient}: lower, the flow isn't choked and the closed form doesn't "
                + "hold; add the unchoked time, or run a static firing.");
        return TimeFor(pressure);
    }

    /// <summary>
    /// Time of the unchoked rest, down to ambient exactly, for γ = 7/5: 5V/(A √(5 γ R T_b)) J(χ), χ = √((p/pa)^(2/7) − 1),
    /// J = χ (2χ² + 5) √(1 + χ²)/8 + 3/8 asinh χ, T_b = T₀ (pa/p₀)^(2/7). Source: own derivation, same form as Dutton and Coverdill 1997,
    /// eqs 3-5.
    /// </summary>
    /// <param name="ambient">Pressure outside; 100 Pa to the pressure at the start.</param>
    /// <exception cref="OutOfRangeException">The gas' γ isn't 7/5, or the pressure outside is outside its range.</exception>
    public Duration UnchokedTime(AbsolutePressure ambient)
    {
        Check();
        new ValidRange<AbsolutePressure>(GasChecks.Pressures.Minimum, Start).Check(ambient, "pressure outside",
            "Against a vacuum the flow stays choked; from a lower pressure nothing leaves.");
        new ValidRange<double>(1.4 - 1e-9, 1.4 + 1e-9).Check(Gamma, "ratio of specific heats",
            "The closed form holds for γ = 7/5 alone; run a static firing instead.");
        var ratio = Math.Min(Start / ambient, 1 / GasFlow.CriticalPressureRatio(Gamma));
        var chi = Math.Sqrt(Math.Pow(ratio, 2.0 / 7) - 1);
        var integral = chi * (2 * chi * chi + 5) * Math.Sqrt(1 + chi * chi) / 8 + 3.0 / 8 * Math.Asinh(chi);
        var end = StartTemperature.Kelvins * Math.Pow(ambient / Start, 2.0 / 7);
        return (5 * Volume.CubicMeters / (EffectiveArea.SquareMeters * Math.Sqrt(5 * Gamma * R * end)) * integral).Seconds();
    }

    /// <summary>Impulse of the choked part up to a time: C_F A p₀ τ/κ [1 − (1 + (γ − 1)/2 t/τ)^(−κ')] − pa A t. Source: integral of the
    /// choked thrust.</summary>
    /// <param name="time">Time from the start; 0 to the end of choked flow.</param>
    /// <param name="ambient">Pressure outside; 0 or above.</param>
    public Impulse ChokedImpulse(Duration time, AbsolutePressure ambient)
    {
        var factor = 2 * Math.Pow(2 / (Gamma + 1), 1 / (Gamma - 1));
        var power = (Gamma + 1) / (Gamma - 1);
        var area = EffectiveArea.SquareMeters;
        var inner = factor * area * Start.Pascals * TimeConstant.Seconds * 2 / (Gamma
            + 1) * (1 - Math.Pow(Growth(Within(time, UnchokingPressure(ambient))), -power));
        return Impulse.FromNewtonSeconds(inner - ambient.Pascals * area * time.Seconds);
    }

    private void Check()
    {
        new ValidRange<Volume>(1.Millilitres(), 1.CubicMetres()).Check(Volume, "volume of the vessel", "Check its unit.");
        new ValidRange<Area>(1e-4.SquareMillimetres(), 1.SquareMetres()).Check(EffectiveArea, "effective nozzle area", "Check its unit.");
        GasChecks.AtRest(Start, StartTemperature, Gas);
    }

    private Duration TimeFor(AbsolutePressure pressure) =>
        (TimeConstant.Seconds * 2 / (Gamma - 1) * (Math.Pow(Start / pressure, (Gamma - 1) / (2 * Gamma)) - 1)).Seconds();

    private Duration Choked(Duration time) => Within(time, UnchokingPressure(Ambient));

    private Duration Within(Duration time, AbsolutePressure unchoking) =>
        Within(time, unchoking.Pascals > 0 ? Math.Max(0, TimeFor(unchoking).Seconds) : 1e12);

    private Duration ChokedAtOneTemperature(Duration time) =>
        Within(time, UnchokingPressure(Ambient).Pascals is var end and > 0
            ? Math.Max(0, TimeConstant.Seconds * Math.Log(Start.Pascals / end)) : 1e12);

    // A millionth past the end is rounding of an end that was computed here.
    private static Duration Within(Duration time, double endSeconds) =>
        new ValidRange<Duration>(Duration.Zero, Duration.FromSeconds(endSeconds * (1 + 1e-6)))
            .Check(time.ToUnit(UnitsNet.Units.DurationUnit.Second), "time from the start",
                "Later the flow isn't choked and the closed form doesn't hold; add the unchoked time, or run a static firing.");

    private double Growth(Duration time) => 1 + (Gamma - 1) / 2 * (time / TimeConstant);
}

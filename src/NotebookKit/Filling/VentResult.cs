using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling;

/// <summary>How long an aborted vessel takes to be safe, between the two bounds of theory.</summary>
/// <remarks>Source: J. C. Dutton, R. E. Coverdill, Int. J. Engng Ed. 13 (1997) 123: measured discharges lie between the adiabatic and the isothermal curve.</remarks>
public sealed record VentResult : IResult
{
    internal VentResult(
        Vent vent,
        (double[] Pascals, double[] Seconds, double[] Kelvins) adiabatic,
        (double[] Pascals, double[] Seconds, double[] Kelvins) isothermal,
        IReadOnlyList<Finding> findings)
    {
        Vent = vent;
        Findings = findings;
        Series Gauge(double[] pascals) => new("Pressure", "bar gauge", Array.ConvertAll(pascals, p => (p - vent.Ambient.Pascals) / 1e5));
        AdiabaticTime = new("Time, no heat from the wall", "s", adiabatic.Seconds);
        AdiabaticPressure = Gauge(adiabatic.Pascals);
        AdiabaticTemperature = new("Gas temperature, no heat from the wall", "°C", Array.ConvertAll(adiabatic.Kelvins, k => k - 273.15));
        IsothermalTime = new("Time, gas at constant temperature", "s", isothermal.Seconds);
        IsothermalPressure = Gauge(isothermal.Pascals);
        Fastest = Duration.FromSeconds(Math.Min(adiabatic.Seconds[^1], isothermal.Seconds[^1]));
        Slowest = Duration.FromSeconds(Math.Max(adiabatic.Seconds[^1], isothermal.Seconds[^1]));
        ColdestGas = Temperature.FromKelvins(adiabatic.Kelvins[^1]).ToUnit(UnitsNet.Units.TemperatureUnit.DegreeCelsius);
    }

    /// <summary>The vent that was run.</summary>
    public Vent Vent { get; }

    /// <summary>Times of the bound without heat.</summary>
    public Series AdiabaticTime { get; }

    /// <summary>Pressures of the bound without heat.</summary>
    public Series AdiabaticPressure { get; }

    /// <summary>Gas temperatures of the bound without heat.</summary>
    public Series AdiabaticTemperature { get; }

    /// <summary>Times of the bound at constant temperature.</summary>
    public Series IsothermalTime { get; }

    /// <summary>Pressures of the bound at constant temperature.</summary>
    public Series IsothermalPressure { get; }

    /// <summary>Shortest time to the safe pressure.</summary>
    public Duration Fastest { get; }

    /// <summary>Longest time to the safe pressure: the one to wait, and then as long again by the gauge.</summary>
    public Duration Slowest { get; }

    /// <summary>Temperature of the gas at the end if the wall gave no heat: a bound, ice at the vent is to be expected.</summary>
    public Temperature ColdestGas { get; }

    /// <inheritdoc/>
    public string Title => $"Vent from {Vent.From}";

    /// <inheritdoc/>
    public ModelCard Model => new(
        "Blow-down of a rigid vessel, adiabatic and isothermal",
        ["Ideal gas, mixed at every instant.", "Only the vent resists.", "Gas alone leaves; water stays below the vent."],
        "To 300 bar gauge.",
        [FillingSources.BlowDown, Vent.Restrictor is SonicRestrictor ? FillingSources.Iso6358 : FillingSources.Naca1135]);

    /// <inheritdoc/>
    public ResultStatus Status => ResultStatus.Completed;

    /// <inheritdoc/>
    public IReadOnlyList<ResultLine> Lines =>
    [
        new("Time to let off", $"{Digits.Round(Fastest.Seconds)} s to {Digits.Round(Slowest.Seconds)} s", $"from {Vent.From} to {Vent.SafePressure}"),
        new("Wait at least", $"{Digits.Round(2 * Slowest.Seconds)} s", "twice the longer bound, then only if the gauge reads zero"),
        new("Coldest the gas can get", $"{Digits.Round(ColdestGas.DegreesCelsius)} °C", "if the wall gave no heat"),
    ];

    /// <inheritdoc/>
    public IReadOnlyList<Finding> Findings { get; }

    /// <inheritdoc/>
    public IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFilling;

    /// <inheritdoc/>
    public Working Working
    {
        get
        {
            var start = Vent.From.ToAbsolute(Vent.Ambient);
            var tau = Vent.GasVolume.CubicMeters / (Vent.Restrictor.EffectiveArea.SquareMeters * Vent.Gas.ChokedFlowFactor * Math.Sqrt(Vent.Gas.GasConstant.JoulesPerKilogramKelvin * Vent.Temperature.Kelvins));
            return new(Title,
            [
                new("Time constant while choked", @"\tau = \frac{V}{C_d\,A\,\psi\,\sqrt{R\,T_0}}",
                    $"{Digits.Round(Vent.GasVolume.Liters, 4)} L / ({Digits.Round(Vent.Restrictor.EffectiveArea.SquareMillimeters, 4)} mm² × {Digits.Round(Vent.Gas.ChokedFlowFactor, 4)} × √({Digits.Round(Vent.Gas.GasConstant.JoulesPerKilogramKelvin, 5)} J/(kg·K) × {Digits.Round(Vent.Temperature.Kelvins, 5)} K))", $"{Digits.Round(tau, 4)} s", FillingSources.BlowDown),
                new("Time at constant temperature", @"t = \int \frac{V\,dp}{R\,T_0\,\dot m(p)}", $"from {start} to {Vent.SafePressure.ToAbsolute(Vent.Ambient)}, summed", $"{Digits.Round(IsothermalTime[^1], 4)} s", FillingSources.BlowDown),
                new("Time without heat from the wall", @"t = \int \frac{V\,dp}{\gamma\,R\,T(p)\,\dot m(p)}", $"from {start} to {Vent.SafePressure.ToAbsolute(Vent.Ambient)}, summed", $"{Digits.Round(AdiabaticTime[^1], 4)} s", FillingSources.BlowDown),
            ]);
        }
    }
}

using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling;

/// <summary>How a fill goes: time, heating, and what pressure is left after cooling.</summary>
/// <remarks>Source: as <see cref="PadFill"/>.</remarks>
public sealed record FillResult : IResult
{
    internal FillResult(PadFill fill, double[] seconds, double[] pressures, double[] kelvins, IReadOnlyList<Finding> findings)
    {
        Fill = fill;
        Time = new("Time", "s", seconds);
        Pressure = new("Pressure", "bar gauge", Array.ConvertAll(pressures, p => (p - fill.Ambient.Pascals) / 1e5));
        Temperature = new("Gas temperature", "°C", Array.ConvertAll(kelvins, k => k - 273.15));
        Duration = Duration.FromSeconds(seconds[^1]);
        ShutPressure = AbsolutePressure.FromPascals(pressures[^1]).ToGauge(fill.Ambient);
        ShutTemperature = UnitsNet.Temperature.FromKelvins(kelvins[^1]).ToUnit(UnitsNet.Units.TemperatureUnit.DegreeCelsius);
        SettledPressure = Charging.Settled(AbsolutePressure.FromPascals(pressures[^1]), ShutTemperature, fill.Temperature).ToGauge(fill.Ambient);
        GasMass = MassOf(pressures[^1], kelvins[^1]);
        GasTaken = GasMass - MassOf(pressures[0], kelvins[0]);
        FirstFlow = fill.Restrictor.Flow(fill.Supply.ToAbsolute(fill.Ambient), fill.Temperature, fill.Start.ToAbsolute(fill.Ambient), fill.Gas);
        Findings = [.. findings, .. Say()];
    }

    /// <summary>The fill that was run.</summary>
    public PadFill Fill { get; }

    /// <summary>Times.</summary>
    public Series Time { get; }

    /// <summary>Pressure in the vessel at those times.</summary>
    public Series Pressure { get; }

    /// <summary>Temperature of the gas at those times.</summary>
    public Series Temperature { get; }

    /// <summary>Time from opening to shutting the valve.</summary>
    public Duration Duration { get; }

    /// <summary>Pressure when the valve shuts.</summary>
    public GaugePressure ShutPressure { get; }

    /// <summary>Temperature of the gas when the valve shuts.</summary>
    public Temperature ShutTemperature { get; }

    /// <summary>Pressure after the gas has cooled to the surroundings.</summary>
    public GaugePressure SettledPressure { get; }

    /// <summary>Pressure lost while cooling.</summary>
    public Pressure LostToCooling => ShutPressure - SettledPressure;

    /// <summary>Mass of gas in the vessel at the end.</summary>
    public Mass GasMass { get; }

    /// <summary>Mass of gas taken from the supply.</summary>
    public Mass GasTaken { get; }

    /// <summary>Mass flow when the valve opens.</summary>
    public MassFlow FirstFlow { get; }

    /// <inheritdoc/>
    public string Title => $"Fill to {ShutPressure}";

    /// <inheritdoc/>
    public ModelCard Model => new(
        Fill.Heat == FillHeat.Adiabatic ? "Adiabatic fill of a rigid vessel" : "Isothermal fill of a rigid vessel",
        [
            "Ideal gas with constant heat capacities, mixed at every instant.",
            "Supply at constant pressure and temperature; only the restrictor resists.",
            Fill.Heat == FillHeat.Adiabatic ? "No heat to wall or water: heating and the fall while cooling are upper bounds." : "Wall and water take all heat at once: fill time is an upper bound.",
            "Water fills its share of the volume and gives off no vapour.",
        ],
        "To 300 bar gauge; above about 100 bar air is no longer ideal and takes up to 15 % less than said.",
        [FillingSources.Charging, FillingSources.BlowDown, LawSource]);

    /// <inheritdoc/>
    public ResultStatus Status => ResultStatus.Completed;

    /// <inheritdoc/>
    public IReadOnlyList<ResultLine> Lines =>
    [
        new("Fill time", $"{Digits.Round(Duration.Seconds)} s", Fill.Restrictor.ToString() ?? ""),
        new("Pressure when the valve shuts", ShutPressure.ToString()),
        new("Gas temperature then", $"{Digits.Round(ShutTemperature.DegreesCelsius)} °C"),
        new("Pressure after cooling", SettledPressure.ToString(), $"{Digits.Round(LostToCooling.Bars)} bar lost"),
        new("Gas taken", $"{Digits.Round(GasTaken.Grams)} g"),
        new("Flow when the valve opens", $"{Digits.Round(FirstFlow.GramsPerSecond)} g/s"),
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
            string Bar(AbsolutePressure p) => $"{Digits.Round(p.Bar, 4)} bar";
            var k = Digits.Round(Fill.Temperature.Kelvins, 5);
            var gamma = Fill.Gas.HeatCapacityRatio;
            var factor = Fill.Heat == FillHeat.Adiabatic ? gamma : 1;
            var ratePerSecond = factor * Fill.Gas.GasConstant.JoulesPerKilogramKelvin * Fill.Temperature.Kelvins * FirstFlow.KilogramsPerSecond / Fill.GasVolume.CubicMeters;
            AbsolutePressure from = Fill.Start.ToAbsolute(Fill.Ambient), to = ShutPressure.ToAbsolute(Fill.Ambient), settled = SettledPressure.ToAbsolute(Fill.Ambient);
            List<WorkingStep> steps =
            [
                new("Flow when the valve opens", @"\dot m = C_d\,A\,\psi\,\frac{p_s}{\sqrt{R\,T_s}}",
                    $"{Digits.Round(Fill.Restrictor.EffectiveArea.SquareMillimeters, 4)} mm² × {Digits.Round(Fill.Gas.ChokedFlowFactor, 4)} × {Bar(Fill.Supply.ToAbsolute(Fill.Ambient))} / √({Digits.Round(Fill.Gas.GasConstant.JoulesPerKilogramKelvin, 5)} J/(kg·K) × {k} K)", $"{Digits.Round(FirstFlow.GramsPerSecond, 4)} g/s", LawSource),
                new("Rise in pressure at first", @"\frac{dp}{dt} = \frac{\kappa\,R\,T_s\,\dot m}{V}",
                    $"{Digits.Round(factor, 3)} × {Digits.Round(Fill.Gas.GasConstant.JoulesPerKilogramKelvin, 5)} J/(kg·K) × {k} K × {Digits.Round(FirstFlow.GramsPerSecond, 4)} g/s / {Digits.Round(Fill.GasVolume.Liters, 4)} L", $"{Digits.Round(ratePerSecond / 1e5, 4)} bar/s", FillingSources.Charging),
                new("Fill time", @"t = \int_{p_1}^{p_2} \frac{V\,dp}{\kappa\,R\,T_s\,\dot m(p)}", $"from {Bar(from)} to {Bar(to)}, summed", $"{Digits.Round(Duration.Seconds, 4)} s", FillingSources.Charging),
            ];
            if (Fill.Heat == FillHeat.Adiabatic)
            {
                steps.Add(new("Gas temperature when the valve shuts", @"T_2 = \frac{\gamma\,T_s}{1 + \frac{p_1}{p_2}(\gamma - 1)}", $"{Digits.Round(gamma)} × {k} K / (1 + {Bar(from)} / {Bar(to)} × {Digits.Round(gamma - 1)})", $"{Digits.Round(ShutTemperature.Kelvins, 4)} K", FillingSources.Charging));
                steps.Add(new("Pressure after cooling", @"p_s = \frac{p_2 + (\gamma - 1)\,p_1}{\gamma}", $"({Bar(to)} + {Digits.Round(gamma - 1)} × {Bar(from)}) / {Digits.Round(gamma)}", $"{Bar(settled)} absolute", FillingSources.Charging));
            }

            return new(Title, steps);
        }
    }

    private Source LawSource => Fill.Restrictor is SonicRestrictor ? FillingSources.Iso6358 : FillingSources.Naca1135;

    private Mass MassOf(double pascals, double kelvins) =>
        Mass.FromKilograms(pascals * Fill.GasVolume.CubicMeters / (Fill.Gas.GasConstant.JoulesPerKilogramKelvin * kelvins)).ToUnit(UnitsNet.Units.MassUnit.Gram);

    private IEnumerable<Finding> Say()
    {
        if (Fill.Heat == FillHeat.Adiabatic && Fill.Goal == FillGoal.WhenShut)
            yield return Finding.Note($"As the gas cools the gauge falls to {SettledPressure}, if the fill is too fast for the wall to take heat. That fall is no leak.");
        if (ShutTemperature.DegreesCelsius > 80)
            yield return Finding.Warning($"The gas may reach {Digits.Round(ShutTemperature.DegreesCelsius)} °C; a laminating resin without post-cure is good to about 50 °C. Fill more slowly: the wall then keeps it cool.");
    }
}

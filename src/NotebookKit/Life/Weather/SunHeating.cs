using NotebookKit.Numerics;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Life.Weather;

/// <summary>How hot a wall gets in the sun.</summary>
/// <param name="Air">Temperature of the air; −40 to 60 °C.</param>
/// <param name="Sun">Sunlight on the surface; 0 to 1400 W/m². A clear noon is about 1000 W/m².</param>
/// <param name="Absorptance">Share of the sunlight that is taken up [-]; 0 to 1. Black is 0.9 and above.</param>
/// <param name="Emittance">Emittance for heat radiation [-]; 0 to 1. Paint and laminate are about 0.9, bright metal 0.05.</param>
/// <param name="Film">Heat transfer to the air; 1 to 200 W/(m² K). Still air is 5 to 10 W/(m² K).</param>
/// <remarks>Source: ASHRAE Handbook: Fundamentals (sol-air temperature); Stefan-Boltzmann law.</remarks>
public sealed record SunHeating(Temperature Air, Irradiance Sun, double Absorptance, double Emittance, HeatTransferCoefficient Film)
{
    private const double StefanBoltzmann = 5.670374419e-8;

    /// <summary>Everything that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() =>
        [.. new[]
        {
            new ValidRange<Temperature>((-40).Celsius(), 60.Celsius()).Find(Air.ToUnit(TemperatureUnit.DegreeCelsius), "air temperature",
                "Check its unit."),
            new ValidRange<double>(0, 1400).Find(Sun.WattsPerSquareMeter, "sunlight in W/m²", "A clear noon is about 1000 W/m²."),
            new ValidRange<double>(0, 1).Find(Absorptance, "absorptance", "Black is 0.9 and above, white paint 0.3."),
            new ValidRange<double>(0, 1).Find(Emittance, "emittance", "Paint and laminate are about 0.9."),
            new ValidRange<double>(1, 200).Find(FilmWPerM2K, "heat transfer to the air in W/(m² K)", "Still air is 5 to 10 W/(m² K)."),
        }.OfType<Finding>()];

    /// <summary>Air temperature that would warm the wall as much as air and sun do: t + a I/h − ε ΔR/h. Source: ASHRAE
    /// Fundamentals.</summary>
    /// <param name="skyLoss">Heat a black surface loses to the cold sky over what air-warm surroundings would send; 0 to 200 W/m², 63 W/m²
    /// for a flat roof.</param>
    /// <exception cref="InvalidDesignException">A value is out of range.</exception>
    /// <exception cref="OutOfRangeException">The loss is out of range.</exception>
    public Temperature SolAir(Irradiance skyLoss)
    {
        InvalidDesignException.ThrowIfAny("Wall in the sun", Validate());
        var lossWPerM2 = new ValidRange<double>(0, 200).Check(skyLoss.WattsPerSquareMeter, "loss to the sky in W/m²",
            "A flat roof under a clear sky is 63 W/m²; a wall is 0.");
        return Temperature.FromDegreesCelsius(Air.DegreesCelsius
            + (Absorptance * Sun.WattsPerSquareMeter - Emittance * lossWPerM2) / FilmWPerM2K);
    }

    /// <summary>
    /// Temperature of a surface whose back takes no heat, in balance: a G = h (T − Ta) + ε σ (T⁴ − Ta⁴). Surroundings and sky as warm as
    /// the air, which errs warm. Source: Stefan-Boltzmann law.
    /// </summary>
    /// <exception cref="InvalidDesignException">A value is out of range.</exception>
    public Temperature Surface()
    {
        InvalidDesignException.ThrowIfAny("Wall in the sun", Validate());
        double airK = Air.Kelvins, takenWPerM2 = Absorptance * Sun.WattsPerSquareMeter;
        if (takenWPerM2 == 0) return Air.ToUnit(TemperatureUnit.DegreeCelsius);
        var kelvin = BracketedRoot.Solve(
            t => takenWPerM2 - FilmWPerM2K * (t - airK) - Emittance * StefanBoltzmann * (Math.Pow(t, 4) - Math.Pow(airK, 4)), airK,
                airK + takenWPerM2 / FilmWPerM2K + 1);
        return Temperature.FromKelvins(kelvin).ToUnit(TemperatureUnit.DegreeCelsius);
    }

    /// <summary>What the sun does to a closed vessel if all of it gets as warm as its surface. Source: Stefan-Boltzmann law, ideal
    /// gas.</summary>
    /// <param name="filled">The closed vessel as it was filled.</param>
    /// <exception cref="InvalidDesignException">A value is out of range.</exception>
    public SunHeatingResult Warm(ClosedVessel filled)
    {
        ArgumentNullException.ThrowIfNull(filled);
        InvalidDesignException.ThrowIfAny("Closed vessel in the sun", [.. Validate(), .. filled.Validate()]);
        return new SunHeatingResult(this, filled, Surface());
    }

    internal double FilmWPerM2K => Film.WattsPerSquareMeterKelvin;
}

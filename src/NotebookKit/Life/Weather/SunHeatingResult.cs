using NotebookKit.Materials.Fluids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Life.Weather;

/// <summary>A closed vessel in the sun. Source: see <see cref="Model"/>.</summary>
/// <param name="Sun">Sun, air and surface.</param>
/// <param name="Filled">The vessel as it was filled.</param>
/// <param name="Surface">Temperature of the surface in balance.</param>
public sealed record SunHeatingResult(SunHeating Sun, ClosedVessel Filled, Temperature Surface) : Result
{
    private static readonly ModelCard Card = new(
        "Wall in the sun, gas at constant volume",
        [
            "The surface is in balance: sunlight in, convection and heat radiation out, nothing through the wall.",
            "Surroundings and sky are as warm as the air, and the whole content ends as warm as the surface: both err high.",
            "The gas is ideal and the vessel does not grow; pressures are computed above vacuum and shown above ambient.",
        ],
        "A vessel left standing; a vessel in flight has no time to warm.",
        [LifeSources.SolAir, LifeSources.StefanBoltzmann, LifeSources.IdealGas]);

    /// <summary>Pressure when all of it is as warm as the surface; none where water inside would be warmer than its table goes.</summary>
    public GaugePressure? Pressure => InRange ? Filled.PressureAt(Surface) : null;

    /// <inheritdoc/>
    public override string Title => "Closed vessel in the sun";

    /// <inheritdoc/>
    public override ModelCard Model => Card;

    /// <inheritdoc/>
    public override ResultStatus Status => InRange ? ResultStatus.Completed : ResultStatus.Failed;

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForPressure;

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings =>
    [
        Pressure is { } p
            ? p > Filled.Pressure
                ? LifeFindings.SunRaisesPressure(Filled.Pressure, p, Surface)
                : LifeFindings.VesselWasFilledWarmerThanSun()
            : LifeFindings.SurfaceTooHotForWater(Surface, Water.Range.ToString()),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Surface in the sun", Surface.Show(), $"air {Sun.Air.ToUnit(TemperatureUnit.DegreeCelsius).Show()}"),
        .. Pressure is { } p
            ? [new ResultLine("Pressure when vessel and gas are as warm", p.ToString(),
                $"filled to {Filled.Pressure} at {Filled.FilledAt.ToUnit(TemperatureUnit.DegreeCelsius).Show()}")]
            : Array.Empty<ResultLine>(),
    ];

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        new("Surface", @"a\,G = h\,(T - T_a) + \varepsilon\,\sigma\,(T^4 - T_a^4)",
            $"{Digits.Round(Sun.Absorptance)} × {Digits.Round(Sun.Sun.WattsPerSquareMeter)} W/m², h {Digits.Round(Sun.FilmWPerM2K)} "
                + $"W/(m² K), ε {Digits.Round(Sun.Emittance)}", Surface.Show(), LifeSources.StefanBoltzmann),
        .. Pressure is { } p
            ? [new WorkingStep("Pressure", @"p_2 = (p_1 + p_a)\,\frac{T_2}{T_1} - p_a",
                $"{Filled.Pressure.ToAbsolute(Filled.Ambient)} × {Digits.Round(Surface.Kelvins)} K / "
                    + $"{Digits.Round(Filled.FilledAt.Kelvins)} K{(Filled.HasWater ? ", with water swelling and vapour" : "")}",
                p.ToString(), LifeSources.IdealGas)]
            : Array.Empty<WorkingStep>(),
    ]);

    private bool InRange => !Filled.HasWater || Water.Range.Contains(Surface);
}

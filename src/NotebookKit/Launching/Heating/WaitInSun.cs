using NotebookKit.Life.Weather;
using NotebookKit.Materials.Fluids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels;
using UnitsNet;

namespace NotebookKit.Launching.Heating;

/// <summary>A filled vessel that waits on its pad in sun and air: temperature of its wall and contents and its pressure over time, and when
/// it has to be vented.</summary>
/// <remarks>
/// Two lumps: the wall takes sun and gives heat to air, surroundings and contents; gas and water have one temperature. Pressure follows the
/// contents. It ends where <see cref="SunHeating"/> has its balance. Source: Stefan-Boltzmann law, Newton's cooling, ideal gas.
/// </remarks>
public sealed record WaitInSun
{
    /// <summary>The vessel as it was filled and shut.</summary>
    public required ClosedVessel Filled { get; init; }

    /// <summary>Its volume, bore, rated and highest expected pressure.</summary>
    public required Chamber Chamber { get; init; }

    /// <summary>Sun, air and the surface of the vessel.</summary>
    public required SunHeating Sun { get; init; }

    /// <summary>The wall; 1.5 mm of plastic and laminate unless given.</summary>
    public ThermalWall Wall { get; init; } = ThermalWall.Laminate(1.5.Millimetres());

    /// <summary>Highest temperature of the resin; none where that isn't given.</summary>
    public Temperature? ResinLimit { get; init; }

    /// <summary>Share of the surface that the sun meets square on [-]; 0.1 to 1, 1 unless given, which errs warm. A cylinder has 1/π on
    /// average.</summary>
    public double ShareInSun { get; init; } = 1;

    /// <summary>Film coefficient from wall to contents; 1 to 1000 W/(m² K), 100 unless given (typical of compressed gas and
    /// water).</summary>
    public HeatTransferCoefficient Inside { get; init; } = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(100);

    /// <summary>How long it is watched; 1 min to 24 hours, 2 hours unless given.</summary>
    public Duration Watch { get; init; } = 2.Hours();

    /// <summary>Vent time of the worst state, which has to be over by then; none where that isn't given.</summary>
    public Duration? VentTime { get; init; }

    /// <summary>Everything wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() =>
    [
        .. Filled.Validate(), .. Sun.Validate(), .. Wall.Validate(),
        .. new[]
        {
            new ValidRange<Volume>(1.Millilitres(), 1.CubicMetres()).Find(Chamber.Volume, "volume of the vessel", "Check its unit."),
            new ValidRange<Length>(5.Millimetres(), 2.Metres()).Find(Chamber.Bore, "bore of the vessel", "Check its unit."),
            new ValidRange<double>(0.1, 1).Find(ShareInSun, "share of the surface in the sun", "1 errs warm."),
            new ValidRange<double>(1, 1000).Find(Inside.WattsPerSquareMeterKelvin, "film coefficient inside in W/(m² K)",
                "Compressed air has 10 to 500."),
            new ValidRange<Duration>(1.Minutes(), 24.Hours()).Find(Watch, "time it is watched", "It warms within an hour."),
            VentTime is { } vent ? new ValidRange<Duration>(0.1.Seconds(), 24.Hours()).Find(vent, "vent time", "Check its unit.") : null,
            Filled.Pressure > Chamber.MaximumExpectedPressure
                ? LaunchingFindings.FilledAboveExpected(Filled.Pressure, Chamber.MaximumExpectedPressure) : null,
        }.OfType<Finding>(),
    ];

    /// <summary>Temperatures and pressure over time, and when to vent. Source: as the type.</summary>
    /// <exception cref="InvalidDesignException">Something is refused; all reasons are in it.</exception>
    public WaitInSunResult Run()
    {
        var findings = Validate();
        InvalidDesignException.ThrowIfAny("Vessel waiting in the sun", findings);
        return new WaitInSunResult(this, findings);
    }
}

using NotebookKit.Filling.Restrictors;
using NotebookKit.Materials.Fluids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels;
using UnitsNet;

namespace NotebookKit.Filling.Reliefs;

/// <summary>Whether a relief valve keeps a vessel safe in the worst case: the cylinder full, the regulator failed open, the fill valve left
/// open.</summary>
/// <remarks>What comes in is what the smallest passage of the line lets through from the full cylinder to the vessel at the relieving
/// pressure. Source: ISO 4126-1 and API 520-1 for the valve; the passage's own flow law for the inflow.</remarks>
public sealed record ReliefDuty
{
    /// <summary>The relief valve, on the vessel's side of the passage.</summary>
    public required ReliefValve Valve { get; init; }

    /// <summary>The vessel.</summary>
    public required Chamber Chamber { get; init; }

    /// <summary>What the gas has to pass on its way in, whatever has failed: the restrictor, with the hose where it is given.</summary>
    public required IRestrictor Passage { get; init; }

    /// <summary>Pressure of the full cylinder; 1 to 300 bar gauge.</summary>
    public required GaugePressure Cylinder { get; init; }

    /// <summary>Highest pressure that the vessel is filled to; none unless given.</summary>
    public GaugePressure? FillsTo { get; init; }

    /// <summary>The gas.</summary>
    public Gas Gas { get; init; } = Gas.Air;

    /// <summary>Temperature of the cylinder and of the relieved gas; −20 °C to 60 °C.</summary>
    public Temperature Temperature { get; init; } = 20.Celsius();

    /// <summary>Surrounding air pressure.</summary>
    public AbsolutePressure Ambient { get; init; } = AbsolutePressure.StandardSeaLevel;

    /// <summary>Everything wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() =>
    [
        .. Valve.Validate(), .. Passage.Validate(), .. GasChecks.FindConstants(Gas),
        .. new[]
        {
            new ValidRange<GaugePressure>(1.BarGauge(), 300.BarGauge()).Find(Cylinder, "pressure of the full cylinder",
                "Diving cylinders are filled to 200, 232 or 300 bar gauge."),
            new ValidRange<Temperature>((-20).Celsius(), 60.Celsius()).Find(
                Temperature.ToUnit(UnitsNet.Units.TemperatureUnit.DegreeCelsius), "temperature", "Check the unit it was given in."),
            new ValidRange<AbsolutePressure>(0.5.BarAbsolute(), 1.2.BarAbsolute()).Find(Ambient, "ambient pressure",
                "Was a gauge pressure meant?"),
        }.OfType<Finding>(),
    ];

    /// <summary>Capacity against inflow. Source: as the type.</summary>
    /// <exception cref="InvalidDesignException">Something is refused; all reasons are in it.</exception>
    public ReliefDutyResult Run()
    {
        var findings = Validate();
        InvalidDesignException.ThrowIfAny("Relief valve", findings);
        return new ReliefDutyResult(this, findings);
    }
}

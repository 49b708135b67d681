using NotebookKit.Filling.Balances;
using NotebookKit.Filling.Restrictors;
using NotebookKit.Materials.Fluids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels;
using UnitsNet;

namespace NotebookKit.Filling.Vents;

/// <summary>An aborted launch: the filled vessel vented through a vent until it's safe to approach.</summary>
/// <remarks>
/// Gas leaves through the vent, choked at first, then not; water stays where the vent lies above it and leaves first where it lies under
/// it. The gas that remains expands isentropically (no heat from the
/// wall) or stays at its temperature: the two limits of heat, which bracket measured discharges from a few bar. From high pressure they
/// don't bound the time: cold gas flows slowly, and gas that the wall warms again keeps its pressure up. The longest of all curves counts.
/// Source: J. C. Dutton, R. E. Coverdill, Int. J. Engng Ed. 13 (1997) 123.
/// </remarks>
public sealed record Vent
{
    /// <summary>The vessel.</summary>
    public required Chamber Chamber { get; init; }

    /// <summary>The vent.</summary>
    public required IRestrictor Restrictor { get; init; }

    /// <summary>Pressure at the start; above the safe pressure, to the rating and to 300 bar gauge.</summary>
    public required GaugePressure From { get; init; }

    /// <summary>Pressure that counts as vented; 0.001 to 5 bar gauge, 0.1 bar gauge unless said (common practice, no source).</summary>
    public GaugePressure SafePressure { get; init; } = 0.1.BarGauge();

    /// <summary>Water in the vessel over its volume; 0 to 95 %.</summary>
    public Ratio WaterFraction { get; init; }

    /// <summary>Where the vent lies; where it isn't given and the vessel holds water, the longer time counts.</summary>
    public PortPosition Port { get; init; }

    /// <summary>Where the vent lies in a vessel that stands or lies: says in place of <see cref="Port"/> whether the vent is under water,
    /// and how much water can leave. None unless given.</summary>
    public PortPlace? Place { get; init; }

    /// <summary>Temperature of gas and vessel at the start; −20 °C to 150 °C.</summary>
    public Temperature Temperature { get; init; } = 20.Celsius();

    /// <summary>Surrounding air pressure.</summary>
    public AbsolutePressure Ambient { get; init; } = AbsolutePressure.StandardSeaLevel;

    /// <summary>The gas.</summary>
    public Gas Gas { get; init; } = Gas.Air;

    /// <summary>By which law it is computed where the wall gives heat; the two limits are those of the ideal gas.</summary>
    public GasProperties Properties { get; init; }

    /// <summary>The wall that gives heat; a plain cylinder of the chamber's bore and volume unless given.</summary>
    public FillWall? Wall { get; init; }

    /// <summary>The publication whose vessel this is, which may start at up to 700 bar gauge; one's own vessel unless given.</summary>
    public PublishedTrace? Trace { get; init; }

    /// <summary>Volume that gas fills.</summary>
    public Volume GasVolume => Chamber.Volume * (1 - WaterFraction.DecimalFractions);

    /// <summary>Everything wrong with this vent.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        List<Finding?> findings =
        [
            new ValidRange<Volume>(1.Millilitres(), 1.CubicMetres()).Find(Chamber.Volume, "volume of the vessel",
                "Check the unit it was given in."),
            new ValidRange<GaugePressure>(0.001.BarGauge(), 5.BarGauge()).Find(SafePressure, "safe pressure",
                "Nobody goes near a vessel above a few tenths of a bar."),
            From > SafePressure && From <= PublishedTrace.Highest(Trace) ? null
                : FillingFindings.PressureAtStartOutOfRange(From, SafePressure, PublishedTrace.Highest(Trace), Trace is null),
            new ValidRange<Ratio>(Ratio.Zero, 95.Percent()).Find(WaterFraction.ToUnit(UnitsNet.Units.RatioUnit.Percent), "water fraction",
                "Some gas has to be there to be vented."),
            new ValidRange<Temperature>((-20).Celsius(),
                150.Celsius()).Find(Temperature.ToUnit(UnitsNet.Units.TemperatureUnit.DegreeCelsius), "temperature",
                "Check the unit it was given in."),
            new ValidRange<AbsolutePressure>(0.5.BarAbsolute(), 1.2.BarAbsolute()).Find(Ambient, "ambient pressure",
                "Was a gauge pressure meant?"),
            .. GasChecks.FindConstants(Gas),
            Enum.IsDefined(Properties)
                ? null
                : FillingFindings.PropertiesOfGasUnknown(Properties.ToString(), Enum.GetNames<GasProperties>()),
            Enum.IsDefined(Port) ? null : FillingFindings.PositionOfVentUnknown(Port.ToString(), Enum.GetNames<PortPosition>()),
            Place is { } place && Port != PortPosition.NotGiven && place.Validate().Count == 0 && place.Position(WaterFraction) != Port
                ? FillingFindings.PortAndPlaceDiffer("vent", Port == PortPosition.UnderWater) : null,
            Wall is null ? FillWall.FindBore(Chamber) : null,
            Wall?.FindWater("The vessel", WaterFraction),
            Properties == GasProperties.Real && Gas.Real is null ? FillingFindings.NoEquationOfState(Gas.ToString()) : null,
            From > Chamber.RatedPressure ? FillingFindings.VesselHoldsAboveRatedPressure(From, Chamber.RatedPressure) : null,
        ];
        findings.AddRange(PublishedTrace.Find(Trace, Chamber, From, Properties));
        findings.AddRange(Restrictor.Validate());
        findings.AddRange(Wall?.Validate() ?? []);
        findings.AddRange(Place?.Validate() ?? []);
        return findings.OfType<Finding>().ToList();
    }

    /// <summary>Runs the vent at both limits of heat, none and constant temperature, and with heat from the wall. Source: Dutton and
    /// Coverdill 1997.</summary>
    /// <exception cref="InvalidDesignException">Something in the design is refused; all reasons are in it.</exception>
    public VentResult Run()
    {
        var findings = Validate();
        InvalidDesignException.ThrowIfAny("Vent", findings);
        return new VentResult(this, Gas.Real is null && WallOrPlain.Film is null ? [FillHeat.Adiabatic, FillHeat.Isothermal]
            : [FillHeat.Adiabatic, FillHeat.Wall, FillHeat.Isothermal], findings);
    }

    /// <summary>Temperature of the gas where it isn't that of the vessel: water that left before has let it expand.</summary>
    internal Temperature? GasAtStart { get; init; }

    /// <summary>Where the vent lies, by its place where that is given.</summary>
    internal PortPosition PortInEffect => Place?.Position(WaterFraction) ?? Port;

    /// <summary>Water that leaves through a vent under water, over the vessel's volume.</summary>
    internal Ratio WaterThatLeaves => Place?.WaterAbove(WaterFraction) ?? WaterFraction;

    internal FillWall WallOrPlain => Wall ?? FillWall.Of(Chamber, WaterFraction);
}

using NotebookKit.Filling.Balances;
using NotebookKit.Materials.Fluids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels;
using UnitsNet;

namespace NotebookKit.Filling.Supply;

/// <summary>How many launches the cylinders in the boot give, and in which order they are best used.</summary>
/// <remarks>
/// Everything at one temperature, as after an hour in the shade; masses by the gas's equation of state. Source: Lemmon et al. 2000 (air);
/// mass balance.
/// </remarks>
public sealed record LaunchBudget
{
    /// <summary>The cylinders.</summary>
    public required IReadOnlyList<SourceCylinder> Cylinders { get; init; }

    /// <summary>The vessel.</summary>
    public required Chamber Chamber { get; init; }

    /// <summary>Pressure wanted in the vessel after cooling; above 0 to its rating.</summary>
    public required GaugePressure Target { get; init; }

    /// <summary>Water in the vessel over its volume; 0 to 95 %.</summary>
    public Ratio WaterFraction { get; init; }

    /// <summary>By how much a cylinder has to stay above the vessel for the flow not to die away; 0 to 50 bar, 2 bar unless said (common
    /// practice, no source).</summary>
    public Pressure Margin { get; init; } = 2.Bar();

    /// <summary>Which cylinder is used when.</summary>
    public CylinderOrder Order { get; init; }

    /// <summary>Temperature of everything; −20 °C to 50 °C.</summary>
    public Temperature Temperature { get; init; } = 20.Celsius();

    /// <summary>Surrounding air pressure.</summary>
    public AbsolutePressure Ambient { get; init; } = AbsolutePressure.StandardSeaLevel;

    /// <summary>The gas.</summary>
    public Gas Gas { get; init; } = Gas.Air;

    /// <summary>By which law it is computed.</summary>
    public GasProperties Properties { get; init; } = GasProperties.Real;

    /// <summary>Volume that gas fills.</summary>
    public Volume GasVolume => Chamber.Volume * (1 - WaterFraction.DecimalFractions);

    /// <summary>Everything wrong with this budget.</summary>
    public IReadOnlyList<Finding> Validate() =>
        new[]
        {
            Cylinders.Count == 0 ? FillingFindings.NoCylinder() : null,
            new ValidRange<Volume>(1.Millilitres(), 1.CubicMetres()).Find(Chamber.Volume, "volume of the vessel",
                "Check the unit it was given in."),
            Target > GaugePressure.Zero && Target <= Chamber.RatedPressure
                ? null
                : FillingFindings.TargetOfLaunchesOutOfRange(Target, Chamber.RatedPressure),
            new ValidRange<Ratio>(Ratio.Zero, 95.Percent()).Find(WaterFraction.ToUnit(UnitsNet.Units.RatioUnit.Percent), "water fraction",
                "Some gas has to drive the water out."),
            new ValidRange<Pressure>(0.Bar(), 50.Bar()).Find(Margin.ToUnit(UnitsNet.Units.PressureUnit.Bar),
                "margin of the cylinder over the vessel", "A few bar keep the flow alive."),
            new ValidRange<Temperature>((-20).Celsius(),
                50.Celsius()).Find(Temperature.ToUnit(UnitsNet.Units.TemperatureUnit.DegreeCelsius), "temperature",
                "Colder fills are not usual; a higher temperature weakens a laminating resin."),
            new ValidRange<AbsolutePressure>(0.5.BarAbsolute(), 1.2.BarAbsolute()).Find(Ambient, "ambient pressure",
                "Was a gauge pressure meant?"),
            Enum.IsDefined(Order) ? null : FillingFindings.OrderOfCylindersUnknown(Order.ToString(), Enum.GetNames<CylinderOrder>()),
            Enum.IsDefined(Properties)
                ? null
                : FillingFindings.PropertiesOfGasUnknown(Properties.ToString(), Enum.GetNames<GasProperties>()),
            Properties == GasProperties.Real && Gas.Real is null ? FillingFindings.NoEquationOfState(Gas.ToString()) : null,
        }.OfType<Finding>().Concat(GasChecks.FindConstants(Gas)).Concat(Cylinders.SelectMany(c => c.Validate())).ToList();

    /// <summary>Fills vessel after vessel until the cylinders can't. Source: mass balance; the gas's equation of state.</summary>
    /// <exception cref="InvalidDesignException">Something in the design is refused; all reasons are in it.</exception>
    public LaunchBudgetResult Run()
    {
        var findings = Validate();
        InvalidDesignException.ThrowIfAny("Launch budget", findings);
        return new LaunchBudgetResult(this, GasTransfer.Fills(this), findings);
    }
}

/// <summary>Which cylinder a vessel is filled from.</summary>
public enum CylinderOrder
{
    /// <summary>From the emptiest that still gives something to the fullest: the full ones are kept for the last bar.</summary>
    Cascade,

    /// <summary>Each fill from one cylinder alone, the emptiest that can still do it.</summary>
    OneAtATime,
}

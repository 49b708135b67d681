using NotebookKit.Filling.Balances;
using NotebookKit.Filling.Restrictors;
using NotebookKit.Filling.Supply;
using NotebookKit.Materials.Fluids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels;
using UnitsNet;

namespace NotebookKit.Filling.Fills;

/// <summary>A vessel filled at the pad from a regulated supply through a restrictor.</summary>
/// <remarks>
/// The gas above the water is a rigid volume, mixed at every instant; the water neither moves nor warms. Without more said the gas is
/// ideal, the supply endless and the wall takes no heat; a cylinder, a wall, a hand on the valve, real-gas properties are added one by one.
/// Source: energy balance of a charged vessel (Y. A. Cengel, M. A. Boles, Thermodynamics, 2006) with the restrictor's own flow law.
/// </remarks>
public sealed record PadFill
{
    /// <summary>The vessel.</summary>
    public required Chamber Chamber { get; init; }

    /// <summary>Pressure that the regulator is set to; above the target, to 300 bar gauge.</summary>
    public required GaugePressure Supply { get; init; }

    /// <summary>The smallest passage on the way in.</summary>
    public required IRestrictor Restrictor { get; init; }

    /// <summary>Pressure wanted.</summary>
    public required GaugePressure Target { get; init; }

    /// <summary>Whether the target is to be there when the valve shuts or after cooling.</summary>
    public FillGoal Goal { get; init; }

    /// <summary>Whether the wall takes the heat.</summary>
    public FillHeat Heat { get; init; }

    /// <summary>Water in the vessel over its volume; 0 to 95 %.</summary>
    public Ratio WaterFraction { get; init; }

    /// <summary>Where the filling port lies; where it isn't given and the vessel holds water, what a port under water does is warned
    /// of.</summary>
    public PortPosition Port { get; init; }

    /// <summary>Where the filling port lies in a vessel that stands or lies: says in place of <see cref="Port"/> whether the port is under
    /// water. None unless given.</summary>
    public PortPlace? Place { get; init; }

    /// <summary>Water that stands in port and line when the valve opens; 0.01 mL to 10 L, not known unless given.</summary>
    public Volume? WaterInLine { get; init; }

    /// <summary>Whether a check valve keeps water from running back into hose and regulator; not known unless given.</summary>
    public bool? HasCheckValve { get; init; }

    /// <summary>Pressure in the vessel at the start.</summary>
    public GaugePressure Start { get; init; }

    /// <summary>Temperature of supply, vessel and surroundings; −20 °C to 50 °C.</summary>
    public Temperature Temperature { get; init; } = 20.Celsius();

    /// <summary>Surrounding air pressure.</summary>
    public AbsolutePressure Ambient { get; init; } = AbsolutePressure.StandardSeaLevel;

    /// <summary>The gas.</summary>
    public Gas Gas { get; init; } = Gas.Air;

    /// <summary>By which law it is computed.</summary>
    public GasProperties Properties { get; init; }

    /// <summary>The wall, where heat passes to it; a plain cylinder of the chamber's bore and volume unless given.</summary>
    public FillWall? Wall { get; init; }

    /// <summary>How long the vessel is watched after the valve is shut, where heat passes to the wall; 0 to 1 hour.</summary>
    public Duration Watch { get; init; } = 2.Minutes();

    /// <summary>The cylinder behind the regulator, which empties and cools; an endless supply unless given.</summary>
    public SourceCylinder? Cylinder { get; init; }

    /// <summary>
    /// How fast the regulator is wound up, from the pressure in the vessel to the supply's; 0.1 bar/min to 100 bar/s. Set before the valve
    /// is opened unless given.
    /// </summary>
    public PressureChangeRate? SupplyRise { get; init; }

    /// <summary>The pressure ahead of the restrictor as it was measured, in place of a regulator; it must stay at or below
    /// <see cref="Supply"/>. A regulator unless given.</summary>
    public SupplyTrace? MeasuredSupply { get; init; }

    /// <summary>The publication whose vessel this is, which may be filled to 700 bar gauge; one's own vessel unless given.</summary>
    public PublishedTrace? Trace { get; init; }

    /// <summary>The valve worked by hand; open throughout unless given.</summary>
    public ValvePulses? Valve { get; init; }

    /// <summary>Volume that gas fills.</summary>
    public Volume GasVolume => Chamber.Volume * (1 - WaterFraction.DecimalFractions);

    /// <summary>
    /// Pressure at which the valve has to shut: the target, or the overshoot that settles at it where that is known in closed form (ideal
    /// gas, endless supply, no heat to the wall, valve open throughout). Else the run finds it.
    /// </summary>
    public GaugePressure ShutPressure => Goal == FillGoal.AfterCooling && Heat == FillHeat.Adiabatic && IsPlain
        ? Charging.ToSettleAt(Start.ToAbsolute(Ambient), Target.ToAbsolute(Ambient), Temperature, Temperature, Temperature,
            Gas).ToGauge(Ambient)
        : Target;

    /// <summary>Everything wrong with this fill.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        List<Finding?> findings =
        [
            new ValidRange<Volume>(1.Millilitres(), 1.CubicMetres()).Find(Chamber.Volume, "volume of the vessel",
                "Check the unit it was given in."),
            new ValidRange<GaugePressure>(0.1.BarGauge(), PublishedTrace.Highest(Trace)).Find(Chamber.RatedPressure,
                "rated pressure of the vessel", PublishedTrace.Remedy(Trace, "A vessel without a rating isn't filled.")),
            new ValidRange<double>(1, 1.5).Find(Chamber.Overshoot, "overshoot of the vessel's rating", "5 % is common practice."),
            new ValidRange<GaugePressure>(0.BarGauge(), PublishedTrace.Highest(Trace)).Find(Supply, "supply pressure",
                PublishedTrace.Remedy(Trace, "Regulators of diving cylinders give up to 300 bar gauge.")),
            new ValidRange<Ratio>(Ratio.Zero, 95.Percent()).Find(WaterFraction.ToUnit(UnitsNet.Units.RatioUnit.Percent), "water fraction",
                "Some gas has to drive the water out."),
            new ValidRange<Temperature>((-20).Celsius(),
                50.Celsius()).Find(Temperature.ToUnit(UnitsNet.Units.TemperatureUnit.DegreeCelsius), "temperature",
                "Colder fills are not usual; a higher temperature weakens a laminating resin."),
            new ValidRange<AbsolutePressure>(0.5.BarAbsolute(), 1.2.BarAbsolute()).Find(Ambient, "ambient pressure",
                "Was a gauge pressure meant?"),
            .. GasChecks.FindConstants(Gas),
            Enum.IsDefined(Goal) ? null : FillingFindings.GoalUnknown(Goal.ToString(), Enum.GetNames<FillGoal>()),
            Enum.IsDefined(Heat) ? null : FillingFindings.HeatToWallUnknown(Heat.ToString(), Enum.GetNames<FillHeat>()),
            Enum.IsDefined(Properties)
                ? null
                : FillingFindings.PropertiesOfGasUnknown(Properties.ToString(), Enum.GetNames<GasProperties>()),
            Enum.IsDefined(Port) ? null : FillingFindings.PositionOfFillingPortUnknown(Port.ToString(), Enum.GetNames<PortPosition>()),
            Place is { } place && Port != PortPosition.NotGiven && place.Validate().Count == 0 && place.Position(WaterFraction) != Port
                ? FillingFindings.PortAndPlaceDiffer("filling port", Port == PortPosition.UnderWater) : null,
            .. Place?.Validate() ?? [],
            WaterInLine is { } line ? new ValidRange<Volume>(0.01.Millilitres(), 10.Litres()).Find(line, "water in the line",
                "A metre of 6 mm hose holds 28 mL.") : null,
            new ValidRange<Duration>(Duration.Zero, 1.Hours()).Find(Watch, "time the vessel is watched", "It cools within minutes."),
            SupplyRise is { } rise ? new ValidRange<double>(0.1, 6000).Find(rise.PascalsPerSecond * 60e-5,
                "rise of the supply in bar a minute", "A hand winds a regulator up by some 50 bar a minute.") : null,
            Properties == GasProperties.Real && Gas.Real is null ? FillingFindings.NoEquationOfState(Gas.ToString()) : null,
            Wall is null && Heat == FillHeat.Wall ? FillWall.FindBore(Chamber) : null,
            Wall?.FindWater("The vessel", WaterFraction),
            Heat == FillHeat.Wall && Gas.Real is null && Wall?.Film is null
                ? FillingFindings.ViscosityAndConductivityUnknown(Gas.ToString())
                : null,
            .. PublishedTrace.Find(Trace, Chamber, Supply > Start ? Supply : Start, Properties),
            .. Restrictor.Validate(), .. Cylinder?.Find(PublishedTrace.Highest(Trace)) ?? [],
            .. Valve?.Validate() ?? [], .. Wall?.Validate() ?? [],
        ];
        findings.AddRange(MeasuredSupply?.Find(PublishedTrace.Highest(Trace)) ?? []);
        if (MeasuredSupply is not null && (SupplyRise is not null || Cylinder is not null))
            findings.Add(FillingFindings.MeasuredSupplyStandsAlone());
        if (MeasuredSupply is { } measured && measured.Find(PublishedTrace.Highest(Trace)).Count == 0
            && measured.Maximum > Supply)
            findings.Add(FillingFindings.MeasuredSupplyAboveSupply(measured.Maximum, Supply));
        findings.Add(FindStart());
        if (findings.All(f => f is null)) findings.AddRange(FindPressures());
        return findings.OfType<Finding>().ToList();
    }

    /// <summary>Runs the fill to the pressure at which the valve shuts, and on while it cools where heat passes to the wall.</summary>
    /// <exception cref="InvalidDesignException">Something in the design is refused, or the target can't be reached within the rating; all
    /// reasons are in it.</exception>
    public FillResult Run()
    {
        var findings = Validate();
        InvalidDesignException.ThrowIfAny("Fill at the pad", findings);
        var trace = FillSimulation.Run(this);
        if (trace.Trouble is { } trouble) throw new InvalidDesignException("Fill at the pad", [.. findings, Finding.Error(trouble)]);
        return new FillResult(this, trace, findings);
    }

    /// <summary>
    /// The same fill through the restrictor that takes a wanted time, its critical ratio kept: time and conductance are inverse, or nearly
    /// so where the wall takes heat. With a valve worked by hand the time is met to 5 %: it may be shut just then. Source: energy balance
    /// of a charged vessel (Cengel and Boles 2006), solved for the conductance.
    /// </summary>
    /// <param name="wanted">Fill time; 0.5 s to 30 min.</param>
    /// <exception cref="OutOfRangeException">The time is outside its range.</exception>
    /// <exception cref="InvalidDesignException">The fill itself is refused, or no restrictor gives that time.</exception>
    public PadFill InTime(Duration wanted)
    {
        new ValidRange<Duration>(0.5.Seconds(), 30.Minutes()).Check(wanted, "wanted fill time",
            "A valve can't be operated faster; with slower pulses the gas has cooled anyway.");
        return FillTiming.Find(this, wanted);
    }

    /// <summary>Whether pressure and temperature follow from plain sums and closed forms.</summary>
    internal bool IsPlain => Properties == GasProperties.Ideal && Heat != FillHeat.Wall && Valve is null && Cylinder is null
        && SupplyRise is null && MeasuredSupply is null;

    /// <summary>Where the port lies, by its place where that is given.</summary>
    internal PortPosition PortInEffect => Place?.Position(WaterFraction) ?? Port;

    internal FillWall WallOrPlain => Wall ?? FillWall.Of(Chamber, WaterFraction);

    // A real gas chokes at a higher flow than an ideal one, 2.4 % for air at 60 bar, 6 % at 150: a relief valve has to pass that.
    private MassFlow ReliefFlow
    {
        get
        {
            var supply = Supply.ToAbsolute(Ambient);
            var ideal = Restrictor.Flow(supply, Temperature, Chamber.RatedPressure.ToAbsolute(Ambient), Gas);
            return Gas.Real is { } real ? ideal * Math.Max(1, real.CriticalFlowFactor(real.At(supply, Temperature)) / Gas.ChokedFlowFactor)
                : ideal;
        }
    }

    private Finding? FindStart() =>
        new ValidRange<GaugePressure>(GaugePressure.FromPascals(-0.999 * Ambient.Pascals), PublishedTrace.Highest(Trace)).Find(Start,
            "pressure at the start", PublishedTrace.Remedy(Trace, "It can't be below vacuum."));

    private IEnumerable<Finding?> FindPressures()
    {
        yield return Target > Start ? null : FillingFindings.TargetBelowStart(Target, Start);
        yield return Target <= Chamber.RatedPressure
            ? null
            : FillingFindings.TargetAboveRatedPressure(Target, Chamber.RatedPressure);
        var shut = ShutPressure;
        if (shut > Target && shut > Chamber.RatedPressure)
            yield return FillingFindings.FastFillPassesRatedPressure(Target, shut, Chamber.RatedPressure);
        yield return shut <= Supply
            ? null
            : FillingFindings.ValveWouldShutAboveSupply(shut, Supply, shut < Chamber.RatedPressure, Chamber.RatedPressure);
        if (Cylinder is { } cylinder && cylinder.Pressure <= Target)
            yield return FillingFindings.CylinderIsNoFullerThanTarget(cylinder.ToString(), Target);
        if (WaterFraction > Ratio.Zero && Temperature < 0.Celsius())
            yield return FillingFindings.WaterMayFreeze(Temperature);
        if (Supply > Chamber.RatedPressure)
            yield return FillingFindings.RegulatorAboveRatedPressure(
                Supply, Chamber.RatedPressure, Target, ReliefFlow.GramsPerSecond, Chamber.MaximumExpectedPressure);
    }
}

/// <summary>When the wanted pressure is to be there.</summary>
public enum FillGoal
{
    /// <summary>When the valve shuts; it then falls while the gas cools.</summary>
    WhenShut,

    /// <summary>After the gas has cooled: the fill has to overshoot, and the overshoot has to stay within the rating.</summary>
    AfterCooling,
}

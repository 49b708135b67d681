using NotebookKit.Flight.Design;
using NotebookKit.Flight.Motion;
using NotebookKit.Flight.Site;
using NotebookKit.Flight.Stability;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Quantities.Columns;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Flight.Flights;

/// <summary>A flight from the pad to the ground. Source: see <see cref="Model"/>.</summary>
public sealed record FlightResult : Result
{
    private readonly FlightFigures? _figures;
    private readonly string _failure;

    internal FlightResult(Vehicle vehicle, LaunchSite site, FlightFigures? figures, string failure, IReadOnlyList<FlightRow> rows,
        bool hasAttitude)
    {
        Vehicle = vehicle;
        Site = site;
        _figures = figures;
        _failure = failure;
        var lazy = new Lazy<IReadOnlyList<FlightRow>>(rows);
        Time = Column("Time from release", "s", r => r.Time);
        Height = Column("Height above pad", "m", r => -r.Position.Z);
        East = Column("East of pad", "m", r => r.Position.Y);
        North = Column("North of pad", "m", r => r.Position.X);
        Speed = Column("Speed over ground", "m/s", r => r.Velocity.Length);
        VerticalSpeed = Column("Speed upwards", "m/s", r => -r.Velocity.Z);
        Mach = Column("Mach number", "-", r => r.Mach);
        DynamicPressure = Column("Dynamic pressure", "kPa", r => r.DynamicPressurePa / 1000);
        Load = Column("Felt acceleration", "g", r => r.LoadG);
        Thrust = Column("Thrust", "N", r => r.ThrustN);
        var dry = vehicle.Parts.State().MassKg;
        Mass = Column("Mass", "kg", r => dry + r.WaterKg + r.GasKg);
        Water = Column("Water left", "kg", r => r.WaterKg);
        Gas = Column("Gas left", "kg", r => r.GasKg);
        Attitude = hasAttitude ? FlightReport.Attitudes(new(() => [.. rows.Where(r => figures?.OpeningTime is not { } opening
            || r.Time <= opening.Seconds)])) : null;

        Series Column(string name, string unit, Func<FlightRow, double> value) => LazyColumn<FlightRow>.Of(name, unit, lazy, value);
    }

    /// <summary>What was flown.</summary>
    public Vehicle Vehicle { get; }

    /// <summary>Where it was flown.</summary>
    public LaunchSite Site { get; }

    /// <summary>Time from release [s]. Rows are where the integration stepped, four to a step; every column has the same rows.</summary>
    public Series Time { get; }

    /// <summary>Height above the pad [m].</summary>
    public Series Height { get; }

    /// <summary>Way to the east of the pad [m].</summary>
    public Series East { get; }

    /// <summary>Way to the north of the pad [m].</summary>
    public Series North { get; }

    /// <summary>Speed over ground [m/s].</summary>
    public Series Speed { get; }

    /// <summary>Speed upwards [m/s].</summary>
    public Series VerticalSpeed { get; }

    /// <summary>Mach number [-].</summary>
    public Series Mach { get; }

    /// <summary>Dynamic pressure [kPa].</summary>
    public Series DynamicPressure { get; }

    /// <summary>Felt acceleration, all but weight over mass [g].</summary>
    public Series Load { get; }

    /// <summary>Thrust [N].</summary>
    public Series Thrust { get; }

    /// <summary>Mass of the vehicle with what is aboard [kg].</summary>
    public Series Mass { get; }

    /// <summary>Water aboard [kg].</summary>
    public Series Water { get; }

    /// <summary>Gas aboard [kg].</summary>
    public Series Gas { get; }

    /// <summary>Attitude along the flight, of six degrees of freedom only.</summary>
    public AttitudeSeries? Attitude { get; }

    /// <summary>The main numbers.</summary>
    /// <exception cref="InvalidOperationException">The flight failed; there are none.</exception>
    public FlightFigures Figures => _figures ?? throw new InvalidOperationException($"{Title} has no figures: {_failure}");

    /// <summary>Height of the top above the pad.</summary>
    /// <exception cref="InvalidOperationException">The flight failed.</exception>
    public Length Apogee => Figures.Apogee;

    /// <summary>Time from release to apogee.</summary>
    /// <exception cref="InvalidOperationException">The flight failed.</exception>
    public Duration ApogeeTime => Figures.ApogeeTime;

    /// <summary>Distance from the pad to where it lands.</summary>
    /// <exception cref="InvalidOperationException">The flight failed.</exception>
    public Length Drift => Figures.Drift;

    /// <summary>Right-hand sides computed.</summary>
    public required int Evaluations { get; init; }

    /// <inheritdoc/>
    public override ResultStatus Status => _figures is null ? ResultStatus.Failed : ResultStatus.Completed;

    /// <inheritdoc/>
    public override string Title => $"Flight of {Vehicle.Name} from {Site.Name}, {(IsSixDegrees ? "six" : "three")} degrees of freedom";

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFlight;

    /// <inheritdoc/>
    public override ModelCard Model => FlightModel.Card(Vehicle, Site, IsSixDegrees);

    /// <inheritdoc/>
    public override Working Working => FlightWorking.For(this);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines => _figures is not { } f ? [] :
    [
        new("Apogee above pad", f.Apogee.Show()),
        new("Time of apogee", f.ApogeeTime.Show(), "from release"),
        new("Speed off the rail", f.RailExitSpeed.Show(), $"after {Digits.Round(f.RailExitTime.Milliseconds)} ms, wind "
            + $"{(Site.Wind.IsGiven ? $"{f.RailWind.Show()} there" : "not given")}"),
        new("Angle of attack off the rail", Site.Wind.IsGiven ? f.RailExitAngle.Show(AngleUnit.Degree) : "wind not given",
            f.RailExitMargin is { } margin ? $"margin {Digits.Round(margin)} calibres at that angle" : "beyond the model"),
        new("Maximum speed", f.MaximumSpeed.Show(), $"Mach {Digits.Round(f.MaximumMach, 2)}, at {f.MaximumSpeedTime.Show()}"),
        new("Maximum dynamic pressure", f.MaximumDynamicPressure.Show(PressureUnit.Kilopascal)),
        new("Maximum felt acceleration", $"{Digits.Round(f.MaximumLoad)} g", "up to the canopy's opening"),
        .. f.MaximumAngleOfAttack is { } attack ? [new ResultLine("Maximum angle of attack", attack.Show(), "on the way up")]
            : Array.Empty<ResultLine>(),
        .. f.MaximumRollRate is { } roll ? [new ResultLine("Maximum roll rate", $"{Digits.Round(roll.RevolutionsPerSecond)} rev/s",
            "on the way up")] : Array.Empty<ResultLine>(),
        .. f.OpeningHeight is { } height ? [new ResultLine("Canopy out", height.Show(),
            $"at {f.OpeningTime!.Value.Show()}, {f.OpeningSpeed!.Value.Show()} through the air")] : Array.Empty<ResultLine>(),
        new("Descent speed at the ground", f.DescentSpeed.Show(),
            $"{f.LandingSpeed.Show()} over ground{(Site.Wind.IsGiven ? "" : ", in still air")}"),
        new("Energy at landing", f.LandingEnergy.Show()),
        new("Time to the ground", f.LandingTime.Show()),
        Site.Wind.IsGiven
            ? new("Drift", f.Drift.Show(), $"{f.LandingEast.Show()} east, {f.LandingNorth.Show()} north")
            : new("Drift", "wind not given", $"in still air {f.LandingEast.Show()} east, {f.LandingNorth.Show()} north"),
        new("Rated pressure of the vessel", Vehicle.Charge.Chamber.RatedPressure.ToString(), Vehicle.Charge.Chamber.RestsOn),
    ];

    private bool IsSixDegrees => Attitude is not null;

    /// <summary>Static margin against time up to the top, from the water and gas left and the Mach number. Source: J. S. Barrowman, 1967
    /// (unverified).</summary>
    /// <param name="limits">Margin it is held to; 1 to 4 calibres where none is given.</param>
    /// <exception cref="InvalidOperationException">The flight failed.</exception>
    public StabilityResult Stability(StabilityLimits? limits = null)
    {
        var top = Figures.ApogeeTime.Seconds;
        var count = Math.Max(1, Time.Values.Count(t => t <= top));
        return Vehicle.Airframe.StabilityDuring(Cut(Time), Cut(Water), Cut(Gas), Cut(Mach), limits);

        Series Cut(Series series) => series with { Values = [.. series.Values.Take(count)] };
    }
}

/// <summary>How the vehicle lies in the air along a flight in six degrees of freedom, a row for every row of the flight up to the canopy's
/// opening.</summary>
/// <param name="Time">Time from release [s].</param>
/// <param name="AngleOfAttack">Angle between axis and relative wind [°].</param>
/// <param name="Elevation">Angle of the nose above the horizon [°].</param>
/// <param name="Heading">Where the nose leans to, clockwise from north [°].</param>
/// <param name="RollRate">Turning about the axis [rev/s].</param>
/// <param name="PitchRate">Turning across the axis, about the body's right-hand axis [°/s].</param>
/// <param name="PitchFrequency">Natural frequency of pitching [Hz]; negative where it is unstable.</param>
/// <param name="YawRate">Turning across the axis, about the body's downward axis [°/s].</param>
public sealed record AttitudeSeries(
    Series Time, Series AngleOfAttack, Series Elevation, Series Heading, Series RollRate, Series PitchRate, Series YawRate,
        Series PitchFrequency);

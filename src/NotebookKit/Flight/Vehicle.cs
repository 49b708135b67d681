using NotebookKit.Aerodynamics;
using NotebookKit.Propulsion;
using NotebookKit.Propulsion.Phases;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Recovery;
using UnitsNet;

namespace NotebookKit.Flight;

/// <summary>
/// A whole vehicle: its outside, its parts, what drives it and what brings it back.
/// Source of its models: those of its parts; each verb's result names them.
/// </summary>
/// <param name="Name">What it is called.</param>
/// <param name="Body">The outside, as the air sees it.</param>
/// <param name="Parts">The parts, empty of water and gas.</param>
/// <param name="Charge">What is in the vessel at release.</param>
/// <param name="Nozzle">What it leaves through.</param>
/// <param name="NozzleEndAt">Aft end of the vessel's inside, aft of the nose tip; 0 to 20 m.</param>
public sealed partial record Vehicle(string Name, FinnedBody Body, MassLedger Parts, Charge Charge, Nozzle Nozzle, Length NozzleEndAt)
{
    /// <summary>Which equations describe water and gas; <see cref="FlowModel.Real"/> unless given.</summary>
    public FlowModel Flow { get; init; } = FlowModel.Real;

    /// <summary>What the drag build-up can't know from the shape.</summary>
    public DragAssumptions Surface { get; init; } = new();

    /// <summary>Which end of the drag band it flies with; the middle unless given.</summary>
    public DragEnd DragEnd { get; init; } = DragEnd.Middle;

    /// <summary>A drag curve of one's own, fitted to flights, with and without jet; by the build-up where none is given.</summary>
    public DragCurve? MeasuredDrag { get; init; }

    /// <summary>What flights said about its drag, in place of the build-up's band; the build-up as it stands where none is given.</summary>
    public DragCalibration? DragCalibration { get; init; }

    /// <summary>A launch tube on the pad that it rides up first; none unless given.</summary>
    public LaunchTube? LaunchTube { get; init; }

    /// <summary>What it comes down on; none where none is given.</summary>
    public Canopy? Canopy { get; init; }

    /// <summary>What brings the canopy out; passing the top of the flight unless given.</summary>
    public Deployment Deployment { get; init; } = Deployment.AtApogee();

    /// <summary>Outside, masses and vessel together, as stability sees them.</summary>
    public Airframe Airframe => new(Body, Parts with { Name = Name },
        new WaterTank(Charge.Chamber.Volume, Charge.Chamber.Bore, NozzleEndAt) { WaterDensity = Charge.WaterDensity });

    /// <summary>Everything that is wrong with it, at sea level on a standard day.</summary>
    public IReadOnlyList<Finding> Validate() => Validate(LaunchSite.SeaLevel);

    /// <summary>Everything that is wrong with it on a site.</summary>
    /// <param name="site">Where it starts.</param>
    public IReadOnlyList<Finding> Validate(LaunchSite site) => Validate(site, startsOnPad: true);

    /// <summary>The same for a stage, which doesn't leave the pad by itself.</summary>
    internal IReadOnlyList<Finding> Validate(LaunchSite site, bool startsOnPad)
    {
        ArgumentNullException.ThrowIfNull(site);
        List<Finding> all = [.. Airframe.Validate(), .. Surface.Validate(), .. DragCalibration?.Validate() ?? [], .. FiringChecks.All(Charge, Nozzle, Flow, site.Pressure), .. FiringChecks.QuasiSteady(Flow), .. site.Validate(), .. Canopy?.Validate() ?? []];
        if (string.IsNullOrWhiteSpace(Name)) all.Add(Finding.Error("the vehicle has no name; a flight belongs to one vehicle, so write the name that stands on it."));
        if (Body.Parts.Count > 0 && Nozzle.Throat.Meters > Body.BaseM)
            all.Add(Finding.Error($"nozzle throat is {Nozzle.Throat.Show(4)}; it must be at most the base of the body. Check which of the two is in millimetres."));
        if (LaunchTube is { } tube) all.AddRange(LaunchTubeFit.Check(tube, Nozzle, Charge));
        if (Canopy is null && Deployment.Trigger != DeploymentTrigger.Never)
            all.Add(Finding.Warning("the vehicle has no canopy and will come down as it is; give it one, or say Deployment.Never."));
        if (all.TrueForAll(f => f.Severity != FindingSeverity.Error) && Lift(site, startsOnPad) is { } lift) all.Add(lift);
        return all;
    }

    /// <summary>Mass, centre of gravity and inertias, empty. Source: parallel-axis theorem.</summary>
    /// <exception cref="InvalidDesignException">The ledger can't be computed; carries all findings.</exception>
    public Balance Balance() => (Parts with { Name = Name }).Balance();

    /// <summary>Static margin against the water left. Source: J. S. Barrowman, M.S. thesis, 1967 (from memory).</summary>
    /// <param name="limits">Margin it is held to; 1 to 4 calibres where none is given.</param>
    /// <exception cref="InvalidDesignException">The vehicle can't be computed; carries all findings.</exception>
    public StabilityResult Stability(StabilityLimits? limits = null) =>
        Airframe.Stability(Charge.WaterFraction, Charge.GasMass(AbsolutePressure.StandardSeaLevel), 0, limits);

    /// <summary>Flies it in three degrees of freedom, from the pad to the ground. Source: see the result's model.</summary>
    /// <param name="site">Where it starts.</param>
    /// <exception cref="InvalidDesignException">Something can't be computed; carries all findings.</exception>
    public FlightResult Fly(LaunchSite site)
    {
        var findings = Validate(site);
        InvalidDesignException.ThrowIfAny(Name, findings);
        var rows = new List<FlightRow>(1024);
        var marks = FlightRun.Fly(Numbers(site), null, FlightAccuracy.Recorded, rows);
        return FlightReport.For(this, site, marks, rows, hasAttitude: false, [.. findings, .. site.WindFindings()]);
    }

    /// <summary>Flies it in six degrees of freedom, from the pad to the ground; under the canopy in three. Source: see the result's model.</summary>
    /// <param name="site">Where it starts.</param>
    /// <exception cref="InvalidDesignException">Something can't be computed; carries all findings.</exception>
    public FlightResult FlySixDegrees(LaunchSite site)
    {
        var findings = ValidateSixDegrees(site);
        InvalidDesignException.ThrowIfAny(Name, findings);
        var rows = new List<FlightRow>(4096);
        var marks = FlightRun.Fly(Numbers(site), SixDegrees(), FlightAccuracy.RecordedSixDegrees, rows);
        return FlightReport.For(this, site, marks, rows, hasAttitude: true, [.. findings, .. site.WindFindings()]);
    }

    /// <summary>Everything that is wrong with it on a site for six degrees of freedom, which ask for more.</summary>
    internal IReadOnlyList<Finding> ValidateSixDegrees(LaunchSite site, bool startsOnPad = true)
    {
        List<Finding> findings = [.. Validate(site, startsOnPad)];
        if (findings.TrueForAll(f => f.Severity != FindingSeverity.Error) && Balance().RollInertia.KilogramSquareMeters <= 0)
            findings.Add(Finding.Error("roll inertia of the parts is 0 kg·m²; it must be above 0 to fly in six degrees of freedom. Give the parts of the ledger a diameter, not only a place."));
        return findings;
    }

    /// <summary>Gas aboard at release by the flow's own gas law [kg].</summary>
    internal double GasKg(LaunchSite site) => Setup(Charge, site).GasKg;

    /// <summary>What is fired, with a charge that may differ from the nominal one.</summary>
    internal FiringSetup Setup(Charge charge, LaunchSite site) => Setup(charge, site, FiringTables.For(charge, Flow, site.Pressure.Pascals));

    /// <summary>What is fired, with tables that were made for the same gas, pressure and temperature.</summary>
    internal FiringSetup Setup(Charge charge, LaunchSite site, FiringTables tables) => new(charge, Nozzle, Flow, site.Pressure.Pascals, tables, LaunchTube);

    /// <summary>What six degrees of freedom need besides.</summary>
    internal RigidBody.VehicleNumbers SixDegrees() => new(Parts.State(), new(Airframe.Tank), new(Body));

    /// <summary>The vehicle on a site in SI numbers.</summary>
    internal FlightNumbers Numbers(LaunchSite site)
    {
        var (jetOn, jetOff) = Drag(site);
        var direction = site.Rail.Direction();
        // The tube guides as well as the rail.
        var guided = Math.Max(site.Rail.Guided.Meters, LaunchTube?.Stroke.Meters ?? 0);
        return new FlightNumbers
        {
            Air = new(site.Atmosphere.Law, site.Elevation.Meters, site.Wind, -guided * direction.Z, site.Gusts),
            RailM = guided,
            RailDirection = direction,
            RailFriction = site.Rail.Friction,
            DryKg = Parts.State().MassKg,
            DragAreaM2 = jetOff.AreaM2,
            JetOn = jetOn,
            JetOff = jetOff,
            Firing = Setup(Charge, site),
            Deployment = Recovery(),
        };
    }

    /// <summary>Drag with and without jet, at the end of the band that was chosen.</summary>
    internal (DragCurve JetOn, DragCurve JetOff) Drag(LaunchSite site)
    {
        if (MeasuredDrag is { } own) return (own, own);
        var air = new AirConditions(site.Pressure, site.Temperature);
        return (Chosen(Flown(Body.DragCurves(air, Surface, Nozzle.Throat))), Chosen(Flown(Body.DragCurves(air, Surface))));
    }

    /// <summary>Ends and middle of the drag without jet.</summary>
    internal DragCurves DragBand(LaunchSite site) => Flown(Body.DragCurves(new AirConditions(site.Pressure, site.Temperature), Surface));

    private DragCurves Flown(DragCurves buildUp) => DragCalibration is { } calibration ? calibration.Of(buildUp) : buildUp;

    private DragCurve Chosen(DragCurves band) => DragEnd switch
    {
        DragEnd.Low => band.Low,
        DragEnd.High => band.High,
        _ => band.Middle,
    };

    private DeploymentNumbers Recovery() => Canopy is not { } canopy || Deployment.Trigger == DeploymentTrigger.Never
        ? default
        : new(Deployment.Trigger, Deployment.Delay.Seconds, (canopy.DragAreaLowM2 + canopy.DragAreaHighM2) / 2,
            canopy.Data.FillConstant * canopy.NominalDiameter.Meters, canopy.Data.GrowthExponent);

    /// <summary>Whether it would not lift at all; of what starts on the pad, also whether it would come down again charged.</summary>
    private Finding? Lift(LaunchSite site, bool startsOnPad)
    {
        // An ideal gas is near enough here, and needs no table.
        var setup = new FiringSetup(Charge, Nozzle, Flow, site.Pressure.Pascals, FiringTables.None, LaunchTube);
        var thrust = setup.FirstThrust;
        var weight = (Parts.State().MassKg + setup.WaterKg + setup.GasKg) * FlightNumbers.Gravity;
        return thrust > weight
            ? startsOnPad && ChargedLanding.Ahead(setup, Parts.State().MassKg, out var rest) ? rest.Hop(thrust, weight) : null
            : Finding.Error($"thrust at release is {thrust.Newtons().Show()}; the vehicle weighs {weight.Newtons().Show()} and would not lift. Use more pressure, a wider nozzle or less mass.");
    }
}

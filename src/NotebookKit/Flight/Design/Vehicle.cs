using NotebookKit.Aerodynamics.Airflow;
using NotebookKit.Aerodynamics.Bodies;
using NotebookKit.Aerodynamics.Drag;
using NotebookKit.Flight.Site;
using NotebookKit.Propulsion.Charges;
using NotebookKit.Propulsion.Flow;
using NotebookKit.Propulsion.Phases;
using NotebookKit.Provenance;
using NotebookKit.Recovery;
using UnitsNet;

namespace NotebookKit.Flight.Design;

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
public sealed record Vehicle(string Name, FinnedBody Body, MassBudget Parts, Charge Charge, Nozzle Nozzle, Length NozzleEndAt)
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
    public Deployment Deployment { get; init; } = Deployment.ByApogeeSensor();

    /// <summary>Outside, masses and vessel together, as stability sees them.</summary>
    public Airframe Airframe => new(Body, Parts with { Name = Name },
        new WaterChamber(Charge.Chamber.Volume, Charge.Chamber.Bore, NozzleEndAt) { WaterDensity = Charge.WaterDensity });

    /// <summary>What is wrong with it as it stands on a site, before anything is asked of its flight.</summary>
    internal List<Finding> Findings(LaunchSite site)
    {
        ArgumentNullException.ThrowIfNull(site);
        List<Finding> all = [.. Airframe.Validate(), .. Surface.Validate(), .. DragCalibration?.Validate() ?? [],
            .. FiringChecks.All(Charge, Nozzle, Flow, site.Pressure), .. FiringChecks.QuasiSteady(Flow), .. site.Validate(),
            .. Canopy?.Validate() ?? []];
        if (string.IsNullOrWhiteSpace(Name)) all.Add(FlightFindings.VehicleHasNoName());
        if (Body.Parts.Count > 0 && Nozzle.Throat.Meters > Body.BaseM)
            all.Add(FlightFindings.NozzleThroatWiderThanBase(Nozzle.Throat));
        if (LaunchTube is { } tube) all.AddRange(LaunchTubeFit.Check(tube, Nozzle, Charge));
        if (Canopy is null && Deployment.Trigger != DeploymentTrigger.None)
            all.Add(FlightFindings.VehicleHasNoCanopy());
        return all;
    }

    /// <summary>Mass, centre of gravity and inertias, empty. Source: parallel-axis theorem.</summary>
    /// <exception cref="InvalidDesignException">The mass budget can't be computed; carries all findings.</exception>
    public MassProperties MassProperties() => (Parts with { Name = Name }).MassProperties();

    /// <summary>Gas aboard at release by the flow's own gas law [kg].</summary>
    internal double GasKg(LaunchSite site) => FiringSetup.GasAboardKg(Charge, Flow, site.Pressure.Pascals, LaunchTube);

    /// <summary>What is fired, with a charge that may differ from the nominal one.</summary>
    internal FiringSetup Setup(Charge charge, LaunchSite site)
        => Setup(charge, site, FiringTables.For(charge, Flow, site.Pressure.Pascals));

    /// <summary>What is fired, with tables that were made for the same gas, pressure and temperature.</summary>
    internal FiringSetup Setup(Charge charge, LaunchSite site, FiringTables tables)
        => new(charge, Nozzle, Flow, site.Pressure.Pascals, tables, LaunchTube);

    /// <summary>Drag with and without jet, at the end of the band that was chosen.</summary>
    internal (DragCurve JetOn, DragCurve JetOff) Drag(LaunchSite site)
    {
        if (MeasuredDrag is { } own) return (own, own);
        var air = new AirConditions(site.Pressure, site.Temperature);
        var (name, weight) = (DragCalibration is null ? DragEnd : DragEnd.Middle) switch
        {
            DragEnd.Low => ("low", 0.0),
            DragEnd.High => ("high", 1),
            _ => ("middle", 0.5),
        };
        var (on, off) = Body.DragCurvesAt(air, Surface, Nozzle.Throat, name, weight);
        return DragCalibration is { } flown ? (flown.Of(on, DragEnd), flown.Of(off, DragEnd)) : (on, off);
    }

    /// <summary>Ends and middle of the drag without jet.</summary>
    internal DragCurves DragBand(LaunchSite site) => Flown(Body.DragCurves(new AirConditions(site.Pressure, site.Temperature), Surface));

    /// <summary>Drag coefficient of the middle of its band at a Mach number [-].</summary>
    internal double DragCoefficient(double mach, LaunchSite site) => DragBand(site).Middle.Coefficient(mach);

    private DragCurves Flown(DragCurves buildUp) => DragCalibration is { } calibration ? calibration.Of(buildUp) : buildUp;
}

/// <summary>Which end of the drag build-up's band a flight takes.</summary>
public enum DragEnd
{
    /// <summary>The middle.</summary>
    Middle,

    /// <summary>The low end: the highest flight, the one to hold against a ceiling.</summary>
    Low,

    /// <summary>The high end: the lowest flight.</summary>
    High,
}

using NotebookKit.Flight.Design;
using NotebookKit.Flight.Site;
using NotebookKit.Propulsion.Phases;

namespace NotebookKit.Flight.Motion;

/// <summary>A design as the numbers its equations of motion run on.</summary>
internal static class VehicleMotion
{
    /// <summary>What six degrees of freedom need besides.</summary>
    public static VehicleNumbers SixDegrees(this Vehicle vehicle)
        => new(vehicle.Parts.State(), new(vehicle.Airframe.Chamber), new(vehicle.Body));

    /// <summary>The vehicle on a site in SI numbers.</summary>
    public static FlightNumbers Numbers(this Vehicle vehicle, LaunchSite site) =>
        vehicle.Numbers(site, vehicle.Setup(vehicle.Charge, site));

    /// <summary>The same with what is fired made ready already.</summary>
    public static FlightNumbers Numbers(this Vehicle vehicle, LaunchSite site, in FiringSetup firing)
    {
        var (jetOn, jetOff) = vehicle.Drag(site);
        var direction = site.Rail.Direction();
        // The tube guides as well as the rail.
        var guided = Math.Max(site.Rail.Guided.Meters, vehicle.LaunchTube?.Stroke.Meters ?? 0);
        return new FlightNumbers
        {
            Air = new(site.Atmosphere.Law, site.Elevation.Meters, site.Wind, -guided * direction.Z, site.Gusts),
            RailM = guided,
            RailDirection = direction,
            RailFriction = site.Rail.Friction,
            DryKg = vehicle.Parts.State().MassKg,
            DragAreaM2 = jetOff.AreaM2,
            JetOn = jetOn,
            JetOff = jetOff,
            Firing = firing,
            Deployment = Recovery(vehicle),
        };
    }

    /// <summary>What separates the stages, in SI numbers.</summary>
    public static SeparationNumbers Numbers(this TwoStageVehicle vehicle, LaunchSite site)
    {
        var (separation, sustainer) = (vehicle.Separation, vehicle.Sustainer);
        return new(
            separation.Trigger, separation.Delay.Seconds, separation.Joint.Meters,
            sustainer.Parts.State().MassKg + sustainer.Charge.WaterMass.Kilograms + sustainer.GasKg(site),
            vehicle.Booster.Parts.State().MassKg, separation.Trigger == SeparationTrigger.Drag ? sustainer.Drag(site).JetOff : null);
    }

    private static DeploymentNumbers Recovery(Vehicle vehicle) => vehicle.Canopy is not { } canopy
        || vehicle.Deployment.Trigger == DeploymentTrigger.None
        ? default
        : new(vehicle.Deployment.Trigger, vehicle.Deployment.Delay.Seconds, (canopy.DragAreaLowM2 + canopy.DragAreaHighM2) / 2,
            canopy.Data.FillConstant * canopy.NominalDiameter.Meters, canopy.Data.GrowthExponent);
}

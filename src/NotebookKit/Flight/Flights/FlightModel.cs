using NotebookKit.Flight.Design;
using NotebookKit.Flight.Site;
using NotebookKit.Flight.Vertical;
using NotebookKit.Propulsion.Firings;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Quantities.Numbers;

namespace NotebookKit.Flight.Flights;

/// <summary>What a flight assumes and where its equations come from, as result pages print it.</summary>
internal static class FlightModel
{
    public static readonly Source Newton = VerticalFlightModel.Newton;

    public static readonly Source RailPractice = Source.CommonPractice("off the rail at four times the wind or more, at 15° or less");

    public static readonly Source Barrowman = new("J. S. Barrowman",
        "The Practical Calculation of the Aerodynamic Characteristics of Slender Finned Vehicles",
        1967, "M.S. thesis", SourceKind.Unverified);

    public static readonly Source Knacke = new("T. W. Knacke", "Parachute Recovery Systems Design Manual, NWC TP 6575", 1991,
        "tables 5-1 and 5-6");

    public static readonly Source JetDamping = new("W. T. Thomson", "Introduction to Space Dynamics", 1961, "jet damping",
        SourceKind.Unverified);

    public static ModelCard Card(Vehicle vehicle, LaunchSite site, bool isSixDegrees)
    {
        var firing = FiringModel.Card(vehicle.Flow, vehicle.Charge);
        return new(
            isSixDegrees ? "Flight in six degrees of freedom" : "Flight in three degrees of freedom",
            [
                $"Flat ground, gravity {StandardConstants.Gravity} m/s² throughout; the pad is level with the ground it lands on.",
                $"Rail of {site.Rail.Guided.Show()} with Coulomb friction by the weight's part across it; it doesn't bend, and the wind "
                    + "doesn't press on the vehicle along it.",
                .. vehicle.LaunchTube is { } tube ? [$"It rides up a launch tube of {tube.Diameter.Show()} over {tube.Stroke.Show()} "
                    + "first, the gas pushing as on a piston."] : Array.Empty<string>(),
                .. isSixDegrees ? SixDegrees : ThreeDegrees,
                $"Air: {site.Atmosphere.Name}. Wind: {site.Wind.Name}, below the end of the rail as at its end; "
                    + $"{(site.Gusts is null ? "no gusts" : $"frozen gusts of seed {site.Gusts.Seed}")}.",
                $"Drag: {(vehicle.MeasuredDrag is { } own ? own.Name :
                    $"build-up by parts, {vehicle.DragEnd.ToString().ToLowerInvariant()} of its band{(vehicle.DragCalibration is { } c
                        ? $" as flown: factor {Digits.Round(c.Factor)} ± {c.Uncertainty.Show(2)}, {c.Origin}" : "")}")}; "
                    + "while the jet runs its area is off the base.",
                "Under the canopy a point mass; its drag area grows while it fills and is the middle of the handbook's band.",
                .. firing.Assumptions,
            ],
            firing.ValidRange + " Mach 0 to 0.9, refused beyond. Angles of attack up to 20°.",
            isSixDegrees
                ? [Newton, RigidBody.RigidBodyModel.Stevens, RigidBody.RigidBodyModel.Kuipers, Barrowman, JetDamping, Knacke,
                    site.Atmosphere.Source, WindProfile.Source, .. firing.Sources]
                : [Newton, Knacke, site.Atmosphere.Source, WindProfile.Source, .. firing.Sources]);
    }

    private static string[] ThreeDegrees { get; } = ["After the rail the axis lies along the relative wind at once: a stable vehicle "
        + "without inertia. Judge the rail's end by its angle of attack."];

    private static string[] SixDegrees { get; } =
    [
        "One rigid body of revolution with water standing at the nozzle end; centre of gravity and inertias follow the water and gas left.",
        "Normal force by parts at the local sideways speed of each (so pitch is damped), body cross flow by strips, roll by strip theory "
            + "with the panel's own slope.",
        "Axial drag goes with the square of the flow's part along the axis. Jet damping is included; slosh is not.",
    ];
}

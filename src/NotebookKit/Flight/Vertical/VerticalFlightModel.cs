using NotebookKit.Propulsion.Firings;
using NotebookKit.Provenance;
using NotebookKit.Quantities.Numbers;

namespace NotebookKit.Flight.Vertical;

/// <summary>What a vertical flight assumes, as result pages print it.</summary>
internal static class VerticalFlightModel
{
    public static readonly Source Newton = new("", "Newton's second law for the vehicle with all it carries; drag ½ ρ v² C_D A", null);

    public static ModelCard Card(VerticalFlight flight)
    {
        var firing = FiringModel.Card(flight.Flow, flight.Charge);
        return new(
            $"Vertical flight; {firing.Name.ToLowerInvariant()}",
            [
                flight.LaunchTube is null
                    ? $"Straight up, free from the moment of release: no rail, wind or tilt. Gravity is {StandardConstants.Gravity} "
                        + "m/s² throughout."
                    : "Straight up, first along the launch tube like a cylinder on a piston, without leak or friction, then free: "
                        + $"no rail, wind or tilt. Gravity is {StandardConstants.Gravity} m/s² throughout.",
                $"Air: {flight.Site.Atmosphere.Name}; the pressure outside the nozzle and the drag are those of the height reached.",
                $"Drag coefficient: {flight.Drag.Name}" + (flight.DragUnderThrust is { } jetOn ? $"; while the jet runs: {jetOn.Name}."
                    : ", with and without jet."),
                "Mass is dry vehicle, water and gas; both leave with the jet, what is left stays aboard.",
                .. firing.Assumptions,
            ],
            firing.ValidRange + " Mach below about 0.8.",
            [Newton, flight.Site.Atmosphere.Source, .. firing.Sources]);
    }
}

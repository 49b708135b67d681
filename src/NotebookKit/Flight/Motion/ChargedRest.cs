using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Flight.Motion;

/// <summary>A vehicle at rest in the air with its charge aboard: time [s], height [m], water [kg] and gauge pressure [Pa].</summary>
internal readonly record struct ChargedRest(double TimeS, double HeightM, double WaterKg, double GaugePa)
{
    public const string Remedy = "Use less water, more pressure, a wider nozzle or less dry mass.";

    /// <summary>What is said of it before the flight.</summary>
    public Finding Hop(double thrustN, double weightN) => Finding.Warning(
        $"this flight is a hop: thrust at release is {thrustN.Newtons().Show()} and the vehicle weighs {weightN.Newtons().Show()}, but thrust falls below weight and the vehicle comes to rest at about {HeightM.Metres().Show()}, {TimeS.Seconds().Show()} after release, with {ChargedLanding.Aboard(WaterKg, GaugePa)} still aboard. The vehicle comes down charged. {Remedy}");

    /// <summary>What is said of it after the flight.</summary>
    public Finding CameDown() => Finding.Error(
        $"the vehicle comes to rest {TimeS.Seconds().Show()} after release, at {HeightM.Metres().Show()}, with {ChargedLanding.Aboard(WaterKg, GaugePa)} still aboard, and comes down charged; this is not a flight. Don't fly it so, and vent a vehicle that comes down so from afar. {Remedy}");

    /// <summary>What is said where the rest leaves before the ground.</summary>
    public Finding TurnsOver() => Finding.Warning(
        $"the vehicle comes to rest {TimeS.Seconds().Show()} after release, at {HeightM.Metres().Show()}, with {ChargedLanding.Aboard(WaterKg, GaugePa)} still aboard: the vehicle turns over while its jet drives it, and nothing beyond that height is computed here. {Remedy}");

    /// <summary>What is said where only gas is left.</summary>
    public Finding StillBlows() => Finding.Warning(
        $"gas still leaves at {ChargedLanding.Aboard(0, GaugePa)} when the vehicle comes to rest at {HeightM.Metres().Show()}, {TimeS.Seconds().Show()} after release: the vehicle may come down under pressure. Stay away until the gas is out; a wider nozzle empties the vehicle sooner.");
}

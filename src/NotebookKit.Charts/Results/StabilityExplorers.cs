using NotebookKit.Charts.Explorers;
using NotebookKit.Charts.Results.Settings;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Results;

/// <summary>Explorers of stability: <c>vehicle.ExploreStability()</c>.</summary>
public static class StabilityExplorers
{
    /// <summary>
    /// Fin span, ballast and water to drag, the margin as the water leaves to watch: the span of the aft-most fins from 0.6 to 1.6 times
    /// their own, ballast in the nose up
    /// to a fifth of the dry mass, water from 5 % to 70 %.
    /// </summary>
    /// <param name="vehicle">The vehicle to start from.</param>
    /// <exception cref="InvalidDesignException">The vehicle can't be computed, or has no fins; carries all findings.</exception>
    public static Explorer ExploreStability(this Vehicle vehicle)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        InvalidDesignException.ThrowIfAny(vehicle.Name, vehicle.Validate());
        if (vehicle.Body.Fins.Count == 0) throw new InvalidDesignException(vehicle.Name,
            [Finding.Error("the body has no fins; there is no span to drag. Add fins.")]);
        var (span, ballastAt) = (StabilitySetting.AftMost(vehicle).Planform.Reach.Millimeters, StabilitySetting.BallastAt(vehicle));
        ExplorerParameter[] parameters =
        [
            new("Fin span", "mm", span * 0.6, span * 1.6, 11, span),
            new("Ballast in the nose", "g", 0, vehicle.MassProperties().Mass.Grams / 5, 5, 0),
            new("Water fraction", "%", 5, 70, 14, Math.Clamp(vehicle.Charge.WaterFraction.Percent, 5, 70)),
        ];
        ExplorerNumber[] numbers = [new("Minimum margin", "calibres"), new("Margin when empty", "calibres"),
            new("Centre of pressure", "mm")];
        return Explorer.Build(
            $"Fins, ballast and water, {vehicle.Name}", new Axis("Water left", "% of the start"), new Axis("Static margin", "calibres"),
                parameters, numbers,
            s => StabilitySetting.Answer(vehicle, s)) with
        {
            Cautions = Cautions.ForFlight,
            Remark = $"Ballast {Digits.Round(ballastAt.Millimeters)} mm aft of the tip; the fins keep their chords, their sweep distance "
                + "and their mass; at low speed.",
        };
    }
}

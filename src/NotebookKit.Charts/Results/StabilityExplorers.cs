using NotebookKit.Charts.Explorers;
using NotebookKit.Flight;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Charts.Results;

/// <summary>Explorers of stability: <c>vehicle.ExploreStability()</c>.</summary>
public static class StabilityExplorers
{
    /// <summary>
    /// Fin span, nose ballast and water to drag, static margin against the water left to watch: the span of the first set of fins from half to twice that
    /// of the vehicle, ballast from none to a fifth of the empty mass, water from none to 70 %.
    /// </summary>
    /// <param name="vehicle">The vehicle to start from.</param>
    /// <exception cref="InvalidDesignException">The vehicle can't be computed, or has no fins.</exception>
    public static Explorer ExploreStability(this Vehicle vehicle)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        InvalidDesignException.ThrowIfAny(vehicle.Name, vehicle.Validate());
        if (vehicle.Body.Fins.Count == 0) throw new InvalidDesignException(vehicle.Name, [Finding.Error($"{vehicle.Name} has no fins to drag; give it a set.")]);
        var (span, mass) = (vehicle.Body.Fins[0].Planform.Reach, vehicle.Balance().Mass);
        ExplorerParameter[] parameters =
        [
            new("Fin span", "mm", span.Millimeters / 2, span.Millimeters * 2, 9, span.Millimeters),
            new("Nose ballast", "g", 0, mass.Grams / 5, 5, 0),
            new("Water fraction", "%", 0, 70, 8, Math.Min(vehicle.Charge.WaterFraction.Percent, 70)),
        ];
        ExplorerNumber[] numbers = [new("Least margin", "calibres"), new("Margin at release", "calibres"), new("Margin empty", "calibres"), new("Centre of pressure", "mm"), new("Mass at release", "g")];
        return Explorer.Build($"Straight or not, {vehicle.Name}", new Axis("Water gone, share of the load", "%"), new Axis("Static margin", "calibres"), parameters, numbers, s => Answer(vehicle, span, s)) with
        {
            Cautions = Cautions.ForFlight,
            Remark = $"Ballast sits three quarters down the nose; fins keep their chords and grow lighter or heavier for nothing. Below {Digits.Round(new StabilityLimits().Least)} calibre the vehicle isn't flown.",
        };
    }

    private static ExplorerState Answer(Vehicle vehicle, Length span, IReadOnlyList<double> setting)
    {
        var body = vehicle.Body with { Fins = [vehicle.Body.Fins[0].WithSpanTimes(setting[0] / span.Millimeters), .. vehicle.Body.Fins.Skip(1)] };
        var parts = setting[1] > 0 ? vehicle.Parts.With(new MassPart("ballast", setting[1].Grams(), body.Parts[0].Length * 0.75)) : vehicle.Parts;
        var trial = vehicle with { Body = body, Parts = parts, Charge = vehicle.Charge with { WaterFraction = setting[2].Percent() } };
        if (trial.Airframe.Validate().FirstOrDefault(f => f.Severity == FindingSeverity.Error) is { } problem) return ExplorerState.Refused(problem.Message);
        var stability = trial.Stability();
        // The last row is the empty vehicle without gas; the rows before it are equal shares of the load, so they mean the same for every load.
        var rows = stability.Along.Count - 1;
        int[] picked = [.. Enumerable.Range(0, 26).Select(i => i * (rows - 1) / 25)];
        return new ExplorerState
        {
            X = [.. picked.Select(i => 100 - stability.Along[i])],
            Y = [.. picked.Select(i => stability.Margin[i])],
            Numbers = [stability.LeastMargin, stability.Margin[0], stability.Margin.Values[^1], stability.CentreOfPressure[0], stability.Mass[0] * 1000],
        };
    }
}

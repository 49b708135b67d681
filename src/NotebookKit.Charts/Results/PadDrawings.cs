using NotebookKit.Charts.Drawings;
using NotebookKit.Flight.Dispersion;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet.Units;

namespace NotebookKit.Charts.Results;

/// <summary>Drawings of the pad and the field: <c>plumbing.Draw()</c>, <c>dispersion.Map(site, standOff)</c>.</summary>
public static class PadDrawings
{
    /// <summary>The fill line with its valves and ratings.</summary>
    /// <param name="plumbing">The line.</param>
    public static Drawing Draw(this PadPlumbing plumbing) => PadDrawing.Draw(plumbing);

    /// <summary>The field from above with the landings.</summary>
    /// <param name="dispersion">The flights.</param>
    /// <param name="site">Where they start.</param>
    /// <param name="standOff">The stand-off; without it the distances are "not shown".</param>
    /// <exception cref="InvalidDesignException">Fewer than two flights landed.</exception>
    public static Drawing Map(this DispersionResult dispersion, LaunchSite site, LaunchStandOff? standOff = null)
    {
        ArgumentNullException.ThrowIfNull(dispersion);
        ArgumentNullException.ThrowIfNull(site);
        if (dispersion.Landings is not { } landings) throw new InvalidDesignException(dispersion.Title, dispersion.Findings);
        var (major, minor) = landings.Axes(90.Percent());
        var at = 10.Metres();
        var lean = 90 - site.Rail.Elevation.Degrees;
        return FieldMapDrawing.Draw(new($"{dispersion.Plan.Vehicle} at {site.Name}: landings",
            [.. Enumerable.Range(0, dispersion.East.Count).Select(i => (dispersion.East[i], dispersion.North[i]))
                .Where(p => double.IsFinite(p.Item1) && double.IsFinite(p.Item2))])
        {
            Field = site.Field is { } field ? FieldOutline.Of(field) : [],
            FieldName = site.Field is not { } of ? "" : of.Radius is { } r ? $"circle of {r.Show(LengthUnit.Meter)} about the pad"
                : $"outline with {of.Corners.Count} corners",
            Ellipse = new(landings.MeanEast.Meters, landings.MeanNorth.Meters, major.Meters, minor.Meters, landings.Bearing.Degrees),
            Rail = lean > 0.05 ? (site.Rail.Towards.Degrees, lean) : null,
            Wind = site.Wind.FromAt(at) is { } from ? (from.Degrees, site.Wind.At(at).Show(SpeedUnit.MeterPerSecond)) : null,
            CrewM = standOff?.Crew.Meters,
            SpectatorsM = standOff?.Spectators.Meters,
            Remark = dispersion.OffField is { } off ? $"off the field {off}" : "",
        });
    }
}

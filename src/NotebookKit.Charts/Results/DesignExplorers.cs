using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using NotebookKit.Charts.Explorers;
using NotebookKit.Charts.Results.Settings;
using NotebookKit.DesignFiles;
using NotebookKit.Provenance;

namespace NotebookKit.Charts.Results;

/// <summary>Explorers of a design of one stage. On a page that lies beside the live page they are answered by the library itself; elsewhere
/// by interpolation, as every explorer.</summary>
public static class DesignExplorers
{
    private static readonly JsonSerializerOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Pressure, water and wind to drag, as <see cref="VehicleExplorers.Explore"/>.</summary>
    /// <param name="design">The design; it gives a site.</param>
    /// <exception cref="InvalidDesignException">The design has two stages, gives no site, or can't be computed.</exception>
    public static Explorer ExploreFlight(this Design design) => On(design, DesignSetting.Flight,
        d => d.Vehicle.Explore(DesignSetting.SiteOf(d)));

    /// <summary>Fin span, ballast and water to drag, as <see cref="StabilityExplorers.ExploreStability"/>.</summary>
    /// <param name="design">The design; it has fins.</param>
    /// <exception cref="InvalidDesignException">The design has two stages, no fins, or can't be computed.</exception>
    public static Explorer ExploreStability(this Design design) => On(design, DesignSetting.Stability, d => d.Vehicle.ExploreStability());

    /// <summary>Water, nozzle and pressure to drag, straight up, as <see cref="FlightExplorers.Explore(VerticalFlight)"/>.</summary>
    /// <param name="design">The design; it gives a site.</param>
    /// <exception cref="InvalidDesignException">The design has two stages, gives no site, or can't be computed.</exception>
    public static Explorer ExploreThrust(this Design design) => On(design, DesignSetting.Thrust, d => DesignSetting.Up(d).Explore());

    /// <summary>Restrictor, supply and water to drag, as <see cref="FillExplorers.Explore"/>.</summary>
    /// <param name="design">The design; its pad gives regulator and restrictor.</param>
    /// <exception cref="InvalidDesignException">The design has two stages, gives no pad, or can't be computed.</exception>
    public static Explorer ExploreFill(this Design design) => On(design, DesignSetting.Fill, d => DesignSetting.FillOf(d).Explore());

    /// <summary>Canopy, wind and height of opening to drag, as <see cref="RecoveryExplorers.Explore"/>; it opens at the apogee.</summary>
    /// <param name="design">The design; it gives site and canopy.</param>
    /// <exception cref="InvalidDesignException">The design has two stages, gives no site or canopy, or can't be computed.</exception>
    public static Explorer ExploreDescent(this Design design) => On(design, DesignSetting.Descent, d => DesignSetting.CanopyOf(d)
        .Explore(d.Stage.Masses.MassProperties().Mass, d.Vehicle.Fly(DesignSetting.SiteOf(d)).Apogee));

    /// <summary>Another sleeve, more or less of the vessel's hoop wrap and water to pick, the apogee against the fill pressure up to the
    /// rating of that wall to watch. No twin of another wall was burst, so that every wall is rated without a test.</summary>
    /// <param name="design">The design; its vessel has sleeves and a hoop wrap, and it gives a site.</param>
    /// <exception cref="InvalidDesignException">The design has two stages, gives no site, no sleeve or no hoop wrap, or can't be
    /// computed.</exception>
    public static Explorer ExploreWall(this Design design) => On(design, DesignSetting.Wall, d =>
    {
        var wall = new WallSetting(d);
        _ = DesignSetting.SiteOf(d);
        return Explorer.Build($"Another wall, {d.Name}", new Axis("Fill pressure", "bar gauge"), new Axis("Apogee", "m"),
            [
                ExplorerParameter.Choice("Sleeve", wall.Sleeves, Math.Max(0, wall.Sleeves.ToList().IndexOf(wall.Own.Name))),
                ExplorerParameter.Choice("Hoop wrap", ["none", "one", "two"], 1),
                new("Water", "%", 15, 60, 7, Math.Clamp(d.Vehicle.Charge.WaterFraction.Percent, 15, 60)),
            ],
            [new("Rated without a test", "bar gauge"), new("Vessel", "g"), new("Highest", "m")], wall.Answer) with
        {
            Cautions = Cautions.ForFlight,
            Remark = "Every sleeve is replaced by the one that is picked, the hoop wrap is laid so often; all else is the design's, "
                + "straight up.",
        };
    });

    private static Explorer On(Design design, string model, Func<Design, Explorer> explore)
    {
        ArgumentNullException.ThrowIfNull(design);
        var explorer = explore(design);
        return IsWholeInText(design, out var text) ? explorer with { Base = new(model, text) } : explorer;
    }

    // Tests of a vessel that was changed for the run would speak for the changed one where the text alone is read.
    private static bool IsWholeInText(Design design, out string text)
    {
        // Remarks and line ends are for people.
        text = JsonNode.Parse(design.ToText(), documentOptions: new() { CommentHandling = JsonCommentHandling.Skip })!.ToJsonString(Plain);
        try
        {
            return Design.Parse(text, design.Name).Rating.WorkingPressure == design.Rating.WorkingPressure;
        }
        catch (InvalidDesignException)
        {
            return false;
        }
    }
}

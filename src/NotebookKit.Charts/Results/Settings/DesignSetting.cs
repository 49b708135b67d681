using NotebookKit.Charts.Explorers;
using NotebookKit.DesignFiles;
using NotebookKit.Provenance;

namespace NotebookKit.Charts.Results.Settings;

/// <summary>An explorer's model over a design of one stage, known by its name: whoever has the design's file can answer a
/// setting.</summary>
internal static class DesignSetting
{
    public const string Flight = "flight", Stability = "stability", Thrust = "thrust", Fill = "fill", Descent = "descent",
        Wall = "wall";

    /// <summary>The model.</summary>
    /// <exception cref="InvalidDesignException">The design has two stages, doesn't give what the model needs, or can't be
    /// computed.</exception>
    public static Func<IReadOnlyList<double>, ExplorerState> Of(string name, Design design)
    {
        var stage = design.Stage;
        switch (name)
        {
            case Flight:
                var (vehicle, site) = (stage.Vehicle, SiteOf(design));
                return s => FlightSetting.Answer(vehicle, site, s);
            case Stability:
                var balanced = stage.Vehicle;
                return s => StabilitySetting.Answer(balanced, s);
            case Thrust:
                var up = Up(design);
                return s => ThrustSetting.Answer(up, s);
            case Fill:
                var fill = FillOf(design);
                return s => FillSetting.Answer(fill, s);
            case Wall:
                return new WallSetting(design).Answer;
            default:
                var (canopy, mass) = (CanopyOf(design), stage.Masses.MassProperties().Mass);
                return s => DescentSetting.Answer(canopy, mass, s);
        }
    }

    /// <summary>The design's vehicle straight up, with the middle of its drag.</summary>
    public static VerticalFlight Up(Design design)
    {
        var vehicle = design.Vehicle;
        return new(vehicle.Charge, vehicle.Nozzle, vehicle.Parts.MassProperties().Mass, vehicle.Body.DragCurves().Middle, SiteOf(design))
        {
            Name = design.Name,
        };
    }

    public static LaunchSite SiteOf(Design design) => design.Site ?? throw Lacks(design, "site");

    public static PadFill FillOf(Design design) => design.Stage.PadFill ?? throw Lacks(design, "pad with regulator and restrictor");

    public static NotebookKit.Recovery.Canopy CanopyOf(Design design) => design.Stage.Canopy ?? throw Lacks(design, "canopy");

    private static InvalidDesignException Lacks(Design design, string what) => new(design.Name,
        [Finding.Error($"the design gives no {what}. Add one to the file.")]);
}

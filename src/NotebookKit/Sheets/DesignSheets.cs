using NotebookKit.Building.Cuts;
using NotebookKit.Building.Resins;
using NotebookKit.Clearance;
using NotebookKit.Clearance.Cards;
using NotebookKit.DesignFiles.Parts;
using NotebookKit.Filling.Fills;
using NotebookKit.Filling.Vents;
using NotebookKit.Flight.Site;
using NotebookKit.Launching.Heating;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Recovery;
using NotebookKit.Vessels.Laying;
using UnitsNet;

namespace NotebookKit.Sheets;

/// <summary>The sheets of one stage as its design's file has it: what can be made, and why the rest can't. Source: none of its own; every
/// sheet names its own.</summary>
public sealed record DesignSheets
{
    private DesignSheets(DesignStage stage) => Stage = stage;

    /// <summary>The stage.</summary>
    public DesignStage Stage { get; }

    /// <summary>The proof sheet; none where the rating is refused.</summary>
    public ProofSheet? Proof { get; private init; }

    /// <summary>The pad sheet; none where the design doesn't say what it is filled with.</summary>
    public PadSheet? Pad { get; private init; }

    /// <summary>How the filled vessel vents; none where the dump valve's passage isn't given.</summary>
    public VentResult? Vent { get; private init; }

    /// <summary>The templates; none where the plies can't be cut.</summary>
    public TemplateSheet? Templates { get; private init; }

    /// <summary>The shopping list; none where the plies can't be cut.</summary>
    public ShoppingSheet? Shopping { get; private init; }

    /// <summary>Why a sheet can't be made, by the sheet's name: "pad sheet".</summary>
    public IReadOnlyDictionary<string, string> Refused { get; private init; } = new Dictionary<string, string>().AsReadOnly();

    /// <summary>Makes the sheets of a stage. Source: as the type.</summary>
    /// <param name="stage">The stage.</param>
    /// <param name="site">Where it flies; none where it isn't given.</param>
    /// <param name="shelf">The stock list; may be empty.</param>
    /// <param name="system">The resin as the cup sees it; without it cups aren't divided.</param>
    /// <param name="standOff">The stand-off of the whole filled vehicle; of this stage alone where none is given.</param>
    public static DesignSheets Of(DesignStage stage, LaunchSite? site, IReadOnlyList<ShelfItem> shelf, ResinSystem? system = null,
        LaunchStandOff? standOff = null)
    {
        ArgumentNullException.ThrowIfNull(stage);
        ArgumentNullException.ThrowIfNull(shelf);
        Dictionary<string, string> refused = new(StringComparer.Ordinal);
        var proof = Try("proof sheet", refused, () => ProofSheet.Of(stage.Proof.Plan(), stage.Vessel));
        var cuts = Try("templates", refused, () => CutList.Of(stage.Vessel.Layup()));
        if (cuts is null) refused["shopping list"] = refused["templates"];
        var vent = Try("vent", [], () => VentOf(stage));
        return new(stage)
        {
            Proof = proof,
            Vent = vent,
            Pad = Try("pad sheet", refused, () => PadOf(stage, site, vent, standOff)),
            Templates = cuts is null ? null : Try("templates", refused, () => TemplateSheet.Of(stage.Name, cuts, stage.Body,
                shelf, stage.Canopy)),
            Shopping = cuts is null ? null : Try("shopping list", refused, () => ShoppingSheet.Of(stage.Name, cuts,
                system is null ? null : ResinPlan.For(system, cuts.Layup).Divide(), Others(stage, shelf), shelf)),
            Refused = refused.AsReadOnly(),
        };
    }

    /// <summary>The fill that a stage's design and its pad make. Source: as <see cref="PadFill"/>.</summary>
    /// <param name="stage">The stage.</param>
    /// <exception cref="InvalidDesignException">The design doesn't say where it flies or what it is filled with, or the fill is
    /// refused.</exception>
    public static PadFill FillOf(DesignStage stage)
    {
        ArgumentNullException.ThrowIfNull(stage);
        if (stage.Pad is not { } pad || pad.Missing.Count > 0)
            throw new InvalidDesignException(stage.Name, [SheetsFindings.PadIsMissing(stage.Name, stage.Pad?.Missing)]);
        InvalidDesignException.ThrowIfAny($"Pad of {stage.Name}", pad.Validate());
        return stage.PadFill!;
    }

    private static PadSheet PadOf(DesignStage stage, LaunchSite? site, VentResult? vent, LaunchStandOff? standOff)
    {
        var fill = FillOf(stage).Run();
        return PadSheet.Of(stage.Name, fill, vent, standOff ?? (site is null ? null : stage.Vehicle.StandOff(site)), stage.Pad,
            sun: SunOf(stage, fill.Fill, vent));
    }

    /// <summary>The filled vessel of a stage waiting in the sun; none where the design doesn't say how. Source: as
    /// <see cref="WaitInSun"/>.</summary>
    /// <param name="stage">The stage.</param>
    /// <param name="fill">Its fill.</param>
    /// <param name="vent">Its vent after an abort; none where it isn't given.</param>
    /// <exception cref="InvalidDesignException">Something is refused; all reasons are in it.</exception>
    public static WaitInSunResult? SunOf(DesignStage stage, PadFill fill, VentResult? vent)
    {
        ArgumentNullException.ThrowIfNull(stage);
        ArgumentNullException.ThrowIfNull(fill);
        if (stage.Sun is not { } sun) return null;
        return new WaitInSun
        {
            Filled = new(fill.Target, fill.Temperature) { Ambient = fill.Ambient, WaterFraction = fill.WaterFraction },
            Chamber = fill.Chamber,
            Sun = new(fill.Temperature, sun.Sunlight, sun.Absorptance, sun.Emittance,
                HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(sun.Film)),
            ShareInSun = sun.ShareInSun, ResinLimit = sun.ResinLimit, Watch = sun.Wait, VentTime = vent?.WorstState,
        }.Run();
    }

    private static VentResult? VentOf(DesignStage stage)
    {
        if (stage.Pad?.Vent is not { } hole) return null;
        var fill = FillOf(stage);
        return new Vent
        {
            Chamber = fill.Chamber, Restrictor = hole, From = fill.Target, WaterFraction = fill.WaterFraction, Port = fill.Port,
            Gas = fill.Gas, Ambient = fill.Ambient, Temperature = fill.Temperature,
        }.Run();
    }

    private static List<ShoppingItem> Others(DesignStage stage, IReadOnlyList<ShelfItem> shelf)
    {
        List<ShoppingItem> items = [];
        foreach (var fins in stage.Body?.Fins ?? [])
            items.Add(new(FinNest.SheetName(fins), $"{fins.Count} fins of {Mm(fins.Planform.RootLength)} × {Mm(fins.Planform.Reach)}")
                { Pieces = FinNest.Of(fins, shelf)?.Sheets ?? 1 });
        if (stage.Canopy is { } canopy) items.Add(ClothOf(canopy, shelf));
        return items;
    }

    // A shelf with canopy cloth is one of a club that sews; otherwise the canopy is bought.
    private static ShoppingItem ClothOf(Canopy canopy, IReadOnlyList<ShelfItem> shelf)
    {
        var (size, area) = ($"canopy of {canopy.NominalDiameter.Show()}", canopy.Count * canopy.NominalArea);
        return shelf.FirstOrDefault(s => s.Is(CanopyCloth)) is { Width: { } width } cloth && width > Length.Zero
            ? new(CanopyCloth, $"{size}: net area over the width of the roll, without seams and offcuts") { Length = area / width,
                Shelf = cloth }
            : new($"canopy, {canopy.NominalDiameter.Show()}", "recovery") { Pieces = canopy.Count };
    }

    private const string CanopyCloth = "canopy cloth";

    private static string Mm(Length length) => $"{Digits.Round(length.Millimeters)} mm";

    private static T? Try<T>(string what, Dictionary<string, string> refused, Func<T?> make) where T : class
    {
        try
        {
            return make();
        }
        catch (Exception error) when (error is InvalidDesignException or OutOfRangeException)
        {
            refused[what] = error.Message;
            return null;
        }
    }
}

using NotebookKit.Charts.Drawings;
using NotebookKit.Charts.Results;
using NotebookKit.Charts.Tests.Results;
using NotebookKit.Clearance;
using NotebookKit.DesignFiles;
using NotebookKit.Flight.Dispersion;
using NotebookKit.Quantities;
using NotebookKit.Sheets;

namespace NotebookKit.Charts.Tests.Drawings;

/// <summary>Every drawing of a design, its ends of every kind among them, as it is shown on a narrow screen.</summary>
internal static class AllDrawings
{
    private static readonly Lazy<IReadOnlyDictionary<string, Drawing>> Made = new(Make);

    public static IReadOnlyDictionary<string, Drawing> All => Made.Value;

    public static Design Read(string name)
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
            if (File.Exists(Path.Combine(at.FullName, "notebooks", name))) return Design.Read(Path.Combine(at.FullName, "notebooks", name));
        throw new InvalidOperationException($"There is no notebooks/{name} above the tests.");
    }

    public static string SvgOf(Drawing drawing) => drawing.Narrow.Length > 0 ? drawing.Narrow : drawing.Svg;

    private static Dictionary<string, Drawing> Make()
    {
        var (curlew, godwit) = (Read("curlew.json"), Read("godwit.json"));
        Dictionary<string, Drawing> all = new(StringComparer.Ordinal)
        {
            ["vehicle"] = curlew.Vehicle.Draw(),
            ["trainer"] = VehicleDrawing.Draw(Vehicles.Trainer()),
            ["long and thin"] = VehicleDrawing.Draw(Vehicles.LongAndThin()),
            ["body alone"] = Curlew.Body.Draw(),
            ["wall"] = curlew.Vessel.Layup().Draw(),
            ["nozzle end"] = curlew.Vessel.DrawNozzleEnd(curlew.Stage.Nozzle!.Throat),
            ["forward end"] = curlew.Vessel.DrawForwardEnd(),
            ["proof"] = curlew.Stage.Proof.Plan().Draw(),
            ["line, nothing said"] = PadPlumbing.Of(DesignSheets.FillOf(curlew.Stage)).Draw(),
            ["line"] = PadPlumbing.Of(DesignSheets.FillOf(curlew.Stage), curlew.Stage.Pad).Draw(),
            ["cut plan"] = Curlew.Nest.Draw(),
            ["calendar"] = Curlew.Calendar.Draw(),
        };
        foreach (var stage in godwit.Stages)
        {
            all[$"nozzle end, {stage.Name}"] = stage.Vessel.DrawNozzleEnd();
            all[$"wall, {stage.Name}"] = stage.Vessel.Layup().Draw();
        }

        foreach (var (name, end) in Ends(curlew)) all[name] = (curlew.Vessel with { NozzleEnd = end }).DrawNozzleEnd();
        var many = curlew.Vehicle.Disperse(curlew.Site!, new Spread(), flights: 60, seed: 3);
        all["field"] = many.Map(curlew.Site!, curlew.Vehicle.StandOff(curlew.Site!));
        all["field, nothing said"] = many.Map(curlew.Site! with { Field = null, Wind = WindProfile.NotGiven });
        all["field, leaning rail"] = many.Map(curlew.Site! with
        {
            Rail = curlew.Site!.Rail with { Elevation = 80.Degrees(), Towards = 270.Degrees() },
            Field = FlyingField.Outline(new(-200.Metres(), -300.Metres()), new(600.Metres(), -250.Metres()),
                new(500.Metres(), 400.Metres())),
        }, curlew.Vehicle.StandOff(curlew.Site!));
        return all;
    }

    private static IEnumerable<(string Name, VesselEnd End)> Ends(Design design)
    {
        var metal = design.Vessel.NozzleEnd.Closure.Material;
        var glue = design.Materials.Adhesive("structural epoxy");
        var plug = new BondedPlug(glue, 30.Millimetres(), BondSurface.TreatedMetal, BondSurface.TreatedMetal);
        var seal = new Seal(SealKind.ORing);
        yield return ("flat, bonded, clamped", new VesselEnd(new FlatClosure(metal, 8.Millimetres()) { Opening = 20.Millimetres() }, plug)
        {
            Fitting = new ClampedFitting(metal, 18.Millimetres(), 1.5.Millimetres(), 10.Millimetres(), 4.Millimetres(), 30.Millimetres()),
            Seal = seal,
        });
        yield return ("cone, screwed, bonded fitting", new VesselEnd(new ConicalClosure(metal, 4.Millimetres(), 20.Degrees())
            { Opening = 20.Millimetres() }, new ThreadedBoss(metal, 60.Millimetres(), 15.Millimetres()))
        {
            Fitting = new BondedFitting(glue, 10.Millimetres(), BondSurface.TreatedMetal, BondSurface.TreatedMetal) { Seal = seal },
            Seal = new Seal(SealKind.Bonded),
        });
        yield return ("dome, discs, shoulder", new VesselEnd(new DomedClosure(metal, 3.Millimetres(), 24.Millimetres())
            { Opening = 16.Millimetres() }, plug, new CarriedSleeve())
        {
            Fitting = new ShoulderedFitting(metal, 4.Millimetres(), 26.Millimetres()) { Seal = seal },
            Discs = new CapDiscs(design.Materials.Cloth("carbon twill 200 g"), 4),
            Seal = new Seal(SealKind.Tape),
        });
        yield return ("dome, opening without a fitting", new VesselEnd(new DomedClosure(metal, 3.Millimetres(), 24.Millimetres())
            { Opening = 16.Millimetres() }, new CarriedSleeve { Neck = 52.Millimetres(), Tail = 30.Millimetres() }));
    }
}

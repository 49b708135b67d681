using ArchUnitNET.Domain;
using ArchUnitNET.Loader;

namespace NotebookKit.Tests.House;

/// <summary>Inside a folder of the library dependencies point one way, too: each inner folder sees only those listed above it.</summary>
public class FloorTests
{
    // Names of the tests are wanted before any test runs: the library is read by the first test that looks at it.
    private static readonly Lazy<Architecture> Read = new(() => new ArchLoader().LoadAssemblies(Repository.Library).Build());

    // Who may see whom, itself apart, in standing order. The root of a folder is written as the folder's bare name.
    private static readonly Dictionary<string, string[]> MaySee = new()
    {
        ["Materials.Solids"] = [],
        ["Materials.Fluids"] = [],
        ["Materials.Files"] = ["Solids"],

        ["Vessels.Limits"] = [],
        ["Vessels"] = [],
        ["Vessels.Allowables"] = [""],
        ["Vessels.Laminates"] = ["", "Limits"],
        ["Vessels.Shells"] = ["", "Laminates"],
        ["Vessels.Design"] = ["", "Limits"],
        ["Vessels.Laying"] = ["", "Design"],
        ["Vessels.Ends"] = ["", "Design", "Shells"],
        ["Vessels.Bursting"] = ["", "Design", "Laminates", "Shells", "Ends", "Laying"],
        ["Vessels.Built"] = ["", "Limits", "Design", "Laying", "Bursting"],
        ["Vessels.Testing"] = ["", "Design", "Ends", "Laying", "Bursting"],
        ["Vessels.Uncertainty"] = ["", "Allowables", "Design", "Laminates", "Ends", "Laying", "Bursting", "Testing"],
        ["Vessels.Ratings"] = ["", "Design", "Laying", "Bursting", "Testing", "Uncertainty"],
        ["Vessels.Search"] = ["", "Design", "Laying", "Bursting", "Ratings"],

        ["Filling.Restrictors"] = [],
        ["Filling.Balances"] = [],
        ["Filling.Supply"] = ["Balances"],
        ["Filling.Vents"] = ["Restrictors", "Balances"],
        ["Filling.Fills"] = ["Restrictors", "Balances", "Supply", "Vents"],
        ["Filling.Networks"] = ["Restrictors", "Balances", "Supply"],
        ["Filling.Reliefs"] = ["Restrictors", "Balances"],
        ["Filling.ByHand"] = ["Restrictors", "Balances", "Supply", "Fills", "Networks"],
        ["Filling.Measured"] = ["Restrictors", "Balances", "Fills"],

        ["Propulsion.Charges"] = [],
        ["Propulsion.Flow"] = ["Charges"],
        ["Propulsion.ClosedForms"] = ["Flow"],
        ["Propulsion.Phases"] = ["Charges", "Flow"],
        ["Propulsion.Firings"] = ["Charges", "Flow", "Phases"],

        ["Aerodynamics.Airflow"] = [],
        ["Aerodynamics.Fins"] = ["Airflow"],
        ["Aerodynamics.Bodies"] = ["Airflow", "Fins"],
        ["Aerodynamics.NormalForces"] = ["Airflow", "Fins", "Bodies"],
        ["Aerodynamics.Drag"] = ["Airflow", "Fins", "Bodies"],
        ["Aerodynamics.FinStructures"] = ["Airflow", "Fins", "Bodies", "NormalForces"],

        ["Flight.Site"] = [],
        ["Flight.Drive"] = [],
        ["Flight.RigidBody"] = ["Site"],
        ["Flight.Design"] = ["Site"],
        ["Flight.Stability"] = ["Site", "Design"],
        ["Flight.Motion"] = ["Site", "Drive", "RigidBody", "Design"],
        ["Flight.Vertical"] = ["Site", "Design", "Motion"],
        ["Flight.Flights"] = ["Site", "Drive", "RigidBody", "Design", "Stability", "Motion", "Vertical"],
        ["Flight.Staging"] = ["Site", "Drive", "RigidBody", "Design", "Stability", "Motion", "Vertical", "Flights"],
        ["Flight.Search"] = ["Site", "Drive", "RigidBody", "Design", "Stability", "Motion", "Vertical", "Flights", "Staging"],
        ["Flight.Dispersion"] = ["Site", "Drive", "RigidBody", "Design", "Stability", "Motion", "Vertical", "Flights", "Staging"],

        ["DesignFiles.Trees"] = [],
        ["DesignFiles.Shapes"] = ["Trees"],
        ["DesignFiles.Parts"] = [],
        ["DesignFiles.Keys"] = ["Trees", "Shapes", "Parts"],
        ["DesignFiles.Disk"] = ["Trees", "Shapes"],
        ["DesignFiles.Changes"] = ["Trees", "Shapes"],
        ["DesignFiles"] = ["Trees", "Shapes", "Parts", "Keys", "Disk", "Changes"],

        ["Clearance.Service"] = [],
        ["Clearance.Learned"] = [],
        ["Clearance.Cards"] = ["Service"],
        ["Clearance.Designs"] = ["Cards"],
        ["Clearance"] = ["Service", "Learned", "Cards", "Designs"],

        ["Numerics.Bits"] = [],
        ["Numerics.Disks"] = [],
        ["Numerics.Functions"] = [],
        ["Launching.Heating"] = [],
        ["Launching"] = [],

        ["Numerics"] = ["Bits", "Disks"],
        ["Numerics.Fits"] = [""],
        ["Numerics.Ode"] = [""],
        ["Numerics.Space"] = [],

        ["Building.Calendars"] = [],
        ["Building.Cuts"] = [],
        ["Building.Nests"] = [],
        ["Building.Resins"] = [],

        ["Life.Risk"] = [],
        ["Life.Retests"] = [],
        ["Life.Weather"] = [],
        ["Life.Damage"] = [],

        ["Quantities.Numbers"] = [],
        ["Quantities"] = ["Numbers"],
        ["Quantities.Columns"] = [""],
        ["Quantities.Texts"] = [""],

        ["Record.Givens"] = [],
        ["Record"] = ["Givens"],

        ["Evidence"] = [],
        ["Evidence.FlightFits"] = [""],

        ["Proofing.Blast"] = [],
        ["Proofing.Plans"] = ["Blast"],
        ["Proofing.Records"] = ["Plans"],
    };

    private static Architecture Code => Read.Value;

    private static readonly HashSet<string> Folders = [.. MaySee.Keys.Select(FolderOf)];

    public static TheoryData<string> Floors => [.. MaySee.Keys];

    [Theory]
    [MemberData(nameof(Floors))]
    public void A_floor_sees_only_the_floors_below_it(string floor)
    {
        var own = Code.Types.Where(t => FloorOf(t) == floor).ToList();
        Assert.NotEmpty(own);
        var allowed = MaySee[floor].Select(inner => inner.Length > 0 ? $"{FolderOf(floor)}.{inner}" : FolderOf(floor)).ToHashSet();
        var wrong =
            from type in own
            from dependency in type.Dependencies
            where dependency.Target is not GenericParameter
            let seen = FloorOf(dependency.Target)
            where seen is not null && seen != floor && FolderOf(seen) == FolderOf(floor) && !allowed.Contains(seen)
            select $"{type.FullName} -> {dependency.Target.FullName}";

        Violations.None(wrong.Distinct());
    }

    [Fact]
    public void No_two_floors_see_each_other()
    {
        var standing = new List<string>();
        foreach (var (floor, seen) in MaySee)
        {
            Assert.All(seen, inner => Assert.Contains(inner.Length > 0 ? $"{FolderOf(floor)}.{inner}" : FolderOf(floor), standing));
            standing.Add(floor);
        }
    }

    [Fact]
    public void Every_type_of_these_folders_stands_on_a_known_floor() =>
        Violations.None(Repository.Library.GetTypes()
            .Where(t => t.Namespace is { } name && name.StartsWith("NotebookKit.", StringComparison.Ordinal)
                && Folders.Contains(name.Split('.')[1]))
            .Where(t => !LiesBelow(t.Namespace!.Split('.'), t.Name))
            .Select(t => string.Join('.', t.Namespace!.Split('.').Skip(1).Take(2)))
            .Distinct().Except(MaySee.Keys));

    [Fact]
    public void Every_folder_with_inner_folders_is_cut_into_floors() =>
        Violations.None(Repository.Library.GetTypes()
            .Select(t => (t.Namespace ?? "").Split('.'))
            .Where(names => names.Length > 2 && names[0] == "NotebookKit")
            .Select(names => names[1])
            .Distinct().Except(Folders));

    // What a folder's findings say and which publications it rests on bears the folder's name and lies below all floors, in Sentences and
    // Sources: every floor may see them, and they see none.
    [Fact]
    public void Sentences_and_sources_see_no_floor_of_their_folder()
    {
        var below = Code.Types.Where(t => LiesBelow(NamesOf(t), t.Name)).ToList();
        Assert.Contains(below, t => IsOf(t.Name, "Findings"));
        Assert.Contains(below, t => !IsOf(t.Name, "Findings"));
        Violations.None(
            from type in below
            from dependency in type.Dependencies
            let names = NamesOf(dependency.Target)
            where dependency.Target is not GenericParameter && dependency.Target.FullName != type.FullName
            where names.Length > 1 && names[0] == "NotebookKit" && names[1] is not ("Quantities" or "Provenance")
            select $"{type.FullName} -> {dependency.Target.FullName}");
    }

    // A test is found where its subject lies; what is shared by the tests of a folder lies at its root.
    [Fact]
    public void Folders_of_tests_are_named_after_folders_of_the_library() =>
        Violations.None(typeof(FloorTests).Assembly.GetTypes()
            .Where(t => t.Namespace is { } name && name.StartsWith("NotebookKit.Tests.", StringComparison.Ordinal))
            .Select(t => string.Join('.', t.Namespace!.Split('.').Skip(2)))
            .Where(name => name.Split('.')[0] is not ("House" or "Published"))
            .Distinct()
            .Except(Repository.Library.GetTypes().Where(t => t.Namespace is not null).SelectMany(FloorsOver)));

    private static IEnumerable<string> FloorsOver(System.Type type)
    {
        var names = type.Namespace!.Split('.').Skip(1).ToArray();
        return Enumerable.Range(1, names.Length).Select(n => string.Join('.', names.Take(n)));
    }

    private static string FolderOf(string floor) => floor.Split('.')[0];

    private static string[] NamesOf(IType type) => (type.Namespace?.FullName ?? "").Split('.');

    private static bool LiesBelow(string[] names, string type) =>
        names.Length == 2 && names[0] == "NotebookKit"
        && (type == $"{names[1]}Findings" || IsOf(type, "Sources") || IsOf(type, "Literature"));

    private static bool IsOf(string type, string kind) => type.EndsWith(kind, StringComparison.Ordinal);

    private static string? FloorOf(IType type)
    {
        var names = NamesOf(type);
        if (LiesBelow(names, type.Name)) return null;
        return names.Length > 1 && names[0] == "NotebookKit" && Folders.Contains(names[1]) ? string.Join('.', names.Skip(1).Take(2)) : null;
    }
}

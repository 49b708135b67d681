using NotebookKit.Clearance.Service;
using NotebookKit.DesignFiles;
using NotebookKit.Provenance;

namespace NotebookKit.Logs;

/// <summary>A club's folder as one thing: the design with its tests, the vessels' service records, the logs, the shelf.</summary>
/// <remarks>
/// <c>design.json</c>; <c>tests/*.json</c>, one test a file; <c>vessels/*.service.jsonl</c>; <c>logs/*.csv</c>; <c>stock.csv</c>. What
/// isn't there is left out; what lies there and is none of these is named.
/// </remarks>
public sealed record ClubFolder
{
    private const string DesignName = "design.json", StockName = "stock.csv", Mapping = ".columns.json", Service = ".service.jsonl";

    private ClubFolder(string folder, Design design) => (Folder, Design) = (folder, design);

    /// <summary>Path of the folder.</summary>
    public string Folder { get; }

    /// <summary>The design, with the tests of the folder in its evidence.</summary>
    public Design Design { get; init; }

    /// <summary>Names of the files of tests, in order.</summary>
    public IReadOnlyList<string> Tests { get; private init; } = [];

    /// <summary>Service records, by file name.</summary>
    public IReadOnlyList<ServiceRecord> Vessels { get; private init; } = [];

    /// <summary>Files of the service records, in the same order.</summary>
    public IReadOnlyList<string> VesselFiles { get; private init; } = [];

    /// <summary>Logs, by file name.</summary>
    public IReadOnlyList<ClubLog> Logs { get; private init; } = [];

    /// <summary>What lies on the shelf; none where there is no list.</summary>
    public StockList? Stock { get; private init; }

    /// <summary>Files that nothing here reads, by their path in the folder.</summary>
    public IReadOnlyList<string> Unused { get; private init; } = [];

    /// <summary>Reads a folder.</summary>
    /// <param name="folder">Its path.</param>
    /// <exception cref="DesignFiles.Trees.DesignFileException">The design or a test can't be read; says where and what.</exception>
    /// <exception cref="ServiceFileException">A service record can't be opened.</exception>
    /// <exception cref="LogFormatException">The stock list can't be read; says where and what.</exception>
    public static ClubFolder Read(string folder)
    {
        ArgumentException.ThrowIfNullOrEmpty(folder);
        var design = Design.Read(Path.Combine(folder, DesignName)).WithTests(Path.Combine(folder, "tests"));
        string[] tests = design.Stages.Count == 1 ? Files(folder, "tests", ".json")
            : [.. Files(folder, "tests/booster", ".json"), .. Files(folder, "tests/sustainer", ".json")];
        string[] vessels = Files(folder, "vessels", Service), logs = Files(folder, "logs", ".csv");
        var stock = Path.Combine(folder, StockName);
        HashSet<string> read = [DesignName, StockName, "design.schema.json", "README.md", .. tests, .. vessels, .. logs];
        return new(folder, design)
        {
            Tests = tests,
            VesselFiles = vessels,
            Vessels = [.. vessels.Select(v => ServiceFile.Read(Path.Combine(folder, v)))],
            Logs = [.. logs.Select(l => ClubLog.Of(Path.Combine(folder, l)))],
            Stock = File.Exists(stock) ? StockList.Read(stock) : null,
            Unused = [.. All(folder).Where(f => !read.Contains(f) && !f.EndsWith(".ipynb", StringComparison.Ordinal)
                && !(f.EndsWith(Mapping, StringComparison.Ordinal) && read.Contains(f[..^Mapping.Length])))],
        };
    }

    /// <summary>The service record of a vessel.</summary>
    /// <param name="serial">Its serial: "R-1".</param>
    /// <exception cref="InvalidDesignException">The folder has no record of it; names those that it has.</exception>
    public ServiceRecord Vessel(string serial)
    {
        ArgumentNullException.ThrowIfNull(serial);
        return Vessels.FirstOrDefault(v => string.Equals(v.Serial, serial.Trim(), StringComparison.OrdinalIgnoreCase))
            ?? throw new InvalidDesignException(Design.Name, [Finding.Error($"the folder has no service record of \"{serial}\". "
                + (Vessels.Count == 0 ? "Begin one in its folder vessels." : $"It has those of {string.Join(", ",
                Vessels.Select(v => v.Serial))}."))]);
    }

    /// <summary>Holds the design against its requirements, and says what the vessels' service records, the tests and the logs of the
    /// folder say. Source: see the result's model card.</summary>
    /// <param name="on">Day it is asked for.</param>
    /// <param name="limits">The limits of a vessel's life; the club's unless given.</param>
    public ClubCheck Check(DateOnly on, LifeLimits? limits = null) => new(this, on, limits ?? LifeLimits.Club);

    private static string[] Files(string folder, string below, string ending)
    {
        var path = Path.Combine(folder, below);
        return Directory.Exists(path) ? [.. Directory.GetFiles(path).Select(f => $"{below}/{Path.GetFileName(f)}")
            .Where(f => f.EndsWith(ending, StringComparison.OrdinalIgnoreCase)).Order(StringComparer.Ordinal)] : [];
    }

    // Hidden files and folders are nobody's concern here; pages of a run are made anew.
    private static IEnumerable<string> All(string folder) => Directory.EnumerateFiles(folder, "*", new EnumerationOptions
    {
        RecurseSubdirectories = true, MaxRecursionDepth = 3, AttributesToSkip = FileAttributes.Hidden | FileAttributes.System,
        IgnoreInaccessible = true,
    }).Take(1000).Select(f => Path.GetRelativePath(folder, f).Replace('\\', '/'))
        .Where(f => !f.StartsWith("out/", StringComparison.Ordinal)).Order(StringComparer.Ordinal);
}

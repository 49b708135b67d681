using System.Text;
using System.Text.Json;
using NotebookKit.DesignFiles.Changes;
using NotebookKit.DesignFiles.Disk;
using NotebookKit.DesignFiles.Keys;
using NotebookKit.DesignFiles.Parts;
using NotebookKit.DesignFiles.Shapes;
using NotebookKit.DesignFiles.Trees;
using NotebookKit.Flight.Design;
using NotebookKit.Flight.Site;
using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;
using NotebookKit.Record;
using NotebookKit.Record.Givens;
using NotebookKit.Vessels.Design;
using NotebookKit.Vessels.Ratings;
using NotebookKit.Vessels.Testing;

namespace NotebookKit.DesignFiles;

/// <summary>A design as its file has it: one stage or two, the site, what is required and what was decided. Every value of the file may be
/// changed by its path or its plain name; the text keeps values as they were written, and remarks.</summary>
/// <remarks>Source: none of its own; what is computed names its own.</remarks>
public sealed class Design : IEquatable<Design>
{
    private static readonly string[] StageNames = ["booster", "sustainer"];

    private readonly string _file;
    private readonly TreeNode _tree;
    private readonly TreeNode _asRead;
    private readonly KeptParts _parts;
    private readonly IReadOnlyList<DesignGiven> _read;
    private readonly IReadOnlySet<string> _changed;
    private readonly DesignContent _content;
    private readonly Lazy<IReadOnlyList<DesignGiven>> _givens;

    private Design(string file, TreeNode tree, IReadOnlySet<string> changed, TreeNode? asRead = null, Design? before = null,
        IReadOnlySet<string>? ratedAnew = null, bool isOrdered = false)
    {
        // Another value of a key that was there leaves the order as it was.
        _tree = isOrdered ? tree : DesignKeys.All.Order(tree);
        (_file, _changed, _asRead) = (file, changed, asRead ?? _tree);
        if (tree is TreeNode.Members members && members.Find("version") is TreeNode.Literal { Kind: JsonTokenType.Number } version
            && int.TryParse(version.Value, out var number) && number > DesignKeys.Version)
            throw new DesignFileException(file, version.At, DesignFilesFindings.NewerVersion(number, DesignKeys.Version));
        var run = new Reading(file, _tree, _asRead, before?._parts);
        var right = DesignKeys.All.TryRead(_tree, new(run, "", "the design", ""), out _content!);
        _parts = run.Finish();
        if (!right) throw new DesignFileException(file, tree.At, "the design can't be read.");
        _read = run.Givens;
        _givens = new(() => PlainNames.Named(_read), LazyThreadSafetyMode.PublicationOnly);
        Stages = [.. _content.Stages.Select((s, i) => new DesignStage(s.Name, s.Stage, _content.Site, ReferenceEquals(_tree, _asRead),
            before?.Stages.ElementAtOrDefault(i), ratedAnew?.Contains(StageNames[i]) == false))];
    }

    /// <summary>Version of the format that is written; files of a higher one are refused.</summary>
    public static int FormatVersion => DesignKeys.Version;

    /// <summary>What it is called.</summary>
    public string Name => _content.Name;

    /// <summary>What it is, for people; empty where it isn't given.</summary>
    public string About => _content.About;

    /// <summary>The library with the design's own materials.</summary>
    public MaterialLibrary Materials => _content.Materials;

    /// <summary>Its stages, the lowest first.</summary>
    public IReadOnlyList<DesignStage> Stages { get; }

    /// <summary>Where it flies; none where it isn't given.</summary>
    public LaunchSite? Site => _content.Site;

    /// <summary>How its landings scatter; none where it isn't given.</summary>
    public DesignScatter? Scatter => _content.Scatter;

    /// <summary>What must hold.</summary>
    public IReadOnlyList<DesignRequirement> Requirements => _content.Requirements;

    /// <summary>What was decided.</summary>
    public IReadOnlyList<DesignDecision> Decisions => _content.Decisions;

    /// <summary>Every single value: stated, default, or not given.</summary>
    public IReadOnlyList<DesignGiven> Givens => _givens.Value;

    /// <summary>Whether a value was changed since the file was read.</summary>
    internal bool IsChanged => _changed.Count > 0;

    /// <summary>The same without their plain names, which take each given to be held against all others.</summary>
    internal IReadOnlyList<DesignGiven> UnnamedGivens => _read;

    /// <summary>The defaults that stand because the file leaves them out.</summary>
    public IReadOnlyList<DesignGiven> Defaults => [.. Givens.Where(g => g.State == GivenState.Default)];

    /// <summary>The stage of a design of one stage.</summary>
    /// <exception cref="InvalidDesignException">The design has two stages.</exception>
    public DesignStage Stage => Stages.Count == 1 ? Stages[0]
        : throw new InvalidDesignException(Name, [Finding.Error(DesignFilesFindings.HasTwoStages(Name))]);

    /// <summary>The vessel of a design of one stage.</summary>
    /// <exception cref="InvalidDesignException">The design has two stages.</exception>
    public PressureVessel Vessel => Stage.Vessel;

    /// <summary>What tests have shown of the vessel of a design of one stage.</summary>
    /// <exception cref="InvalidDesignException">The design has two stages.</exception>
    public VesselEvidence Evidence => Stage.Evidence;

    /// <summary>The rating of a design of one stage, on the tests of its file.</summary>
    /// <exception cref="InvalidDesignException">The design has two stages, or can't be computed.</exception>
    public Rating Rating => Stage.Rating;

    /// <summary>The vehicle of a design of one stage, ready to fly.</summary>
    /// <exception cref="InvalidDesignException">The design has two stages, something is missing, or the rating is refused.</exception>
    public Vehicle Vehicle => Stage.Vehicle;

    /// <summary>The vehicle of a design of two stages, ready to fly.</summary>
    /// <exception cref="InvalidDesignException">The design has one stage, something is missing, or a rating is refused.</exception>
    public TwoStageVehicle TwoStageVehicle
    {
        get
        {
            if (Stages.Count != 2) throw new InvalidDesignException(Name, [Finding.Error(DesignFilesFindings.HasOneStage(Name))]);
            var whole = new TwoStageVehicle(Name, Stages[0].Vehicle, Stages[1].Vehicle);
            return _content.Separation is { } separation ? whole with { Separation = separation } : whole;
        }
    }

    /// <summary>Reads a design from its file.</summary>
    /// <param name="path">Path of the file.</param>
    /// <exception cref="DesignFileException">There is no such file, or it isn't a design; says what is wrong, with line and
    /// column.</exception>
    public static Design Read(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        return new(FileNameOf(path), TreeReader.Parse(FileNameOf(path), DesignFile.Bytes(path)), new HashSet<string>());
    }

    /// <summary>Reads a design from a text.</summary>
    /// <param name="text">Text as a file has it.</param>
    /// <param name="name">What the text is called in messages.</param>
    /// <exception cref="DesignFileException">The text isn't a design; says what is wrong, with line and column.</exception>
    public static Design Parse(string text, string name = "design")
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(name);
        return new(name, TreeReader.Parse(name, Encoding.UTF8.GetBytes(text)), new HashSet<string>());
    }

    /// <summary>The design as its file has it: keys in their standing order, a value a line.</summary>
    public string ToText() => TreeWriter.Write(_tree);

    /// <summary>Writes the design to a file, whole or not at all.</summary>
    /// <param name="path">Path of the file; what is there is replaced.</param>
    /// <exception cref="DesignFileException">The file can't be written.</exception>
    public void Write(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        DesignFile.Replace(path, ToText());
    }

    /// <summary>Whether a name means a value of the design, or a part of it that may be changed.</summary>
    /// <param name="name">Path or plain name.</param>
    /// <exception cref="DesignFileException">The name means several values.</exception>
    public bool Has(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return DesignChange.Find(_file, _tree, _read, name) is not null;
    }

    /// <summary>The path that a change by a name writes to.</summary>
    internal string PathOf(string name, string text) => DesignChange.Of(_file, _tree, _read, name, text).Path;

    private bool Means(string name)
    {
        try
        {
            return Has(name);
        }
        catch (DesignFileException)
        {
            return false;
        }
    }

    /// <summary>Whether something stands at a path of the file: a value, an object, a list.</summary>
    /// <param name="path">Its path: "evidence.tests.2".</param>
    public bool HasPart(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        return TreePath.Find(_tree, path) is not null;
    }

    /// <summary>The same design with another value.</summary>
    /// <param name="name">Path or plain name: "vessel.plies.1", "fill pressure".</param>
    /// <param name="text">Value with its unit, the name of a material, or JSON of an object or list.</param>
    /// <exception cref="DesignFileException">There is no such value, there are several, or it can't be that.</exception>
    public Design With(string name, string text)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(text);
        var (tree, path) = DesignChange.Of(_file, _tree, _read, name, text);
        try
        {
            return new(_file, tree, new HashSet<string>(_changed) { path }, _asRead, this, DesignChange.RatedAnew(_tree, path, StageNames),
                TreePath.Find(_tree, path) is not null && text.AsSpan().TrimStart() is not ['{' or '[', ..]);
        }
        catch (DesignFileException wrong)
        {
            throw DesignChange.Refused(_file, path, name, text, wrong);
        }
    }

    /// <summary>The same design with the values that a run overrides; those that aren't the design's, or mean several of its values, are
    /// left to others.</summary>
    /// <param name="overrides">The overrides: a notebook passes on its <c>session.Givens</c>.</param>
    /// <exception cref="DesignFileException">A value can't be what a name means.</exception>
    public Design With(GivenOverrides overrides)
    {
        ArgumentNullException.ThrowIfNull(overrides);
        var design = this;
        foreach (var name in overrides.Names)
        {
            if (!design.Means(name)) continue;
            design = design.With(name, overrides.TextOf(name)!);
            overrides.Take(name);
        }

        return design;
    }

    /// <summary>The same design with the tests of a folder added to its evidence: one file a test, as an item of "tests" stands in the
    /// design's file, in the order of the files' names. Tests of a design of two stages lie in the folders "booster" and "sustainer" in
    /// it.</summary>
    /// <param name="folder">Path of the folder; one that isn't there adds nothing.</param>
    /// <exception cref="DesignFileException">A file isn't a test; names the file, with line and column.</exception>
    public Design WithTests(string folder)
    {
        ArgumentNullException.ThrowIfNull(folder);
        List<(string File, string Evidence, TreeNode Test)> tests = [.. (Stages.Count == 1 ? [(Path: folder, Evidence: "evidence")]
            : StageNames.Select(s => (Path: Path.Combine(folder, s), Evidence: $"stages.{s}.evidence"))).SelectMany(p => DesignFile
            .JsonIn(p.Path).Select(f => (FileNameOf(f), p.Evidence, TreeReader.Parse(FileNameOf(f), DesignFile.Bytes(f), "test"))))];
        if (tests.Count == 0) return this;
        var tree = tests.Aggregate(_tree, (whole, t) => WithTest(whole, t.Test, t.Evidence));
        try
        {
            return new(_file, tree, _changed, _asRead);
        }
        catch (DesignFileException)
        {
            // One after the other: what was right before is right still, so that every mistake is the test's.
            _ = tests.Aggregate(_tree, (whole, t) =>
            {
                var next = WithTest(whole, t.Test, t.Evidence);
                _ = new Design(t.File, next, _changed, _asRead);
                return next;
            });
            throw;
        }
    }

    private static TreeNode WithTest(TreeNode whole, TreeNode test, string evidence)
    {
        var count = TreePath.Find(whole, $"{evidence}.tests") is TreeNode.Items tests ? tests.All.Count : 0;
        return (TreePath.Find(whole, evidence) is null
            ? TreePath.With(whole, evidence, new TreeNode.Members(default, [new("tests", default, new TreeNode.Items(default, [test]))]))
            : TreePath.With(whole, $"{evidence}.tests.{(count + 1).ToString(System.Globalization.CultureInfo.InvariantCulture)}", test))!;
    }

    /// <summary>The same design without a value that may be left out, or without an item of a list.</summary>
    /// <param name="path">Its path: "evidence.tests.2".</param>
    /// <exception cref="DesignFileException">There is no such value, or it must be there.</exception>
    public Design Without(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        return new(_file, TreePath.Without(_tree, path) ?? throw DesignChange.NoSuchValue(_file, _read, path),
            new HashSet<string>(_changed) { path }, _asRead);
    }

    /// <summary>States the file's values in a record, with unit, range and reason: those that the file gives a reason for and those that
    /// were changed, or every one.</summary>
    /// <param name="record">The record.</param>
    /// <param name="all">Whether values without a reason are stated too.</param>
    public void State(DesignRecordBuilder record, bool all = false)
    {
        ArgumentNullException.ThrowIfNull(record);
        // A record states requirements itself.
        foreach (var given in Givens.Where(g => g.State == GivenState.Stated && g.Path != "version"
            && !g.Path.StartsWith("requirements.", StringComparison.Ordinal) && (_changed.Contains(g.Path)
            || (g.Kind is not ("name" or "text" or "word") && (all || g.HasReason)))))
            record.Put(new Given(given.Name, given.Value, given.Range, given.Why, _changed.Contains(given.Path)));
    }

    /// <summary>All that is wrong, or worth knowing, before anything is computed.</summary>
    public IReadOnlyList<Finding> Validate() =>
    [
        .. Stages.SelectMany(s => s.FindVessel().Concat(s.Rules.Validate()).Concat(s.Body?.Validate() ?? []))
            .Concat(Site?.Validate() ?? []).Distinct(),
    ];

    /// <summary>Whether two designs have the same text.</summary>
    /// <param name="other">The other design.</param>
    public bool Equals(Design? other) => other is not null && ToText() == other.ToText();

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Design);

    /// <inheritdoc/>
    public override int GetHashCode() => ToText().GetHashCode(StringComparison.Ordinal);

    /// <summary>For example "Curlew, a design of one stage".</summary>
    public override string ToString() => $"{Name}, a design of {(Stages.Count == 1 ? "one stage" : "two stages")}";

    private static string FileNameOf(string path) => Path.GetFileName(path) is { Length: > 0 } name ? name : path;
}

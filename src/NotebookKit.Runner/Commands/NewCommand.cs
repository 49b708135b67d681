using System.CommandLine;
using System.Text.RegularExpressions;
using NotebookKit.DesignFiles;
using NotebookKit.DesignFiles.Trees;
using NotebookKit.Numerics;
using NotebookKit.Numerics.Disks;
using NotebookKit.Runner.Notebooks;
using NotebookKit.Runner.Running;

namespace NotebookKit.Runner.Commands;

/// <summary>The command that begins a club's own folder: a design to edit, places for tests, logs and vessels, a notebook over all of
/// it.</summary>
internal static partial class NewCommand
{
    private const int LongestName = 60;
    private const string TakenOver = "Range of the design that this one was begun from; where it doesn't fit your vehicle, write "
        + "another range and why.";

    /// <summary>Its description for the command line.</summary>
    public static Command Create()
    {
        var name = new Argument<string>("name") { Description = "What the vehicle is called: \"Our rocket\"." };
        var from = new Option<string?>("--from") { Description = "Design to begin with: curlew, godwit, or a file; curlew if not given." };
        var stages = new Option<int>("--stages") { Description = "1 or 2; two begin with godwit.", DefaultValueFactory = _ => 1 };
        stages.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<int>() is < 1 or > 2) result.AddError("--stages must be 1 or 2.");
        });
        var place = new Option<string?>("--in") { Description = "Folder to make the new folder in; the current one if not given." };
        var command = new Command("new", "Makes a folder for a vehicle of your own.") { name, from, stages, place };
        command.SetAction(parsed => DesignRequest.Sensibly(() => Make(parsed.GetRequiredValue(name),
            parsed.GetValue(from) ?? (parsed.GetValue(stages) == 2 ? "godwit" : "curlew"), parsed.GetValue(place) ?? ".")));
        return command;
    }

    private static int Make(string name, string from, string place)
    {
        var folder = Path.Combine(place, FolderOf(name));
        if (Directory.Exists(folder) || File.Exists(folder))
            throw new RequestException($"{folder} is there already. Choose another name, or remove the folder first.");
        var design = OwnOf(Design.Read(FileOf(from)), name);
        // Whole or not at all: a half folder would be in the way of the next try.
        var (disk, part) = (WorkRun.Current.Disk, $"{folder}.{Guid.NewGuid():N}.part");
        try
        {
            Fill(part, design, name);
            disk.MoveFolder(part, folder);
        }
        catch (Exception error) when (Disk.IsFault(error) || error is DesignFileException)
        {
            throw new RequestException($"{folder} can't be made ({RunFiles.Words(error)}). Make room, look at your rights there, or choose "
                + $"another place with --in.{(disk.TryDeleteFolder(part) ? "" : $" What lies at {part} can't be deleted now; delete it "
                + "later.")}");
        }

        Console.Out.WriteLine($"{folder} is ready: edit {DesignRequest.InFolder}, then: check {folder}");
        return ExitCodes.Success;
    }

    private static void Fill(string folder, Design design, string name)
    {
        foreach (var below in new[] { "vessels", "tests", "logs" }) WorkRun.Current.Disk.MakeFolder(Path.Combine(folder, below));
        design.Write(Path.Combine(folder, DesignRequest.InFolder));
        AtomicFile.Write(Path.Combine(folder, DesignSchema.FileName), DesignSchema.Text);
        AtomicFile.Write(Path.Combine(folder, DesignSchema.DayFileName), DesignSchema.DayText);
        AtomicFile.Write(Path.Combine(folder, "stock.csv"), "# what lies on your shelf; a cell is empty where it doesn't apply\n"
            + "item [text],kind [text],length [m],width [mm],mass [g],pot life [min],hardener [%],pieces [-],price [text]\n");
        AtomicFile.Write(Path.Combine(folder, "README.md"), ReadMe(name, design.Stages.Count));
        AtomicFile.Write(Path.Combine(folder, "day.json"), DayFile(design.Stages.Count));
        NewNotebook.Write(Path.Combine(folder, $"{FolderOf(name)}.ipynb"), name);
    }

    // Tests, weighings, measured materials, gear and pad of another vehicle are no evidence for this one.
    private static Design OwnOf(Design design, string name)
    {
        // Remarks of another vehicle's file speak of that vehicle.
        var own = string.Join('\n', design.ToText().Split('\n').Where(l => !l.TrimStart().StartsWith("//", StringComparison.Ordinal)));
        var text = Masses().Replace(own, m => m.Value.Replace("\"weighed\":", "\"estimated\":", StringComparison.Ordinal));
        // So do its reasons; the values and their ranges stay.
        text = Reasons().Replace(text, TakenOver);
        text = text.Replace("Agreed for the field.", "What the site permits.", StringComparison.Ordinal);
        design = Design.Parse(text, DesignRequest.InFolder).With("name", name)
            .With("about", "Begun from another design; every value is to be checked.");
        string[] within = design.Stages.Count == 2 ? ["stages.booster.", "stages.sustainer."] : [""];
        foreach (var path in within.SelectMany(w => new[] { $"{w}evidence", $"{w}rating.working pressure",
            $"{w}vessel.nozzle end.weighed", $"{w}vessel.forward end.weighed", $"{w}pad", $"{w}fin structure", $"{w}recovery.gear" })
            .Append("decisions"))
            if (design.HasPart(path)) design = design.Without(path);
        design = WithoutMeasurements(design);
        // About what a vessel without a test is rated for.
        string[] fills = within.Length == 2 ? ["12 bar gauge", "18 bar gauge"] : ["20 bar gauge"];
        foreach (var (part, fill) in within.Zip(fills)) design = design.With($"{part}charge.fill pressure", fill);
        if (design.HasPart("site.name")) design = design.With("site.name", "our field");
        return design;
    }

    // Materials that the design itself names stay, as typical ones.
    private static Design WithoutMeasurements(Design design)
    {
        if (!design.HasPart("materials")) return design;
        try
        {
            return design.Without("materials");
        }
        catch (DesignFileException)
        {
            return Design.Parse(design.ToText().Replace("\"kind\": \"measured\"", "\"kind\": \"typical\"", StringComparison.Ordinal),
                DesignRequest.InFolder);
        }
    }

    [GeneratedRegex("""(?<="to":\s*"[^"]*",\s*"why":\s*")[^"]+""")]
    private static partial Regex Reasons();

    [GeneratedRegex("""\"masses\":\s*\[[^\]]*\]""")]
    private static partial Regex Masses();

    private static string FileOf(string from)
    {
        if (File.Exists(from)) return from;
        var own = Path.Combine(RepositoryFolders.Find().Notebooks, $"{from.ToLowerInvariant()}.json");
        return File.Exists(own) ? own : throw new RequestException($"There is no design \"{from}\". Write curlew, godwit, or the path of a "
            + "design's file.");
    }

    private static string FolderOf(string name)
    {
        var words = string.Concat(name.Trim().ToLowerInvariant().Select(c => char.IsLetterOrDigit(c) ? c : ' '))
            .Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var folder = string.Join('-', words);
        return folder.Length is > 0 and <= LongestName && name.IndexOfAny(['/', '\\']) < 0 ? folder
            : throw new RequestException($"\"{(name.Length > 80 ? name[..80] : name)}\" can't be a folder's name; take 1 to {LongestName} "
                + "letters, figures and spaces.");
    }

    // What isn't measured yet isn't given; the card names it.
    private static string DayFile(int stages) => $$"""
        // What is measured and decided on the day of a flight; the card is made from this file. Add to each vessel, as measured in the sun at
        // its warmest place: "wall temperature": "24 °C"; and as it stands on the vessel's label: "label": "3f9a-71c2" (vessel names the
        // mark with each line that it writes into a service record). The parts that stand on the pad, as each is stamped:
        // "gear": [ { "kind": "hose", "serial": "H-2", "rated to": "100 bar gauge" } ]. What is otherwise than in the design:
        // "changes": [ { "of": "site.wind.speed", "is": "4 m/s" }, { "of": "site.wind.reference", "is": "2 m" } ], the wind with the height
        // at which it was measured. Kinds of parts: cylinder, regulator, fill valve, hose, restrictor, check valve, gauge, dump valve.
        {
          "$schema": "{{DesignSchema.DayFileName}}",
          "day": "{{DateTime.Today:yyyy-MM-dd}}",
          "vessels": [ {{(stages == 2 ? """{ "serial": "B-1" }, { "serial": "S-1" }""" : """{ "serial": "R-1" }""")}} ]
        }

        """;

    private static string TestFile(int stages) => $"{(stages == 2 ? "tests/booster" : "tests")}/t1.json: "
        + """`{ "kind": "burst", "vessel": "T-1", "pressure": "340 bar gauge", "failed": "wall" }`""";

    private static string Service(string name, int stages) => stages == 2
        ? $"`vessel new vessels/b1.service.jsonl --vessel \"{name} booster\" --serial B-1`, and the same for \"{name} sustainer\", S-1"
        : $"`vessel new vessels/r1.service.jsonl --vessel \"{name}\" --serial R-1`";

    private static string ReadMe(string name, int stages) => $$"""
        # {{name}}

        | what | where |
        |---|---|
        | the design: change a value, then `check` this folder | design.json |
        | what was burst, what held, what leaked: one file a test, such as {{TestFile(stages)}} | tests/ |
        | service records, one file a vessel: {{Service(name, stages)}} | vessels/ |
        | records of proofs that were judged: `vessel proved` this folder `--log` the log of the proof | vessels/ |
        | what is measured on the day of a flight; `card` this folder says GO or NO-GO from all of this | day.json |
        | logs of gauges and altimeters; `learn` this folder `--log` a file says which numbers a new one moves | logs/ |
        | what lies on the shelf | stock.csv |
        | pages, card and record: `run` this folder | {{FolderOf(name)}}.ipynb |

        Nothing of the design that this one was begun from counts as evidence: its tests were left out, its weighings are estimates here. A vessel
        without tests is rated low. Proof-test with water, from behind cover; local law and a licensed person come first.

        """;
}

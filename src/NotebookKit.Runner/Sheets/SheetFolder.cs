using NotebookKit.Building.Resins;
using NotebookKit.Charts.Results;
using NotebookKit.Clearance;
using NotebookKit.Clearance.Cards;
using NotebookKit.DesignFiles;
using NotebookKit.DesignFiles.Trees;
using NotebookKit.Filling.Vents;
using NotebookKit.Logs;
using NotebookKit.Numerics.Disks;
using NotebookKit.Provenance;
using NotebookKit.Record.Givens;
using NotebookKit.Runner.Notebooks;
using NotebookKit.Runner.Reports;
using NotebookKit.Runner.Running;
using NotebookKit.Sheets;

namespace NotebookKit.Runner.Sheets;

/// <summary>Writes the sheets of designs into a folder: flight card, proof sheet, pad sheet, templates, shopping list.</summary>
internal static class SheetFolder
{
    private const string Misfire = "Misfire";

    private static readonly (string File, string Name)[] Files =
    [
        ("flight-card.html", "Flight card"), ("proof-sheet.html", "Proof sheet"), ("pad-sheet.html", "Pad sheet"),
        ("templates.html", "Templates"), ("shopping-list.html", "Cutting, resin, shopping"),
    ];

    /// <summary>Writes the sheets of every design that lies beside a run's notebooks: the first in the folder itself, each other in a
    /// folder of its name. A design that can't be read, or a folder without one, has none.</summary>
    /// <param name="options">The run.</param>
    /// <param name="reports">What became of its notebooks: cards that they show take the place of the design's own.</param>
    public static void WriteFor(RunOptions options, IReadOnlyList<NotebookReport> reports)
    {
        // What a notebook shows that failed may rest on what it never reached.
        var shown = reports.Where(r => r.Passed).SelectMany(r => r.Answer.Sheets).ToList();
        var first = true;
        foreach (var folder in options.Notebooks.Select(n => Path.GetDirectoryName(Path.GetFullPath(n))!).Distinct())
            foreach (var file in DesignsIn(folder))
            {
                Design design;
                StockList? stock = null;
                try
                {
                    design = DesignOf(file, folder, options.Givens);
                    stock = Shelf(folder);
                }
                catch (LogFormatException)
                {
                    // Without a stock list every price is "not given", and the sheet says so.
                    design = DesignOf(file, folder, options.Givens);
                }
                catch (DesignFileException)
                {
                    continue;
                }

                var to = first ? options.SheetFolder : Path.Combine(options.SheetFolder, Path.GetFileNameWithoutExtension(file));
                var subject = FlightSheet.SubjectOf(design);
                // A card with other values than the files' is no card to fly by.
                var own = options.Givens.Names.Count > 0 ? null : CardOf(folder, file, design);
                Write(design, stock, to, own ?? shown.LastOrDefault(s => IsOf(s, subject)));
                first = false;
            }
    }

    /// <summary>Writes the sheets of one design.</summary>
    /// <param name="design">The design.</param>
    /// <param name="stock">Its stock list; none where there is none.</param>
    /// <param name="folder">Where to.</param>
    /// <param name="card">The card that a notebook shows with its evidence; the design's own, without evidence, where none is.</param>
    /// <returns>The files.</returns>
    public static IReadOnlyList<string> Write(Design design, StockList? stock, string folder, SheetContent? card = null)
    {
        ShelfItem[] shelf = [.. stock?.Items.Select(i => i.ToShelf()) ?? []];
        var standOff = design.Site is not { } site ? null : Try(() => design.Stages.Count == 1 ? design.Vehicle.StandOff(site)
            : design.TwoStageVehicle.StandOff(site));
        List<DesignSheets> stages = [.. design.Stages.Select(s => DesignSheets.Of(s, design.Site, shelf, Resin(s.Vessel.Resin.Name, stock),
            standOff))];
        var slowest = stages.Select(s => s.Vent).OfType<VentResult>().MaxBy(v => v.WorstState);
        var flight = card is null ? Own(design, standOff, slowest) : card with { Sections = [.. card.Sections.Select(s =>
            s.Heading == Misfire && slowest is { } v ? s with { Rules = SheetRules.Misfire(v.WorstState) } : s)] };
        List<TemplateSheet> templates = [.. stages.Select(s => s.Templates).OfType<TemplateSheet>()];
        string[] pages =
        [
            SheetPage.Write(flight, Files),
            SheetPage.Write(Joined($"Proof sheet, {design.Name}", "proof sheet", stages, s => s.Proof),
                Files, [.. stages.Where(s => s.Proof is not null).Select(s => s.Proof!.Plan.Draw())]),
            SheetPage.Write(Joined($"Pad sheet, {design.Name}", "pad sheet", stages, s => s.Pad),
                Files, [.. stages.Where(s => s.Pad is not null).Select(s => s.Pad!.Plumbing.Draw())]),
            templates.Count > 0 ? TemplatePages.Write($"Templates, {design.Name}", templates, Files)
                : SheetPage.Write(Joined<ShoppingSheet>($"Templates, {design.Name}", "templates", stages, _ => null), Files),
            SheetPage.Write(Joined($"Cutting, resin and shopping list, {design.Name}", "shopping list", stages, s => s.Shopping), Files),
        ];
        return Put(folder, pages);
    }

    // A sheet of another state of the design beside the new ones would pass for one of them.
    private static List<string> Put(string folder, string[] pages)
    {
        List<string> places = [.. Files.Select(f => Path.Combine(folder, f.File))];
        for (var i = 0; i < places.Count; i++)
        {
            try
            {
                AtomicFile.Write(places[i], pages[i]);
            }
            catch (Exception error) when (Disk.IsFault(error))
            {
                var old = places.Skip(i).Where(p => !AtomicFile.TryDelete(p)).Select(p => Path.GetFileName(p)).ToList();
                throw new IOException($"{places[i]} can't be written ({RunFiles.Words(error)}), so the sheets in {folder} aren't complete. "
                    + "Make room, close what holds the file, and write the sheets again."
                    + (old.Count > 0 ? $" Of earlier sheets are {string.Join(", ", old)}." : ""), error);
            }
        }

        return places;
    }

    /// <summary>The stock list of a folder of designs: in it, or in the demo data beside it; none where there is none.</summary>
    /// <param name="folder">The folder.</param>
    public static StockList? Shelf(string folder)
    {
        foreach (var file in new[] { Path.Combine(folder, "stock.csv"), Path.Combine(folder, "..", "data-demo", "stock.csv") })
            if (File.Exists(file)) return StockList.Read(file);
        return null;
    }

    private static IEnumerable<string> DesignsIn(string folder) => Directory.EnumerateFiles(folder, "*.json")
        .Where(f => !f.EndsWith(".schema.json", StringComparison.Ordinal)).Order(StringComparer.Ordinal);

    /// <summary>The design with the tests that lie beside it, as the folder's own page and its check count them.</summary>
    /// <param name="file">The design's file.</param>
    /// <param name="folder">Its folder.</param>
    /// <param name="givens">What the run was asked to change.</param>
    internal static Design DesignOf(string file, string folder, GivenOverrides givens) =>
        Design.Read(file).WithTests(Path.Combine(folder, "tests")).With(givens);

    // A club's folder makes its card of what lies in it.
    private static SheetContent? CardOf(string folder, string file, Design design) =>
        Path.GetFileName(file) == "design.json" && File.Exists(Path.Combine(folder, "day.json"))
            ? Try(() => FlightSheet.Of((ClubFolder.Read(folder) with { Design = design }).Card()).Content) : null;

    // By the flight itself, never by the name: a card of a changed vehicle says nothing of this one.
    private static bool IsOf(SheetContent card, string subject) => subject.Length > 0 && card.Subject == subject;

    private static ResinSystem? Resin(string name, StockList? stock) =>
        stock?.Of("resin").FirstOrDefault(r => r.Name == name) is { PotLife: { } life, HardenerPerResin: { } share }
            ? new ResinSystem(name, share, life) : null;

    private static SheetContent Own(Design design, LaunchStandOff? standOff, VentResult? vent)
    {
        var title = $"Flight card, {design.Name}";
        if (design.Site is not { } site) return Refused(title, "The design gives no site to fly from.");
        return Try(() => design.Stages.Count == 1
            ? FlightSheet.Of(design.Vehicle.Card(site, new FlightEvidence { StandOff = standOff }), vent).Content
            : FlightSheet.Of(design.TwoStageVehicle.Card(site, new TwoStageEvidence { StandOff = standOff }), vent).Content,
            out var why) ?? Refused(title, why);
    }

    private static SheetContent Joined<T>(string title, string what, List<DesignSheets> stages, Func<DesignSheets, T?> of)
        where T : class, ISheet
    {
        var made = stages.Select(of).OfType<T>().Select(s => s.Content).ToList();
        var refused = stages.Where(s => s.Refused.ContainsKey(what)).Select(s => s.Refused[what]).ToList();
        if (made.Count == 0) return Refused(title, string.Join(" ", refused));
        if (stages.Count == 1) return made[0];
        return made[0] with
        {
            Title = title,
            Sections = [.. made.SelectMany((c, i) => c.Sections.Select(s => s with
            {
                Heading = $"{stages[i].Stage.Name}: {char.ToLowerInvariant(s.Heading[0])}{s.Heading[1..]}",
            }))],
            Findings = [.. refused.Select(Finding.Error), .. made.SelectMany(c => c.Findings).DistinctBy(f => f.Message)],
        };
    }

    private static SheetContent Refused(string title, string why) => new(title, "This sheet can't be filled in yet.", [])
    {
        Findings = [Finding.Error(why.Length > 0 ? why : "The design doesn't give enough for this sheet.")],
        Cautions = Cautions.ForFlight,
    };

    private static T? Try<T>(Func<T> make) where T : class => Try(make, out _);

    private static T? Try<T>(Func<T> make, out string why) where T : class
    {
        why = "";
        try
        {
            return make();
        }
        catch (Exception error) when (error is InvalidDesignException or OutOfRangeException or InvalidOperationException)
        {
            why = error.Message;
            return null;
        }
    }
}

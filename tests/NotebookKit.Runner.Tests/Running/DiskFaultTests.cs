using NotebookKit.Clearance.Service;
using NotebookKit.DesignFiles;
using NotebookKit.Flight.Dispersion;
using NotebookKit.Record;
using NotebookKit.Runner.Reports;
using NotebookKit.Runner.Running;
using Xunit.Abstractions;

namespace NotebookKit.Runner.Tests.Running;

/// <summary>One at a time: they listen to what the process prints.</summary>
[CollectionDefinition(nameof(DiskFaultTests), DisableParallelization = true)]
public sealed class OneAtATime;

/// <summary>Whatever writes, written to a disk that fails at each place in turn: never a half file, never "made" of what isn't.</summary>
[Collection(nameof(DiskFaultTests)), Trait("Length", "long")]
public sealed class DiskFaultTests(ITestOutputHelper output)
{
    private static string CurlewFile => Path.Combine(TestFolder.Repository, "notebooks", "curlew.json");

    private static string Demo(string file) => Path.Combine(TestFolder.Repository, "data-demo", file);

    [Fact]
    public async Task A_new_folder_is_there_whole_or_not_at_all()
    {
        using var verb = new FaultyVerb { Made = "is ready", Ways = [Fault.FullOnce, Fault.RefusedOnce, Fault.Gone],
            Verb = at => FaultyVerb.Program("new", "Our rocket", "--in", at, "--from", CurlewFile) };
        await NothingIsWrong(verb, _ => { }, 100);
    }

    [Fact]
    public async Task A_service_record_is_begun_and_written_to_whole_or_not_at_all()
    {
        using var begun = new FaultyVerb { Made = "is the service record of", Verb = at => FaultyVerb.Program("vessel", "new",
            Path.Combine(at, "c1.service.jsonl"), "--vessel", "Curlew", "--serial", "C-1") };
        await NothingIsWrong(begun, _ => { }, 16);
        using var added = new FaultyVerb { Made = "Line 2", AppendsTo = ".service.jsonl", Verb = at => FaultyVerb.Program("vessel", "add",
            Path.Combine(at, "c1.service.jsonl"), "made", "--day", "2026-02-21", "--batch", "three", "--at", "2026-02-21"),
            Always = (at, _) => IsReadable(Path.Combine(at, "c1.service.jsonl")) };
        await NothingIsWrong(added, at => ServiceFile.Create(Path.Combine(at, "c1.service.jsonl"), "Curlew", "C-1"), 12);
    }

    [Fact]
    public async Task A_proof_is_in_the_service_record_only_with_its_own_record_beside_it()
    {
        using var verb = new FaultyVerb { Made = "Record of the proof", AppendsTo = ".service.jsonl", Verb = at => FaultyVerb.Program(
            "vessel", "proved", at, "--log", Demo("curlew-proof.csv"), "--at", "2026-03-15"),
            Always = (at, _) =>
            {
                var service = Path.Combine(at, "vessels", "c1.service.jsonl");
                IsReadable(service);
                if (ServiceFile.Read(service).Events.OfType<Proved>().Any())
                    Assert.Single(Directory.GetFiles(Path.Combine(at, "vessels"), "*.proof.json"));
            } };
        await NothingIsWrong(verb, at => Club(at), 30);
    }

    [Fact]
    public async Task A_rejected_proof_is_said_whatever_the_disk_does()
    {
        using var verb = new FaultyVerb { Made = "the vessel is retired. Cut the vessel up, so that nobody fills it by mistake.  ",
            Success = 2, AppendsTo = ".service.jsonl", Verb = async at =>
            {
                var (code, said) = await FaultyVerb.Program("vessel", "proved", at, "--log", Path.Combine(at, "set.csv"), "--at",
                    "2026-03-15");
                return (code, said.TrimEnd() + (said.TrimEnd().EndsWith("by mistake.", StringComparison.Ordinal) ? "  " : ""));
            },
            Always = (at, said) =>
            {
                Assert.Contains("was rejected", said, StringComparison.Ordinal);
                IsReadable(Path.Combine(at, "vessels", "c1.service.jsonl"));
            } };
        await NothingIsWrong(verb, at =>
        {
            Club(at);
            var lines = File.ReadAllLines(Demo("curlew-proof.csv"));
            File.WriteAllLines(Path.Combine(at, "set.csv"), lines.Select((l, i) => i > lines.Length - 60 && l.Split(',') is
                [var time, var pressure, var warmth, var water] ? $"{time},{pressure},{warmth},{(water.Length == 0 ? "" : "25.0")}" : l));
        }, 30);
    }

    [Fact]
    public async Task The_sheets_are_all_of_one_design_or_missing()
    {
        using var verb = new FaultyVerb { Made = "all five", TakesOldAway = true, Ways = [Fault.Gone], Verb = async at =>
            {
                var (code, said) = await FaultyVerb.Program("sheets", Path.Combine(at, "design.json"), "--out", Path.Combine(at, "out"));
                // The list of what was written, one after the other.
                Assert.Equal(code == 0, said.Contains($"flight-card.html {at}", StringComparison.Ordinal));
                return (code, code == 0 ? "all five" : said);
            } };
        await NothingIsWrong(verb, at =>
        {
            Bare(Path.Combine(at, "design.json"));
            Directory.CreateDirectory(Path.Combine(at, "out"));
            foreach (var old in new[] { "flight-card", "pad-sheet", "shopping-list" })
                File.WriteAllText(Path.Combine(at, "out", $"{old}.html"), "of before");
        }, 30);
    }

    [Fact]
    public async Task A_kernel_is_registered_with_all_of_its_files_or_not()
    {
        using var verb = new FaultyVerb { Made = "Choose it in your notebook front-end", Verb = at => FaultyVerb.Program("kernel", "add",
            "--prefix", at) };
        await NothingIsWrong(verb, _ => { }, 100);
    }

    [Fact]
    public async Task Merged_flights_and_their_text_are_whole()
    {
        using var verb = new FaultyVerb { Made = "Merged:", Verb = at => FaultyVerb.Program("merge", Path.Combine(at, "in"), "--out",
            Path.Combine(at, "out")) };
        await NothingIsWrong(verb, at =>
        {
            var design = Design.Read(CurlewFile);
            Directory.CreateDirectory(Path.Combine(at, "in"));
            foreach (var part in new[] { 1, 2 })
            {
                var batch = new Runner.Batch.NotebookBatch(new(new(part, 2), Path.Combine(at, "in"), null));
                design.Vehicle.Disperse(design.Site!, new Spread(), 8, 1, batch: batch);
            }
        }, 40);
    }

    [Fact]
    public async Task The_record_of_a_check_and_what_a_log_teaches_are_whole()
    {
        using var check = new FaultyVerb { Made = "never said", Success = 0, Verb = async at =>
            {
                var (code, said) = await FaultyVerb.Program("check", Path.Combine(at, "design.json"), "--record",
                    Path.Combine(at, "out", "record.json"));
                return (code, code == 0 ? "never said" : said);
            } };
        await NothingIsWrong(check, at => Bare(Path.Combine(at, "design.json")), 16);
        using var learned = new FaultyVerb { Made = "Written to", Verb = at => FaultyVerb.Program("learn", at, "--log",
            Demo("curlew-proof.csv"), "--write") };
        await NothingIsWrong(learned, at => Club(at), 16);
    }

    [Fact]
    public async Task A_design_is_replaced_whole()
    {
        using var verb = new FaultyVerb { Made = "replaced", Verb = at =>
            {
                try
                {
                    Design.Read(CurlewFile).Write(Path.Combine(at, "design.json"));
                    return Task.FromResult((0, "replaced"));
                }
                catch (DesignFiles.Trees.DesignFileException e)
                {
                    return Task.FromResult((2, $"{e.Message.TrimEnd('.')}."));
                }
            } };
        await NothingIsWrong(verb, at => File.WriteAllText(Path.Combine(at, "design.json"), "of before"), 16);
    }

    [Fact]
    public async Task The_page_the_record_the_live_page_and_the_list_of_a_run_are_whole_or_gone()
    {
        var records = new[] { 1, 2 }.Select(n => new DesignRecordBuilder($"Design {n}", GivenOverrides.None).Build()).ToList();
        var folder = "";
        // A list leads to no live page that isn't there.
        bool Unlinked(string path, byte[] list, byte[] made) => path == "out/index.html"
            && !File.Exists(Path.Combine(folder, "out", "live.html")) && System.Text.Encoding.UTF8.GetString(list)
                == System.Text.Encoding.UTF8.GetString(made).Replace("<nav class=\"buttons\" aria-label=\"Papers\"><a href=\"live.html\">"
                    + "Live page</a></nav>", "", StringComparison.Ordinal);
        using var verb = new FaultyVerb { Made = "all written", TakesOldAway = true, IsRight = Unlinked, Verb = async at =>
            {
                var options = new RunOptions([Path.Combine(at, "in", "none.ipynb")], Path.Combine(at, "out"), TimeSpan.FromSeconds(1), 1);
                var problems = new List<string?>
                {
                    RunFiles.Write("The executed notebook", options.ExecutedFile("a"), () => new string('n', 300_000)),
                    RunFiles.Write("The page", options.PageFile("a"), () => new string('p', 300_000)),
                    RunFiles.Try("The record for the next run", () => LastRecords.Keep(options, "a", records)),
                };
                var run = await new NotebookRunner(options, new Quiet()).RunAsync(CancellationToken.None);
                problems.AddRange(run.Problems);
                Assert.False(run.HasIndex && File.ReadAllText(options.IndexFile) == "of before");
                var said = problems.OfType<string>().ToList();
                return said.Count == 0 ? (0, "all written") : (1, string.Join(' ', said));
            } };
        await NothingIsWrong(verb, at =>
        {
            folder = at;
            Directory.CreateDirectory(Path.Combine(at, "in"));
            File.WriteAllText(Path.Combine(at, "in", "none.ipynb"), "no notebook");
            foreach (var old in new[] { "out/pages/a.html", "out/index.html", "out/records/a/gone.json", "out/records/a/design-1.json" })
            {
                Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(at, old))!);
                File.WriteAllText(Path.Combine(at, old), "of before");
            }
        }, 100);
    }

    private async Task NothingIsWrong(FaultyVerb verb, Action<string> prepare, int least)
    {
        var clock = System.Diagnostics.Stopwatch.StartNew();
        var (runs, wrong) = await verb.TryAllAsync(prepare);
        output.WriteLine($"{runs} runs, {clock.ElapsedMilliseconds} ms");
        Assert.True(wrong.Count == 0, $"{wrong.Count} of {runs}:\n{string.Join("\n", wrong.Take(25))}");
        Assert.True(runs >= least, $"{runs} runs");
    }

    // A record that a line was cut off in is still read, and what was written before stands in it.
    private static void IsReadable(string file) => Assert.NotEmpty(ServiceFile.Read(file).Vessel);

    private static void Bare(string file)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(file)!);
        File.Copy(CurlewFile, file, overwrite: true);
    }

    private static void Club(string at)
    {
        Bare(Path.Combine(at, "design.json"));
        foreach (var folder in new[] { "vessels", "tests", "logs" }) Directory.CreateDirectory(Path.Combine(at, folder));
        var service = ServiceFile.Create(Path.Combine(at, "vessels", "c1.service.jsonl"), "Curlew", "C-1");
        service.Append(new Made(new DateOnly(2026, 2, 21), "three", null, null) { At = new DateTimeOffset(2026, 2, 21, 0, 0, 0,
            TimeSpan.Zero) });
    }

    private sealed class Quiet : IRunDisplay
    {
        public void Started(string name, int cells)
        {
        }

        public void Running(string name, int cell, string? progress)
        {
        }

        public void Ended(NotebookReport report)
        {
        }
    }
}

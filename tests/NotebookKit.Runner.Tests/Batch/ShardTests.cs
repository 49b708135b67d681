using System.Text.RegularExpressions;

namespace NotebookKit.Runner.Tests.Batch;

[Trait("Length", "long")]
public sealed partial class ShardTests(SplitRun split) : IClassFixture<SplitRun>
{
    [Fact]
    public void Three_shards_merge_to_the_bytes_of_one()
    {
        Assert.All(split.Runs, r => Assert.True(r.ExitCode == 0, r.Output + r.Errors));
        Assert.Equal(0, split.MergeOfOne.ExitCode);
        Assert.True(split.Merge.ExitCode == 0, split.Merge.Output + split.Merge.Errors);
        var (one, three) = (Merged(split.One), Merged(split.Three));
        // Two dispersions, each as numbers and as a table.
        Assert.Equal(4, one.Length);
        Assert.Equal(one.Select(Path.GetFileName), three.Select(Path.GetFileName));
        Assert.All(one.Zip(three), p => Assert.Equal(File.ReadAllBytes(p.First), File.ReadAllBytes(p.Second)));
    }

    [Fact]
    public void The_merged_table_says_what_the_notebook_says_of_the_whole()
    {
        // 23 flights in 7, 8 and 8.
        Assert.Contains("23 flights in three degrees of freedom, seed 7", split.Merge.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("this is shard", split.Merge.Output, StringComparison.Ordinal);
        var middle = MiddleApogee().Match(split.Runs[0].Output).Groups[1].Value;
        Assert.NotEmpty(middle);
        Assert.Contains(Math.Round(double.Parse(middle,
            System.Globalization.CultureInfo.InvariantCulture)).ToString(System.Globalization.CultureInfo.InvariantCulture) + " m",
            split.Merge.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_run_with_the_merged_flights_makes_the_page_of_an_ordinary_run()
    {
        var again = split.NewFolder("again");
        var run = await ProgramRun.RunAsync("run", split.Notebook, "--out", again, "--flown", split.Three);
        Assert.Equal(0, run.ExitCode);
        foreach (var file in new[] { Path.Combine("notebooks", "scatters.ipynb"), Path.Combine("pages", "scatters.html") })
            Assert.Equal(File.ReadAllText(Path.Combine(split.Whole, file)), File.ReadAllText(Path.Combine(again, file)));
    }

    [Fact]
    public async Task Flights_that_are_there_are_not_flown_again()
    {
        // Numbers changed by hand, all near 77, show that they are taken from the file.
        var (moved, next) = (split.NewFolder("moved"), 0);
        string Near77(Match number) => FormattableString.Invariant($"77.00{next++ % 7}{next % 5}");
        foreach (var file in Merged(split.Three).Where(f => f.EndsWith(".json", StringComparison.Ordinal)))
            File.WriteAllText(Path.Combine(moved, Path.GetFileName(file)),
                RowsOf().Replace(File.ReadAllText(file), m => "\"Rows\":" + Numbers().Replace(m.Groups[1].Value, Near77)));
        var run = await ProgramRun.RunAsync("run", split.Notebook, "--out", split.NewFolder("moved-out"), "--flown", moved);
        Assert.Contains("77.0 m", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_run_of_one_shard_writes_no_page_that_could_be_taken_for_the_whole()
    {
        Assert.Equal(["shards"], Directory.GetDirectories(split.Three).Select(Path.GetFileName));
        Assert.DoesNotContain(Directory.EnumerateFiles(split.Three, "*", SearchOption.AllDirectories),
            f => f.EndsWith(".html", StringComparison.Ordinal) || f.EndsWith(".part", StringComparison.Ordinal));
        Assert.Contains("1-of-3.shard.json", split.Runs[2].Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_missing_shard_is_named()
    {
        var run = await ProgramRun.RunAsync(["merge", .. split.Shards(1), .. split.Shards(3), "--out", split.NewFolder("missing")]);
        Refused(run, "shard 2/3. Fly it. There are 1/3, 3/3.", "missing");
    }

    [Fact]
    public async Task A_shard_that_is_there_twice_is_named_with_its_files()
    {
        var copy = Path.Combine(split.NewFolder("copy"), "copied.json");
        File.Copy(split.Shards(2)[0], copy);
        var run = await ProgramRun.RunAsync("merge", split.Three, copy, "--out", split.NewFolder("twice"));
        Refused(run, "shard 2/3 is there twice", "twice");
        Assert.Contains(copy, run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_shard_of_another_seed_is_foreign_and_leaves_a_gap()
    {
        var other = split.NewFolder("other");
        var notebook = Path.Combine(other, "scatters.ipynb");
        File.WriteAllText(notebook, File.ReadAllText(split.Notebook).Replace("seed: 7", "seed: 6", StringComparison.Ordinal));
        Assert.Equal(0, (await ProgramRun.RunAsync("run", notebook, "--out", other, "--shard", "2/3")).ExitCode);
        var foreign = Directory.GetFiles(Path.Combine(other, "shards",
            "scatters")).Single(f => !split.Shards(2).Select(Path.GetFileName).Contains(Path.GetFileName(f)));
        var own = split.Shards(2).Where(f => File.ReadAllText(f).Contains("\"Seed\":8", StringComparison.Ordinal));
        var run = await ProgramRun.RunAsync(["merge", .. split.Shards(1), .. own, foreign, .. split.Shards(3), "--out",
            split.NewFolder("foreign")]);
        Refused(run, "seed 6: flights 0 to 6 and more are missing: shards 1, 3 of 3", "foreign");
        Assert.Contains("seed 7: flights 7 to 14 are missing: shard 2/3", run.Errors, StringComparison.Ordinal);
        Assert.Contains("shards of 3 dispersions", run.Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("garbage.shard.json", "not at all", "is not a shard")]
    [InlineData("empty.shard.json", "", "is not a shard")]
    [InlineData("other.shard.json", "{\"Rows\":[1,2,3]}", "missing")]
    public async Task A_file_that_holds_no_shard_is_named(string name, string text, string sentence)
    {
        var bad = split.NewFolder("bad-" + name);
        File.WriteAllText(Path.Combine(bad, name), text);
        var run = await ProgramRun.RunAsync("merge", split.Three, bad, "--out", split.NewFolder("bad"));
        Refused(run, sentence, "bad");
        Assert.Contains(name, run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_shard_that_was_cut_short_is_refused()
    {
        var whole = File.ReadAllText(split.Shards(1)[0]);
        var cut = Path.Combine(split.NewFolder("cut"), "cut.json");
        File.WriteAllText(cut, whole[..whole.LastIndexOf(',')] + "]}");
        Refused(await ProgramRun.RunAsync("merge", cut, "--out", split.NewFolder("cut-out")), "cut short", "cut-out");
    }

    [Fact]
    public async Task A_notebook_without_dispersion_has_nothing_to_split()
    {
        var run = await ProgramRun.RunAsync("run", TestFolder.Fixture("passes.ipynb"), "--out", split.NewFolder("nothing"), "--shard",
            "1/2");
        Assert.Equal(1, run.ExitCode);
        Assert.Contains("there is nothing to split", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_shard_left_by_an_earlier_run_does_not_stay()
    {
        var stale = split.NewFolder("stale");
        var shards = Directory.CreateDirectory(Path.Combine(stale, "shards", "scatters")).FullName;
        File.WriteAllText(Path.Combine(shards, "0123456789abcdef.2-of-3.shard.json"), "{}");
        File.WriteAllText(Path.Combine(shards, "0123456789abcdef.1-of-3.shard.json"), "{}");
        Assert.Equal(0, (await ProgramRun.RunAsync("run", split.Notebook, "--out", stale, "--shard", "2/3")).ExitCode);
        Assert.False(File.Exists(Path.Combine(shards, "0123456789abcdef.2-of-3.shard.json")));
        // Another node's file is its own business.
        Assert.True(File.Exists(Path.Combine(shards, "0123456789abcdef.1-of-3.shard.json")));
    }

    [Theory]
    [InlineData("is not a shard; write which of how many", "run", "x.ipynb", "--shard", "4/3")]
    [InlineData("is not a shard; write which of how many", "run", "x.ipynb", "--shard", "three")]
    [InlineData("there is no folder", "run", "x.ipynb", "--flown", "nowhere-at-all")]
    [InlineData("Give one of them", "run", "x.ipynb", "--shard", "1/3", "--flown", "/")]
    [InlineData("There is no nowhere-at-all", "merge", "nowhere-at-all")]
    public async Task A_request_that_makes_no_sense_is_refused_with_a_sentence(string sentence, params string[] arguments)
    {
        var run = await ProgramRun.RunAsync(arguments);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains(sentence, (run.Output + run.Errors).ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_folder_without_shards_is_refused()
    {
        var run = await ProgramRun.RunAsync("merge", split.NewFolder("none"));
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("There are no shards", (run.Output + run.Errors).ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    private void Refused(ProgramRun run, string sentence, string output)
    {
        Assert.Equal(1, run.ExitCode);
        Assert.Contains(sentence, run.Errors, StringComparison.Ordinal);
        Assert.Contains("Nothing was merged.", run.Errors, StringComparison.Ordinal);
        Assert.Empty(Directory.EnumerateFileSystemEntries(split.NewFolder(output)));
    }

    private static string[] Merged(string folder) => [.. Directory.GetFiles(folder, "*.merged.*").Order(StringComparer.Ordinal)];

    [GeneratedRegex(@"Middle apogee\s+([\d.]+) m")]
    private static partial Regex MiddleApogee();

    [GeneratedRegex("\"Rows\":(\\[.*\\])")]
    private static partial Regex RowsOf();

    [GeneratedRegex(@"-?\d[\d.eE+-]*")]
    private static partial Regex Numbers();
}

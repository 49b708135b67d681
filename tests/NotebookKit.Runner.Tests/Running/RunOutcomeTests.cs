namespace NotebookKit.Runner.Tests.Running;

[Collection(AllFixturesTests.Name)]
public sealed class RunOutcomeTests(AllFixturesRun all)
{
    public static TheoryData<string, string, string> Failures => new()
    {
        { "throws", "throws: cell 2, line 3: Divide(divisor);", "InvalidOperationException: nothing to divide by" },
        { "throws-through-library", "cell 1, line 2: GaugePressure.FromBar(double.NaN)", "gauge pressure is NaN" },
        { "does-not-compile", "cell 1, line 2: var b = a +;", "Invalid expression term ';'" },
        { "hangs", "cell 1, which starts: Console.WriteLine(\"before\");",
            "TimeLimit: The cell was still running after 30 s and was stopped." },
        { "ends-the-process", "cell 2, which starts: Environment.FailFast", "exit code 134): Process terminated. pulled the plug" },
        { "overflows-the-stack", "cell 1, which starts: int Deeper", "Stack overflow." },
        { "exits", "cell 1, which starts: Environment.Exit(7);", "The cell ended the whole process (exit code 7)." },
        { "floods", "cell 1, which starts: while (true)", "OutputLimit: The cell wrote more than 5 MB and was stopped." },
        { "starts-a-process", "cell 1, which starts: using System.Diagnostics;", "TimeLimit" },
        { "broken", "broken: the notebook", "The file is not JSON (line 3, character 1)." },
        { "not-a-notebook", "not-a-notebook: the notebook", "not a notebook" },
        { "missing", "missing: the notebook", "There is no file" },
    };

    public static TheoryData<string> Passing =>
        ["passes", "fails-on-purpose", "hostile", "no-ids", "updates", "many-charts", "reads-a-file", "attachment", "explores", "picks",
            "scatters"];

    [Theory, MemberData(nameof(Failures))]
    public void A_failing_notebook_is_named_with_cell_line_and_message(string name, string place, string message)
    {
        var failure = all.Failure(name);
        Assert.Contains(place, failure, StringComparison.Ordinal);
        Assert.Contains(message, failure, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Passing))]
    public void The_other_notebooks_still_run(string name)
    {
        Assert.Contains(all.Run.Output.Split('\n'), l => l.TrimStart().StartsWith(name + " ", StringComparison.Ordinal)
            && l.Contains(" passed ", StringComparison.Ordinal));
        Assert.True(File.Exists(Path.Combine(all.Output, "pages", name + ".html")));
        Assert.True(File.Exists(Path.Combine(all.Output, "notebooks", name + ".ipynb")));
    }

    [Fact]
    public void Any_failure_makes_the_exit_code_one() => Assert.Equal(1, all.Run.ExitCode);

    [Fact]
    public void The_summary_counts_and_says_where_things_are()
    {
        Assert.Contains($"{Passing.Count} of {Passing.Count + Failures.Count} notebooks ran to their end", all.Run.Output,
            StringComparison.Ordinal);
        Assert.Contains(Path.Combine(Path.GetFileName(all.Output), "index.html"), all.Run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Main_numbers_are_printed()
    {
        Assert.Matches(@"passes\s+Apogee\s+149 m", all.Run.Output);
        Assert.Matches(@"passes\s+Bore\s+63(\.0+)? mm", all.Run.Output);
    }

    [Fact]
    public void What_a_cell_wrote_before_it_was_stopped_is_kept()
    {
        Assert.Contains("before", all.Executed("hangs"), StringComparison.Ordinal);
        Assert.Contains("was still running after 30 s", all.Executed("hangs"), StringComparison.Ordinal);
        Assert.InRange(all.Executed("floods").Length, 100_000, 6_000_000);
    }

    [Fact]
    public void A_process_that_a_cell_started_ends_with_it()
    {
        if (!OperatingSystem.IsLinux()) return;
        Assert.DoesNotContain(Directory.EnumerateDirectories("/proc"),
            // Nobody else on the machine sleeps for as long.
            d => CommandLineOf(d).StartsWith("sleep\0" + "300.0417", StringComparison.Ordinal));
    }

    [Fact]
    public void Input_files_are_untouched() => Assert.Empty(all.ChangedInputs());

    [Fact]
    public void No_half_file_is_left() =>
        Assert.DoesNotContain(Directory.EnumerateFiles(all.Output, "*", SearchOption.AllDirectories),
            f => f.EndsWith(".part", StringComparison.Ordinal));

    [Fact]
    public void The_index_lists_every_notebook_with_its_state()
    {
        var index = File.ReadAllText(Path.Combine(all.Output, "index.html"));
        Assert.Contains("<a href=\"pages/passes.html\">A short lesson</a>", index, StringComparison.Ordinal);
        Assert.Contains("It says what a thin wall holds", index, StringComparison.Ordinal);
        Assert.Contains("<dt>Apogee</dt><dd>149 m</dd>", index, StringComparison.Ordinal);
        Assert.Contains("The file is not JSON", index, StringComparison.Ordinal);
        Assert.DoesNotContain("href=\"pages/broken.html\"", index, StringComparison.Ordinal);
        Assert.DoesNotContain("<script>window.hit", index, StringComparison.Ordinal);
    }

    private static string CommandLineOf(string processFolder)
    {
        try
        {
            return File.ReadAllText(Path.Combine(processFolder, "cmdline"));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return "";
        }
    }
}

using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace NotebookKit.Tests.House;

/// <summary>The tests have two parts: the everyday one and the long one. No test is in none of them or in both, and CI runs both.</summary>
public partial class PartTests
{
    private const string Everyday = "dotnet test NotebookKit.sln -c Release", Long = Everyday + " -p:TestPart=long";

    // A mark that is misspelt would leave its test in the everyday part.
    private const string LongMark = "Trait(\"Length\", \"long\")", ShortMark = "Trait(\"Length\", \"short\")";

    [Fact]
    public void What_the_everyday_part_leaves_out_is_what_the_long_part_takes()
    {
        Assert.Equal("Length!=long|Length=short", Filter("everyday"));
        Assert.Equal(Negated(Filter("everyday")), Filter("long"));
    }

    [Fact]
    public void The_command_of_the_readme_runs_the_everyday_part_and_a_property_chooses_another()
    {
        var chosen = XDocument.Load(Path.Combine(Repository.Root, "tests", "Directory.Build.props")).Descendants()
            .Where(e => e.Name.LocalName is "TestPart" or "RunSettingsFilePath").ToList();
        Assert.Equal(["all", "everyday", "$(MSBuildThisFileDirectory)$(TestPart).runsettings"], chosen.Select(e => e.Value));
        Assert.Equal(["'$(TestPart)' == '' and '$(VSTestTestCaseFilter)' != ''", "'$(TestPart)' == ''", "'$(TestPart)' != 'all'"],
            chosen.Select(e => e.Attribute("Condition")!.Value));
        var readme = File.ReadAllText(Path.Combine(Repository.Root, "README.md"));
        Assert.Contains($"\n{Everyday}\n", readme.ReplaceLineEndings("\n"), StringComparison.Ordinal);
        Assert.Contains("-p:TestPart=long", readme, StringComparison.Ordinal);
    }

    // Whatever one part finds, the other one runs, and a failure in either fails the whole.
    [Fact]
    public void CI_runs_both_parts_and_fails_where_one_of_them_does() =>
        Assert.Equal([$"{Everyday} 2>&1 | tee \"$log\" || status=$?", $"{Long} 2>&1 | tee -a \"$log\" || status=$?"],
            File.ReadLines(Path.Combine(Repository.Root, ".ci", "run")).Where(l => l.Contains("dotnet test", StringComparison.Ordinal)));

    [Fact]
    public void A_test_is_marked_by_one_of_two_words_and_the_short_ones_stand_among_long_ones() =>
        Violations.None(
            from file in Repository.Sources("tests")
            where Path.GetFileName(file) != "PartTests.cs"
            let text = File.ReadAllText(file)
            from wrong in Mark().Matches(text).Select(m => m.Value).Where(m => m is not (LongMark or ShortMark))
                .Concat(text.Contains(ShortMark, StringComparison.Ordinal) && !ClassIsLong(text) ? [ShortMark] : [])
            select $"{Path.GetRelativePath(Repository.Root, file)}: {wrong}");

    /// <summary>A test that needs a browser may skip, so that those that can't skip in the same file open none.</summary>
    [Fact]
    public void Every_test_that_opens_a_browser_is_long_but_those_that_are_marked_short()
    {
        var opening = Repository.Sources("tests").Select(f => (File: f, Text: File.ReadAllText(f)))
            .Where(f => Path.GetFileName(f.File) != "PartTests.cs" && OpensBrowser().IsMatch(f.Text)).ToList();
        Assert.True(opening.Count > 15, $"Only {opening.Count} files open a browser.");
        Violations.None(
            from file in opening
            where !ClassIsLong(file.Text)
            from test in MaySkip().Matches(file.Text).Select(m => m.Value)
            where !test.Contains(LongMark, StringComparison.Ordinal)
            select $"{Path.GetRelativePath(Repository.Root, file.File)}: {test}");
    }

    [Fact]
    public void No_more_than_a_handful_of_tests_in_a_browser_are_everyday() =>
        Assert.InRange(Repository.Sources("tests").Where(f => Path.GetFileName(f) != "PartTests.cs")
            .Sum(f => Regex.Count(File.ReadAllText(f), Regex.Escape(ShortMark))), 1, 5);

    private static bool ClassIsLong(string text) => LongClass().IsMatch(text);

    /// <summary>The one thing that a file of run settings says.</summary>
    private static string Filter(string part)
    {
        var settings = XDocument.Load(Path.Combine(Repository.Root, "tests", $"{part}.runsettings"));
        Assert.Equal(["RunSettings", "RunConfiguration", "TestCaseFilter"], settings.Descendants().Select(e => e.Name.LocalName));
        return settings.Root!.Value.Trim();
    }

    /// <summary>De Morgan's rule, for conditions that are joined by one kind of word.</summary>
    private static string Negated(string filter) => filter.Replace("!=", "≠", StringComparison.Ordinal)
        .Replace("=", "!=", StringComparison.Ordinal).Replace("≠", "=", StringComparison.Ordinal).Replace('|', '&');

    [GeneratedRegex("""Trait\("[Ll]\w*"[^)]*\)""")]
    private static partial Regex Mark();

    [GeneratedRegex("""\b(Browser|Firefox)\.OpenAsync\(|\bOpenedLivePage live\b|\.Visits\.|\bHeadlessBrowser\.Run\(|\bNotebookServer\.""")]
    private static partial Regex OpensBrowser();

    [GeneratedRegex("""^    \[Skippable(Fact|Theory).*\]""", RegexOptions.Multiline)]
    private static partial Regex MaySkip();

    [GeneratedRegex("""^\[(.*, )?Trait\("Length", "long"\)\]\r?\n(\[.*\]\r?\n)*public (sealed )?(partial )?class \w+Tests\b""",
        RegexOptions.Multiline)]
    private static partial Regex LongClass();
}

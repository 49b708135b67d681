using System.Runtime.InteropServices;
using NotebookKit.DesignFiles;
using NotebookKit.DesignFiles.Trees;

namespace NotebookKit.Tests.DesignFiles;

public class DesignMistakeTests
{
    [Theory]
    [InlineData("\"fill pressure\": {", "\"fil pressure\": {", "\"fil pressure\" isn't known in charge; is \"fill pressure\" meant?")]
    [InlineData("\"resin\": \"laminating epoxy\",", "\"resin\": \"laminating epoxi\",", "nearest are \"laminating epoxy\"")]
    [InlineData("\"station\": \"1925 mm\"", "\"station\": \"1925 bar gauge\"", "that is a gauge pressure, and a length is wanted")]
    [InlineData("\"station\": \"1925 mm\"", "\"station\": 1925", "the unit is missing")]
    [InlineData("\"station\": \"1925 mm\"", "\"station\": \"1.9e400 m\"", "that isn't a length")]
    [InlineData("\"station\": \"1925 mm\"", "\"station\": \"-2 m\"", "it must be 0 m to 20 m")]
    [InlineData("\"station\": \"1925 mm\"", "\"station\": true", "write a text with a unit")]
    [InlineData("\"elevation\": \"35 m\"", "\"elevation\": \"= site.elevation\"", "in a circle")]
    [InlineData("\"elevation\": \"35 m\"", "\"elevation\": \"= site.ceilin\"", "is \"site.ceiling\" meant?")]
    [InlineData("\"elevation\": \"35 m\"", "\"elevation\": \"= site\"", "holds more than one value")]
    [InlineData("\"elevation\": \"35 m\"", "\"elevation\": \"= site.ceiling + 3 bar\"", "that isn't a length to add")]
    [InlineData("\"version\": 1", "\"version\": 2", "the design has version 2, and this program reads up to version 1")]
    [InlineData("\"version\": 1,", "", "has no \"version\"")]
    [InlineData("\"name\": \"Curlew\"", "\"name\": \"Cur<b>lew\"", "none of them <, >, /, \\")]
    [InlineData("\"name\": \"Curlew\"", "\"name\": \"../Curlew\"", "none of them <, >, /, \\")]
    [InlineData("\"name\": \"Curlew\"", "\"name\": \"..\\\\Curlew\"", "none of them <, >, /, \\")]
    [InlineData("\"name\": \"Curlew\"", "\"name\": \"\\u0007\"", "none of them <, >, /, \\")]
    [InlineData("\"name\": \"Curlew\"", "\"name\": \"\\ud800\"", "isn't UTF-8")]
    [InlineData("\"entry\": \"rounded\"", "\"entry\": \"round\"", "is \"rounded\" meant?")]
    [InlineData("\"guided\": \"2 m\"", "\"guided\": null", "null")]
    [InlineData("\"kind\": \"tube\"", "\"kind\": \"tub\"", "is \"tube\" meant?")]
    [InlineData("\"weighed\": \"64 g\"", "\"weighed\": \"64 g\", \"estimated\": \"60 g\"", "two values for one thing")]
    [InlineData("\"weighed\": \"64 g\"", "\"weighed\": \"64 g\", \"weighed\": \"60 g\"", "stands here a second time")]
    [InlineData("\"weighed\": \"64 g\", ", "", "has no \"weighed\"")]
    [InlineData("\"count\": 3", "\"count\": 3.5", "isn't a whole number")]
    [InlineData("\"count\": 3", "\"count\": \"3\"", "isn't a whole number")]
    [InlineData("\"stays right while\": \"fill pressure within the rating\"", "\"stays right while\": \"fill pressure in the rating\"",
        "is \"fill pressure within the rating\" meant?")]
    [InlineData("\"at most\": 1", "\"at most\": 1, \"at least\": 0", "two values for one thing")]
    [InlineData("\"of\": \"vessel\"", "\"of\": \"vesel\"", "is \"vessel\" meant?")]
    [InlineData("\"from\": \"50 mm\"", "\"form\": \"50 mm\"", "is \"from\" meant?")]
    [InlineData("\"rules\": \"Club rule\"", "\"rules\": \"Club rules\"", "is \"Club rule\" meant?")]
    [InlineData("\"glass temperature\": {", "\"glas temperature\": {", "is \"glass temperature\" meant?")]
    [InlineData("\"kind\": \"measured\"", "\"kind\": \"guessed\"", "Choices are measured")]
    public void A_mistake_is_one_sentence_with_line_and_column(string right, string wrong, string says)
    {
        var at = DesignFixture.CurlewText.IndexOf(right, StringComparison.Ordinal);
        Assert.True(at >= 0, right);
        var error = Assert.Throws<DesignFileException>(() => Design.Parse(DesignFixture.CurlewText.Remove(at, right.Length).Insert(at,
            wrong),
            "curlew.json"));
        Assert.Contains(says, error.Message, StringComparison.Ordinal);
        Assert.StartsWith($"curlew.json, line {error.Line}, column {error.Column}: ", error.Message, StringComparison.Ordinal);
        Assert.InRange(error.Line, 1, DesignFixture.CurlewText.Count(c => c == '\n'));
        Assert.DoesNotContain('\n', error.Message);
    }

    // A value that was given for one run stands in no line of the file.
    [Theory]
    [InlineData("throat", "13 bar", "Throat can't be \"13 bar\": that is a pressure or stress, and a length is wanted")]
    [InlineData("vessel.length", "9", "the unit is missing")]
    [InlineData("fill pressure", "500 psi absolute", "that is an absolute pressure, and a gauge pressure is wanted")]
    [InlineData("resin", "laminating epoxi", "nearest are \"laminating epoxy\"")]
    public void A_value_from_outside_is_blamed_and_nothing_that_follows_from_it(string name, string value, string says)
    {
        var wrong = Assert.Throws<DesignFileException>(() => DesignFixture.Curlew.With(name, value));
        Assert.Single(wrong.Mistakes);
        Assert.Equal(0, wrong.Line);
        Assert.Contains(says, wrong.Message, StringComparison.Ordinal);
        Assert.DoesNotContain(".json", wrong.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_value_from_outside_its_range_names_the_line_of_the_range()
    {
        var bore = DesignFixture.CurlewText.IndexOf("\"bore\":", StringComparison.Ordinal);
        var line = DesignFixture.CurlewText[..bore].Count(c => c == '\n') + 1;
        var wrong = Assert.Throws<DesignFileException>(() => DesignFixture.Curlew.With("bore", "68 mm"));
        Assert.StartsWith("Bore is 68 mm; it must be 50 mm to 67 mm.", wrong.Message, StringComparison.Ordinal);
        Assert.Matches($@"The range stands in .*, line ({line}|{line + 1}|{line + 2})\.$", wrong.Message);
    }

    [Fact]
    public void What_follows_from_a_value_from_outside_says_from_which()
    {
        var follows = Assert.Throws<DesignFileException>(() => Design.Parse(DesignFixture.CurlewText.Replace("\"guided\": \"2 m\"",
            "\"guided\": \"= site.ceiling - 598 m\"", StringComparison.Ordinal), "own.json").With("ceiling", "300 m"));
        Assert.StartsWith("own.json, line ", follows.Message, StringComparison.Ordinal);
        Assert.EndsWith("This follows from ceiling = 300 m.", follows.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_mistake_stands_at_its_value()
    {
        var at = DesignFixture.CurlewText.IndexOf("\"1925 mm\"", StringComparison.Ordinal);
        var error = Assert.Throws<DesignFileException>(() => Design.Parse(DesignFixture.CurlewText.Replace("\"1925 mm\"", "\"1925\"",
            StringComparison.Ordinal)));
        var before = DesignFixture.CurlewText[..at];
        Assert.Equal(before.Count(c => c == '\n') + 1, error.Line);
        Assert.Equal(at - before.LastIndexOf('\n'), error.Column);
        Assert.Equal("nozzle.station", error.Mistakes[0].Path);
    }

    [Fact]
    public void All_mistakes_are_listed_in_the_order_of_the_text()
    {
        var text = DesignFixture.CurlewText.Replace("\"1925 mm\"", "\"1925\"", StringComparison.Ordinal)
            .Replace("\"35 m\"", "\"35\"", StringComparison.Ordinal).Replace("\"layers\": 2", "\"layer\": 2", StringComparison.Ordinal);
        var error = Assert.Throws<DesignFileException>(() => Design.Parse(text));
        Assert.Equal(["vessel.plies.3", "nozzle.station", "site.elevation"], error.Mistakes.Select(m => m.Path));
    }

    [Theory]
    [InlineData("")]
    [InlineData("   \n  ")]
    [InlineData("// nothing")]
    [InlineData("[]")]
    [InlineData("null")]
    [InlineData("\"a design\"")]
    [InlineData("{}")]
    [InlineData("{} {}")]
    [InlineData("{ /* ")]
    [InlineData("{ 'name': 1 }")]
    [InlineData("{ \"stages\": [] }")]
    [InlineData("<html>")]
    public void What_is_no_design_says_so_with_line_and_column(string text)
    {
        var error = Assert.Throws<DesignFileException>(() => Design.Parse(text));
        Assert.True(error.Line > 0 && error.Column > 0, error.Message);
    }

    [Fact]
    public void A_text_of_ten_megabytes_is_refused_before_it_is_read()
    {
        var error = Assert.Throws<DesignFileException>(() => Design.Parse($"{{ \"about\": \"{new string('x', 10_000_000)}\" }}"));
        Assert.Equal("design, line 1, column 1: the file has 10.0 MB, and a design has at most 1 MB; choose the design's own file.",
            error.Message);
        var deep = string.Concat(Enumerable.Repeat("{\"a\":", 150_000));
        Assert.Throws<DesignFileException>(() => Design.Parse(deep));
        Assert.Throws<DesignFileException>(() => Design.Parse($"[{string.Join(',', Enumerable.Repeat("1", 400_000))}]"));
    }

    [Fact]
    public void A_circle_through_several_values_names_its_way()
    {
        var text = DesignFixture.CurlewText.Replace("\"35 m\"", "\"= site.rail.guided\"", StringComparison.Ordinal)
            .Replace("\"guided\": \"2 m\"", "\"guided\": \"= nozzle.station\"", StringComparison.Ordinal)
            .Replace("\"1925 mm\"", "\"= site.elevation\"", StringComparison.Ordinal);
        Assert.Contains("in a circle, \"nozzle.station\" from \"site.elevation\" from \"site.rail.guided\" from \"nozzle.station\"",
            Assert.Throws<DesignFileException>(() => Design.Parse(text)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void What_the_disk_refuses_is_said_in_the_same_way()
    {
        var folder = Directory.CreateTempSubdirectory();
        try
        {
            var missing = Path.Combine(folder.FullName, "none.json");
            Assert.Contains("there is no design file", Assert.Throws<DesignFileException>(() => Design.Read(missing)).Message,
                StringComparison.Ordinal);
            Assert.Contains("it is a folder", Assert.Throws<DesignFileException>(() => Design.Read(folder.FullName)).Message,
                StringComparison.Ordinal);
            Assert.Contains("it is a folder", Assert.Throws<DesignFileException>(() =>
                DesignFixture.Curlew.Write(folder.FullName)).Message, StringComparison.Ordinal);
            Assert.Throws<DesignFileException>(() => DesignFixture.Curlew.Write(Path.Combine(folder.FullName, "no such", "d.json")));
            // Nobody may write there, whatever their rights.
            if (OperatingSystem.IsLinux())
                Assert.Contains("check its folder and your rights there", Assert.Throws<DesignFileException>(() =>
                    DesignFixture.Curlew.Write("/proc/design.json")).Message, StringComparison.Ordinal);
            Assert.Throws<DesignFileException>(() => Design.Read("a\0b.json"));
            Assert.Throws<DesignFileException>(() => Design.Read(""));
            File.WriteAllBytes(missing, [0xff, 0xfe, 0x7b, 0x00]);
            Assert.Contains("save the file as UTF-8", Assert.Throws<DesignFileException>(() => Design.Read(missing)).Message,
                StringComparison.Ordinal);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [SkippableFact]
    public void A_folder_without_rights_is_named()
    {
        Skip.If(OperatingSystem.IsWindows(), "Rights are another matter there.");
        if (OperatingSystem.IsWindows()) return;
        var folder = Directory.CreateTempSubdirectory();
        try
        {
            File.SetUnixFileMode(folder.FullName, UnixFileMode.UserRead | UnixFileMode.UserExecute);
            var written = AsAnybody(() => Xunit.Record.Exception(() =>
                DesignFixture.Curlew.Write(Path.Combine(folder.FullName, "d.json"))));
            Assert.Contains("check its folder and your rights there", Assert.IsType<DesignFileException>(written).Message,
                StringComparison.Ordinal);
            Assert.IsType<UnauthorizedAccessException>(written.InnerException);
            Assert.Empty(folder.EnumerateFiles());
        }
        finally
        {
            File.SetUnixFileMode(folder.FullName, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
            folder.Delete(recursive: true);
        }
    }

    // Whoever may do all has rights everywhere: for files this thread becomes somebody else for a moment.
    private static T AsAnybody<T>(Func<T> act)
    {
        const uint nobody = 65_534, root = 0;
        if (!OperatingSystem.IsLinux() || Environment.UserName != "root") return act();
        var become = Marshal.GetDelegateForFunctionPointer<SetFileUser>(
            NativeLibrary.GetExport(NativeLibrary.Load("libc.so.6"), "setfsuid"));
        become(nobody);
        try
        {
            return act();
        }
        finally
        {
            become(root);
        }
    }

    private delegate int SetFileUser(uint user);
}

using NotebookKit.DesignFiles;
using NotebookKit.DesignFiles.Trees;

namespace NotebookKit.Tests.DesignFiles;

/// <summary>What a pen or a word processor puts into a file is said in plain words, once, where it stands.</summary>
public sealed class PlainMistakeTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("nk-plain-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("{ \u201Cname\u201D: \"A\" }", 3, "here is a curly quotation mark")]
    [InlineData("{ \"name\": \u201EA\u201C }", 11, "here is a curly quotation mark")]
    [InlineData("{ \"count\": NaN }", 12, "NaN is no number of a file; write the value, or leave its key out.")]
    [InlineData("{ \"count\": -Infinity }", 12, "is no number of a file")]
    [InlineData("{ \"name\": A }", 11, "\"A\" can't stand here: keys and texts stand in straight double quotes")]
    [InlineData("{ name: \"A\" }", 3, "\"name\" can't stand here")]
    public void What_is_no_json_is_said_in_plain_words(string text, int column, string says)
    {
        var wrong = Assert.Throws<DesignFileException>(() => Design.Parse(text, "our.json"));
        Assert.Contains(says, wrong.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("invalid", wrong.Message, StringComparison.Ordinal);
        Assert.InRange(wrong.Column, column, column + 1);
    }

    [Fact]
    public void Brackets_in_brackets_in_brackets_are_said_in_plain_words()
    {
        var wrong = Assert.Throws<DesignFileException>(() => Design.Parse(new string('[', 5000), "our.json"));
        Assert.Contains("more than 64 brackets stand in one another here", wrong.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("depth", wrong.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void One_circle_of_values_taken_over_is_one_mistake()
    {
        var text = DesignFixture.CurlewText.Replace("\"elevation\": \"35 m\"", "\"elevation\": \"= site.rail.guided\"",
            StringComparison.Ordinal).Replace("\"guided\": \"2 m\"", "\"guided\": \"= site.elevation\"", StringComparison.Ordinal);
        Assert.Contains("\"= site.elevation\"", text, StringComparison.Ordinal);
        var wrong = Assert.Throws<DesignFileException>(() => Design.Parse(text));
        Assert.Single(wrong.Mistakes, m => m.Sentence.Contains("in a circle", StringComparison.Ordinal));
        Assert.Single(wrong.Mistakes);
    }

    [Fact]
    public void Who_writes_the_beginning_of_a_name_is_asked_whether_that_is_meant()
    {
        var wrong = Assert.Throws<DesignFileException>(() => DesignFixture.Curlew.With("fil", "3"));
        Assert.Contains("is \"fill pressure\" meant?", wrong.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_empty_file_of_a_test_is_called_a_test()
    {
        File.WriteAllText(Path.Combine(_folder, "t1.json"), "");
        var wrong = Assert.Throws<DesignFileException>(() => DesignFixture.Curlew.WithTests(_folder));
        Assert.Contains("the file ends without a test", wrong.Message, StringComparison.Ordinal);
        Assert.Contains("the file ends without a day", Assert.Throws<DesignFileException>(() => FlightDay.Parse("")).Message,
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"day\": \"28.11.2026\"", 3, 10, "a day is written year, month, day")]
    [InlineData("\"day\": \"2026-11-28\"", 4, 44, "isn't the mark of a label")]
    public void A_wrong_day_or_label_is_said_where_it_stands(string day, int line, int column, string says)
    {
        var label = day.Contains("2026-11", StringComparison.Ordinal) ? "3f9" : "3f9a-71c2";
        var wrong = Assert.Throws<DesignFileException>(() => FlightDay.Parse(
            $"{{\n  \"flight\": \"1\",\n  {day},\n  \"vessels\": [ {{ \"serial\": \"C-1\", \"label\": \"{label}\" }} ]\n}}", "day.json"));
        Assert.Equal((line, column), (wrong.Line, wrong.Column));
        Assert.Contains(says, wrong.Message, StringComparison.Ordinal);
    }
}

using System.Text;
using System.Text.RegularExpressions;
using NotebookKit.DesignFiles;
using NotebookKit.DesignFiles.Shapes;
using NotebookKit.DesignFiles.Trees;

namespace NotebookKit.Tests.DesignFiles;

/// <summary>Whatever is done to a file, it is read, or refused by the library's own exception with line and column.</summary>
public partial class DesignFuzzTests
{
    // A short run goes with every test run; NOTEBOOKKIT_LONG=1 makes the long one.
    private static readonly bool IsLong = Environment.GetEnvironmentVariable("NOTEBOOKKIT_LONG") == "1";

    private static readonly byte[] Whole = Encoding.UTF8.GetBytes(DesignFixture.CurlewText);

    [Fact]
    public void A_file_cut_off_at_any_byte_is_refused_with_line_and_column()
    {
        var folder = Directory.CreateTempSubdirectory();
        try
        {
            var path = Path.Combine(folder.FullName, "cut.json");
            var last = Whole.AsSpan().LastIndexOf((byte)'}');
            for (var length = 0; length <= last; length += IsLong ? 1 : 11)
            {
                File.WriteAllBytes(path, Whole[..length]);
                var error = Assert.Throws<DesignFileException>(() => Design.Read(path));
                Assert.True(error.Line > 0 && error.Column > 0, $"{length}: {error.Message}");
            }
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public void A_unit_of_another_kind_is_refused_everywhere()
    {
        var units = UnitKind.All.Select(k => k.Example).ToList();
        var swapped = 0;
        foreach (var match in WithUnit().Matches(DesignFixture.CurlewText).Cast<Match>())
        {
            var own = UnitKind.All.First(k => k.Read(match.Groups[1].Value) is not null);
            foreach (var other in units.Where(u => own.Read(u) is null))
            {
                var text = DesignFixture.CurlewText.Remove(match.Groups[1].Index, match.Groups[1].Length).Insert(match.Groups[1].Index,
                    other);
                var error = Assert.Throws<DesignFileException>(() => Design.Parse(text));
                Assert.Contains(error.Mistakes, m => m.Line == 1 + text[..match.Index].Count(c => c == '\n'));
                swapped++;
            }
        }

        Assert.True(swapped > 500);
    }

    [Fact]
    public void A_key_said_twice_is_refused_everywhere()
    {
        foreach (var match in ScalarMember().Matches(DesignFixture.CurlewText).Cast<Match>())
        {
            var text = DesignFixture.CurlewText.Insert(match.Index, match.Value.TrimEnd(',') + ", ");
            Assert.Contains("a second time", Assert.Throws<DesignFileException>(() => Design.Parse(text)).Message,
                StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Bytes_changed_at_random_never_end_in_another_exception(int seed)
    {
        var random = new Random(seed);
        var folder = Directory.CreateTempSubdirectory();
        var path = Path.Combine(folder.FullName, "changed.json");
        var (read, refused) = (0, 0);
        try
        {
            for (var i = 0; i < (IsLong ? 1200 : 150); i++)
            {
                var bytes = (byte[])Whole.Clone();
                for (var n = random.Next(1, 4); n > 0; n--)
                    bytes[random.Next(bytes.Length)] = random.Next(3) > 0 ? (byte)"{}[]\":,0 9m-e/*\n.%=\\"[random.Next(20)]
                        : (byte)random.Next(256);
                File.WriteAllBytes(path, bytes);
                try
                {
                    var design = Design.Read(path);
                    Assert.Equal(design.ToText(), Design.Parse(design.ToText()).ToText());
                    read++;
                }
                catch (DesignFileException error)
                {
                    Assert.True(error.Line > 0 && error.Column > 0, error.Message);
                    refused++;
                }
            }
        }
        finally
        {
            folder.Delete(recursive: true);
        }

        Assert.True(read > 5 && refused > 20, $"{read} read, {refused} refused");
    }

    [Fact]
    public void Whole_values_put_elsewhere_never_end_in_another_exception()
    {
        var random = new Random(7);
        var values = Value().Matches(DesignFixture.CurlewText).Cast<Match>().ToList();
        for (var i = 0; i < (IsLong ? 1500 : 200); i++)
        {
            var (to, from) = (values[random.Next(values.Count)].Groups[1], values[random.Next(values.Count)].Groups[1]);
            try
            {
                Design.Parse(DesignFixture.CurlewText.Remove(to.Index, to.Length).Insert(to.Index, from.Value)).ToText();
            }
            catch (DesignFileException error)
            {
                Assert.True(error.Line > 0 && error.Column > 0, error.Message);
            }
        }
    }

    [GeneratedRegex("""
        "(?:value|from|to|[a-z ]+)": "([0-9.]+ ?(?:mm|m|g|bar gauge|mL|%|°C|°|m/s|s))"
        """)]
    private static partial Regex WithUnit();

    [GeneratedRegex("""
        (?<=[{ ])"[a-z ]+": (?:"[^"\n]*"|[0-9.]+|true),?
        """)]
    private static partial Regex ScalarMember();

    [GeneratedRegex("""
        ": ("[^"\n]*"|[0-9.]+|true|\{[^{}\[\]\n]*\}|\[[^\[\]\n]*\])
        """)]
    private static partial Regex Value();
}

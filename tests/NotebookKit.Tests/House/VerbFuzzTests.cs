using NotebookKit.Tests.DesignFiles;

namespace NotebookKit.Tests.House;

/// <summary>Every public verb, with extreme values: each answers, refuses in the library's own words, or stops.</summary>
public class VerbFuzzTests
{
    // A short run goes with every test run; NOTEBOOKKIT_LONG=1 makes the long one.
    private static readonly int Rounds = Environment.GetEnvironmentVariable("NOTEBOOKKIT_LONG") == "1" ? 300 : 4;

    private static readonly VerbFuzz Fuzz = new(DesignFixture.Curlew, DesignFixture.Godwit, MaterialLibrary.Typical);

    [Fact]
    public void Extreme_values_are_answered_or_refused_by_the_library_itself()
    {
        var wrong = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (var verb in Fuzz.Verbs)
            for (var round = 0; round < Rounds; round++)
                if (Fuzz.Call(verb, SeedOf(verb, round)) is { } found)
                    wrong.TryAdd(VerbFuzz.NameOf(verb), $"{found} (round {round})");
        Assert.True(wrong.Count == 0, string.Join("\n", wrong.Select(w => $"{w.Key}: {w.Value}")));
    }

    [Fact]
    public void Most_of_the_library_can_be_called_so() => Assert.True(Fuzz.Verbs.Count > 800, $"{Fuzz.Verbs.Count} verbs");

    private static int SeedOf(System.Reflection.MethodBase verb, int round)
    {
        var seed = 17 + (7919 * round);
        foreach (var letter in VerbFuzz.NameOf(verb)) seed = unchecked((31 * seed) + letter);
        return seed & int.MaxValue;
    }
}

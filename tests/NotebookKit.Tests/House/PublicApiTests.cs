using PublicApiGenerator;

namespace NotebookKit.Tests.House;

/// <summary>What notebooks and records may rely on changes by decision, not by accident: the public signatures are kept beside this
/// test.</summary>
public class PublicApiTests
{
    private const string Accept = "NOTEBOOKKIT_ACCEPT_API";

    private static string Kept => Path.Combine(Repository.Root, "tests", "NotebookKit.Tests", "House", "PublicApi.txt");

    [Fact]
    public void The_public_signatures_are_those_that_were_agreed()
    {
        var now = Repository.Library.GeneratePublicApi(new() { IncludeAssemblyAttributes = false }).ReplaceLineEndings("\n");
        if (Environment.GetEnvironmentVariable(Accept) == "1") File.WriteAllText(Kept, now);
        string[] agreed = File.ReadAllText(Kept).ReplaceLineEndings("\n").Split('\n'), found = now.Split('\n');
        var missing = agreed.Except(found).Take(10).Select(l => $"gone: {l.Trim()}");
        var added = found.Except(agreed).Take(10).Select(l => $"new: {l.Trim()}");
        Assert.True(
            agreed.SequenceEqual(found),
            $"The public signatures changed. Where that is meant, say it in the change log and run the tests once with {Accept}=1.\n"
            + string.Join('\n', missing.Concat(added)));
    }
}

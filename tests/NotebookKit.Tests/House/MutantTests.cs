namespace NotebookKit.Tests.House;

/// <summary>Every mutant is a change of an expression that stands in its file: one that was rewritten takes its mutants along.</summary>
public class MutantTests
{
    [Fact]
    public void Every_mutant_stands_in_its_file_once()
    {
        var (text, seen) = ("", 0);
        List<string> broken = [];
        foreach (var line in File.ReadLines(Path.Combine(Repository.Root, "tests", "mutants", "mutants.txt"))
            .Where(l => l.Trim().Length > 0 && !l.StartsWith("//", StringComparison.Ordinal)))
        {
            if (line.StartsWith("# ", StringComparison.Ordinal))
            {
                text = File.ReadAllText(Path.Combine(Repository.Root, "src", "NotebookKit", line[2..].Split(" | ")[0].Trim()));
                continue;
            }

            seen++;
            var original = line.Split(" ==> ")[0].Trim().Replace("«", "", StringComparison.Ordinal)
                .Replace("»", "", StringComparison.Ordinal);
            if (text.Split(original).Length != 2) broken.Add(line);
        }

        Violations.None(broken);
        Assert.InRange(seen, 400, 10_000);
    }
}

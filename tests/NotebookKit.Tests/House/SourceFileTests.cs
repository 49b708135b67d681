using System.Text.RegularExpressions;

namespace NotebookKit.Tests.House;

/// <summary>One idea a file.</summary>
public partial class SourceFileTests
{
    private const int LongestFile = 400, LongestSmallType = 15, LongestLine = 140;

    [Fact]
    public void No_source_file_is_longer_than_400_lines() =>
        Violations.None(
            from file in Repository.Sources("src")
            let lines = File.ReadLines(file).Count()
            where lines > LongestFile
            select $"{Path.GetRelativePath(Repository.Root, file)}: {lines} lines");

    [Theory]
    [InlineData("src")]
    [InlineData("tests")]
    public void No_line_is_longer_than_140_columns(string folder) =>
        Violations.None(
            from file in Repository.Sources(folder)
            from line in OwnLines(File.ReadAllLines(file))
            where line.Text.Length > LongestLine
            select $"{Path.GetRelativePath(Repository.Root, file)}, line {line.Number}: {line.Text.Length} columns");

    /// <summary>All lines but those of raw texts, which are another language's: a style sheet, a notebook, a file of materials.</summary>
    private static IEnumerable<(int Number, string Text)> OwnLines(string[] lines)
    {
        var raw = false;
        for (var i = 0; i < lines.Length; i++)
        {
            var fences = Regex.Count(lines[i], "\"{3,}");
            if (!raw && fences == 0) yield return (i + 1, lines[i]);
            raw ^= fences % 2 == 1;
        }
    }

    [Fact]
    public void A_file_declares_the_type_whose_name_it_bears_and_beside_it_only_the_small_ones_that_are_its_members() =>
        Violations.None(
            from file in Repository.Sources("src")
            let name = Path.GetFileName(file).Split('.', '{')[0]
            let types = Blocks(File.ReadAllLines(file))
            where types.Any(t => t.IsPublic || t.Name == name)
            from wrong in types.Any(t => t.Name == name)
                ? types.Where(t => t.Name != name && !IsSmallMember(t, types)).Select(t => $"{t.Name} is no small member of {name}")
                : [$"there is no {name}"]
            select $"{Path.GetRelativePath(Repository.Root, file)}: {wrong}");

    /// <summary>An enum or record of few lines that a signature of another type of the file names.</summary>
    private static bool IsSmallMember(Block type, IReadOnlyList<Block> all) =>
        type.Kind is "enum" or "record" or "record struct" && type.Lines.Count <= LongestSmallType
        && all.Where(t => t != type).SelectMany(Signatures).Any(line => Regex.IsMatch(line, $@"\b{type.Name}\b"));

    private static IEnumerable<string> Signatures(Block type)
    {
        var code = type.Lines.Where(line => !line.TrimStart().StartsWith("//", StringComparison.Ordinal)).ToList();
        yield return string.Join(' ', code).Split('{', ';')[0];
        foreach (var member in code.Where(line => Member().IsMatch(line))) yield return member.Split("=>")[0].Split(" = ")[0];
    }

    /// <summary>Every type of a file that doesn't lie in another, with its documentation.</summary>
    private static List<Block> Blocks(string[] lines)
    {
        var starts = Enumerable.Range(0, lines.Length).Where(i => OuterType().IsMatch(lines[i])).Select(i => (At: i,
            First: First(i))).ToList();
        return
        [
            .. starts.Select((start, k) =>
            {
                var match = OuterType().Match(lines[start.At]);
                var end = k + 1 < starts.Count ? starts[k + 1].First : lines.Length;
                while (lines[end - 1].Length == 0) end--;
                return new Block(match.Groups["name"].Value, match.Groups["kind"].Value, match.Groups["access"].Value == "public",
                    lines[start.First..end]);
            }),
        ];

        int First(int at)
        {
            while (at > 0 && (lines[at - 1].StartsWith("//", StringComparison.Ordinal) || lines[at - 1].StartsWith('['))) at--;
            return at;
        }
    }

    // The root of a folder is what a user writes; how it is done lies in its subfolders.
    [Fact]
    public void No_internal_type_lies_at_the_root_of_a_folder() =>
        Violations.None(
            from file in Repository.Sources(Path.Combine("src", "NotebookKit"))
            where FolderOf(file).Count(c => c == '.') == 1
            from type in Blocks(File.ReadAllLines(file))
            where !type.IsPublic
            select $"{Path.GetRelativePath(Repository.Root, file)}: {type.Name}");

    // Sentences and sources lie in folders of their own and bear the name of the folder that they are of.
    [Fact]
    public void A_namespace_is_named_after_its_folder() =>
        Violations.None(
            from file in Repository.Sources(Path.Combine("src", "NotebookKit"))
            let space = File.ReadLines(file).Select(l => Namespace().Match(l)).FirstOrDefault(m => m.Success)?.Groups["name"].Value
            where space != Regex.Replace(FolderOf(file), @"^(NotebookKit\.\w+)\.(Sentences|Sources)$", "$1")
            select $"{Path.GetRelativePath(Repository.Root, file)}: {space}");

    private static string FolderOf(string file) =>
        Path.GetRelativePath(Path.Combine(Repository.Root, "src"), Path.GetDirectoryName(file)!).Replace(Path.DirectorySeparatorChar, '.');

    [Fact]
    public void Every_folder_of_the_library_has_its_tests() =>
        Violations.None(
            from folder in Directory.EnumerateDirectories(Path.Combine(Repository.Root, "src", "NotebookKit"))
            let name = Path.GetFileName(folder)
            where name is not ("bin" or "obj")
            where !Directory.Exists(Path.Combine(Repository.Root, "tests", "NotebookKit.Tests", name))
            select name);

    [Fact]
    public void Nothing_is_called_after_what_it_is_not() =>
        Violations.None(
            from file in Repository.Sources("src")
            where VagueName().IsMatch(Path.GetFileNameWithoutExtension(file))
            select Path.GetRelativePath(Repository.Root, file));

    [GeneratedRegex(@"^(?<access>public|internal)\s+(?:(?:static|sealed|abstract|partial|readonly|ref)\s+)*"
        + @"(?<kind>class|record struct|record|struct|enum|interface|delegate\s+\S+)\s+(?<name>\w+)")]
    private static partial Regex OuterType();

    [GeneratedRegex(@"^namespace (?<name>[\w.]+);")]
    private static partial Regex Namespace();

    [GeneratedRegex("^ {4}[A-Za-z]")]
    private static partial Regex Member();

    [GeneratedRegex("(Utils?|Utilit(y|ies)|Helpers?|Managers?|Misc)$")]
    private static partial Regex VagueName();

    private sealed record Block(string Name, string Kind, bool IsPublic, IReadOnlyList<string> Lines);
}

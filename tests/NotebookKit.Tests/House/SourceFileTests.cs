using System.Text.RegularExpressions;

namespace NotebookKit.Tests.House;

/// <summary>One idea a file.</summary>
public partial class SourceFileTests
{
    private const int LongestFile = 400;

    [Fact]
    public void No_source_file_is_longer_than_400_lines() =>
        Violations.None(
            from file in Repository.Sources("src")
            let lines = File.ReadLines(file).Count()
            where lines > LongestFile
            select $"{Path.GetRelativePath(Repository.Root, file)}: {lines} lines");

    [Fact]
    public void A_file_declares_one_public_type_and_bears_its_name() =>
        Violations.None(
            from file in Repository.Sources("src")
            let types = PublicType().Matches(File.ReadAllText(file)).Select(m => m.Groups["name"].Value).Distinct().ToList()
            where types.Count > 1 || (types.Count == 1 && Path.GetFileName(file).Split('.', '{')[0] != types[0])
            select $"{Path.GetRelativePath(Repository.Root, file)}: {string.Join(", ", types)}");

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

    [GeneratedRegex(@"^public\s+(?:(?:static|sealed|abstract|partial|readonly|ref)\s+)*(?:class|record struct|record|struct|enum|interface|delegate\s+\S+)\s+(?<name>\w+)", RegexOptions.Multiline)]
    private static partial Regex PublicType();

    [GeneratedRegex("(Utils?|Utilit(y|ies)|Helpers?|Managers?|Misc)$")]
    private static partial Regex VagueName();
}

using System.Text;
using System.Text.Json;
using System.Xml.Linq;

namespace NotebookKit.Runner.Tests;

/// <summary>
/// The list of what the program carries of others is the list of what was restored for it. With NOTEBOOKKIT_ACCEPT_NOTICES=1 it is written
/// anew.
/// </summary>
public sealed class NoticesTests
{
    private const string Head = """
        # What the program carries of others

        Whoever passes the built program on passes these on with it. A package's own folder holds its full licence text and its notices. The
        list is made of the packages as restored; a test keeps it current.

        | package | version | licence |
        |---|---|---|

        """;

    // Files of others inside our own, each with its licence beside it or inside.
    private const string Tail = """

        Inside the program's own files: `temml` (MIT) and a subset of TeX Gyre Pagella Math as `notebookkit-math` (GUST Font Licence), their
        licences in `Pages/ThirdParty`; `plotly.js` (MIT), carried by Plotly.NET.
        `live.html` carries the .NET runtime for browsers (MIT), and MathNet.Numerics, NetTopologySuite and UnitsNet in the versions above.

        """;

    private static string Runner => Path.Combine(TestFolder.Repository, "src", "NotebookKit.Runner");

    [Fact]
    public void The_notices_name_every_package_that_the_program_carries()
    {
        var file = Path.Combine(Runner, "THIRD-PARTY-NOTICES.md");
        var expected = Text().ReplaceLineEndings("\n");
        if (Environment.GetEnvironmentVariable("NOTEBOOKKIT_ACCEPT_NOTICES") == "1") File.WriteAllText(file, expected);
        Assert.Equal(expected, File.ReadAllText(file).ReplaceLineEndings("\n"));
    }

    [Fact]
    public void The_notices_lie_beside_the_program() => Assert.True(File.Exists(Path.Combine(AppContext.BaseDirectory,
        "THIRD-PARTY-NOTICES.md")));

    private static string Text()
    {
        using var assets = JsonDocument.Parse(File.ReadAllText(Path.Combine(Runner, "obj", "project.assets.json")));
        var folders = assets.RootElement.GetProperty("packageFolders").EnumerateObject().Select(f => f.Name).ToList();
        var rows = new StringBuilder();
        foreach (var library in assets.RootElement.GetProperty("targets").EnumerateObject().First().Value.EnumerateObject()
            .Where(Carried).OrderBy(l => l.Name, StringComparer.OrdinalIgnoreCase))
        {
            var name = library.Name.Split('/');
            rows.Append("| ").Append(name[0]).Append(" | ").Append(name[1]).Append(" | ").Append(Licence(folders, name[0], name[1]))
                .Append(" |\n");
        }

        return Head + rows + Tail;
    }

    private static bool Carried(JsonProperty library) =>
        library.Value.GetProperty("type").GetString() == "package"
        && (library.Value.TryGetProperty("runtimeTargets", out _) || (library.Value.TryGetProperty("runtime", out var files)
            && files.EnumerateObject().Any(f => !f.Name.EndsWith("_._", StringComparison.Ordinal))));

    private static string Licence(IEnumerable<string> folders, string name, string version)
    {
        var lower = name.ToLowerInvariant();
        var file = folders.Select(f => Path.Combine(f, lower, version, lower + ".nuspec")).First(File.Exists);
        var metadata = XDocument.Load(file).Root!.Elements().First(e => e.Name.LocalName == "metadata").Elements().ToList();
        if (metadata.FirstOrDefault(e => e.Name.LocalName == "license") is { } licence)
            return licence.Attribute("type")?.Value == "file" ? $"the package's file {licence.Value}" : licence.Value;
        return metadata.FirstOrDefault(e => e.Name.LocalName == "licenseUrl") is { } address ? $"<{address.Value}>"
            : "not stated in the package";
    }
}

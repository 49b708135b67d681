using NotebookKit.Clearance.Service;
using NotebookKit.DesignFiles;
using NotebookKit.DesignFiles.Shapes;
using NotebookKit.DesignFiles.Trees;
using NotebookKit.Logs;
using NotebookKit.Provenance;
using NotebookKit.Runner.Notebooks;

namespace NotebookKit.Runner.Commands;

/// <summary>What commands on a design's file share: reading it with other values, and saying what is wrong with it.</summary>
internal static class DesignRequest
{
    /// <summary>The file that names mean: a file, or the design of a club's folder.</summary>
    public const string InFolder = "design.json";

    /// <summary>Reads a design and puts other values in it.</summary>
    /// <param name="file">Its file, or the folder that holds it.</param>
    /// <param name="givens">A <c>name=value</c> each.</param>
    public static Design Read(string file, IEnumerable<string> givens) => Changed(Directory.Exists(file)
        ? Design.Read(Path.Combine(file, InFolder)).WithTests(Path.Combine(file, "tests")) : Design.Read(file), givens);

    /// <summary>Reads a club's folder.</summary>
    /// <param name="folder">The folder.</param>
    public static ClubFolder Club(string folder) => Directory.Exists(folder) ? ClubFolder.Read(folder)
        : throw new RequestException($"\"{folder}\" isn't a folder. Give the club's folder, the one with {InFolder}.");

    /// <summary>Puts other values in a design.</summary>
    /// <param name="design">The design.</param>
    /// <param name="givens">A <c>name=value</c> each.</param>
    public static Design Changed(Design design, IEnumerable<string> givens) => givens.Aggregate(design, Changed);

    /// <summary>The same for a name and a value; a name that means nothing is refused with the names that there are.</summary>
    /// <param name="design">The design.</param>
    /// <param name="name">Path or plain name.</param>
    /// <param name="value">What it is to be.</param>
    public static Design Changed(Design design, string name, string value)
    {
        try
        {
            return design.With(name, value);
        }
        catch (DesignFileException unknown) when (unknown.Mistakes is [{ Line: 0, Path: "" }]
            && unknown.Mistakes[0].Sentence.StartsWith("the design has no value", StringComparison.Ordinal))
        {
            throw new RequestException(unknown.Message, ["The design's values with their reasons are:",
                .. design.Givens.Where(g => g.State == GivenState.Stated && g.HasReason).Select(g => $"  {g.Name} = {g.Value}"
                    + (g.Range.Length > 0 ? $"   ({g.Range})" : "")),
                "Every other value of the file may be changed by its path: \"vessel.plies.1\", \"site.wind.speed\"."]);
        }
    }

    /// <summary>The name of a design's file without its ending, or of the folder that holds it.</summary>
    /// <param name="file">File or folder.</param>
    public static string NameOf(string file)
    {
        var full = Path.TrimEndingDirectorySeparator(Path.GetFullPath(file));
        return Directory.Exists(full) ? Path.GetFileName(full) : Path.GetFileNameWithoutExtension(full) is var name
            && $"{name}.json" == InFolder && Path.GetDirectoryName(full) is { } folder ? Path.GetFileName(folder) : name;
    }

    /// <summary>Where what a command makes goes: 'out' in the repository, or in the current folder outside it.</summary>
    public static string Output() => RepositoryFolders.TryFind()?.Output ?? Path.GetFullPath("out");

    /// <summary>Writes what a command makes, whole or not at all.</summary>
    /// <param name="path">Where to.</param>
    /// <param name="text">The text.</param>
    public static void Keep(string path, string text) => Keep(path, () => AtomicFile.Write(path, text));

    /// <summary>Writes what a command makes, whole or not at all.</summary>
    /// <param name="path">Where to.</param>
    /// <param name="write">Writes it.</param>
    public static void Keep(string path, Action<Stream> write) => Keep(path, () => AtomicFile.Write(path, write));

    private static void Keep(string path, Action write)
    {
        try
        {
            write();
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or ArgumentException)
        {
            throw new RequestException($"\"{path}\" can't be written ({error.Message.TrimEnd('.')}); check the folder and your rights "
                + "there, or choose another place.");
        }
    }

    /// <summary>Does what a command does, and turns what is wrong with a design into a request's refusal.</summary>
    /// <param name="action">The command.</param>
    public static int Sensibly(Func<int> action)
    {
        try
        {
            return action();
        }
        catch (DesignFileException error)
        {
            throw new RequestException(error.Message, [.. error.Mistakes.Skip(1).Select(m => m.Line > 0
                ? FormattableString.Invariant($"{error.File}, line {m.Line}, column {m.Column}: {m.Sentence}") : m.Sentence)]);
        }
        catch (Exception error) when (error is InvalidDesignException or FormatException or IOException or UnauthorizedAccessException
            or ServiceFileException)
        {
            throw new RequestException(error.Message);
        }
    }

    private static Design Changed(Design design, string given)
    {
        var cut = given.IndexOf('=', StringComparison.Ordinal);
        return cut > 0 ? Changed(design, given[..cut].Trim(), given[(cut + 1)..].Trim())
            : throw new RequestException($"\"{given}\" isn't a value; write it as name=value with the unit, for example \"fill "
                + "pressure=40 bar gauge\".");
    }
}

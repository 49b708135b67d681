using NotebookKit.DesignFiles;
using NotebookKit.DesignFiles.Trees;
using NotebookKit.Provenance;

namespace NotebookKit.Runner.Commands;

/// <summary>What commands on a design's file share: reading it with other values, and saying what is wrong with it.</summary>
internal static class DesignRequest
{
    /// <summary>The file that names mean: a file, or the design of a club's folder.</summary>
    public const string InFolder = "design.json";

    /// <summary>Reads a design and puts other values in it.</summary>
    /// <param name="file">Its file, or the folder that holds it.</param>
    /// <param name="givens">A <c>name=value</c> each.</param>
    public static Design Read(string file, IEnumerable<string> givens) =>
        givens.Aggregate(Design.Read(Directory.Exists(file) ? Path.Combine(file, InFolder) : file), Changed);

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
        catch (Exception error) when (error is InvalidDesignException or FormatException or IOException or UnauthorizedAccessException)
        {
            throw new RequestException(error.Message);
        }
    }

    private static Design Changed(Design design, string given)
    {
        var cut = given.IndexOf('=', StringComparison.Ordinal);
        return cut > 0 ? design.With(given[..cut].Trim(), given[(cut + 1)..].Trim())
            : throw new RequestException($"\"{given}\" isn't a value; write it as name=value with the unit, for example \"fill "
                + "pressure=40 bar gauge\".");
    }
}

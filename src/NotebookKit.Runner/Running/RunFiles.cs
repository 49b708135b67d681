using NotebookKit.Runner.Notebooks;

namespace NotebookKit.Runner.Running;

/// <summary>Writes what a run makes, and says in one sentence what couldn't be made or written instead of ending the run.</summary>
internal static class RunFiles
{
    private const int Longest = 300;

    /// <summary>Makes a text and writes it; of an older file of that name nothing is left where that fails.</summary>
    /// <param name="what">What it is, as the sentence begins: "The page".</param>
    /// <param name="path">Where it goes.</param>
    /// <param name="make">Makes the text.</param>
    /// <returns>Why there is no such file now, a sentence; none where there is.</returns>
    public static string? Write(string what, string path, Func<string> make)
    {
        string text;
        try
        {
            text = make();
        }
        catch (Exception e) when (e is not OperationCanceledException)
        {
            return $"{what} can't be made ({Words(e)}).{Old(path)}";
        }

        return Try(what, () => AtomicFile.Write(path, text)) is { } problem ? problem + Old(path) : null;
    }

    /// <summary>Does what writes files.</summary>
    /// <param name="what">What is written, as the sentence begins.</param>
    /// <param name="write">Writes it.</param>
    /// <returns>Why it couldn't be written, a sentence; none where it was.</returns>
    public static string? Try(string what, Action write)
    {
        try
        {
            write();
            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return $"{what} can't be written ({Words(e)}); make room, close the program that holds the file, or name another folder with "
                + "--out.";
        }
        catch (Exception e) when (e is not OperationCanceledException)
        {
            return $"{what} can't be made ({Words(e)}).";
        }
    }

    /// <summary>The first line of what an exception says, never a page of it.</summary>
    /// <param name="error">Exception.</param>
    public static string Words(Exception error)
    {
        var line = error.Message.Split('\n')[0].Trim().TrimEnd('.');
        return line.Length > Longest ? line[..Longest] + "..." : line;
    }

    // An old page of a notebook that can't be written any more would pass for a fresh one.
    private static string Old(string path) =>
        AtomicFile.TryDelete(path) ? "" : $" What lies at {path} is of an earlier run and can't be deleted.";
}

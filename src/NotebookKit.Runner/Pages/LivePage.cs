using NotebookKit.Runner.Notebooks;

namespace NotebookKit.Runner.Pages;

/// <summary>The page that carries the compiled library: made by the build, laid into the output folder by a run.</summary>
internal static class LivePage
{
    /// <summary>Name of its file.</summary>
    public const string FileName = "live.html";

    /// <summary>Where the build put it, beside the program.</summary>
    public static string Built => Path.Combine(AppContext.BaseDirectory, FileName);

    /// <summary>Copies the page; nothing where the program was built without it. A copy of the same build is left as it is.</summary>
    /// <param name="path">Where to.</param>
    public static void CopyTo(string path)
    {
        if (!File.Exists(Built)) return;
        var (made, there) = (new FileInfo(Built), new FileInfo(path));
        if (there.Exists && there.Length == made.Length && there.LastWriteTimeUtc == made.LastWriteTimeUtc) return;
        // An old page that can't be replaced would pass for this build's.
        AtomicFile.TryDelete(path);
        AtomicFile.Write(path, to =>
        {
            using var from = File.OpenRead(Built);
            from.CopyTo(to);
        });
        File.SetLastWriteTimeUtc(path, made.LastWriteTimeUtc);
    }
}

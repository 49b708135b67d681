using System.Text;
using NotebookKit.DesignFiles.Shapes;
using NotebookKit.DesignFiles.Trees;
using NotebookKit.Numerics;

namespace NotebookKit.DesignFiles.Disk;

/// <summary>Files of designs on the disk.</summary>
internal static class DesignFile
{
    /// <summary>The bytes of a file.</summary>
    /// <exception cref="DesignFileException">There is no such file, it is too long, or it can't be read.</exception>
    public static byte[] Bytes(string path)
    {
        var name = Path.GetFileName(path);
        try
        {
            var file = new FileInfo(path);
            if (!file.Exists)
                throw new DesignFileException(name, default(Place), Directory.Exists(path)
                    ? DesignFilesFindings.CannotOpen(path, "it is a folder") : DesignFilesFindings.NoSuchFile(path, Near(path)));
            if (file.Length > TreeReader.LongestText)
                throw new DesignFileException(name, new Place(1, 1), DesignFilesFindings.TextTooLong(file.Length / 1e6,
                    TreeReader.LongestText / 1e6));
            return File.ReadAllBytes(path);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw CannotOpen(path, error);
        }
    }

    // However the ending is written: a disk that tells t3.JSON from t3.json holds the same test in both.
    private static readonly EnumerationOptions AnyCase = new()
    {
        MatchCasing = MatchCasing.CaseInsensitive, MatchType = MatchType.Simple, AttributesToSkip = FileAttributes.None,
        IgnoreInaccessible = false,
    };

    /// <summary>Paths of the JSON files of a folder, by name, whatever the case of their ending; none where there is no such
    /// folder.</summary>
    /// <exception cref="DesignFileException">The folder can't be read.</exception>
    public static IReadOnlyList<string> JsonIn(string folder) => In(folder, ".json");

    /// <summary>Paths of the files of a folder that end in a way, by name, whatever the case of their ending; none where there is no such
    /// folder.</summary>
    /// <exception cref="DesignFileException">The folder can't be read.</exception>
    public static IReadOnlyList<string> In(string folder, string ending)
    {
        try
        {
            return Directory.Exists(folder) ? [.. Directory.GetFiles(folder, $"*{ending}", AnyCase).Order(StringComparer.Ordinal)] : [];
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            throw CannotOpen(folder, error);
        }
    }

    /// <summary>Puts a text in place of a file, whole or not at all.</summary>
    /// <exception cref="DesignFileException">The file can't be written.</exception>
    public static void Replace(string path, string text)
    {
        try
        {
            if (Directory.Exists(path)) throw new IOException("it is a folder");
            WorkRun.Current.Disk.Put(path, $"{path}.{Guid.NewGuid():N}.part",
                stream => stream.Write(new UTF8Encoding(encoderShouldEmitUTF8Identifier: false).GetBytes(text)), overwrite: true);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw CannotOpen(path, error);
        }
    }

    // A design of about that name beside it, which may be the one that is meant.
    private static string? Near(string path)
    {
        var folder = Path.GetDirectoryName(Path.GetFullPath(path));
        return Directory.Exists(folder) ? Nearest.Of(Path.GetFileName(path), Directory.EnumerateFiles(folder, "*.json").Take(1000)
            .Select(f => Path.GetFileName(f))) : null;
    }

    private static DesignFileException CannotOpen(string path, Exception error) => new(Path.GetFileName(path) is { Length: > 0 } name ? name
        : path, default(Place), DesignFilesFindings.CannotOpen(path, error.Message.TrimEnd('.')), error);
}

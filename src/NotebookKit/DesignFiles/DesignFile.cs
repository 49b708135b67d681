using System.Text;
using NotebookKit.DesignFiles.Trees;

namespace NotebookKit.DesignFiles;

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
                    ? DesignFilesFindings.CannotOpen(path, "it is a folder") : DesignFilesFindings.NoSuchFile(path));
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

    /// <summary>Puts a text in place of a file, whole or not at all.</summary>
    /// <exception cref="DesignFileException">The file can't be written.</exception>
    public static void Replace(string path, string text)
    {
        string? beside = null;
        try
        {
            if (Directory.Exists(path)) throw new IOException("it is a folder");
            beside = $"{path}.{Guid.NewGuid():N}.part";
            File.WriteAllText(beside, text, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
            File.Move(beside, path, overwrite: true);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            if (beside is not null && File.Exists(beside)) File.Delete(beside);
            throw CannotOpen(path, error);
        }
    }

    private static DesignFileException CannotOpen(string path, Exception error) => new(Path.GetFileName(path) is { Length: > 0 } name ? name
        : path, default(Place), DesignFilesFindings.CannotOpen(path, error.Message.TrimEnd('.')), error);
}

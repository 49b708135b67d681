using System.Text;

namespace NotebookKit.Runner.Notebooks;

/// <summary>Writes files whole or not at all: beside the target first, then in its place in one step.</summary>
internal static class AtomicFile
{
    private const string PartMark = ".part";

    /// <summary>Writes the text; folders are made as needed.</summary>
    /// <param name="path">Target file.</param>
    /// <param name="text">Its whole text, written as UTF-8 without a mark.</param>
    public static void Write(string path, string text) => Write(path, stream =>
    {
        using var writer = new StreamWriter(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), leaveOpen: true);
        writer.Write(text);
    });

    /// <summary>Writes whatever is written to a stream; folders are made as needed.</summary>
    /// <param name="path">Target file.</param>
    /// <param name="write">Writes it.</param>
    public static void Write(string path, Action<Stream> write)
    {
        var full = Path.GetFullPath(path);
        Directory.CreateDirectory(Path.GetDirectoryName(full)!);
        // Machines that share a folder may have processes of one number.
        var part = $"{full}.{Environment.MachineName}.{Environment.ProcessId}{PartMark}";
        try
        {
            using (var stream = File.Create(part)) write(stream);
            File.Move(part, full, overwrite: true);
        }
        finally
        {
            File.Delete(part);
        }
    }
}

using System.Text.RegularExpressions;
using NotebookKit.Logs;

namespace NotebookKit.Runner.Wording;

/// <summary>Says which file is missing, where it was looked for, and which one was perhaps meant.</summary>
internal static partial class MissingFile
{
    /// <summary>The sentence; none where the exception names no file.</summary>
    /// <param name="exception">What was thrown.</param>
    public static string? Of(Exception exception)
    {
        var path = exception switch
        {
            FileNotFoundException { FileName: { Length: > 0 } file } => file,
            LogFormatException { Line: 0, File: { Length: > 0 } file } when !File.Exists(file) => file,
            FileNotFoundException or DirectoryNotFoundException when Quoted().Match(exception.Message) is { Success: true } quoted
                => quoted.Groups["path"].Value,
            _ => null,
        };
        // An assembly that can't be loaded is named by its version.
        if (path is null || path.Contains("Version=", StringComparison.Ordinal)) return null;
        var full = Path.GetFullPath(path);
        var (folder, name) = (Path.GetDirectoryName(full) ?? full, Path.GetFileName(full));
        if (!Directory.Exists(folder))
            return $"There is no folder {folder}, where {name} was looked for{Near(folder, Directory.GetDirectories)}.";
        return $"There is no file {name} in {folder}{Near(full, Directory.GetFiles)}.";
    }

    private static string Near(string path, Func<string, string[]> list)
    {
        if (Path.GetDirectoryName(path) is not { } parent || !Directory.Exists(parent)) return "";
        try
        {
            var nearest = NearestName.Of(Path.GetFileName(path),
                list(parent).Select(p => Path.GetFileName(p)).Order(StringComparer.Ordinal));
            return nearest is null ? "" : $"; the nearest is {nearest}";
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return "";
        }
    }

    [GeneratedRegex("'(?<path>[^']+)'")]
    private static partial Regex Quoted();
}

using System.Text.Json.Nodes;
using NotebookKit.Runner.Notebooks;

namespace NotebookKit.Runner.Pages;

/// <summary>Moves the pictures of a text cell into its page.</summary>
/// <param name="folder">Folder of the notebook.</param>
/// <param name="attachments">Pictures that the cell itself carries; none where it carries none.</param>
internal sealed class Pictures(string folder, JsonObject? attachments)
{
    private const string AttachmentScheme = "attachment:";

    /// <summary>The picture as a data link; none where there is no such picture here. Nothing is fetched from elsewhere.</summary>
    /// <param name="url">The picture's address in the notebook.</param>
    public string? Find(string url) =>
        url.StartsWith("data:image/", StringComparison.Ordinal) ? url
        : url.StartsWith(AttachmentScheme, StringComparison.Ordinal) ? FromAttachment(url[AttachmentScheme.Length..])
        : FromFile(url);

    private string? FromAttachment(string name)
    {
        if (attachments?[Uri.UnescapeDataString(name)] is not JsonObject bundle) return null;
        var (type, data) = bundle.FirstOrDefault(p => p.Key.StartsWith("image/", StringComparison.Ordinal));
        if (data is null) return null;
        var text = NotebookCell.TextOf(data);
        return text.TrimStart().StartsWith('<') ? DataLink(type, System.Text.Encoding.UTF8.GetBytes(text))
            : $"data:{type};base64,{text.ReplaceLineEndings("")}";
    }

    private string? FromFile(string url)
    {
        if (Uri.TryCreate(url, UriKind.Absolute, out _)) return null;
        try
        {
            var path = Path.GetFullPath(Path.Combine(folder, Uri.UnescapeDataString(url)));
            return File.Exists(path) && TypeOf(path) is { } type ? DataLink(type, File.ReadAllBytes(path)) : null;
        }
        catch (Exception e) when (e is ArgumentException or IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private static string DataLink(string type, byte[] bytes) => $"data:{type};base64,{Convert.ToBase64String(bytes)}";

    private static string? TypeOf(string path) => Path.GetExtension(path).ToUpperInvariant() switch
    {
        ".SVG" => "image/svg+xml",
        ".PNG" => "image/png",
        ".JPG" or ".JPEG" => "image/jpeg",
        _ => null,
    };
}

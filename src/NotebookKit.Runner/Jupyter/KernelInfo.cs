using System.Text.Json.Nodes;

namespace NotebookKit.Runner.Jupyter;

/// <summary>What the kernel says of itself.</summary>
internal static class KernelInfo
{
    /// <summary>Name in kernelspecs and replies.</summary>
    public const string Name = "notebookkit";

    /// <summary>Name that people see.</summary>
    public const string DisplayName = "NotebookKit C#";

    /// <summary>The answer to a kernel-info request.</summary>
    public static JsonObject Answer() => new()
    {
        ["protocol_version"] = JupyterMessage.ProtocolVersion,
        ["implementation"] = Name,
        ["implementation_version"] = Version,
        ["language_info"] = new JsonObject
        {
            ["name"] = "C#",
            ["version"] = "14.0",
            ["mimetype"] = "text/x-csharp",
            ["file_extension"] = ".cs",
            ["pygments_lexer"] = "csharp",
            ["codemirror_mode"] = "text/x-csharp",
        },
        ["banner"] = $"{DisplayName} {Version}: C# with the NotebookKit library, its charts, logs and units loaded.",
        ["debugger"] = false,
        ["help_links"] = new JsonArray(),
    };

    private static string Version => typeof(KernelInfo).Assembly.GetName().Version?.ToString(3) ?? "0.0.0";
}

using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using NotebookKit.Charts;
using NotebookKit.Runner.Notebooks;

namespace NotebookKit.Runner.Jupyter;

/// <summary>The kernel's entry in a front-end's list of kernels.</summary>
/// <param name="DataFolder">Jupyter data folder that holds it.</param>
internal sealed record KernelSpec(string DataFolder)
{
    private const string WindowsStarter = "start.cmd";
    private const string ShellStarter = "start.sh";
    private const string PlaceMember = "notebookkit_program";
    private static readonly JsonSerializerOptions Layout = new() { WriteIndented = true, NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Its own folder.</summary>
    public string Folder => Path.Combine(DataFolder, "kernels", KernelInfo.Name);

    /// <summary>Whether it is there.</summary>
    public bool Exists => File.Exists(SpecFile);

    /// <summary>The program it starts; none where that can't be told.</summary>
    public string? Program
    {
        get
        {
            try
            {
                return NotebookCell.TextOf(JsonNode.Parse(File.ReadAllText(SpecFile))?["metadata"]?[PlaceMember]) is { Length: > 0 } path
                    ? path : null;
            }
            catch (Exception e) when (e is IOException or JsonException)
            {
                return null;
            }
        }
    }

    /// <summary>What a front-end starts.</summary>
    /// <param name="windows">Whether on Windows.</param>
    public static JsonArray Arguments(bool windows) => windows
        // Without "call" the interpreter takes off the outer quotes of two quoted paths, and a user's name with a space in it ends the
        // kernel.
        ? new JsonArray("cmd", "/c", "call", "{resource_dir}\\" + WindowsStarter, "{connection_file}")
        : new JsonArray("sh", "{resource_dir}/" + ShellStarter, "{connection_file}");

    private string SpecFile => Path.Combine(Folder, "kernel.json");

    /// <summary>Writes it, in place of an older one.</summary>
    /// <param name="program">The program it is to start.</param>
    /// <param name="runtime">The runtime it was added with, for front-ends that were started from a desktop and have none on their
    /// path.</param>
    public void Write(string program, string runtime)
    {
        var starter = OperatingSystem.IsWindows() ? WindowsStarter : ShellStarter;
        AtomicFile.Write(Path.Combine(Folder, starter), OperatingSystem.IsWindows() ? KernelStarter.ForWindows(program, runtime)
            : KernelStarter.ForShell(program, runtime));
        AtomicFile.Write(Path.Combine(Folder, ChartHtml.LibraryFile), PlotlyScript.Wrapped);
        AtomicFile.Write(Path.Combine(Folder, "logo-svg.svg"), KernelLogo.Svg);
        foreach (var picture in KernelLogo.Pictures) AtomicFile.Write(Path.Combine(Folder, picture),
            target => KernelLogo.Write(picture, target));
        var spec = new JsonObject
        {
            ["argv"] = Arguments(OperatingSystem.IsWindows()),
            ["display_name"] = KernelInfo.DisplayName,
            ["language"] = "C#",
            ["interrupt_mode"] = "message",
            ["metadata"] = new JsonObject { [PlaceMember] = program },
        };
        AtomicFile.Write(SpecFile, spec.ToJsonString(Layout) + "\n");
    }

    /// <summary>Takes it away.</summary>
    public void Remove() => Directory.Delete(Folder, recursive: true);
}

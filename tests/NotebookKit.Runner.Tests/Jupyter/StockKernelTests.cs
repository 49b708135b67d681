using System.Diagnostics;
using System.Reflection;
using System.Text.Json;
using System.Text.Json.Nodes;
using NotebookKit.Interactive;

namespace NotebookKit.Runner.Tests.Jupyter;

/// <summary>
/// The stock C# kernel with our extension in it: tables and words work, and it says plainly that live charts need ours. The kernel comes with the
/// packages that this project restores.
/// </summary>
public sealed class StockKernelTests : IAsyncLifetime, IDisposable
{
    private readonly TestFolder folder = new();
    private Process? process;
    private KernelClient kernel = null!;

    public async Task InitializeAsync()
    {
        var connection = KernelClient.NewConnection();
        await File.WriteAllTextAsync(folder["connection.json"], JsonSerializer.Serialize(connection));
        var program = typeof(StockKernelTests).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().Single(a => a.Key == "StockKernel").Value!;
        Assert.True(File.Exists(program), $"{program} was not restored.");
        // By itself it listens on every address of the machine; kept to this machine, and told to call nobody.
        var start = new ProcessStartInfo("dotnet", ["exec", program, "jupyter", "--default-kernel", "csharp", "--http-local-only", folder["connection.json"]])
        {
            RedirectStandardOutput = true, RedirectStandardError = true, WorkingDirectory = folder.Path,
        };
        start.Environment["DOTNET_INTERACTIVE_CLI_TELEMETRY_OPTOUT"] = "1";
        start.Environment["DOTNET_INTERACTIVE_SKIP_FIRST_TIME_EXPERIENCE"] = "1";
        start.Environment["DOTNET_gcServer"] = "0";
        start.Environment["HOME"] = folder.Path;
        start.Environment["DOTNET_CLI_HOME"] = folder.Path;
        process = Process.Start(start)!;
        process.OutputDataReceived += (_, _) => { };
        process.ErrorDataReceived += (_, _) => { };
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        kernel = new KernelClient(connection);
        kernel.WaitUntilHeard();
    }

    public async Task DisposeAsync()
    {
        kernel?.Dispose();
        if (process is null) return;
        process.Kill(entireProcessTree: true);
        await process.WaitForExitAsync();
        process.Dispose();
    }

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Results_are_tables_and_words_and_charts_say_which_kernel_they_need()
    {
        var greeting = Shown(
            $"""
            #r "{typeof(NotebookKitExtension).Assembly.Location}"
            await NotebookKit.Interactive.NotebookKitExtension.LoadAsync(Microsoft.DotNet.Interactive.Kernel.Root);
            """).Select(d => (string?)d["text/plain"]).OfType<string>().ToList();
        foreach (var g in greeting) Console.WriteLine("GREETING " + g);
        Dump("using NotebookKit.Quantities; using NotebookKit.Provenance; using NotebookKit.Record; using NotebookKit.Charts.Engineering;");
        Dump("63.Millimetres()");
        Dump("new[] { new ResultLine(\"Hoop stress\", \"99 MPa\") }");
        Dump("LineChart.Draw(\"Height\", new Series(\"time\", \"s\", [0.0, 1.0]), new Series(\"height\", \"m\", [0.0, 2.0]))");
        Dump("#!kit"); Dump("Samples()".Length > 0 ? $"#r \"{typeof(NotebookKit.Logs.LogReader).Assembly.Location}\"\nNotebookKit.Logs.LogReader.Read(\"/work/wt/kernel/data-demo/" + Directory.GetFiles("/work/wt/kernel/data-demo","*.csv").Select(Path.GetFileName).First() + "\")" : "");
    }

    private void Dump(string code)
    {
        foreach (var d in Shown(code)) Console.WriteLine("DUMP " + (d.ToJsonString() is var s && s.Length > 700 ? s[..700] : s));
    }

    private List<JsonObject> Shown(string code)
    {
        var (reply, published) = kernel.Run(code);
        Assert.True((string?)reply["status"] == "ok", string.Join('\n', published.Where(m => m.Type is "error" or "stream").Select(m => m.Content.ToJsonString())));
        return [.. published.Where(m => m.Type is "execute_result" or "display_data").Select(m => m.Content["data"]!.AsObject())];
    }
}

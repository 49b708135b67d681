using System.Diagnostics;
using System.Reflection;
using System.Text.Json;
using System.Text.Json.Nodes;
using NotebookKit.Interactive;

namespace NotebookKit.Runner.Tests.Jupyter;

/// <summary>
/// The stock C# kernel with our extension in it: tables and words work, and it says plainly that live charts need ours. The kernel comes
/// with the packages that this project restores.
/// </summary>
[Trait("Length", "long")]
public sealed class StockKernelTests : IAsyncLifetime, IDisposable
{
    private readonly TestFolder folder = new();
    private Process? process;
    private KernelClient kernel = null!;

    public async Task InitializeAsync()
    {
        var connection = KernelClient.NewConnection();
        await File.WriteAllTextAsync(folder["connection.json"], JsonSerializer.Serialize(connection));
        var program = typeof(StockKernelTests).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().Single(a => a.Key ==
            "StockKernel").Value!;
        Assert.True(File.Exists(program), $"{program} was not restored.");
        // By itself it listens on every address of the machine; kept to this machine, and told to call nobody.
        var start = new ProcessStartInfo("dotnet", ["exec", program, "jupyter", "--default-kernel", "csharp", "--http-local-only",
            folder["connection.json"]])
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
            """);
        Assert.Contains(greeting, d => ((string?)d["text/plain"])?.Contains("Charts are still pictures in this kernel",
            StringComparison.Ordinal) == true);

        Assert.Equal("63 mm", (string?)Assert.Single(Shown("63.Millimetres()"))["text/plain"]);

        Shown(
            """
            var stock = MaterialLibrary.Typical;
            VesselEnd End() => new(new FlatClosure(stock.Solid("aluminium 6061-T6"), 12.Millimetres()), new CarriedSleeve());
            var vessel = new PressureVessel("Trial", new Liner(stock.Solid("PET"), 66.Millimetres(), 0.5.Millimetres()), 700.Millimetres(), stock.Resin("laminating epoxy"),
                [new BraidedSleeve(stock.Braid("carbon sleeve 65 mm light"))], End(), End());
            """);
        var burst = Assert.Single(Shown("vessel.Burst()"));
        Assert.Contains("<table", (string?)burst["text/html"], StringComparison.Ordinal);
        Assert.Contains("Stored energy", (string?)burst["text/html"], StringComparison.Ordinal);
        Assert.Contains("bar gauge", (string?)burst["text/plain"], StringComparison.Ordinal);
        Assert.Contains("CAUTION", (string?)burst["text/plain"], StringComparison.Ordinal);

        var chart = Assert.Single(Shown("vessel.Burst().Chart()"));
        Assert.Equal(["text/html", "text/plain"], chart.Select(f => f.Key).Order());
        Assert.Contains("Live charts need NotebookKit", (string?)chart["text/html"], StringComparison.Ordinal);
        Assert.Contains("Live charts need NotebookKit's own kernel.", (string?)chart["text/plain"], StringComparison.Ordinal);
        Assert.Contains("<svg", (string?)chart["text/html"], StringComparison.Ordinal);

        Assert.Contains("#!cautions", (string?)Assert.Single(Shown("#!kit"))["text/plain"], StringComparison.Ordinal);
    }

    private List<JsonObject> Shown(string code)
    {
        var (reply, published) = kernel.Run(code);
        Assert.True((string?)reply["status"] == "ok", string.Join('\n',
            published.Where(m => m.Type is "error" or "stream").Select(m => m.Content.ToJsonString())));
        return [.. published.Where(m => m.Type is "execute_result" or "display_data").Select(m => m.Content["data"]!.AsObject())];
    }
}

using System.Diagnostics;
using NotebookKit.Runner.Jupyter;
using NotebookKit.Runner.Workers;

namespace NotebookKit.Runner.Tests.Jupyter;

/// <summary>The Jupyter project's own programs against our kernel; skipped where they aren't installed (Debian:
/// python3-jupyter-kernel-test, python3-nbclient).</summary>
[Trait("Length", "long")]
public sealed class FrontEndTests : IDisposable
{
    private const string Python = "/usr/bin/python3";
    private readonly TestFolder folder = new();

    public FrontEndTests() => new KernelSpec(folder["data"]).Write(typeof(WorkerProgram).Assembly.Location, WorkerProgram.RuntimeHost());

    public void Dispose() => folder.Dispose();

    [SkippableFact]
    public async Task The_protocol_conformance_suite_passes()
    {
        await NeedAsync("jupyter_kernel_test");
        var (code, said) = await RunAsync(Path.Combine(AppContext.BaseDirectory, "Jupyter", "kernel_conformance.py"));
        Assert.True(code == 0, said);
        Assert.Contains("OK", said, StringComparison.Ordinal);
    }

    [SkippableFact]
    public async Task A_client_executes_a_notebook_through_the_kernel()
    {
        await NeedAsync("nbclient");
        var notebook = folder.CopyOf("passes.ipynb");
        var script = $"""
            import nbformat, nbclient
            book = nbformat.read(r"{notebook}", 4)
            nbclient.NotebookClient(book, timeout=600, startup_timeout=600, kernel_name="notebookkit").execute()
            nbformat.validate(book)
            cells = [c for c in book.cells if c.cell_type == "code"]
            assert "application/vnd.plotly.v1+json" in cells[2].outputs[0].data, cells[2].outputs
            assert isinstance(cells[2].outputs[0].data["application/vnd.plotly.v1+json"], dict)
            print("executed", cells[-1].outputs[0].text)
            """;
        var (code, said) = await RunAsync("-c", script);
        Assert.True(code == 0, said);
        Assert.Contains("executed to the console", said, StringComparison.Ordinal);
    }

    [SkippableFact]
    public async Task The_terminal_front_end_shows_results_in_words()
    {
        await NeedAsync("jupyter_console");
        var (code, said) = await RunAsync("-c", "import subprocess, sys; r = subprocess.run([sys.executable, '-m', 'jupyter_console', "
            + "'--kernel', 'notebookkit', '--simple-prompt'], input='6 * 7\\n63.Millimetres()\\n', text=True, capture_output=True, "
            + "timeout=600); print(r.stdout)");
        Assert.True(code == 0, said);
        Assert.Contains("42", said, StringComparison.Ordinal);
        Assert.Contains("63 mm", said, StringComparison.Ordinal);
    }

    private static async Task NeedAsync(string module)
    {
        Skip.IfNot(File.Exists(Python), "There is no system Python with the Jupyter programs on this machine.");
        using var probe = Process.Start(new ProcessStartInfo(Python, ["-c", $"import {module}"]) { RedirectStandardError = true })!;
        await probe.WaitForExitAsync();
        Skip.If(probe.ExitCode != 0, $"The Python module {module} is not installed on this machine.");
    }

    private async Task<(int Code, string Said)> RunAsync(params string[] arguments)
    {
        var start = new ProcessStartInfo(Python, arguments) { RedirectStandardError = true, RedirectStandardOutput = true };
        start.Environment["JUPYTER_PATH"] = folder["data"];
        start.Environment["IPYTHONDIR"] = folder["ipython"];
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEndAsync();
        var errors = process.StandardError.ReadToEndAsync();
        using var limit = new CancellationTokenSource(Patience.Limit);
        await process.WaitForExitAsync(limit.Token);
        return (process.ExitCode, await output + await errors);
    }
}

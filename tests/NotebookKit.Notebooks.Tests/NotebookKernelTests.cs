using System.Diagnostics;
using NotebookKit.Runner.Jupyter;
using NotebookKit.Runner.Workers;

namespace NotebookKit.Notebooks.Tests;

/// <summary>Every notebook through our kernel, by the Jupyter project's own client; skipped where that isn't installed (Debian:
/// python3-nbclient).</summary>
[Trait("Length", "long")]
public sealed class NotebookKernelTests : IDisposable
{
    private const string Python = "/usr/bin/python3";

    private const string Script =
        """
        import os, sys, concurrent.futures, nbformat, nbclient

        def run(path):
            book = nbformat.read(path, 4)
            client = nbclient.NotebookClient(book, timeout=600, startup_timeout=600, kernel_name="notebookkit",
                                             resources={"metadata": {"path": os.path.dirname(path)}})
            client.execute()
            nbformat.validate(book)
            return os.path.basename(path), sum(c.cell_type == "code" for c in book.cells)

        # Processes, not threads: each client runs an event loop of its own.
        with concurrent.futures.ProcessPoolExecutor(2) as pool:
            for name, cells in pool.map(run, sys.argv[1:]):
                print("executed", name, cells)
        """;

    private readonly string folder = Directory.CreateTempSubdirectory("notebookkit-kernel-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [SkippableFact]
    public async Task A_client_executes_every_notebook_through_our_kernel()
    {
        Skip.IfNot(File.Exists(Python), "There is no system Python with the Jupyter programs on this machine.");
        var (probe, _) = await RunAsync("-c", "import nbclient");
        Skip.If(probe != 0, "The Python module nbclient is not installed on this machine.");
        new KernelSpec(folder).Write(typeof(WorkerProgram).Assembly.Location, WorkerProgram.RuntimeHost());

        var (code, said) = await RunAsync(["-c", Script, .. NotebookFolder.Names.Select(NotebookFolder.FileOf)]);
        Assert.True(code == 0, said);
        Assert.All(NotebookFolder.Names, name => Assert.Contains($"executed {name}.ipynb", said, StringComparison.Ordinal));
    }

    private async Task<(int Code, string Said)> RunAsync(params string[] arguments)
    {
        var start = new ProcessStartInfo(Python, arguments) { RedirectStandardError = true, RedirectStandardOutput = true };
        start.Environment["JUPYTER_PATH"] = folder;
        start.Environment["JUPYTER_RUNTIME_DIR"] = Path.Combine(folder, "runtime");
        start.Environment["IPYTHONDIR"] = Path.Combine(folder, "ipython");
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEndAsync();
        var errors = process.StandardError.ReadToEndAsync();
        await process.WaitForExitAsync();
        return (process.ExitCode, await output + await errors);
    }
}

using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;
using NotebookKit.Runner.Jupyter;
using NotebookKit.Runner.Workers;

namespace NotebookKit.Runner.Tests.Jupyter;

/// <summary>A notebook server of the machine's own, for one test class, with our kernel in it and some of the fixtures.</summary>
internal sealed class NotebookServer : IAsyncDisposable
{
    public const string Program = "/usr/bin/jupyter-notebook";
    private readonly TestFolder folder = new();
    private readonly Process process;

    private NotebookServer(TestFolder folder, Process process, string address)
        => (this.folder, this.process, Address) = (folder, process, address);

    /// <summary>Where it answers.</summary>
    public string Address { get; }

    /// <summary>Whether the machine has one.</summary>
    public static bool IsThere => File.Exists(Program);

    /// <summary>Starts it.</summary>
    /// <param name="page">Folder of a page that the server offers as "nbextensions/page"; none for none.</param>
    /// <param name="fixtures">Names of the fixtures it offers.</param>
    public static async Task<NotebookServer> StartAsync(string? page, params string[] fixtures)
    {
        var folder = new TestFolder();
        new KernelSpec(folder["data"]).Write(typeof(WorkerProgram).Assembly.Location, WorkerProgram.RuntimeHost());
        Directory.CreateDirectory(folder["books"]);
        foreach (var name in fixtures) File.Copy(TestFolder.Fixture(name), folder["books", name]);
        if (page is not null)
        {
            Directory.CreateDirectory(folder["data", "nbextensions", "page"]);
            foreach (var file in Directory.EnumerateFiles(page)) File.Copy(file,
                folder["data", "nbextensions", "page", Path.GetFileName(file)]);
        }

        var port = FreePort();
        var start = new ProcessStartInfo(
            Program,
            [
                "--no-browser", "--allow-root", "--ip=127.0.0.1", $"--port={port}", "--NotebookApp.token=", "--NotebookApp.password=",
                    "--NotebookApp.disable_check_xsrf=True",
                $"--notebook-dir={folder["books"]}",
            ])
        {
            RedirectStandardError = true, RedirectStandardOutput = true,
        };
        start.Environment["JUPYTER_PATH"] = folder["data"];
        start.Environment["JUPYTER_RUNTIME_DIR"] = folder["runtime"];
        start.Environment["JUPYTER_CONFIG_DIR"] = folder["config"];
        start.Environment["JUPYTER_DATA_DIR"] = folder["user"];
        start.Environment["HOME"] = folder.Path;
        var process = Process.Start(start)!;
        process.ErrorDataReceived += (_, _) => { };
        process.OutputDataReceived += (_, _) => { };
        process.BeginErrorReadLine();
        process.BeginOutputReadLine();
        var server = new NotebookServer(folder, process, string.Create(CultureInfo.InvariantCulture, $"http://127.0.0.1:{port}/"));
        await server.AnswersAsync();
        return server;
    }

    /// <summary>Whether a request stays on this machine.</summary>
    public bool Owns(string request) =>
        request.StartsWith(Address, StringComparison.Ordinal) || request.StartsWith("data:", StringComparison.Ordinal)
            || request.StartsWith("blob:", StringComparison.Ordinal) || request == "about:blank";

    public async ValueTask DisposeAsync()
    {
        process.Kill(entireProcessTree: true);
        await process.WaitForExitAsync();
        process.Dispose();
        folder.Dispose();
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    private async Task AnswersAsync()
    {
        using var client = new HttpClient();
        for (var waited = Stopwatch.StartNew(); waited.Elapsed < Patience.Limit;)
        {
            try
            {
                if ((await client.GetAsync(new Uri(Address + "api"))).IsSuccessStatusCode) return;
            }
            catch (HttpRequestException)
            {
                // Not up yet.
            }

            await Task.Delay(200);
        }

        throw new TimeoutException("The notebook server did not come up.");
    }
}

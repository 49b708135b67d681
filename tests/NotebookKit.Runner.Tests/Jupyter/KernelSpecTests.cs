using System.Buffers.Binary;
using System.Diagnostics;
using System.Text.Json.Nodes;
using NotebookKit.Runner.Jupyter;
using NotebookKit.Runner.Workers;

namespace NotebookKit.Runner.Tests.Jupyter;

public sealed class KernelSpecTests : IDisposable
{
    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task It_is_added_listed_and_removed()
    {
        var added = await ProgramRun.RunAsync("kernel", "add", "--prefix", folder.Path);
        Assert.Equal(0, added.ExitCode);
        var spec = JsonNode.Parse(File.ReadAllText(folder["share", "jupyter", "kernels", "notebookkit", "kernel.json"]))!;
        Assert.Equal("NotebookKit C#", (string?)spec["display_name"]);
        Assert.Equal("message", (string?)spec["interrupt_mode"]);
        Assert.Contains("{connection_file}", spec["argv"]!.AsArray().Select(a => (string?)a));
        Assert.True(File.Exists(folder["share", "jupyter", "kernels", "notebookkit", "logo-svg.svg"]));
        foreach (var size in new[] { 32, 64 })
        {
            // Width and height stand after the signature and the first part's head.
            var picture = File.ReadAllBytes(folder["share", "jupyter", "kernels", "notebookkit", $"logo-{size}x{size}.png"]);
            Assert.Equal("PNG"u8, picture.AsSpan(1, 3));
            Assert.Equal([size, size], [BinaryPrimitives.ReadInt32BigEndian(picture.AsSpan(16)),
                BinaryPrimitives.ReadInt32BigEndian(picture.AsSpan(20))]);
        }

        Assert.True(File.Exists(folder["share", "jupyter", "kernels", "notebookkit", ChartHtml.LibraryFile]));

        Assert.Contains("starts", (await ProgramRun.RunAsync("kernel", "list", "--prefix", folder.Path)).Output, StringComparison.Ordinal);
        Assert.Equal(0, (await ProgramRun.RunAsync("kernel", "remove", "--prefix", folder.Path)).ExitCode);
        Assert.False(Directory.Exists(folder["share", "jupyter", "kernels", "notebookkit"]));
        Assert.Equal(2, (await ProgramRun.RunAsync("kernel", "remove", "--prefix", folder.Path)).ExitCode);
    }

    [SkippableFact]
    public async Task Without_a_prefix_it_is_where_front_ends_look_for_the_users_own()
    {
        Skip.IfNot(File.Exists("/usr/bin/jupyter-kernelspec"),
            "The list command of the front-ends is not installed on this machine (Debian: jupyter-client).");
        Assert.Equal(0, (await RunAsync("dotnet", "exec", typeof(WorkerProgram).Assembly.Location, "kernel", "add")).Code);
        var (code, said) = await RunAsync("/usr/bin/jupyter-kernelspec", "list", "--json");
        Assert.True(code == 0, said);
        var spec = JsonNode.Parse(said)!["kernelspecs"]!["notebookkit"]!;
        Assert.StartsWith(folder.Path, (string?)spec["resource_dir"], StringComparison.Ordinal);
        Assert.Equal("NotebookKit C#", (string?)spec["spec"]!["display_name"]);
        Assert.Equal(0, (await RunAsync("dotnet", "exec", typeof(WorkerProgram).Assembly.Location, "kernel", "remove")).Code);
        Assert.DoesNotContain("notebookkit", (await RunAsync("/usr/bin/jupyter-kernelspec", "list", "--json")).Said,
            StringComparison.Ordinal);

        async Task<(int Code, string Said)> RunAsync(string program, params string[] arguments)
        {
            var start = new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true };
            start.Environment["HOME"] = folder.Path;
            start.Environment["DOTNET_CLI_HOME"] = folder.Path;
            foreach (var name in new[] { "JUPYTER_DATA_DIR", "XDG_DATA_HOME", "JUPYTER_PATH" }) start.Environment.Remove(name);
            using var process = Process.Start(start)!;
            var errors = process.StandardError.ReadToEndAsync();
            var output = await process.StandardOutput.ReadToEndAsync();
            await errors;
            await process.WaitForExitAsync();
            return (process.ExitCode, output);
        }
    }

    [SkippableFact]
    public async Task A_program_that_moved_away_is_told_with_the_remedy()
    {
        Skip.If(OperatingSystem.IsWindows(), "Runs the POSIX starter.");
        var spec = new KernelSpec(folder.Path);
        spec.Write(folder["gone", "it's.dll"], WorkerProgram.RuntimeHost());
        Assert.Equal(folder["gone", "it's.dll"], spec.Program);
        using var shell = Process.Start(new ProcessStartInfo("sh",
            [Path.Combine(spec.Folder, "start.sh"), "x.json"]) { RedirectStandardError = true })!;
        var said = await shell.StandardError.ReadToEndAsync();
        await shell.WaitForExitAsync();
        Assert.Equal(1, shell.ExitCode);
        Assert.Contains("it's.dll, and is no longer there", said, StringComparison.Ordinal);
        Assert.Contains("kernel add", said, StringComparison.Ordinal);
    }

    // Looked at, not run: there is no Windows among the machines that these tests run on.
    [Fact]
    public void On_Windows_paths_with_spaces_brackets_and_percent_signs_are_quoted()
    {
        Assert.Equal(["cmd", "/c", "call", "{resource_dir}\\start.cmd", "{connection_file}"],
            KernelSpec.Arguments(windows: true).Select(a => (string?)a));
        var starter = KernelStarter.ForWindows(@"C:\A user\(kit) 100%\Runner.dll", @"C:\Program Files\dotnet\dotnet.exe");
        Assert.Contains("dotnet exec \"C:\\A user\\(kit) 100%%\\Runner.dll\" kernel serve %1\r\n", starter, StringComparison.Ordinal);
        Assert.Contains("if exist \"C:\\A user\\(kit) 100%%\\Runner.dll\" goto found\r\n", starter, StringComparison.Ordinal);
        Assert.Contains("if exist \"C:\\Program Files\\dotnet\\dotnet.exe\" goto other\r\n", starter, StringComparison.Ordinal);
    }

    [SkippableFact]
    public async Task Without_a_runtime_on_the_path_it_says_so()
    {
        Skip.If(OperatingSystem.IsWindows(), "Runs the POSIX starter.");
        var spec = new KernelSpec(folder.Path);
        spec.Write(typeof(WorkerProgram).Assembly.Location, folder["no", "dotnet"]);
        var start = new ProcessStartInfo("/bin/sh", [Path.Combine(spec.Folder, "start.sh"), "x.json"]) { RedirectStandardError = true };
        start.Environment["PATH"] = folder["empty"];
        using var shell = Process.Start(start)!;
        var said = await shell.StandardError.ReadToEndAsync();
        await shell.WaitForExitAsync();
        Assert.Equal(1, shell.ExitCode);
        Assert.Contains("no dotnet on the path", said, StringComparison.Ordinal);
    }

    // A front-end that a desktop started has a short path, and the SDK's folder is seldom in it.
    [SkippableFact]
    public async Task Without_a_runtime_on_the_path_the_one_it_was_added_with_is_taken()
    {
        Skip.If(OperatingSystem.IsWindows(), "Runs the POSIX starter.");
        Assert.True(File.Exists(WorkerProgram.RuntimeHost()), WorkerProgram.RuntimeHost());
        var spec = new KernelSpec(folder["with space"]);
        spec.Write(typeof(WorkerProgram).Assembly.Location, WorkerProgram.RuntimeHost());
        var start = new ProcessStartInfo("/bin/sh", [Path.Combine(spec.Folder, "start.sh"), "no-such-file.json"]) {
            RedirectStandardError = true };
        start.Environment["PATH"] = folder["empty"];
        using var shell = Process.Start(start)!;
        var said = await shell.StandardError.ReadToEndAsync();
        await shell.WaitForExitAsync();
        Assert.Contains("The connection file no-such-file.json can't be used", said, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{}", "can't be used")]
    [InlineData("not json", "can't be used")]
    [InlineData("""{"transport": "ipc", "ip": "x", "shell_port": 1, "control_port": 2, "iopub_port": 3, "stdin_port": 4, "hb_port": 5}""", "only tcp")]
    [InlineData("""{"ip": "127.0.0.1", "shell_port": 1, "control_port": 2, "iopub_port": 3, "stdin_port": 4, "hb_port": 5, "signature_scheme": "hmac-md5"}""", "hmac-md5")]
    public void A_connection_file_that_can_not_be_served_is_refused_with_a_reason(string text, string reason)
    {
        File.WriteAllText(folder["c.json"], text);
        Assert.Contains(reason, Assert.Throws<ConnectionException>(() => ConnectionFile.Read(folder["c.json"])).Message,
            StringComparison.Ordinal);
    }
}

using System.Diagnostics;
using System.Globalization;
using System.Runtime.InteropServices;
using System.Text;
using NotebookKit.Record.Givens;
using NotebookKit.Runner.Givens;

namespace NotebookKit.Runner.Workers;

/// <summary>How to start this same program again as a worker.</summary>
internal static class WorkerProgram
{
    /// <summary>The hidden command that makes the program a worker.</summary>
    public const string Command = "worker";

    /// <summary>The start of a worker, its three streams held by the caller.</summary>
    /// <param name="options">How it is started.</param>
    public static ProcessStartInfo StartInfo(WorkerOptions options)
    {
        var utf8 = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        var start = new ProcessStartInfo
        {
            WorkingDirectory = options.WorkingDirectory,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardInputEncoding = utf8,
            StandardOutputEncoding = utf8,
            StandardErrorEncoding = utf8,
            UseShellExecute = false,
            CreateNoWindow = true,
        };
        var program = typeof(WorkerProgram).Assembly.Location;
        if (Environment.ProcessPath is { } path && Path.GetFileNameWithoutExtension(path) == Path.GetFileNameWithoutExtension(program))
        {
            start.FileName = path;
        }
        else
        {
            start.FileName = DotnetHost();
            start.ArgumentList.Add("exec");
            start.ArgumentList.Add(program);
        }

        // Every process that a cell starts inherits it.
        start.Environment[ProcessFamily.Variable] = Guid.NewGuid().ToString("N");
        start.ArgumentList.Add(Command);
        start.ArgumentList.Add("--output-limit");
        start.ArgumentList.Add(options.OutputLimitBytes.ToString(CultureInfo.InvariantCulture));
        if (options.Live) start.ArgumentList.Add("--live");
        if (options.Batch is { } batch)
        {
            AddOption(start, "--shard", batch.Shard.ToString());
            AddOption(start, "--keep-in", batch.KeepIn);
            AddOption(start, "--flown-in", batch.FlownIn);
        }

        foreach (var given in RunGivens.Assignments(options.Givens ?? GivenOverrides.None)) AddOption(start, "--given", given);

        // A process of some seconds gains nothing from being profiled while it runs, and little from compiling again what its start called
        // thirty times: that waits until half a second (in hexadecimal milliseconds) has brought nothing new.
        start.Environment["DOTNET_TieredPGO"] = "0";
        if (options.Live) return start;
        start.Environment["DOTNET_TC_CallCountingDelayMs"] = "1F4";
        // Nobody looks into it, and a process that is ended leaves the sockets of whoever might.
        start.Environment.TryAdd("DOTNET_EnableDiagnostics", "0");
        return start;
    }

    /// <summary>The dotnet that runs this process, also where the program was started by a file of its own.</summary>
    public static string RuntimeHost()
    {
        // The runtime lies three folders below it: shared, framework, version.
        var root = Path.GetFullPath(Path.Combine(RuntimeEnvironment.GetRuntimeDirectory(), "..", "..", ".."));
        return Path.Combine(root, OperatingSystem.IsWindows() ? "dotnet.exe" : "dotnet");
    }

    private static void AddOption(ProcessStartInfo start, string name, string? value)
    {
        if (value is null) return;
        start.ArgumentList.Add(name);
        start.ArgumentList.Add(value);
    }

    private static string DotnetHost() =>
        Environment.ProcessPath is { } path && Path.GetFileNameWithoutExtension(path) == "dotnet" ? path : "dotnet";
}

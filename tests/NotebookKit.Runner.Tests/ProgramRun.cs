using System.Diagnostics;
using NotebookKit.Runner.Workers;

namespace NotebookKit.Runner.Tests;

/// <summary>One run of the real program, in a process of its own.</summary>
internal sealed record ProgramRun(int ExitCode, string Output, string Errors)
{
    public static async Task<ProgramRun> RunAsync(params string[] arguments)
    {
        using var process = Start(arguments);
        return await EndAsync(process);
    }

    public static Process Start(params string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet")
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            RedirectStandardInput = true,
            WorkingDirectory = Path.GetTempPath(),
        };
        start.ArgumentList.Add("exec");
        start.ArgumentList.Add(typeof(WorkerProgram).Assembly.Location);
        foreach (var argument in arguments) start.ArgumentList.Add(argument);
        return Process.Start(start)!;
    }

    public static async Task<ProgramRun> EndAsync(Process process)
    {
        var output = process.StandardOutput.ReadToEndAsync();
        var errors = process.StandardError.ReadToEndAsync();
        using var limit = new CancellationTokenSource(Patience.Limit);
        await process.WaitForExitAsync(limit.Token);
        return new ProgramRun(process.ExitCode, await output, await errors);
    }
}

using System.Diagnostics;
using System.Globalization;

namespace NotebookKit.Tests.Clearance.Service;

/// <summary><see cref="AppendingProgram"/>, running.</summary>
internal sealed class AppendingProcess : IDisposable
{
    private readonly Process process;
    private readonly List<(int Sequence, string Flight)> reported = [];

    private AppendingProcess(Process process) => this.process = process;

    /// <summary>What it reported as written so far.</summary>
    public IReadOnlyList<(int Sequence, string Flight)> Reported => reported;

    /// <summary>Starts it and waits until it is ready.</summary>
    public static async Task<AppendingProcess> StartAsync(string path, string name, int count)
    {
        var start = new ProcessStartInfo("dotnet") { RedirectStandardInput = true, RedirectStandardOutput = true };
        foreach (var argument in new[] { "exec", typeof(AppendingProgram).Assembly.Location, AppendingProgram.Command, path, name,
            count.ToString(CultureInfo.InvariantCulture) })
            start.ArgumentList.Add(argument);
        start.Environment["DOTNET_TieredPGO"] = "0";
        var running = new AppendingProcess(Process.Start(start)!);
        Assert.Equal("ready", await running.process.StandardOutput.ReadLineAsync());
        return running;
    }

    public void Begin() => process.StandardInput.WriteLine();

    /// <summary>Kills it as soon as it reported a count of events; what it reported meanwhile is read all the same.</summary>
    public async Task KillAfterAsync(int count)
    {
        while (reported.Count < count && await process.StandardOutput.ReadLineAsync() is { } line) Keep(line);
        process.Kill();
        var code = await EndAsync();
        Assert.NotEqual(0, code);
    }

    public async Task<int> EndAsync()
    {
        while (await process.StandardOutput.ReadLineAsync() is { } line) Keep(line);
        await process.WaitForExitAsync();
        return process.ExitCode;
    }

    public void Dispose()
    {
        if (!process.HasExited) process.Kill();
        process.Dispose();
    }

    private void Keep(string line)
    {
        // The last report may be cut off by the kill.
        if (line.Split(' ') is [var number, var flight] && int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture,
            out var sequence)) reported.Add((sequence, flight));
    }
}

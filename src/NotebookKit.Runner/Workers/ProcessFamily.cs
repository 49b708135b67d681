using System.Diagnostics;
using System.Runtime.InteropServices;
using System.Text;

namespace NotebookKit.Runner.Workers;

/// <summary>
/// A worker and every process that its cells started, by whatever way: all end together. On Linux they are known by a mark in their
/// environment, also those that left the worker's group or lost their parent; on other POSIX systems by the group alone; on Windows only
/// those that still hang on the worker.
/// </summary>
internal static class ProcessFamily
{
    /// <summary>The variable of the environment that holds the mark.</summary>
    public const string Variable = "NOTEBOOKKIT_WORKER";

    private const int Kill = 9;

    /// <summary>Makes this process the head of a group of its own. Signals of a terminal reach its front alone from then on.</summary>
    public static void Lead()
    {
        if (!OperatingSystem.IsWindows()) _ = SetSession();
    }

    /// <summary>Ends what is left of a worker's family.</summary>
    /// <param name="head">The worker's process, ended or about to be.</param>
    /// <param name="mark">Mark of its family.</param>
    public static void End(int head, string mark)
    {
        if (OperatingSystem.IsWindows()) return;
        _ = Signal(-head, Kill);
        foreach (var process in Marked(mark)) _ = Signal(process, Kill);
    }

    /// <summary>Ends this worker with its whole family, whatever its threads still do.</summary>
    public static void EndOwn()
    {
        if (!OperatingSystem.IsWindows() && Environment.GetEnvironmentVariable(Variable) is { Length: > 0 } mark)
            foreach (var process in Marked(mark).Where(p => p != Environment.ProcessId)) _ = Signal(process, Kill);
        using var own = Process.GetCurrentProcess();
        if (!OperatingSystem.IsWindows()) _ = Signal(-own.Id, Kill);
        own.Kill();
    }

    private static IEnumerable<int> Marked(string mark)
    {
        if (!OperatingSystem.IsLinux()) return [];
        var wanted = Encoding.UTF8.GetBytes($"{Variable}={mark}");
        return Directory.EnumerateDirectories("/proc").Select(Path.GetFileName)
            .Select(name => int.TryParse(name, out var id) ? id : 0)
            .Where(id => id > 0 && Carries(id, wanted));
    }

    private static bool Carries(int process, byte[] wanted)
    {
        try
        {
            return File.ReadAllBytes($"/proc/{process}/environ").AsSpan().IndexOf(wanted) >= 0;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // It has ended, or belongs to somebody else.
            return false;
        }
    }

    [DllImport("libc", EntryPoint = "kill")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Signal(int process, int signal);

    [DllImport("libc", EntryPoint = "setsid")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int SetSession();
}

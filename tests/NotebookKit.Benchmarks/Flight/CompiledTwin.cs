using System.ComponentModel;
using System.Diagnostics;

namespace NotebookKit.Benchmarks.Flight;

/// <summary>The C++ program of the same flight (tests/side-by-side/vertical_flight.cpp), built and run where there is a compiler.</summary>
internal static class CompiledTwin
{
    private static readonly string Source = Path.Combine("tests", "side-by-side", "vertical_flight.cpp");

    /// <summary>Its line of JSON; none where there is no compiler, or where the source isn't at hand.</summary>
    public static string? Run()
    {
        if (Root() is not { } root) return null;
        var folder = Directory.CreateTempSubdirectory("vertical-flight");
        try
        {
            var program = Path.Combine(folder.FullName, "vertical_flight");
            return Output("g++", "-O2", "-std=c++17", "-o", program, Path.Combine(root, Source)) is null ? null : Output(program);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static string? Root()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, Source))) return folder.FullName;
        }

        return null;
    }

    private static string? Output(string program, params string[] arguments)
    {
        try
        {
            using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true })!;
            var text = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            return process.ExitCode == 0 ? text.Trim() : null;
        }
        catch (Win32Exception)
        {
            return null;
        }
    }
}

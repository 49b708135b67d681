namespace NotebookKit.Runner.Jupyter;

/// <summary>The small script that a front-end starts. It says clearly what to do when the program isn't where it was any more.</summary>
internal static class KernelStarter
{
    private const string Remedy = "Go to the folder where NotebookKit lies now and run: dotnet run --project src/NotebookKit.Runner -c Release -- kernel add";

    /// <summary>For a POSIX shell.</summary>
    /// <param name="program">Program file.</param>
    public static string ForShell(string program)
    {
        var quoted = "'" + program.Replace("'", "'\\''", StringComparison.Ordinal) + "'";
        return $"""
            #!/bin/sh
            program={quoted}
            if [ ! -f "$program" ]; then
              echo "The NotebookKit kernel was built at $program, and is not there any more." >&2
              echo "{Remedy}" >&2
              exit 1
            fi
            if ! command -v dotnet >/dev/null 2>&1; then
              echo "The NotebookKit kernel needs the .NET runtime 10, and there is no dotnet on the path of this notebook server." >&2
              exit 1
            fi
            exec dotnet exec "$program" kernel serve "$1"

            """.ReplaceLineEndings("\n");
    }

    /// <summary>For the Windows command interpreter.</summary>
    /// <param name="program">Program file.</param>
    public static string ForWindows(string program) => $"""
        @echo off
        if not exist "{program}" (
          echo The NotebookKit kernel was built at {program}, and is not there any more. 1>&2
          echo {Remedy} 1>&2
          exit /b 1
        )
        where dotnet >nul 2>nul
        if errorlevel 1 (
          echo The NotebookKit kernel needs the .NET runtime 10, and there is no dotnet on the path of this notebook server. 1>&2
          exit /b 1
        )
        dotnet exec "{program}" kernel serve %1

        """.ReplaceLineEndings("\r\n");
}

namespace NotebookKit.Runner.Jupyter;

/// <summary>The small script that a front-end starts. It says clearly what to do when the program isn't where it was any more.</summary>
internal static class KernelStarter
{
    private const string Remedy = "Go to the folder where NotebookKit lies now and run: dotnet run --project src/NotebookKit.Runner -c "
        + "Release -- kernel add";

    private const string NoRuntime = "The NotebookKit kernel needs the .NET SDK 10, and there is no dotnet on the path of this notebook "
        + "server, nor where the kernel was added from.";

    /// <summary>For a POSIX shell.</summary>
    /// <param name="program">Program file.</param>
    /// <param name="runtime">The dotnet it was added with; taken where there is none on the path.</param>
    public static string ForShell(string program, string runtime)
    {
        static string Quoted(string path) => "'" + path.Replace("'", "'\\''", StringComparison.Ordinal) + "'";
        return $"""
            #!/bin/sh
            program={Quoted(program)}
            dotnet={Quoted(runtime)}
            if [ ! -f "$program" ]; then
              echo "The NotebookKit kernel was built at $program, and is no longer there." >&2
              echo "{Remedy}" >&2
              exit 1
            fi
            if command -v dotnet >/dev/null 2>&1; then
              dotnet=dotnet
            elif [ ! -x "$dotnet" ]; then
              echo "{NoRuntime}" >&2
              exit 1
            fi
            exec "$dotnet" exec "$program" kernel serve "$1"

            """.ReplaceLineEndings("\n");
    }

    /// <summary>For the Windows command interpreter. Jumps instead of blocks, because a path may hold a bracket; a percent sign has to be
    /// doubled.</summary>
    /// <param name="program">Program file.</param>
    /// <param name="runtime">The dotnet it was added with; taken where there is none on the path.</param>
    public static string ForWindows(string program, string runtime)
    {
        static string Doubled(string text) => text.Replace("%", "%%", StringComparison.Ordinal);
        var (path, host) = (Doubled(program), Doubled(runtime));
        return $"""
            @echo off
            chcp 65001 >nul
            if exist "{path}" goto found
            echo The NotebookKit kernel was built at "{path}", and is no longer there. 1>&2
            echo {Remedy} 1>&2
            exit /b 1
            :found
            where dotnet >nul 2>nul
            if not errorlevel 1 goto run
            if exist "{host}" goto other
            echo {NoRuntime} 1>&2
            exit /b 1
            :run
            dotnet exec "{path}" kernel serve %1
            exit /b
            :other
            "{host}" exec "{path}" kernel serve %1

            """.ReplaceLineEndings("\r\n");
    }
}

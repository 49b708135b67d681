namespace NotebookKit.Runner.Jupyter;

/// <summary>Where front-ends look for kernels.</summary>
internal static class JupyterFolders
{
    /// <summary>Folder of a user's own kernels, as the Jupyter project defines it for each system.</summary>
    public static string UserData()
    {
        if (Environment.GetEnvironmentVariable("JUPYTER_DATA_DIR") is { Length: > 0 } chosen) return chosen;
        var home = Environment.GetFolderPath(Environment.SpecialFolder.UserProfile);
        if (OperatingSystem.IsWindows()) return Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.ApplicationData),
            "jupyter");
        if (OperatingSystem.IsMacOS()) return Path.Combine(home, "Library", "Jupyter");
        return Environment.GetEnvironmentVariable("XDG_DATA_HOME") is { Length: > 0 } data ? Path.Combine(data, "jupyter")
            : Path.Combine(home, ".local", "share", "jupyter");
    }

    /// <summary>Data folder of an installation.</summary>
    /// <param name="prefix">Its root, such as an environment's folder.</param>
    public static string DataBelow(string prefix) => Path.Combine(prefix, "share", "jupyter");
}

using Microsoft.DotNet.Interactive;

namespace NotebookKit.Interactive;

/// <summary>Loads the library into a notebook session.</summary>
public static class NotebookKitExtension
{
    /// <summary>Gives a session our formatters and commands; calling it twice does no harm.</summary>
    /// <param name="kernel">Any kernel of the session.</param>
    public static Task LoadAsync(Kernel kernel)
    {
        ArgumentNullException.ThrowIfNull(kernel);
        return Task.CompletedTask;
    }
}

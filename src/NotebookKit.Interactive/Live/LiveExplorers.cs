using NotebookKit.Charts.Explorers;

namespace NotebookKit.Interactive.Live;

/// <summary>Makes explorers live: <c>flight.Explore().Live()</c>.</summary>
public static class LiveExplorers
{
    /// <summary>
    /// The explorer with sliders that call the model while they are dragged. Where no front-end takes controls (an exported page, a
    /// headless run), the explorer itself, with its computed grid.
    /// </summary>
    /// <param name="explorer">Explorer.</param>
    public static object Live(this Explorer explorer)
    {
        ArgumentNullException.ThrowIfNull(explorer);
        return FrontEnd.Current is { } link ? new LiveExplorer(explorer, link) : explorer;
    }
}

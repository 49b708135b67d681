using NotebookKit.Runner.Notebooks;
using NotebookKit.Runner.Pages;

namespace NotebookKit.Runner.Running;

/// <summary>Which lessons stand beside a page: the order of the run.</summary>
internal static class LessonOrder
{
    /// <summary>What lies around a notebook's page.</summary>
    /// <param name="options">The run.</param>
    /// <param name="name">Its name.</param>
    public static PageSurroundings Of(RunOptions options, string name)
    {
        var names = options.Notebooks.Select(n => Path.GetFileNameWithoutExtension(n)!).ToList();
        var at = names.IndexOf(name);
        return new PageSurroundings(Neighbour(options, at - 1), Neighbour(options, at + 1),
            other => names.Contains(other) || File.Exists(options.PageFile(other)));
    }

    // A file that is no notebook gets no page.
    private static NeighbourPage? Neighbour(RunOptions options, int at)
    {
        if (at < 0 || at >= options.Notebooks.Count) return null;
        try
        {
            var file = NotebookFile.Read(options.Notebooks[at]);
            return new NeighbourPage(file.Name, NotebookOutline.Of(file).Title);
        }
        catch (NotebookFormatException)
        {
            return null;
        }
    }
}

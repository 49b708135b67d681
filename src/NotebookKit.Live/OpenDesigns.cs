using NotebookKit.DesignFiles;

namespace NotebookKit.Live;

/// <summary>The states of designs that a page has open, by number; the oldest are forgotten.</summary>
internal sealed class OpenDesigns
{
    private const int Most = 200;

    private readonly Dictionary<int, OpenDesign> _open = [];
    private int _last;

    /// <summary>A state.</summary>
    /// <exception cref="InvalidOperationException">The page asks for one that isn't open.</exception>
    public OpenDesign this[int id] => _open.TryGetValue(id, out var open) ? open
        : throw new InvalidOperationException("This state of the design is no longer open; open the design again.");

    /// <summary>Opens a text.</summary>
    public int Open(string text, string name) => Add(new OpenDesign(Design.Parse(text, name)));

    /// <summary>Keeps a state.</summary>
    public int Add(OpenDesign design)
    {
        _open[++_last] = design;
        _open.Remove(_last - Most);
        return _last;
    }
}

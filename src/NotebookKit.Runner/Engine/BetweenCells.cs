namespace NotebookKit.Runner.Engine;

/// <summary>
/// The console while no cell runs. The engine counts the cells that hear it, and gives it back when none is left; a cell that was stopped
/// while it waited is counted on, and what is printed late would then go nowhere.
/// </summary>
internal sealed class BetweenCells
{
    private readonly TextWriter _ours;
    private TextWriter? _engines;

    /// <summary>Takes the console.</summary>
    /// <param name="ours">Where text goes while no cell runs.</param>
    public BetweenCells(TextWriter ours)
    {
        _ours = TextWriter.Synchronized(ours);
        Console.SetOut(_ours);
    }

    /// <summary>A cell begins: the engine finds the console as it left it.</summary>
    public void End()
    {
        if (_engines is { } held) Console.SetOut(held);
    }

    /// <summary>A cell has ended.</summary>
    public void Begin()
    {
        _engines = ReferenceEquals(Console.Out, _ours) ? null : Console.Out;
        if (_engines is not null) Console.SetOut(_ours);
    }
}

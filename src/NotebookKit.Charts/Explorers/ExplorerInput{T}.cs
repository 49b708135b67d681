namespace NotebookKit.Charts.Explorers;

/// <summary>What the reader moves, and what the model gets for it; made by <see cref="ExplorerInput"/>.</summary>
/// <typeparam name="T">What the model gets.</typeparam>
public sealed class ExplorerInput<T>
{
    internal ExplorerInput(ExplorerParameter parameter, Func<double, T> value)
    {
        Parameter = parameter;
        ValueAt = value;
    }

    /// <summary>How it shows.</summary>
    public ExplorerParameter Parameter { get; }

    /// <summary>What the model gets for a value of the parameter.</summary>
    internal Func<double, T> ValueAt { get; }
}

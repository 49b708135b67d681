namespace NotebookKit.Runner.Notebooks;

/// <summary>The three kinds of cell that the notebook format knows.</summary>
internal enum CellKind
{
    /// <summary>Code to run.</summary>
    Code,

    /// <summary>Text in Markdown.</summary>
    Markdown,

    /// <summary>Text to leave alone.</summary>
    Raw,
}

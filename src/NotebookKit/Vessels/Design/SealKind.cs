namespace NotebookKit.Vessels.Design;

/// <summary>What keeps the water in between two parts.</summary>
public enum SealKind
{
    /// <summary>A ring of rubber in a groove.</summary>
    ORing,

    /// <summary>The adhesive that holds the parts together.</summary>
    Bonded,

    /// <summary>Tape wound round a thread.</summary>
    Tape,
}

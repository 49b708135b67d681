namespace NotebookKit.Vessels;

/// <summary>What a rated pressure rests on.</summary>
public enum PressureBasis
{
    /// <summary>Somebody wrote it down; nothing here stands behind it.</summary>
    Stated,

    /// <summary>A rating predicted it; no test of this very vessel stands behind it.</summary>
    Predicted,

    /// <summary>This very vessel held a proof, and its record was accepted.</summary>
    Proved,
}

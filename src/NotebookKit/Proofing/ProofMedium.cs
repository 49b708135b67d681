namespace NotebookKit.Proofing;

/// <summary>What the vessel is filled with for a proof.</summary>
public enum ProofMedium
{
    /// <summary>Water: little energy, a burst is a splash and a crack.</summary>
    Water,

    /// <summary>Air: refused. Named only so that asking for it gets a clear answer.</summary>
    Air,
}

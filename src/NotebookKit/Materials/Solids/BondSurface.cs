namespace NotebookKit.Materials.Solids;

/// <summary>What an adhesive has to hold on to. The surface decides more than the adhesive.</summary>
public enum BondSurface
{
    /// <summary>Metal, degreased, abraded and chemically treated or primed.</summary>
    TreatedMetal,

    /// <summary>Metal, degreased and abraded by hand.</summary>
    AbradedMetal,

    /// <summary>Cured laminate, peel ply removed or abraded.</summary>
    AbradedLaminate,

    /// <summary>PET, PVC or polycarbonate, degreased and abraded.</summary>
    AbradedPlastic,

    /// <summary>Plastic as it came, neither degreased nor abraded: no strength is known, and no bond on it is taken.</summary>
    UntreatedPlastic,
}

namespace NotebookKit.Proofing;

/// <summary>Which printing of the distance formula is followed.</summary>
public enum StandOffEdition
{
    /// <summary>Twice the TNT mass under the cube root, the larger distance. Source: ASME PCC-2, later editions (unverified: source not at hand; confirm before relying on it).</summary>
    AsmeLater,

    /// <summary>The TNT mass under the cube root. Source: ASME PCC-2-2008, Appendix 501-III.</summary>
    Asme2008,
}

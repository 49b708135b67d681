namespace NotebookKit.Vessels.Laminates;

/// <summary>How the stiffness across the fibres is estimated from fibre and resin.</summary>
public enum MatrixRule
{
    /// <summary>Fibre and resin in series: a lower estimate. Source: Kaw, Mechanics of Composite Materials, 2nd ed. 2006, Eq. 3.40,
    /// 3.48.</summary>
    InverseMixtures,

    /// <summary>Halpin-Tsai with ξ = 2 across the fibres and ξ = 1 in shear. Source: Halpin and Tsai, AFML-TR-67-423, 1969.</summary>
    HalpinTsai,

    /// <summary>Chamis' square-root rule; the default. Source: Chamis, NASA TM-83320, 1983.</summary>
    Chamis,
}

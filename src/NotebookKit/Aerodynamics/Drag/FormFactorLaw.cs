namespace NotebookKit.Aerodynamics.Drag;

/// <summary>Published corrections from flat-plate friction to a body's profile drag.</summary>
public enum FormFactorLaw
{
    /// <summary>1 + 0.5 d / L. Source: J. S. Barrowman, M.S. thesis, 1967 (unverified).</summary>
    Barrowman,

    /// <summary>1 + 1.5 (d / L)^1.5 + 7 (d / L)³. Source: S. F. Hoerner, Fluid-Dynamic Drag, 1965 (unverified).</summary>
    Hoerner,

    /// <summary>1 + 60 / f³ + 0.0025 f with f = L / d. Source: USAF Stability and Control DATCOM (unverified).</summary>
    Datcom,
}

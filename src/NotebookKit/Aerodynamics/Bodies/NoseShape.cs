namespace NotebookKit.Aerodynamics.Bodies;

/// <summary>Families of nose profile, by the names the literature uses.</summary>
public enum NoseShape
{
    /// <summary>Straight cone.</summary>
    Cone,

    /// <summary>Circular arc, tangent to the body.</summary>
    TangentOgive,

    /// <summary>Half an ellipsoid.</summary>
    Ellipsoid,

    /// <summary>Parabolic series; the parameter K' runs from 0 (cone) to 1 (tangent to the body).</summary>
    Parabolic,

    /// <summary>Power series r ∝ xⁿ; the parameter is n, 0.5 to 1.</summary>
    Power,

    /// <summary>Haack series; the parameter C is 0 for least drag at given length and diameter, 1/3 for given length and volume.</summary>
    Haack,
}

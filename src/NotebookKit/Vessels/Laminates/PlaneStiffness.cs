namespace NotebookKit.Vessels.Laminates;

/// <summary>Plane-stress stiffness of a ply [Pa], or a sum of such times thickness [N/m].</summary>
internal readonly record struct PlaneStiffness(double S11, double S12, double S22, double S16, double S26, double S66)
{
    /// <summary>Entry by the indices the literature prints.</summary>
    public double this[int row, int column] => (row, column) switch
    {
        (1, 1) => S11,
        (1, 2) or (2, 1) => S12,
        (2, 2) => S22,
        (1, 6) or (6, 1) => S16,
        (2, 6) or (6, 2) => S26,
        (6, 6) => S66,
        _ => throw new ArgumentOutOfRangeException(nameof(row), $"stiffness index is {row},{column}; rows and columns are 1, 2 and 6."),
    };

    public static PlaneStiffness Of(Lamina lamina) =>
        Of(lamina.Longitudinal.Pascals, lamina.Transverse.Pascals, lamina.Shear.Pascals, lamina.PoissonRatio);

    public static PlaneStiffness Of(double e1, double e2, double g12, double nu12)
    {
        var d = 1 - nu12 * nu12 * e2 / e1;
        return new(e1 / d, nu12 * e2 / d, e2 / d, 0, 0, g12);
    }

    /// <summary>Stiffness in axes that see the fibres at an angle (Kaw 2006, Eq. 2.104).</summary>
    public PlaneStiffness Rotated(double radians)
    {
        var (s, c) = Math.SinCos(radians);
        double s2 = s * s, c2 = c * c, s4 = s2 * s2, c4 = c2 * c2, sc = s * c;
        return new(
            S11 * c4 + S22 * s4 + 2 * (S12 + 2 * S66) * s2 * c2,
            (S11 + S22 - 4 * S66) * s2 * c2 + S12 * (c4 + s4),
            S11 * s4 + S22 * c4 + 2 * (S12 + 2 * S66) * s2 * c2,
            (S11 - S12 - 2 * S66) * c2 * sc - (S22 - S12 - 2 * S66) * s2 * sc,
            (S11 - S12 - 2 * S66) * s2 * sc - (S22 - S12 - 2 * S66) * c2 * sc,
            (S11 + S22 - 2 * S12 - 2 * S66) * s2 * c2 + S66 * (s4 + c4));
    }

    public static PlaneStiffness operator +(PlaneStiffness a, PlaneStiffness b) =>
        new(a.S11 + b.S11, a.S12 + b.S12, a.S22 + b.S22, a.S16 + b.S16, a.S26 + b.S26, a.S66 + b.S66);

    public static PlaneStiffness operator *(PlaneStiffness a, double factor) =>
        new(a.S11 * factor, a.S12 * factor, a.S22 * factor, a.S16 * factor, a.S26 * factor, a.S66 * factor);

    /// <summary>The compliance, indices as the stiffness.</summary>
    public PlaneStiffness Inverse()
    {
        var c11 = S22 * S66 - S26 * S26;
        var c12 = S16 * S26 - S12 * S66;
        var c16 = S12 * S26 - S22 * S16;
        var determinant = S11 * c11 + S12 * c12 + S16 * c16;
        return new(
            c11 / determinant,
            c12 / determinant,
            (S11 * S66 - S16 * S16) / determinant,
            c16 / determinant,
            (S12 * S16 - S11 * S26) / determinant,
            (S11 * S22 - S12 * S12) / determinant);
    }
}

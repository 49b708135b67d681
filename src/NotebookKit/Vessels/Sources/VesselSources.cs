using NotebookKit.Provenance;

namespace NotebookKit.Vessels;

/// <summary>The works that vessel results name.</summary>
internal static class VesselSources
{
    public static Source Kaw { get; } = new("Kaw", "Mechanics of Composite Materials, 2nd ed.", 2006);

    public static Source Jones { get; } = new("Jones", "Mechanics of Composite Materials, 2nd ed.", 1999);

    public static Source Chamis { get; } = new("Chamis", "NASA TM-83320", 1983);

    public static Source Netting { get; } = new("Evans and Gibson",
        "Composite angle ply laminates and netting analysis, Proc. R. Soc. A 458", 2002);

    public static Source Braiding { get; } = new("Du and Popper", "J. Text. Inst. 85", 1994, "p. 316", SourceKind.Unverified);

    public static Source ThinWall { get; } = new("Shigley", "Mechanical Engineering Design", null, "thin-walled vessels");

    public static Source ThickWall { get; } = new("Shigley", "Mechanical Engineering Design", null, "thick-walled cylinders (Lamé)");

    public static Source Plates { get; } = new("Timoshenko and Woinowsky-Krieger", "Theory of Plates and Shells, 2nd ed.", 1959,
        "§16, §17", SourceKind.Unverified);

    public static Source Domes { get; } = new("Roark", "Formulas for Stress and Strain", null, "membrane shells of revolution");

    public static Source ShearLag { get; } = new("Volkersen", "Luftfahrtforschung 15", 1938,
        "as reviewed by da Silva et al., Int. J. Adhes. Adhes. 29, 2009");

    public static Source TubeGrowth { get; } = new("Timoshenko; Roark", "closed thin cylinder", null);

    public static Source TubeCurve { get; } = new("Soden, Hinton and Kaddour", "Compos. Sci. Technol. 58", 1998,
        "shear curve of E-glass/MY750");

    public static Source Equilibrium { get; } = new("", "balance of forces on a closed cylinder", null);

    public static Source Delivered { get; } = new("Cox and Flanagan",
        "Handbook of Analytical Methods for Textile Composites, NASA CR-4750", 1997, "§3.4.2");

    public static Source Voids { get; } = new("ASTM", "D2734 Void content of reinforced plastics", 2016,
        "form recalled; scope seen", SourceKind.Unverified);

    public static Source ConstituentContent { get; } = new("ASTM", "D3171 Constituent content of composite materials", 2015,
        "form recalled; scope seen", SourceKind.Unverified);

    public static Source Uncertainty { get; } = new("JCGM", "100 Guide to the expression of uncertainty in measurement", 2008, "eq. 10");

    public static Source VoidKnockDown { get; } = new("Judd and Wright",
        "Voids and their effects on the mechanical properties of composites, "
        + "SAMPE Journal 14", 1978, "about 7 % of interlaminar shear strength for each per cent of voids up to 4 %", SourceKind.Unverified);
}

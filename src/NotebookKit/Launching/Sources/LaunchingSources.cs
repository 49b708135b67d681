using NotebookKit.Provenance;

namespace NotebookKit.Launching;

/// <summary>The sources that a launch rests on, each written once.</summary>
internal static class LaunchingSources
{
    public static Source Momentum { get; } = new("Encyclopaedia Britannica, 11th ed.", "Hydraulics", 1911, "reaction of a jet, 2 p A");

    public static Source Friction { get; } = new("C. A. Coulomb", "Theorie des machines simples", 1785, "sliding friction",
        SourceKind.Unverified);

    public static Source Wind { get; } = new("CEN", "EN 1991-1-4 Wind actions", 2005, "4.3 to 4.5", SourceKind.Unverified);

    public static Source WindAmerican { get; } = new("ASCE", "7-10 Minimum design loads", 2010, "velocity pressure", SourceKind.Unverified);

    public static Source ShortCylinders { get; } = new("F. M. White", "Fluid Mechanics", 2011, "table 7.3, drag of short cylinders",
        SourceKind.Unverified);

    public static Source Plates { get; } = new("C. Matthews", "Aeronautical Engineer's Data Book", 2002,
        "fig. 5.13, p. 95: a square plate across the wind 1.17, a long one 1.98; cylinders across the wind");

    public static Source HeatBalance { get; } = new("Stefan and Boltzmann; Newton", "heat radiation and cooling", null,
        "lumped balance of wall and contents");
}

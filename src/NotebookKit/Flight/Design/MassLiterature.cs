using NotebookKit.Provenance;

namespace NotebookKit.Flight.Design;

/// <summary>The works that mass, stability and motion rest on, named once.</summary>
internal static class MassLiterature
{
    public static readonly Source Goldstein = new("H. Goldstein", "Classical Mechanics", 1980, "ch. 5", SourceKind.Unverified);

    public static readonly Source OneCalibre = Source.CommonPractice("at least one calibre of static margin, measured before launch and "
        + "at its least in flight");

    public static readonly Source Barrowman = new("J. S. Barrowman",
        "The Practical Calculation of the Aerodynamic Characteristics of Slender Finned Vehicles (M.S. thesis)", 1967, "ch. 3",
            SourceKind.Unverified);

    public static readonly Source Nicolaides = new("J. D. Nicolaides",
        "On the free flight motion of missiles having slight configurational asymmetries", 1953, "", SourceKind.Unverified);

    public static readonly Source Murphy = new("C. H. Murphy", "Free Flight Motion of Symmetric Missiles, BRL R-1216", 1963, "",
        SourceKind.Unverified);

    public static readonly Source RangeSafety = Source.CommonPractice("speed off the rail at least four times the wind, angle of "
        + "attack at most 15°");
}

using NotebookKit.Provenance;

namespace NotebookKit.Recovery;

/// <summary>The works this domain rests on, named once.</summary>
internal static class RecoveryLiterature
{
    public static readonly Source Knacke = new("T. W. Knacke", "Parachute Recovery Systems Design Manual, NWC TP 6575", 1991,
        "tables 5-1 and 5-6", SourceKind.Published);

    public static readonly Source KnackeRecalled = Knacke with { Kind = SourceKind.Unverified };

    public static readonly Source Pflanz = new("E. Pflanz", "Determination of the decelerating forces during the opening of "
        + "cargo parachutes", 1942,
        "closed form for drag area ∝ (t/t_f)^j without gravity", SourceKind.Unverified);

    public static readonly Source Goldstein = new("H. Goldstein", "Classical Mechanics", 1980, "two-body collision", SourceKind.Unverified);

    public static readonly Source Gere = new("J. M. Gere", "Mechanics of Materials", 2004, "direct shear", SourceKind.Unverified);

    public static readonly Source GentleLanding = Source.CommonPractice("landing at 4 to 7 m/s");
}

using NotebookKit.Provenance;

namespace NotebookKit.Proofing;

/// <summary>The sources that proofing rests on, each written once.</summary>
internal static class ProofingSources
{
    public static Source StoredEnergy { get; } = new("ASME", "PCC-2 Repair of Pressure Equipment and Piping", 2008, "Appendix 501-II",
        SourceKind.Standard);

    public static Source Distance2008 { get; } = new("ASME", "PCC-2 Repair of Pressure Equipment and Piping", 2008, "Appendix 501-III",
        SourceKind.Standard);

    public static Source DistanceCurrent { get; } = new("ASME", "PCC-2 Repair of Pressure Equipment and Piping, later editions", null,
        "Appendix 501-III", SourceKind.Unverified);

    public static Source Spring { get; } = new("J. M. Gere, S. P. Timoshenko", "Mechanics of Materials", 1997,
        "strain energy of a linear spring");

    public static Source Beam { get; } = new("J. M. Gere, S. P. Timoshenko", "Mechanics of Materials", 1997,
        "simply supported beam, uniform load");

    public static Source Cylinder { get; } = new("W. C. Young, R. G. Budynas", "Roark's Formulas for Stress and Strain", 2002,
        "thin-walled cylinder with ends");

    public static Source IdealGas { get; } = new("Y. A. Cengel, M. A. Boles", "Thermodynamics: An Engineering Approach", 2006,
        "ideal gas at constant temperature");

    public static Source Steps { get; } = Source.CommonPractice("rise in steps, hold at each, keep the highest hold short, look for "
        + "leaks from afar at working pressure");
}

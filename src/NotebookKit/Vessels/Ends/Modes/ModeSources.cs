using NotebookKit.Provenance;

namespace NotebookKit.Vessels.Ends.Modes;

/// <summary>The works that the models of an end's failure name.</summary>
internal static class ModeSources
{
    private const SourceKind Recalled = SourceKind.Unverified;

    public static Source Roark { get; } = new("Young and Budynas", "Roark's Formulas for Stress and Strain, 7th ed.", 2002, "Table 11.2");

    public static Source HopkinsPrager { get; } = new("Hopkins and Prager",
        "The load carrying capacities of circular plates, J. Mech. Phys. Solids 2", 1953, "", Recalled);

    public static Source HopkinsWang { get; } = new("Hopkins and Wang", "J. Mech. Phys. Solids 3", 1954,
        "circular plates, any yield condition", Recalled);

    public static Source Openings { get; } = new("ASME", "Boiler and Pressure Vessel Code, Section VIII Division 1", null,
        "UG-36, UG-37, UG-40", Recalled);

    public static Source FlatHeads { get; } = new("ASME", "Boiler and Pressure Vessel Code, Section VIII Division 1", null,
        "UG-34, UG-39", Recalled);

    public static Source Kirsch { get; } = new("Kirsch", "Zeitschrift des Vereines deutscher Ingenieure 42", 1898,
        "plate with a round hole", Recalled);

    public static Source WhitneyNuismer { get; } = new("Whitney and Nuismer", "J. Compos. Mater. 8", 1974, "p. 253", Recalled);

    public static Source GolandReissner { get; } = new("Goland and Reissner", "J. Appl. Mech. 11", 1944, "", Recalled);

    public static Source Foundation { get; } = new("Hetényi", "Beams on Elastic Foundation", 1946,
        "two foundations end to end; worked out here", Recalled);

    public static Source HartSmith { get; } = new("Hart-Smith", "NASA CR-112235, CR-112236", 1973,
        "long overlap; derived again from the first integral", Recalled);

    public static Source BoltAreas { get; } = new("ISO", "ISO 898-1", null, "nominal stress area");

    public static Source StripAreas { get; } = new("FED-STD-H28/2B", "screw-thread standards", null,
        "form as tabulated in Bickford, Bolted Joints, 4th ed.");

    public static Source ThreadTolerances { get; } = new("ISO", "ISO 965", null, "limits of 6g and 6H", Recalled);

    public static Source Capstan { get; } = new("", "balance of forces on a yarn over a curve (capstan equation)", null);

    public static Source SleeveLaw { get; } = new("Head, Ko and Pastore", "Handbook of Industrial Braiding", null,
        "sleeve on a changing diameter", Recalled);

    public static Source Isotensoid { get; } = new("Zickel; Koussios", "isotensoid pressure vessels", null, "geodesic dome by netting",
        Recalled);

    public static Source ShellEdge { get; } = new("Timoshenko and Woinowsky-Krieger", "Theory of Plates and Shells, 2nd ed.", 1959,
        "shells of revolution, bending", Recalled);

    public static Source Equilibrium { get; } = new("", "balance of forces", null);
}

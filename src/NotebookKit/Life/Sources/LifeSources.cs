using NotebookKit.Provenance;

namespace NotebookKit.Life;

/// <summary>Where the physics and the rules of a vessel's life come from.</summary>
internal static class LifeSources
{
    public static Source Chamis { get; } = new(
        "C. C. Chamis", "Simplified composite micromechanics equations for strength, fracture toughness, impact resistance and "
            + "environmental effects, NASA TM-83320",
        1983, "wet glass temperature and hygrothermal degradation", SourceKind.Unverified);

    public static Source Fick { get; } = new("J. Crank", "The Mathematics of Diffusion", 1975, "plane sheet", SourceKind.Unverified);

    public static Source ShenSpringer { get; } = new(
        "C.-H. Shen, G. S. Springer", "Moisture absorption and desorption of composite materials, J. Compos. Mater. 10, 2", 1976,
            "approximation", SourceKind.Unverified);

    public static Source SolAir { get; } = new("ASHRAE", "Handbook: Fundamentals", null, "sol-air temperature");

    public static Source StefanBoltzmann { get; } = new("CODATA", "Recommended values of the fundamental constants", 2018,
        "Stefan-Boltzmann constant");

    public static Source IdealGas { get; } = new("Y. A. Cengel, M. A. Boles", "Thermodynamics: An Engineering Approach", 2006,
        "ideal gas at constant volume");

    public static Source StressRupture { get; } = new(
        "S. L. Phoenix, P. L. N. Murthy, J. C. Thesken", "NASA papers on stress rupture of composite overwrapped pressure vessels",
        null, "power law in stress, Weibull in time", SourceKind.Unverified);

    public static Source Miner { get; } = new("M. A. Miner", "Cumulative damage in fatigue, J. Appl. Mech. 12, A159", 1945, "",
        SourceKind.Unverified);

    public static Source Slope { get; } = new("O. H. Basquin", "The exponential law of endurance tests, Proc. ASTM 10, 625", 1910, "",
        SourceKind.Unverified);

    public static Source Interference { get; } = new(
        "M. H. Faber", "lecture notes on risk and safety in engineering", null, "normal strength and load (author unverified)",
            SourceKind.Unverified);

    public static Source LognormalInterference { get; } = new("J. L. Withiam and others",
        "reliability index of lognormal resistance and load", 1997, "as reprinted");

    public static Source ReliabilityIndex { get; } = new("CEN", "EN 1990, reliability index and failure probability", null,
        "as a timber-design text prints it", SourceKind.Standard);

    public static Source ConditionalChance { get; } = new("", "conditional probability of a lognormal strength cut off at the proof", null);

    public static Source TolerableRisk { get; } = new(
        "Health and Safety Executive", "Reducing risks, protecting people (R2P2)", 2001,
            "paragraphs 130 and 132, as open notes quote them");
}

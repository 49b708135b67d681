using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Vessels.Ratings;

/// <summary>The club's own factors, and published standards' ratios as references.</summary>
/// <remarks>None of the standards covers a hand-laid wet braid.</remarks>
public static class RuleSets
{
    /// <summary>What every rating says of the standards.</summary>
    public const string NoneCovers =
        "None of the standards named here covers a hand-laid wet braid; the closest, ASME X Class I (contact-moulded), allows 10 bar "
            + "only and asks a burst of six times.";

    /// <summary>The club's own: proof 1.5, burst 3. Common practice, no source.</summary>
    public static RuleSet Club { get; } = new("Club rule", 1.5, 3.0,
        Source.CommonPractice("Proof at one and a half times, burst at three times the maximum expected pressure"),
        "a club's own vessels, behind cover")
    {
        People = "everybody behind cover or beyond the stand-off while a vessel is under pressure",
    };

    /// <summary>ANSI/AIAA S-081: proof 1.25, burst 1.5.</summary>
    public static RuleSet SpaceVessel { get; } = new(
        "ANSI/AIAA S-081", 1.25, 1.5, Memory("ANSI/AIAA", "S-081, Space Systems: Composite Overwrapped Pressure Vessels"),
            "space vessels with a metal liner and carbon, every one qualified and inspected");

    /// <summary>DOT-CFFC: proof 5/3, burst 3.4.</summary>
    public static RuleSet CarbonCylinder { get; } = new(
        "DOT-CFFC", 5.0 / 3, 3.4, new Source("U.S. Department of Transportation",
            "Basic Requirements for Fully Wrapped Carbon-Fiber Reinforced Aluminum Lined Cylinders, rev. 5", 2007, "",
            SourceKind.Standard), "carbon on a seamless aluminium liner");

    /// <summary>DOT FRP-1: proof 5/3, burst 3.0.</summary>
    public static RuleSet GlassCylinder { get; } = new(
        "DOT FRP-1", 5.0 / 3, 3.0, Memory("U.S. Department of Transportation", "FRP-1"), "glass on a seamless aluminium liner");

    /// <summary>ISO 11119-2: proof 1.5, burst 3.0.</summary>
    public static RuleSet LoadSharingLiner { get; } = new(
        "ISO 11119-2", 1.5, 3.0, new Source("ISO", "11119-2, load-sharing metal liner", null, "", SourceKind.Standard),
            "fully wrapped on a load-sharing metal liner");

    /// <summary>ISO 11119-3, carbon: proof 1.5, burst 3.0.</summary>
    public static RuleSet PlasticLinerCarbon { get; } = new(
        "ISO 11119-3, carbon", 1.5, 3.0, Memory("ISO", "11119-3, non-load-sharing liner or none with a test below 60 bar"),
            "fully wrapped carbon, plastic liner or none");

    /// <summary>ISO 11119-3, glass: proof 1.5, burst 3.6.</summary>
    public static RuleSet PlasticLinerGlass { get; } = new(
        "ISO 11119-3, glass", 1.5, 3.6, Memory("ISO", "11119-3, non-load-sharing liner or none with a test below 60 bar"),
            "fully wrapped glass, plastic liner or none");

    /// <summary>EN 12245: proof 1.5, burst 3.0.</summary>
    public static RuleSet EuropeanWrapped { get; } = new("EN 12245", 1.5, 3.0,
        Memory("CEN", "EN 12245, fully wrapped composite cylinders"), "fully wrapped cylinders, liner or none");

    /// <summary>UN R110 type 4, carbon: proof 1.5, burst 2.35.</summary>
    public static RuleSet VehicleGasCarbon { get; } = new("UN R110 type 4, carbon", 1.5, 2.35, Memory("UNECE", "Regulation 110, type 4"),
        "vehicle gas cylinders, plastic liner, carbon");

    /// <summary>UN R110 type 4, glass: proof 1.5, burst 3.65.</summary>
    public static RuleSet VehicleGasGlass { get; } = new("UN R110 type 4, glass", 1.5, 3.65, Memory("UNECE", "Regulation 110, type 4"),
        "vehicle gas cylinders, plastic liner, glass");

    /// <summary>ASME X Class I, contact-moulded: proof 1.1, burst 6, no more than 10 bar.</summary>
    public static RuleSet ContactMoulded { get; } = new("ASME X Class I, contact-moulded", 1.1, 6,
        Memory("ASME", "Boiler and Pressure Vessel Code, Section X, Class I"), "contact-moulded vessels up to 10 bar")
    {
        MaximumPressure = 10.BarGauge(),
    };

    /// <summary>ASME X Class III, carbon: proof 1.25, burst 2.25.</summary>
    public static RuleSet HighPressureCarbon { get; } = new("ASME X Class III, carbon", 1.25, 2.25,
        Memory("ASME", "Boiler and Pressure Vessel Code, Section X, Class III"), "filament-wound vessels with a non-load-sharing liner");

    /// <summary>All of them, the club's own first.</summary>
    public static IReadOnlyList<RuleSet> All { get; } =
    [
        Club, ContactMoulded, PlasticLinerCarbon, PlasticLinerGlass, EuropeanWrapped, LoadSharingLiner, CarbonCylinder, GlassCylinder,
        VehicleGasCarbon, VehicleGasGlass, HighPressureCarbon, SpaceVessel,
    ];

    private static Source Memory(string author, string title) => new(author, title, null, "", SourceKind.Unverified);
}

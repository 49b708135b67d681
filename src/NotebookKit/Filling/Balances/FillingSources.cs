using NotebookKit.Provenance;

namespace NotebookKit.Filling.Balances;

/// <summary>The sources that filling rests on, each written once.</summary>
internal static class FillingSources
{
    public static Source Iso6358 { get; } = new("ISO", "6358-1 Pneumatic fluid power, flow-rate characteristics of components", 2013,
        "form seen in an overview, constants", SourceKind.Unverified);

    public static Source Naca1135 { get; } = new("Ames Research Staff",
        "Equations, Tables, and Charts for Compressible Flow, NACA Report 1135", 1953, "one-dimensional isentropic flow");

    public static Source Charging { get; } = new("Y. A. Cengel, M. A. Boles", "Thermodynamics: An Engineering Approach", 2006,
        "charging of a rigid tank", SourceKind.Unverified);

    public static Source BlowDown { get; } = new("J. C. Dutton, R. E. Coverdill",
        "Experiments to study the gaseous discharge and filling of vessels, Int. J. Engng Ed. 13, 123", 1997,
        "adiabatic and isothermal theory");

    public static Source Torricelli { get; } = new("Encyclopaedia Britannica, 11th ed.", "Hydraulics", 1911,
        "flow through orifices under pressure; a sharp edge passes 0.603 at 20 ft of head");

    public static Source NoSlip { get; } = new("G. B. Wallis", "One-dimensional Two-phase Flow", 1969, "homogeneous flow without slip",
        SourceKind.Unverified);

    public static Source Kv { get; } = new("IEC", "60534-1 Industrial-process control valves", 2005, "definition of the flow coefficients",
        SourceKind.Unverified);

    public static Source PadPractice { get; } = Source.CommonPractice("parts of a fill line and the order they stand in");
}

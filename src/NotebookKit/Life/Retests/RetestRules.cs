using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Life.Retests;

/// <summary>Published test intervals and lives of cylinders, as references: none covers a club's own vessel.</summary>
public static class RetestRules
{
    private const double FiveThirds = 5.0 / 3;

    private static readonly Source Table = new("U.S. Department of Transportation", "49 CFR 180.209", null, "Table 1", SourceKind.Standard);

    private static readonly Source Exemption = new("U.S. Department of Transportation",
        "exemption DOT-E 11194 (CFFC), as a bulletin quotes it", null, "", SourceKind.Standard);

    /// <summary>Steel, 3A and 3AA. Source: 49 CFR 180.209, Table 1.</summary>
    public static RetestRule Steel { get; } = new("3A, 3AA", FiveThirds, 5,
        Table) { Note = "10 or 12 years under conditions of the section" };

    /// <summary>Aluminium, 3AL. Source: 49 CFR 180.209, Table 1.</summary>
    public static RetestRule Aluminium { get; } = new("3AL", FiveThirds, 5,
        Table) { Note = "10 or 12 years under conditions of the section" };

    /// <summary>Light steel for aircraft, 3HT. Source: 49 CFR 180.209, Table 1, and 180.205(i).</summary>
    public static RetestRule LightSteel { get; } = new("3HT", FiveThirds, 3, Table with { Year = 2004, Where = "Table 1; 180.205(i)" })
    {
        LifeYears = 24,
        LifePressurizations = 4380,
        PermanentLimit = 10.Percent(),
        HasMarkedElasticLimit = true,
        Note = "whichever comes first; a record of pressurizations is needed where it is refilled oftener than every other day",
    };

    /// <summary>Large steel, 3T. Source: 49 CFR 180.209, Table 1.</summary>
    public static RetestRule LargeSteel { get; } = new("3T", FiveThirds, 5, Table);

    /// <summary>Welded aluminium, 4E. Source: 49 CFR 180.209, Table 1.</summary>
    public static RetestRule WeldedAluminium { get; } = new("4E", 2, 5, Table);

    /// <summary>Small steel, 3E. Source: 49 CFR 180.209, Table 1.</summary>
    public static RetestRule SmallSteel { get; } = new("3E", null, null, Table) { Note = "no test required" };

    /// <summary>Under a special permit. Source: 49 CFR 180.209, Table 1.</summary>
    public static RetestRule SpecialPermit { get; } = new("special permit", null, null, Table) { Note = "the permit says it" };

    /// <summary>Foreign. Source: 49 CFR 180.209, Table 1.</summary>
    public static RetestRule Foreign { get; } = new("foreign", FiveThirds, 5, Table) { Note = "at least that pressure; for export" };

    /// <summary>Fully wrapped carbon on aluminium, CFFC. Source: DOT-E 11194, as a bulletin quotes it.</summary>
    public static RetestRule CarbonCylinder { get; } = new("CFFC (DOT-E 11194)", FiveThirds, 5, Exemption)
    {
        Hold = 60.Seconds(),
        LifeYears = 15,
        HasMarkedElasticLimit = true,
        Note = "from the month of making; a sample of each lot is cycled 10 000 times",
    };

    /// <summary>Natural-gas cylinders for vehicles. Source: ISO 11439:2000, 4.1.3.</summary>
    public static RetestRule VehicleGas { get; } = new("ISO 11439", null, null,
        new("ISO", "11439, High pressure cylinders for the on-board storage of natural gas", 2000, "4.1.3", SourceKind.Standard))
    {
        LifeYears = 20,
        Note = "the longest life that may be stated",
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<RetestRule> All { get; } =
        [Steel, Aluminium, LightSteel, LargeSteel, WeldedAluminium, SmallSteel, SpecialPermit, Foreign, CarbonCylinder, VehicleGas];
}

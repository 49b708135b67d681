using NotebookKit.Provenance;
using NotebookKit.Quantities.Numbers;

namespace NotebookKit.Materials.Fluids;

/// <summary>Free convection between the gas in a vessel and its wall.</summary>
/// <remarks>Properties half-way between gas and wall. Both laws are claimed to ±30 %. Source: see <see cref="FilmLaw"/>.</remarks>
internal static class FreeConvection
{

    public static Source Plate { get; } = new(
        "S. W. Churchill, H. H. S. Chu", "Correlating equations for laminar and turbulent free convection from a vertical plate, Int. J. "
            + "Heat Mass Transfer 18, 1323", 1975, "eq. 9", SourceKind.Unverified);

    public static Source InVessel { get; } = new(
        "P. L. Woodfield, M. Monde, Y. Mitsutake", "Measurement of averaged heat transfer coefficients in high-pressure vessel during "
            + "charging with hydrogen, nitrogen or argon gas, J. Thermal Sci. Tech. 2, 180",
        2007, "free-convection term", SourceKind.Unverified);

    public static Source SourceOf(FilmLaw law) => law == FilmLaw.Horizontal ? InVessel : Plate;

    /// <summary>Nusselt number on the bore.</summary>
    public static double Nusselt(FilmLaw law, double rayleigh, double prandtl)
    {
        if (law == FilmLaw.Horizontal) return 0.104 * Math.Pow(rayleigh, 0.352);
        var root = 0.825 + 0.387 * Math.Pow(rayleigh, 1.0 / 6) / Math.Pow(1 + Math.Pow(0.492 / prandtl, 9.0 / 16), 8.0 / 27);
        return root * root;
    }

    /// <summary>Film coefficient, W/(m²·K); a stirring jet adds to the Nusselt number.</summary>
    /// <param name="law">The law.</param>
    /// <param name="film">The gas half-way between gas and wall.</param>
    /// <param name="viscosity">Its viscosity [Pa·s].</param>
    /// <param name="conductivity">Its conductivity [W/(m·K)].</param>
    /// <param name="differenceK">Wall less gas [K].</param>
    /// <param name="boreM">Bore [m].</param>
    /// <param name="stirring">Nusselt number of the jet [-].</param>
    public static double Coefficient(FilmLaw law, in GasPoint film, double viscosity, double conductivity, double differenceK,
        double boreM, double stirring)
    {
        var prandtl = viscosity * film.Cp / conductivity;
        var grashof = StandardConstants.Gravity * Math.Abs(film.Expansivity * differenceK) * boreM * boreM * boreM
            * film.Density * film.Density / (viscosity * viscosity);
        return (Nusselt(law, grashof * prandtl, prandtl) + stirring) * conductivity / boreM;
    }
}

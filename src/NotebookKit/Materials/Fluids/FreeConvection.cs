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

    public static Source Surface { get; } = new(
        "W. H. McAdams; J. R. Lloyd, W. R. Moran", "Heat Transmission, 3rd ed. 1954; Natural convection adjacent to horizontal surface of "
            + "various planforms, J. Heat Transfer 96, 443", 1974, "horizontal plates, as open lecture notes print them",
        SourceKind.Unverified);

    public static Source SourceOf(FilmLaw law) => law == FilmLaw.Horizontal ? InVessel : Plate;

    /// <summary>Nusselt number on the bore.</summary>
    public static double Nusselt(FilmLaw law, double rayleigh, double prandtl)
    {
        if (law == FilmLaw.Horizontal) return 0.104 * Math.Pow(rayleigh, 0.352);
        var root = 0.825 + 0.387 * Math.Pow(rayleigh, 1.0 / 6) / Math.Pow(1 + Math.Pow(0.492 / prandtl, 9.0 / 16), 8.0 / 27);
        return root * root;
    }

    /// <summary>Nusselt number of gas over a level surface, on a quarter of its diameter: 0.27 Ra^(1/4) where the gas is the warmer one and
    /// lies quiet, 0.54 Ra^(1/4) and from where they meet 0.15 Ra^(1/3) where it is the colder one. Source: McAdams 1954.</summary>
    public static double NusseltOverSurface(bool gasIsWarmer, double rayleigh)
    {
        var quarter = Math.Sqrt(Math.Sqrt(rayleigh));
        return gasIsWarmer ? 0.27 * quarter : Math.Max(0.54 * quarter, 0.15 * Math.Cbrt(rayleigh));
    }

    /// <summary>Film coefficient over a level surface, W/(m²·K); a jet that stirs adds what it adds at the wall.</summary>
    /// <param name="film">The gas half-way between gas and surface.</param>
    /// <param name="viscosity">Its viscosity [Pa·s].</param>
    /// <param name="conductivity">Its conductivity [W/(m·K)].</param>
    /// <param name="differenceK">Surface less gas [K].</param>
    /// <param name="diameterM">Diameter of a round surface of that area [m].</param>
    /// <param name="boreM">Bore, which the jet's number is on [m].</param>
    /// <param name="stirring">Nusselt number of the jet [-].</param>
    public static double OverSurface(in GasPoint film, double viscosity, double conductivity, double differenceK, double diameterM,
        double boreM, double stirring)
    {
        var length = diameterM / 4;
        var rayleigh = Grashof(film, viscosity, differenceK, length) * viscosity * film.Cp / conductivity;
        return NusseltOverSurface(differenceK < 0, rayleigh) * conductivity / length + stirring * conductivity / boreM;
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
        return (Nusselt(law, Grashof(film, viscosity, differenceK, boreM) * prandtl, prandtl) + stirring) * conductivity / boreM;
    }

    private static double Grashof(in GasPoint film, double viscosity, double differenceK, double lengthM) =>
        StandardConstants.Gravity * Math.Abs(film.Expansivity * differenceK) * lengthM * lengthM * lengthM
            * film.Density * film.Density / (viscosity * viscosity);
}

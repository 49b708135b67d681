using NotebookKit.Materials.Fluids;
using NotebookKit.Provenance;
using NotebookKit.Quantities.Numbers;
using NotebookKit.Quantities;
using NotebookKit.Vessels;
using UnitsNet;

namespace NotebookKit.Filling.Balances;

/// <summary>A vessel's wall as the gas meets it: its surface, its heat capacity, and how heat passes to it and to the air
/// outside.</summary>
/// <remarks>
/// Free convection on the bore by <see cref="FilmLaw"/>, ±30 %. While gas blows in, its jet stirs: 0.56 Re^0.67 on the inlet's diameter is
/// added to the Nusselt number where that is given, as long as the jet mixes the gas (P. F. Peterson 1994, unverified). Without it heating
/// is an upper estimate. Source: see <see cref="FilmLaw"/>; jet: P. L.
/// Woodfield, M. Monde, T. Takano, J. Thermal Sci. Tech. 3 (2008) 241, unverified: confirm. Compared with measured vessels.
/// </remarks>
public sealed record FillWall
{
    /// <summary>Surface that the gas touches, water included; above 0 to 100 m².</summary>
    public required Area Surface { get; init; }

    /// <summary>
    /// Share of <see cref="Surface"/> that is the water's own; above 0, below the surface. Heat then passes there to water that has one
    /// temperature and is followed: 0.27 Ra^(1/4) under warmer gas, 0.54 Ra^(1/4) or 0.15 Ra^(1/3) under colder gas, on a quarter of its
    /// diameter. None unless given: the water counts as wall. What a vent leaves of water is followed, too.
    /// Source: W. H. McAdams 1954; J. R. Lloyd, W. R. Moran 1974, unverified: confirm.
    /// </summary>
    public Area? WaterSurface { get; init; }

    /// <summary>Bore of the vessel, the length that convection goes by; 5 mm to 2 m.</summary>
    public required Length Bore { get; init; }

    /// <summary>By which law gas and wall exchange heat; that of a standing vessel unless given.</summary>
    public FilmLaw Law { get; init; } = FilmLaw.Vertical;

    /// <summary>A film coefficient of one's own in place of the correlation, as fitted to a log; 1 to 5000 W/(m²·K). None unless
    /// given.</summary>
    public HeatTransferCoefficient? Film { get; init; }

    /// <summary>Factor on the film coefficient [-]; 0 to 10. For seeing how much it matters.</summary>
    public double FilmFactor { get; init; } = 1;

    /// <summary>Diameter of the jet that blows in and stirs; 0.1 mm to 100 mm. None unless given: no stirring, the hotter answer.</summary>
    public Length? Inlet { get; init; }

    /// <summary>How long that jet stirs; as long as the published criterion says that it mixes the gas unless given.</summary>
    public JetStirring Stirring { get; init; }

    /// <summary>Heat capacity of the wall that takes part; above 0. None: the wall keeps its temperature, as thick metal does for
    /// seconds.</summary>
    public Entropy? HeatCapacity { get; init; }

    /// <summary>Film coefficient of the air outside; 0 to 100 W/(m²·K), 10 unless said (typical).</summary>
    public HeatTransferCoefficient Outside { get; init; } = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(10);

    internal IReadOnlyList<Source> Sources => Film is not null ? [] :
        [FreeConvection.SourceOf(Law), .. WaterSurface is null ? [] : new[] { FreeConvection.Surface },
            .. Inlet is null ? [] : new[] { JetSource, JetMixing.Source }];

    internal static Source JetSource { get; } = new(
        "P. L. Woodfield, M. Monde, T. Takano", "Heat transfer characteristics for practical hydrogen pressure vessels being filled at "
            + "high pressure, J. Thermal Sci. Tech. 3, 241", 2008, "", SourceKind.Unverified);

    /// <summary>
    /// The surface of a plain cylinder of the chamber's bore and volume, gas part and both ends. Source: geometry.
    /// </summary>
    /// <param name="chamber">The vessel.</param>
    /// <param name="waterFraction">Water in it over its volume; 0 to 95 %.</param>
    /// <param name="wall">What the wall is; 1.5 mm of plastic and laminate unless given.</param>
    public static FillWall Of(Chamber chamber, Ratio waterFraction, ThermalWall? wall = null)
    {
        ArgumentNullException.ThrowIfNull(chamber);
        double bore = chamber.Bore.Meters, end = Math.PI / 4 * bore * bore;
        var length = chamber.Volume.CubicMeters * (1 - waterFraction.DecimalFractions) / end;
        var surface = Area.FromSquareMeters(Finite.Check(Math.PI * bore * length + 2 * end, "surface of the wall", "m²"));
        return new()
        {
            Surface = surface.ToUnit(UnitsNet.Units.AreaUnit.SquareCentimeter),
            Bore = chamber.Bore,
            HeatCapacity = (wall ?? ThermalWall.Laminate(1.5.Millimetres())).Capacity(surface),
        };
    }

    /// <summary>What is wrong with a surface of water in a vessel that holds none.</summary>
    internal Finding? FindWater(string vessel, Ratio waterFraction) => WaterSurface is { } surface && !(waterFraction > Ratio.Zero)
        ? FillingFindings.SurfaceWithoutWater(vessel, surface) : null;

    internal static Finding? FindBore(Chamber chamber) => Bores.Find(chamber.Bore, "bore of the vessel",
        "It is the internal diameter; check its unit.");

    /// <summary>Everything wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() =>
        new[]
        {
            new ValidRange<Area>(Area.FromSquareMillimeters(1), 100.SquareMetres()).Find(Surface, "surface that the gas touches",
                "Check the unit it was given in."),
            WaterSurface is { } water ? new ValidRange<Area>(Area.FromSquareMillimeters(1), Surface).Find(water.ToUnit(Surface.Unit),
                "surface of the water", "It is a share of the surface that the gas touches; in a standing vessel it is that of the bore.")
                : null,
            Bores.Find(Bore, "bore", "Check the unit it was given in."),
            Film is { } film ? new ValidRange<HeatTransferCoefficient>(W(1),
                W(5000)).Find(film.ToUnit(UnitsNet.Units.HeatTransferCoefficientUnit.WattPerSquareMeterKelvin), "film coefficient",
                "Compressed air in a vessel has 10 to 500 W/(m²·K).") : null,
            Enum.IsDefined(Law) ? null : FillingFindings.FilmLawUnknown(Law.ToString(), Enum.GetNames<FilmLaw>()),
            new ValidRange<double>(0, 10).Find(FilmFactor, "factor on the film coefficient", "1 is the correlation as it stands."),
            Enum.IsDefined(Stirring) ? null : FillingFindings.JetStirringUnknown(Stirring.ToString(), Enum.GetNames<JetStirring>()),
            Inlet is { } inlet ? new ValidRange<Length>(0.1.Millimetres(), 100.Millimetres()).Find(inlet, "diameter of the inlet jet",
                "Check the unit it was given in.") : null,
            HeatCapacity is { } capacity ? new ValidRange<Entropy>(Entropy.FromJoulesPerKelvin(0.1),
                Entropy.FromJoulesPerKelvin(1e9)).Find(capacity, "heat capacity of the wall",
                "A light laminate has about 2 kJ/K for each square metre.") : null,
            new ValidRange<HeatTransferCoefficient>(W(0),
                W(100)).Find(Outside.ToUnit(UnitsNet.Units.HeatTransferCoefficientUnit.WattPerSquareMeterKelvin),
                "film coefficient outside", "Still air has 5 to 10, wind 20 to 50 W/(m²·K)."),
        }.OfType<Finding>().ToList();

    private static readonly ValidRange<Length> Bores = new(5.Millimetres(), 2.Metres());

    private static HeatTransferCoefficient W(double value) => HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(value);
}

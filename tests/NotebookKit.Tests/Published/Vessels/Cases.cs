using NotebookKit.Quantities;
using NotebookKit.Vessels.Laminates;
using UnitsNet;

namespace NotebookKit.Tests.Published.Vessels;

/// <summary>Plies that several published cases share.</summary>
internal static class Cases
{
    /// <summary>T300/5208. Source: Kaw 2006, Table 2.1, from Tsai and Hahn 1980.</summary>
    public static Lamina T300 { get; } = new(181.Gigapascals(), 10.3.Gigapascals(), 7.17.Gigapascals(), 0.28);

    /// <inheritdoc cref="T300"/>
    public static PlyStrength T300Strength { get; } = new(1500.Megapascals(), 1500.Megapascals(), 40.Megapascals(), 246.Megapascals(),
        68.Megapascals());

    /// <summary>E-glass/MY750 lamina. Source: Soden, Hinton and Kaddour, Compos. Sci. Technol. 58, 1998.</summary>
    public static Lamina My750 { get; } = new(45.6.Gigapascals(), 16.2.Gigapascals(), 5.83.Gigapascals(), 0.278);

    /// <inheritdoc cref="My750"/>
    public static PlyStrength My750Strength { get; } = new(1280.Megapascals(), 800.Megapascals(), 40.Megapascals(), 145.Megapascals(),
        73.Megapascals());

    /// <summary>AS4/3501-6 lamina. Source: Soden, Hinton and Kaddour, Compos. Sci. Technol. 58, 1998.</summary>
    public static Lamina As4 { get; } = new(126.Gigapascals(), 11.Gigapascals(), 6.6.Gigapascals(), 0.28);

    /// <inheritdoc cref="As4"/>
    public static PlyStrength As4Strength { get; } = new(1950.Megapascals(), 1480.Megapascals(), 48.Megapascals(), 200.Megapascals(),
        79.Megapascals());

    public static Composite WetCarbon(Ratio fraction)
    {
        return new Composite(
            new Fibre("carbon", Given(1780.KilogramsPerCubicMetre()), Given(230.Gigapascals()), Given(15.Gigapascals()),
                Given(15.Gigapascals()), Given(0.20), Given(3530.Megapascals())),
            new Resin("resin", Given(1150.KilogramsPerCubicMetre()), Given(3.Gigapascals()), Given(0.35), Given(60.Megapascals()),
                Given(95.Megapascals()), Given(45.Megapascals()), Given(50.Celsius())),
            fraction);

        static Property<T> Given<T>(T value) where T : struct, IComparable<T> => Property.Typical(value, 0, "case input");
    }

    /// <summary>A tube wall of one millimetre on a mean radius of 50 mm.</summary>
    public static TubeWall Tube(Lamina lamina, PlyStrength strength, params (double Degrees, double Millimetres)[] plies) => new(
        50.Millimetres(), [.. plies.Select(p => new TubePly($"{p.Degrees}°", lamina, strength, p.Degrees.Degrees(),
            p.Millimetres.Millimetres()))]);
}

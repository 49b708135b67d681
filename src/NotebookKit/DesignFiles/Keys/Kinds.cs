using NotebookKit.DesignFiles.Shapes;
using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.DesignFiles.Keys;

/// <summary>Single values with their ranges, in few words.</summary>
internal static class Kinds
{
    public static FlagShape Flag { get; } = new();

    public static MaterialShape<IsotropicMaterial> Solid { get; } = new("plastic or metal");

    public static MaterialShape<Adhesive> Adhesive { get; } = new("adhesive");

    public static MaterialShape<Cloth> Cloth { get; } = new("cloth");

    public static MaterialShape<Resin> Resin { get; } = new("resin");

    public static WordShape<BondSurface> Surface { get; } = new("surface", ("treated metal", BondSurface.TreatedMetal),
        ("abraded metal", BondSurface.AbradedMetal), ("abraded laminate", BondSurface.AbradedLaminate),
        ("abraded plastic", BondSurface.AbradedPlastic), ("untreated plastic", BondSurface.UntreatedPlastic));

    public static UnitShape<T> Any<T>() where T : struct, IComparable<T> => new(null, "");

    public static UnitShape<Length> Millimetres(double least, double most, string why) =>
        Between(least.Millimetres(), most.Millimetres(), why);

    public static UnitShape<Length> Metres(double least, double most, string why) => Between(least.Metres(), most.Metres(), why);

    public static UnitShape<Mass> Grams(double least, double most, string why) => Between(least.Grams(), most.Grams(), why);

    public static UnitShape<Ratio> Percent(double least, double most, string why) => Between(least.Percent(), most.Percent(), why);

    public static UnitShape<Angle> Degrees(double least, double most, string why) => Between(least.Degrees(), most.Degrees(), why);

    public static UnitShape<GaugePressure> BarGauge(double least, double most, string why) =>
        Between(least.BarGauge(), most.BarGauge(), why);

    public static UnitShape<Temperature> Celsius(double least, double most, string why) => Between(least.Celsius(), most.Celsius(), why);

    public static UnitShape<Duration> Seconds(double least, double most, string why) => Between(least.Seconds(), most.Seconds(), why);

    public static UnitShape<Speed> MetresPerSecond(double least, double most, string why) =>
        Between(least.MetresPerSecond(), most.MetresPerSecond(), why);

    public static UnitShape<Pressure> Gigapascals(double least, double most, string why) =>
        Between(least.Gigapascals(), most.Gigapascals(), why);

    public static UnitShape<T> Between<T>(T least, T most, string why) where T : struct, IComparable<T> =>
        new(new ValidRange<T>(least, most), why);

    public static NumberShape Number(double least, double most, string why) => new(least, most, why);

    public static CountShape Count(int least, int most, string why) => new(least, most, why);

    public static ListShape<T> List<T>(Shape<T> item, int least, int most) => new(item, least, most);
}

using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.DesignFiles.Parts;

/// <summary>The figures that a requirement may be about, by the kind of their limit.</summary>
internal static class DesignFigures
{
    public const string Apogee = "apogee", HighestApogee = "apogee at light drag", Drift = "drift";
    public const string Rated = "rated pressure", Proof = "proof pressure", DesignBurst = "design burst", Fill = "fill pressure";
    public const string FillOverRated = "fill pressure over rated pressure", Margin = "minimum static margin",
        Chance = "chance of a burst at the fill";
    public const string RailSpeed = "speed off the rail", TopSpeed = "maximum speed", Descent = "descent speed", Landing = "landing speed";
    public const string DryMass = "dry mass", ApogeeTime = "time to apogee";

    public static IReadOnlyDictionary<string, Type> Kinds { get; } = new Dictionary<string, Type>(StringComparer.Ordinal)
    {
        [Apogee] = typeof(Length), [HighestApogee] = typeof(Length), [Drift] = typeof(Length),
        [Rated] = typeof(GaugePressure), [Proof] = typeof(GaugePressure), [DesignBurst] = typeof(GaugePressure),
        [Fill] = typeof(GaugePressure),
        [FillOverRated] = typeof(double), [Margin] = typeof(double), [Chance] = typeof(double),
        [RailSpeed] = typeof(Speed), [TopSpeed] = typeof(Speed), [Descent] = typeof(Speed), [Landing] = typeof(Speed),
        [DryMass] = typeof(Mass), [ApogeeTime] = typeof(Duration),
    }.AsReadOnly();

    public static string[] Of<T>() => [.. Kinds.Where(k => k.Value == typeof(T)).Select(k => k.Key)];
}

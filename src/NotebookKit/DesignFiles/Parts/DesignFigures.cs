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
    public const string FillTime = "fill time", Flutter = "flutter margin", SheetFactor = "factor on the fin sheet",
        BondFactor = "factor on the fin bond";
    public const string OpeningLoad = "opening load", OpeningShare = "opening load over allowed load";
    public const string Scatter = "landing scatter radius", OffField = "chance of landing off the field";

    public static IReadOnlyDictionary<string, Type> Kinds { get; } = new Dictionary<string, Type>(StringComparer.Ordinal)
    {
        [Apogee] = typeof(Length), [HighestApogee] = typeof(Length), [Drift] = typeof(Length),
        [Rated] = typeof(GaugePressure), [Proof] = typeof(GaugePressure), [DesignBurst] = typeof(GaugePressure),
        [Fill] = typeof(GaugePressure),
        [FillOverRated] = typeof(double), [Margin] = typeof(double), [Chance] = typeof(double),
        [RailSpeed] = typeof(Speed), [TopSpeed] = typeof(Speed), [Descent] = typeof(Speed), [Landing] = typeof(Speed),
        [DryMass] = typeof(Mass), [ApogeeTime] = typeof(Duration), [FillTime] = typeof(Duration),
        [Flutter] = typeof(double), [SheetFactor] = typeof(double), [BondFactor] = typeof(double),
        [OpeningLoad] = typeof(Force), [OpeningShare] = typeof(double),
        [Scatter] = typeof(Length), [OffField] = typeof(double),
    }.AsReadOnly();

    /// <summary>Figures that take many flights: computed where something is required of them.</summary>
    public static bool IsCostly(string figure) => figure is Scatter or OffField;

    public static string[] Of<T>() => [.. Kinds.Where(k => k.Value == typeof(T)).Select(k => k.Key)];
}

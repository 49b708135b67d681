using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Clearance.Service;

/// <summary>The vessel was filled: one cycle, and its time at pressure.</summary>
/// <param name="Pressure">Highest pressure of the fill; 0.1 to 300 bar gauge.</param>
/// <param name="Temperature">Temperature of the wall; −40 to 100 °C; none where it wasn't read.</param>
/// <param name="Hold">Time at pressure, from filled to vented or flown; 1 s to 168 h.</param>
/// <param name="Medium">What pressed on the wall; none where it isn't known.</param>
public sealed record Filled(GaugePressure Pressure, Temperature? Temperature, Duration Hold, FillMedium? Medium = null) : ServiceEvent
{
    internal const string Name = "filled";
    internal static readonly ValidRange<Duration> Holds = new(1.Seconds(), (168 * 3600).Seconds());
    private static readonly (string, FillMedium)[] Media = [("water", FillMedium.Water), ("gas", FillMedium.Gas)];

    /// <inheritdoc/>
    public override string Kind => Name;

    internal override IReadOnlyList<(string Name, string Value)> Data =>
    [
        ("pressure", ServiceText.Of(Pressure)),
        .. Temperature is { } wall ? [("temperature", ServiceText.Of(wall))] : Array.Empty<(string, string)>(),
        ("hold", ServiceText.Of(Hold)),
        .. Medium is { } medium ? [("medium", Array.Find(Media, m => m.Item2 == medium).Item1)] : Array.Empty<(string, string)>(),
    ];

    internal static Filled From(ServiceFields fields) =>
        new(fields.Pressure("pressure"), fields.Optional<Temperature>("temperature"), fields.Quantity<Duration>("hold", "2 min"),
            fields.OptionalChoice("medium", Media));

    private protected override IEnumerable<Finding?> Check()
    {
        yield return new ValidRange<GaugePressure>(0.1.BarGauge(), 300.BarGauge()).Find(Pressure, "fill pressure",
            "Write what the gauge showed at most.");
        if (Temperature is { } wall)
            yield return new ValidRange<Temperature>((-40).Celsius(),
                100.Celsius()).Find(wall.ToUnit(UnitsNet.Units.TemperatureUnit.DegreeCelsius), "temperature of the wall",
                "Leave it out where it wasn't read.");
        yield return Holds.Find(Hold.ToUnit(UnitsNet.Units.DurationUnit.Second), "time at pressure",
            "Count from filled to vented or flown; the minimum is one second.");
        if (Medium is { } medium && !Enum.IsDefined(medium)) yield return ClearanceFindings.MediumUnknown();
    }
}

/// <summary>What pressed on the wall in a fill.</summary>
public enum FillMedium
{
    /// <summary>Water throughout: little energy.</summary>
    Water,

    /// <summary>Gas, with water below it or without.</summary>
    Gas,
}

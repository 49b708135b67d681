using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Clearance.Service;

/// <summary>The wall got hot: a black wall in the sun, a parked car, a stove.</summary>
/// <param name="Temperature">Highest temperature of the wall; 20 to 400 °C.</param>
/// <param name="Duration">How long it was hot; 1 s to 168 h.</param>
public sealed record Heated(Temperature Temperature, Duration Duration) : ServiceEvent
{
    internal const string Name = "heated";

    /// <inheritdoc/>
    public override string Kind => Name;

    internal override IReadOnlyList<(string Name, string Value)> Data
        => [("temperature", ServiceText.Of(Temperature)), ("duration", ServiceText.Of(Duration))];

    internal static Heated From(ServiceFields fields) => new(fields.Quantity<Temperature>("temperature", "60 °C"),
        fields.Quantity<Duration>("duration", "2 h"));

    private protected override IEnumerable<Finding?> Check()
    {
        yield return new ValidRange<Temperature>(20.Celsius(), 400.Celsius())
            .Find(Temperature.ToUnit(UnitsNet.Units.TemperatureUnit.DegreeCelsius), "temperature of the heated wall",
                "Write the hottest place of the wall.");
        yield return Filled.Holds.Find(Duration.ToUnit(UnitsNet.Units.DurationUnit.Second), "time it was hot",
            "Write your best estimate and say so in the notes.");
    }
}

using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Life.Damage;

/// <summary>A load held for a time.</summary>
/// <param name="Stress">Stress over the characteristic short-time strength; above 0 to 100 %.</param>
/// <param name="Time">Time under it; 0 to 200 years.</param>
public sealed record LoadHold(Ratio Stress, Duration Time)
{
    /// <summary>Everything that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() =>
        [.. new[]
        {
            StressRange.Find(Stress.ToUnit(RatioUnit.Percent), "stress over strength",
                "A vessel loaded to its burst strength has no life."),
            new ValidRange<double>(0, 200 * 8766).Find(Time.Hours, "time under load in h", "Check its unit."),
        }.OfType<Finding>()];

    internal static ValidRange<Ratio> StressRange => new(0.1.Percent(), 100.Percent());
}

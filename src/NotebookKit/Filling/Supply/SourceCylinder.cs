using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.Supply;

/// <summary>A cylinder of compressed gas that vessels are filled from.</summary>
/// <param name="Name">What is painted on it.</param>
/// <param name="Volume">Water volume; 0.1 L to 200 L.</param>
/// <param name="Pressure">Gauge pressure; 0 to 300 bar gauge.</param>
public sealed record SourceCylinder(string Name, Volume Volume, GaugePressure Pressure)
{
    /// <summary>Everything wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() => Find(300.BarGauge());

    internal IReadOnlyList<Finding> Find(GaugePressure highest) =>
        new[]
        {
            new ValidRange<Volume>(0.1.Litres(), 200.Litres()).Find(Volume, $"volume of cylinder {Name}",
                "A diving cylinder holds 3 to 20 L; was another unit meant?"),
            new ValidRange<GaugePressure>(0.BarGauge(), highest).Find(Pressure, $"pressure of cylinder {Name}",
                "Diving cylinders are filled to 200, 232 or 300 bar gauge."),
        }.OfType<Finding>().ToList();

    /// <summary>For example "A: 10 L at 200 bar gauge".</summary>
    public override string ToString() => $"{Name}: {Digits.Round(Volume.Liters)} L at {Pressure}";
}

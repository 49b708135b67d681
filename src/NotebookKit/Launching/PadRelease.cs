using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Launching;

/// <summary>A vehicle held on the pad under pressure: what clamp and latches carry, what it takes to open them, and what follows.</summary>
/// <remarks>
/// Sealed, the pad's seal takes p A; open, the jet gives 2 p A, which a stuck latch has to hold. Latches open against friction; with a
/// launch
/// tube the vehicle is pushed by p A less the seal's friction. Source: momentum theorem; Coulomb's friction; Newton's second law.
/// </remarks>
public sealed record PadRelease
{
    /// <summary>Pressure in the vessel; 0.1 to 300 bar gauge. Take the highest that it may come to.</summary>
    public required GaugePressure Pressure { get; init; }

    /// <summary>Diameter that the pad's seal closes: the throat, or the launch tube; 1 to 100 mm.</summary>
    public required Length SealDiameter { get; init; }

    /// <summary>Mass of the vehicle as it stands, water and all; 0.05 to 200 kg.</summary>
    public required Mass Mass { get; init; }

    /// <summary>Latches that hold it; 1 to 12.</summary>
    public required int Latches { get; init; }

    /// <summary>What the most loaded latch carries over the mean [-]; 1 to 12, 1.5 unless given (common practice, no source).</summary>
    public double Uneven { get; init; } = 1.5;

    /// <summary>Friction coefficient of a latch [-]; 0.02 to 1, 0.3 unless given (common practice, no source: steel on steel,
    /// wet).</summary>
    public double LatchFriction { get; init; } = 0.3;

    /// <summary>Load that one latch is rated to; none where that isn't given.</summary>
    public Force? LatchRating { get; init; }

    /// <summary>Force that the release pulls with, all latches together; none where that isn't given.</summary>
    public Force? Pull { get; init; }

    /// <summary>Mass of the moved parts of the latches; 1 g to 20 kg, 0.2 kg unless given (common practice, no source).</summary>
    public Mass MovedMass { get; init; } = 0.2.Kilograms();

    /// <summary>Way that the latches have to move; 0.5 to 200 mm, 10 mm unless given (common practice, no source).</summary>
    public Length Travel { get; init; } = 10.Millimetres();

    /// <summary>Stroke of a launch tube of the seal's diameter; none where there is none.</summary>
    public Length? TubeStroke { get; init; }

    /// <summary>Width of the seal's contact along the tube; 0.1 to 20 mm, 1 mm unless given (common practice, no source).</summary>
    public Length SealWidth { get; init; } = 1.Millimetres();

    /// <summary>Friction coefficient of the seal on the tube [-]; 0.02 to 1.5, 0.3 unless given (common practice, no source: wet
    /// rubber).</summary>
    public double SealFriction { get; init; } = 0.3;

    /// <summary>Everything wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() =>
        new[]
        {
            new ValidRange<GaugePressure>(0.1.BarGauge(), 300.BarGauge()).Find(Pressure, "pressure in the vessel", "It is gauge."),
            new ValidRange<Length>(1.Millimetres(), 100.Millimetres()).Find(SealDiameter, "diameter of the seal", "Check its unit."),
            new ValidRange<Mass>(0.05.Kilograms(), 200.Kilograms()).Find(Mass, "mass of the vehicle", "Water counts."),
            new ValidRange<double>(1, 12).Find(Latches, "number of latches", "One at the least holds the vehicle."),
            new ValidRange<double>(1, 12).Find(Uneven, "share of the most loaded latch", "1 is an even share."),
            new ValidRange<double>(0.02, 1).Find(LatchFriction, "friction coefficient of a latch",
                "Steel on steel has 0.1 to 0.3 and more."),
            new ValidRange<Mass>(1.Grams(), 20.Kilograms()).Find(MovedMass, "mass of the moved parts", "Check its unit."),
            new ValidRange<Length>(0.5.Millimetres(), 200.Millimetres()).Find(Travel, "way of the latches", "Check its unit."),
            TubeStroke is { } stroke ? new ValidRange<Length>(10.Millimetres(), 3.Metres()).Find(stroke, "stroke of the launch tube",
                "It reaches up inside the vessel.") : null,
            new ValidRange<Length>(0.1.Millimetres(), 20.Millimetres()).Find(SealWidth, "width of the seal", "An O-ring touches on 1 mm."),
            new ValidRange<double>(0.02, 1.5).Find(SealFriction, "friction coefficient of the seal",
                "Wet rubber has 0.1 to 0.5, dry up to 1."),
        }.OfType<Finding>().ToList();

    /// <summary>Loads, release and what follows. Source: as the type.</summary>
    /// <exception cref="InvalidDesignException">Something is refused; all reasons are in it.</exception>
    public PadReleaseResult Run()
    {
        var findings = Validate();
        InvalidDesignException.ThrowIfAny("Release", findings);
        return new PadReleaseResult(this, findings);
    }
}

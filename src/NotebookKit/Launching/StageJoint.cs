using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Launching;

/// <summary>The joint of a stack: what the stage latch carries and what the sustainer's seal holds, on the pad and while boosted.</summary>
/// <remarks>
/// Along the axis: latch = F_seal − m (a + g) − D of the sustainer; the seal holds the sustainer's pressure and the head of its water,
/// ρ h (a + g). Source: Newton's second law; hydrostatics.
/// </remarks>
public sealed record StageJoint
{
    /// <summary>Pressure in the sustainer; 0 to 300 bar gauge.</summary>
    public required GaugePressure Sustainer { get; init; }

    /// <summary>Diameter of the sustainer's seal; 1 to 100 mm.</summary>
    public required Length SealDiameter { get; init; }

    /// <summary>Mass of the sustainer, full; 0.05 to 100 kg.</summary>
    public required Mass SustainerMass { get; init; }

    /// <summary>Mass of the whole stack when the booster is spent; above the sustainer's, to 300 kg.</summary>
    public required Mass SpentStackMass { get; init; }

    /// <summary>Largest acceleration while boosted, above free fall; 0 to 5000 m/s².</summary>
    public required Acceleration Boost { get; init; }

    /// <summary>Height of the water above the sustainer's seal; 0 to 5 m, 0 unless given.</summary>
    public Length WaterHeight { get; init; }

    /// <summary>Drag of the stack when the booster is spent; 0 to 10 kN, 0 unless given.</summary>
    public Force StackDrag { get; init; }

    /// <summary>Share of that drag that acts on the sustainer [-]; 0 to 1, 0 unless given, which errs high for the latch.</summary>
    public double SustainerShare { get; init; }

    /// <summary>Everything wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() =>
        new[]
        {
            new ValidRange<GaugePressure>(GaugePressure.Zero, 300.BarGauge()).Find(Sustainer, "pressure in the sustainer", "It is gauge."),
            new ValidRange<Length>(1.Millimetres(), 100.Millimetres()).Find(SealDiameter, "diameter of the seal", "Check its unit."),
            new ValidRange<Mass>(0.05.Kilograms(), 100.Kilograms()).Find(SustainerMass, "mass of the sustainer", "Water counts."),
            new ValidRange<Mass>(SustainerMass, 300.Kilograms()).Find(SpentStackMass, "mass of the spent stack",
                "The sustainer is part of the stack."),
            new ValidRange<double>(0, 5000).Find(Boost.MetersPerSecondSquared, "acceleration while boosted in m/s²", "Check its unit."),
            new ValidRange<Length>(Length.Zero, 5.Metres()).Find(WaterHeight, "height of the water", "It stands above the seal."),
            new ValidRange<Force>(Force.Zero, 10_000.Newtons()).Find(StackDrag, "drag of the stack", "Check its unit."),
            new ValidRange<double>(0, 1).Find(SustainerShare, "sustainer's share of the drag", "0 errs high for the latch."),
        }.OfType<Finding>().ToList();

    /// <summary>Loads of latch and seal. Source: as the type.</summary>
    /// <exception cref="InvalidDesignException">Something is refused; all reasons are in it.</exception>
    public StageJointResult Run()
    {
        var findings = Validate();
        InvalidDesignException.ThrowIfAny("Joint of the stages", findings);
        return new StageJointResult(this, findings);
    }
}

using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Recovery;

/// <summary>What brings a vehicle down and what holds it together meanwhile: canopy, cord, anchor, pins. Source: the models of its
/// parts.</summary>
public sealed record RecoveryGear
{
    /// <summary>The canopy that hangs from the gear.</summary>
    public required Canopy Canopy { get; init; }

    /// <summary>The cord between the halves.</summary>
    public required ShockCord Cord { get; init; }

    /// <summary>Mass of the half that is thrown off; 1 g to 500 kg.</summary>
    public required Mass Front { get; init; }

    /// <summary>Mass of the other half; 1 g to 500 kg.</summary>
    public required Mass Rear { get; init; }

    /// <summary>Speed at which the halves come apart; 0.1 to 100 m/s.</summary>
    public required Speed Apart { get; init; }

    /// <summary>Load at which the anchor (bulkhead, eye, knot) gives way, pulled on the bench; 1 N to 100 kN.</summary>
    public required Force Anchor { get; init; }

    /// <summary>The joint's pins; none where the joint is held by friction alone.</summary>
    public PinJoint? Joint { get; init; }

    /// <summary>Judges cord, anchor and pins. Source: see the result's model card.</summary>
    /// <exception cref="InvalidDesignException">Canopy, cord or pins can't be computed; carries all findings.</exception>
    /// <exception cref="OutOfRangeException">An input is outside its range.</exception>
    public RecoveryCheck Check()
    {
        InvalidDesignException.ThrowIfAny("Recovery gear", Canopy.Validate());
        new ValidRange<Force>(1.Newtons(), 100_000.Newtons()).Check(Anchor, "load that the anchor bears",
            "Pull the finished bulkhead, eye and knot on the bench.");
        return new(this, Cord.Snatch(Front, Rear, Apart), Joint?.Check());
    }
}

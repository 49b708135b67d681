using NotebookKit.Aerodynamics.FinStructures;
using NotebookKit.Clearance.Service;
using NotebookKit.Filling.Fills;
using NotebookKit.Filling.Networks;
using NotebookKit.Flight.Stability;
using NotebookKit.Materials.Solids;
using NotebookKit.Proofing.Records;
using NotebookKit.Recovery;
using UnitsNet;

namespace NotebookKit.Clearance.Cards;

/// <summary>What stands behind one stage of a flight: objects that a computation or a test made. What is left out is "not shown", and that
/// forbids.</summary>
public abstract record StageEvidence
{
    /// <summary>The vessel as proved.</summary>
    public ProvedVessel? Vessel { get; init; }

    /// <summary>The vessel's service record, as read from its file.</summary>
    public ServiceRecord? Service { get; init; }

    /// <summary>The mark that was read off the vessel's label, "3f9a-71c2"; none where nobody read it. Where it is given, it must be the
    /// <see cref="ServiceRecord.EndMark"/> of the service record.</summary>
    public string? Label { get; init; }

    /// <summary>Temperature that the vessel's wall may have on the day, at its warmest place; the air's own temperature isn't taken for
    /// it.</summary>
    public Temperature? VesselTemperature { get; init; }

    /// <summary>Water in the vessel's resin by weight, as measured; where it isn't, that of a saturated resin is taken. It never forbids by
    /// its absence.</summary>
    public Property<Ratio>? ResinMoisture { get; init; }

    /// <summary>The fill, or its plan.</summary>
    public FillResult? Fill { get; init; }

    /// <summary>What the club says of the parts of its line; where it is given, a part that is rated for less than may stand in it
    /// forbids.</summary>
    public PadEquipment? Pad { get; init; }

    /// <summary>The very parts that stand on the pad on the day, with serial and rating; none where nobody says. Where they are given, they
    /// are held against the pressures of the fill in place of those that the plan asks for.</summary>
    public IReadOnlyList<PadPart>? Gear { get; init; }

    /// <summary>The pad as it was run as a network; where it is given, a part without a rating, or one that more may stand in, forbids.
    /// </summary>
    public PadNetworkResult? Network { get; init; }

    /// <summary>The fins, judged, one result for every set of the stage.</summary>
    public IReadOnlyList<FinStructureResult>? Fins { get; init; }

    /// <summary>The recovery gear, judged.</summary>
    public RecoveryCheck? Recovery { get; init; }

    /// <summary>The static margin as the water leaves.</summary>
    public StabilityResult? Stability { get; init; }
}

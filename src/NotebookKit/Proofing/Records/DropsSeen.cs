using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Proofing.Records;

/// <summary>Drops that were counted during a proof, from behind cover.</summary>
/// <param name="Place">Where they formed.</param>
/// <param name="Rate">How many in a time; 0 to 600 a minute, 0 where the place was watched and stayed dry.</param>
/// <param name="At">Pressure at which they were counted; 0 to 300 bar gauge.</param>
public sealed record DropsSeen(LeakPlace Place, Frequency Rate, GaugePressure At)
{
    // Twenty drops of water make a millilitre. Common practice, no source.
    private static readonly Volume Drop = 0.05.Millilitres();

    /// <summary>Water lost, at 20 drops to the millilitre (common practice, no source).</summary>
    public VolumeFlow Flow => VolumeFlow.FromMillilitersPerMinute(Rate.Hertz * 60 * Drop.Milliliters);

    /// <summary>Everything wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() =>
        new[]
        {
            Enum.IsDefined(Place) ? null : ProofingFindings.PlaceOfLeakUnknown(Place.ToString(), Enum.GetNames<LeakPlace>()),
            new ValidRange<Frequency>(Frequency.Zero, Frequency.FromCyclesPerMinute(600)).Find(Rate, "drops counted",
                "More than ten a second is a jet: give the gauge's fall in place of it."),
            new ValidRange<GaugePressure>(GaugePressure.Zero, 300.BarGauge()).Find(At, "pressure at which drops were counted",
                "Check the unit it was given in."),
        }.OfType<Finding>().ToList();
}

/// <summary>Where water came out.</summary>
public enum LeakPlace
{
    /// <summary>At the seal of a fitting: O-ring, gasket, thread.</summary>
    FittingSeal,

    /// <summary>At the bond between an end and the liner or the sleeve.</summary>
    Bond,

    /// <summary>Through the wall of the vessel.</summary>
    Wall,

    /// <summary>At pump, hose or gauge, off the vessel.</summary>
    PumpLine,
}

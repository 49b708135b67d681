using NotebookKit.Provenance;

namespace NotebookKit.Vessels.Ends;

/// <summary>One way an end gives way, and the pressure at which it does, SI.</summary>
/// <param name="Name">The part: "bonded plug".</param>
/// <param name="Pascals">Pressure at which it gives way [Pa].</param>
/// <param name="Kind">Whether that is a burst or a leak.</param>
/// <param name="Cause">How it gives way, a few words.</param>
/// <param name="Driver">What makes it scatter.</param>
/// <param name="Formula">Formula, TeX.</param>
/// <param name="Source">Where the formula is from.</param>
internal readonly record struct EndMode(string Name, double Pascals, PartFailure Kind, string Cause, EndDriver Driver, string Formula,
    Source Source)
{
    /// <summary>What bond and sleeve would hold alone [Pa], and the bond's share of the thrust while both hold [-]; for a shared
    /// mode.</summary>
    public (double Bond, double Sleeve, double BondShare) Pair { get; init; }

    /// <summary>Pressure for a sample's strengths over their means [Pa].</summary>
    public double At(double closure, double bond, double sleeve) => Driver switch
    {
        EndDriver.Closure => Pascals * closure,
        EndDriver.Bond => Pascals * bond,
        EndDriver.Sleeve => Pascals * sleeve,
        _ => SharedHold.Pascals(Pair.Bond * bond, Pair.Sleeve * sleeve, Pair.BondShare),
    };
}

using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Ends.Modes;

/// <summary>
/// A cap, plug or boss held by a screw thread against the thrust of the pressure: the force and the pressure at which a thread strips.
/// </summary>
/// <param name="Thread">The thread and its limits.</param>
/// <param name="Engagement">Length over which full threads engage; 1 to 300 mm. Length past one nominal diameter isn't counted.</param>
/// <param name="SealDiameter">Diameter that the pressure reaches, to the seal; 1 to 1000 mm. It may be wider than the thread.</param>
/// <param name="ExternalShear">Shear strength of the external thread's material; 0.1 to 5000 MPa.</param>
/// <param name="InternalShear">Shear strength of the internal thread's material; 0.1 to 5000 MPa.</param>
/// <remarks>
/// Every turn is taken to carry alike, which ductile threads come to as they yield; brittle ones strip from the first turn on, sooner.
/// That length past one diameter isn't counted is common practice, no source. Source: FED-STD-H28/2B, as tabulated in Bickford, 4th ed.
/// </remarks>
public sealed record ScrewedCap(ThreadLimits Thread, Length Engagement, Length SealDiameter, Pressure ExternalShear, Pressure InternalShear)
{
    /// <summary>Length of engagement that counts, at most one nominal diameter (common practice, no source).</summary>
    public Length Counted => UnitMath.Min(Engagement, Thread.Nominal);

    /// <summary>All that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() =>
    [
        .. Thread.Validate(),
        .. ModeInput.All(
            new ValidRange<Length>(1.Millimetres(), 300.Millimetres())
                .Find(Engagement, "engagement of the thread", "Threads that don't engage hold nothing; three turns at the least."),
            new ValidRange<Length>(1.Millimetres(), 1000.Millimetres())
                .Find(SealDiameter, "diameter of the seal", "Measure to where the pressure is kept in."),
            ModeInput.Stresses.Find(ExternalShear, "shear strength of the external thread", "Take 0.577 of the yield strength of a metal."),
            ModeInput.Stresses.Find(InternalShear, "shear strength of the internal thread",
                "Take 0.577 of the yield strength of a metal.")),
    ];

    /// <summary>Force and pressure at which the weaker of the two threads strips. Source: FED-STD-H28/2B.</summary>
    /// <exception cref="InvalidDesignException">The cap isn't valid.</exception>
    public ThreadStripping Strips()
    {
        InvalidDesignException.ThrowIfAny("Screwed cap", Validate());
        Area external = ThreadArea.ExternalStrips(Thread, Counted), within = ThreadArea.InternalStrips(Thread, Counted);
        double one = external.SquareMeters * ExternalShear.Pascals, other = within.SquareMeters * InternalShear.Pascals;
        var force = Math.Min(one, other);
        List<Finding> findings = [];
        if (Engagement > Thread.Nominal)
            findings.Add(VesselsFindings.FirstTurnsCarryMost(Engagement, Counted));
        if (Engagement < Thread.Pitch * 3)
            findings.Add(VesselsFindings.FewerThanThreeTurnsEngage(Engagement / Thread.Pitch));
        findings.Add(VesselsFindings.PlasticThreadCreeps());
        return new ThreadStripping(this, external, within, Force.FromNewtons(force), one <= other,
            GaugePressure.FromPascals(force / SealArea)) { Findings = findings };
    }

    /// <summary>Thrust of a pressure on the cap. Source: pressure times area.</summary>
    /// <param name="pressure">Pressure; 0 to 2000 bar.</param>
    /// <exception cref="OutOfRangeException">The pressure is out of range.</exception>
    public Force Thrust(GaugePressure pressure) => Force.FromNewtons(ModeInput.Pressure(pressure) * SealArea);

    private double SealArea => Math.PI / 4 * SealDiameter.Meters * SealDiameter.Meters;
}

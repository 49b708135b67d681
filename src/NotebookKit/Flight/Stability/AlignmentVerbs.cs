using NotebookKit.Aerodynamics.FinStructures;
using NotebookKit.Flight.Design;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight.Stability;

/// <summary>From the jig that the fins are glued in to how the airframe rolls.</summary>
public static class AlignmentVerbs
{
    /// <summary>
    /// From the jig to the roll rate: cant distribution, roll at a speed, chance of resonance with pitching. The fins of the aft-most set
    /// are taken to be glued in the jig. Source: strip theory, J. S. Barrowman, 1967; resonance, J. D. Nicolaides, 1953 (unverified).
    /// </summary>
    /// <param name="airframe">The airframe.</param>
    /// <param name="jig">The jig.</param>
    /// <param name="speed">Speed through the air; 1 m/s to Mach 0.9.</param>
    /// <param name="water">Water aboard; 0 to what the vessel holds, none where not given.</param>
    /// <param name="gas">Gas aboard; 0 to 10 kg, none where not given.</param>
    /// <param name="seed">Seed of the samples; any number.</param>
    /// <exception cref="InvalidDesignException">Something can't be computed; carries all findings.</exception>
    public static AlignmentResult Alignment(this Airframe airframe, FinJig jig, Speed speed, Mass? water = null, Mass? gas = null,
        ulong seed = 1)
    {
        ArgumentNullException.ThrowIfNull(airframe);
        ArgumentNullException.ThrowIfNull(jig);
        InvalidDesignException.ThrowIfAny($"Airframe {airframe.Body.Name}", airframe.Validate());
        if (airframe.Body.Fins.Count == 0)
            throw new InvalidDesignException(airframe.Body.Name, [FlightFindings.NoFinsToAlign()]);
        var cant = jig.Cant(airframe.Body.Fins.MaxBy(f => f.LeadingEdgeAt)!.Count, seed);
        var motion = airframe.PitchRoll(speed, cant.Within(90.Percent()), water, gas);
        var critical = motion.CriticalCant;
        var chance = cant.Between(critical * PitchRollResult.BandFrom, critical * PitchRollResult.BandTo);
        return new AlignmentResult
        {
            Title = $"Alignment and roll, {airframe.Body.Name}",
            Cant = cant,
            AtNineInTen = motion,
            InResonanceBand = chance,
            Working = motion.Working,
            Findings = chance > 5.Percent()
                ? [.. cant.Findings, FlightFindings.RollOfJigsLiesNearPitchFrequency(chance, critical * PitchRollResult.BandFrom)]
                : cant.Findings,
        };
    }
}

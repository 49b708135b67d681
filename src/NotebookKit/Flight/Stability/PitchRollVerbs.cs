using NotebookKit.Aerodynamics.Airflow;
using NotebookKit.Aerodynamics.Bodies;
using NotebookKit.Aerodynamics.NormalForces;
using NotebookKit.Flight.Design;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Flight.Stability;

/// <summary>How an airframe pitches and rolls at one speed and load.</summary>
public static class PitchRollVerbs
{
    /// <summary>
    /// Pitch frequency and damping, steady roll by fin cant, and resonance between the two at one speed and load.
    /// Source: J. S. Barrowman, M.S. thesis, 1967; C. H. Murphy, BRL R-1216, 1963 (unverified).
    /// </summary>
    /// <param name="airframe">The airframe.</param>
    /// <param name="speed">Speed through the air; 1 m/s to Mach 0.9.</param>
    /// <param name="cant">Mean cant of all fins, the same way round; −5 to 5°.</param>
    /// <param name="water">Water aboard; 0 to what the vessel holds, none where not given.</param>
    /// <param name="gas">Gas aboard; 0 to 10 kg, none where not given.</param>
    /// <param name="air">Air it flies in; sea level on a standard day where none is given.</param>
    /// <exception cref="InvalidDesignException">The airframe can't be computed, or is unstable; carries all findings.</exception>
    /// <exception cref="OutOfRangeException">An input is outside its range.</exception>
    public static PitchRollResult PitchRoll(this Airframe airframe, Speed speed, Angle cant, Mass? water = null, Mass? gas = null,
        AirConditions? air = null)
    {
        ArgumentNullException.ThrowIfNull(airframe);
        air ??= AirConditions.SeaLevel;
        InvalidDesignException.ThrowIfAny($"Airframe {airframe.Body.Name}", airframe.Validate());
        new ValidRange<Speed>(1.MetresPerSecond(), 400.MetresPerSecond()).Check(speed, "speed", "Take it from the flight.");
        new ValidRange<Angle>((-5).Degrees(), 5.Degrees()).Check(cant, "fin cant",
            "The roll model is linear in cant; a larger angle stalls the fins.");
        var state = airframe.Loaded(water, gas);
        return PitchRollOf(airframe.Body, state, speed, cant, air);
    }

    /// <summary>The same for a mass state of any origin.</summary>
    internal static PitchRollResult PitchRollOf(FinnedBody body, in MassState state, Speed speed, Angle cant, AirConditions air)
    {
        var mach = air.Mach(speed);
        var force = body.NormalForce(mach);
        var roll = body.Roll(mach);
        var gravity = Length.FromMeters(state.CentreM);
        var (slope, pitchDamping) = (force.MomentSlope(gravity), force.PitchDamping(gravity));
        if (slope >= 0)
            throw new InvalidDesignException(body.Name, [FlightFindings.UnstableHasNoPitchFrequency(force.Margin(gravity))]);

        var (v, q, area, d) = (speed.MetersPerSecond, air.DynamicPressure(speed).Pascals, body.ReferenceArea.SquareMeters,
            body.ReferenceDiameter.Meters);
        var frequency = Flight.Stability.PitchRoll.Frequency(q, area, d, slope, state.PitchKgM2);
        var rotational = Flight.Stability.PitchRoll.RotationalDamping(q, area, d, v, pitchDamping, state.PitchKgM2, frequency);
        var damping = rotational + Flight.Stability.PitchRoll.HeaveDamping(q, area, v, force.TotalSlope, state.MassKg, frequency);
        var finless = body.Fins.Count == 0;
        var steady = finless ? 0 : Flight.Stability.PitchRoll.SteadyRoll(v, d, roll.Forcing, roll.Damping, cant.Radians);
        var resonance = Flight.Stability.PitchRoll.Resonance(frequency, state.RollKgM2, state.PitchKgM2);
        var critical = finless ? double.PositiveInfinity : frequency / Flight.Stability.PitchRoll.SteadyRoll(v, d, roll.Forcing,
            roll.Damping, 1);
        return new PitchRollResult
        {
            Title = $"Pitching and rolling, {body.Name}",
            Speed = speed,
            PitchFrequency = Frequency.FromHertz(frequency / (2 * Math.PI)),
            RotationalDamping = rotational,
            Damping = damping,
            Cant = cant,
            SteadyRoll = RotationalSpeed.FromRadiansPerSecond(steady),
            ResonantRoll = RotationalSpeed.FromRadiansPerSecond(resonance),
            CriticalCant = Angle.FromDegrees(Math.Min(90, critical * 180 / Math.PI)),
            Findings = [.. force.Findings, .. ResonanceFindings(Math.Abs(steady) / frequency, Math.Min(90, critical * 180 / Math.PI),
                damping)],
            Working = new Working("Pitch, roll and resonance",
            [
                new("Pitch frequency", @"\omega = \sqrt{\frac{-q\,A\,d\,C_{m\alpha}}{I}}",
                    $"√({Digits.Round(q, 4)} Pa × {body.ReferenceArea.Show(AreaUnit.SquareCentimeter, 4)} × {Digits.Round(d * 1000)} mm "
                        + $"× {Digits.Round(-slope, 4)} / {Digits.Round(state.PitchKgM2, 4)} kg m²)",
                    $"{Digits.Round(frequency, 4)} rad/s", MassLiterature.Murphy),
                new("Steady roll", @"p = -\frac{2V}{d}\,\frac{C_{l\delta}}{C_{lp}}\,\delta",
                    $"2 × {Digits.Round(v, 4)} m/s / {Digits.Round(d * 1000)} mm × {Digits.Round(roll.Forcing, 4)} / "
                        + $"{Digits.Round(-roll.Damping, 4)} × {Digits.Round(cant.Radians, 4)} rad",
                    $"{Digits.Round(steady, 4)} rad/s", MassLiterature.Barrowman),
                new("Resonant roll", @"p = \frac{\omega}{\sqrt{1 - I_x/I}}",
                    $"{Digits.Round(frequency, 4)} rad/s, I_x / I = {Digits.Round(state.RollKgM2 / state.PitchKgM2)}",
                    $"{Digits.Round(resonance, 4)} rad/s", MassLiterature.Nicolaides),
            ]),
        };
    }

    private static IEnumerable<Finding> ResonanceFindings(double ratio, double criticalDegrees, double damping)
    {
        if (ratio is > PitchRollResult.BandFrom and < PitchRollResult.BandTo)
            yield return FlightFindings.RollLiesNearPitchFrequency(ratio, 1 / (2 * damping), criticalDegrees);
        if (damping < 0.05)
            yield return FlightFindings.PitchingIsHardlyDamped(damping);
    }
}

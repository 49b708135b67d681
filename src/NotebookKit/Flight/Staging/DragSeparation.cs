using NotebookKit.Flight.Design;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight.Staging;

/// <summary>
/// A coasting stack of two stages with nothing but friction between them: whether drag pulls the booster off.
/// Source: two bodies with one deceleration, H. Goldstein, Classical Mechanics (unverified).
/// </summary>
/// <param name="SustainerMass">Sustainer with what it carries; 1 g to 200 kg.</param>
/// <param name="SustainerDragArea">Drag coefficient times area of the sustainer; 0.01 cm² to 1 m².</param>
/// <param name="BoosterMass">Empty booster; 1 g to 200 kg.</param>
/// <param name="BoosterDragArea">Drag coefficient times area of the booster in the stack; 0.01 cm² to 1 m². In the sustainer's wake it is
/// less than alone.</param>
public sealed record DragSeparation(Mass SustainerMass, Area SustainerDragArea, Mass BoosterMass, Area BoosterDragArea)
{
    /// <summary>Everything that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        var (masses, areas) = (new ValidRange<Mass>(1.Grams(), 200.Kilograms()),
            new ValidRange<Area>(0.01.SquareCentimetres(), 1.SquareMetres()));
        Finding?[] findings =
        [
            masses.Find(SustainerMass, "sustainer mass", "Count its water and gas."),
            masses.Find(BoosterMass, "booster mass", "It is empty by then."),
            areas.Find(SustainerDragArea, "drag area of the sustainer", "Drag coefficient times reference area."),
            areas.Find(BoosterDragArea, "drag area of the booster", "Drag coefficient times reference area."),
        ];
        return findings.OfType<Finding>().ToArray();
    }

    /// <summary>Force between the stages and, where they part, the time to clear the joint. Source: N = μ (Ds/ms − Db/mb), μ the reduced
    /// mass.</summary>
    /// <param name="speed">Speed through the air; 1 to 400 m/s.</param>
    /// <param name="spigot">Length that slides out of the joint; 1 mm to 2 m.</param>
    /// <param name="density">Air density; 0.3 to 1.6 kg/m³, 1.225 where none is given.</param>
    /// <exception cref="InvalidDesignException">A mass or an area is outside its range; carries all findings.</exception>
    /// <exception cref="OutOfRangeException">An input is outside its range.</exception>
    public SeparationResult At(Speed speed, Length spigot, Density? density = null)
    {
        InvalidDesignException.ThrowIfAny("Drag separation", Validate());
        new ValidRange<Speed>(1.MetresPerSecond(), 400.MetresPerSecond()).Check(speed, "speed at separation", "Take it from the flight.");
        new ValidRange<Length>(1.Millimetres(), 2.Metres()).Check(spigot, "length of the joint",
            "It is what slides out of the other stage.");
        var air = new ValidRange<Density>(0.3.KilogramsPerCubicMetre(), 1.6.KilogramsPerCubicMetre())
            .Check(density ?? 1.225.KilogramsPerCubicMetre(), "air density", "It is 1.225 kg/m³ at sea level.").KilogramsPerCubicMeter;
        var q = 0.5 * air * speed.MetersPerSecond * speed.MetersPerSecond;
        var (ms, mb) = (SustainerMass.Kilograms, BoosterMass.Kilograms);
        var (ds, db) = (q * SustainerDragArea.SquareMeters, q * BoosterDragArea.SquareMeters);
        var reduced = ms * mb / (ms + mb);
        var apart = (db / mb) - (ds / ms);
        return new SeparationResult
        {
            Title = $"Drag separation at {speed.Show()}",
            SustainerDeceleration = Acceleration.FromMetersPerSecondSquared(ds / ms),
            BoosterDeceleration = Acceleration.FromMetersPerSecondSquared(db / mb),
            JointForce = Force.FromNewtons(-reduced * apart),
            TimeToClear = apart > 0 ? Duration.FromSeconds(Math.Sqrt(2 * spigot.Meters / apart)) : null,
            Findings = apart > 0
                ? [FlightFindings.BoosterDragIsLessInWake()]
                : [FlightFindings.BoosterSlowsLessThanSustainer()],
            Working = new Working("Drag separation",
            [
                new("Sustainer", @"a_s = \frac{q\,(C_D A)_s}{m_s}",
                    $"{Digits.Round(q, 4)} Pa, {Digits.Round(ds, 4)} N / {Digits.Round(ms, 4)} kg", $"{Digits.Round(ds / ms, 4)} m/s²",
                    MassLiterature.Goldstein),
                new("Booster", @"a_b = \frac{q\,(C_D A)_b}{m_b}", $"{Digits.Round(db, 4)} N / {Digits.Round(mb, 4)} kg",
                    $"{Digits.Round(db / mb, 4)} m/s²", MassLiterature.Goldstein),
                new("Force in the joint", @"N = \mu\,(a_s - a_b)",
                    $"{Digits.Round(reduced, 4)} kg × ({Digits.Round(ds / ms, 4)} − {Digits.Round(db / mb, 4)}) m/s²",
                    $"{Digits.Round(-reduced * apart, 4)} N", MassLiterature.Goldstein),
            ]),
        };
    }
}

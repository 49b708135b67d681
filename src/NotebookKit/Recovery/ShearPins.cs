using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Recovery;

/// <summary>
/// Pins that hold a joint until the recovery gear parts it. Source: direct shear, J. M. Gere, Mechanics of Materials (unverified). The
/// shear strength of nylon 6/6 is about 55 to 70 MPa (unverified): test a sample.
/// </summary>
/// <param name="Count">Number of pins; 1 to 12.</param>
/// <param name="Diameter">Diameter in the shear plane, at the thread's root for a screw; 0.5 to 10 mm.</param>
/// <param name="ShearStrength">Shear strength of the pin; 5 to 500 MPa.</param>
public sealed record ShearPins(int Count, Length Diameter, Pressure ShearStrength)
{
    /// <summary>Force that shears one pin.</summary>
    public Force Each => Force.FromNewtons(Math.PI / 4 * Diameter.Meters * Diameter.Meters * ShearStrength.Pascals);

    /// <summary>Force that shears all of them, evenly loaded.</summary>
    public Force All => Each * Count;

    /// <summary>Everything that is wrong with the pins.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        var findings = new List<Finding>();
        if (Count is < 1 or > 12) findings.Add(RecoveryFindings.NumberOfPinsOutOfRange(Count));
        if (new ValidRange<Length>(0.5.Millimetres(), 10.Millimetres()).Find(Diameter, "pin diameter", "Take the root of a thread.")
            is { } size) findings.Add(size);
        if (new ValidRange<Pressure>(Pressure.FromMegapascals(5), Pressure.FromMegapascals(500)).Find(ShearStrength,
            "shear strength of the pin", "Nylon is near 60 MPa.") is { } strength)
            findings.Add(strength);
        return findings;
    }

    /// <summary>
    /// Whether the pins hold what flight puts on them and let go when they should. Source: direct shear.
    /// </summary>
    /// <param name="pistonBore">Bore of the compartment that is pressurised to part the joint; 5 mm to 1 m.</param>
    /// <param name="separating">Force of the charge, spring or piston that separates the joint; 0 to 1 MN.</param>
    /// <param name="dragSeparation">Force by which drag pulls the joint apart at its worst; 0 to 1 MN.</param>
    /// <param name="trapped">Pressure of air trapped in the compartment as the outside thins; 0 to 1 bar. A small vent hole takes it to
    /// none.</param>
    /// <exception cref="InvalidDesignException">The pins can't be computed; carries all findings.</exception>
    /// <exception cref="OutOfRangeException">An input is outside its range.</exception>
    public PinResult Check(Length pistonBore, Force separating, Force? dragSeparation = null, GaugePressure? trapped = null)
    {
        InvalidDesignException.ThrowIfAny("Pins", Validate());
        var forces = new ValidRange<Force>(Force.Zero, Force.FromMeganewtons(1));
        new ValidRange<Length>(5.Millimetres(), 1.Metres()).Check(pistonBore, "bore of the compartment", "Give the inside diameter.");
        forces.Check(separating, "separating force", "Give the force that separates the joint.");
        var drag = forces.Check(dragSeparation ?? Force.Zero, "drag separation force", "Zero where drag presses the joint together.");
        var pressure = new ValidRange<GaugePressure>(GaugePressure.Zero, GaugePressure.FromBar(1))
            .Check(trapped ?? GaugePressure.Zero, "trapped pressure", "Outside air thins by 12 mbar every 100 m.");
        var area = Math.PI / 4 * pistonBore.Meters * pistonBore.Meters;
        var holding = drag.Newtons + (pressure.Pascals * area);
        var findings = new List<Finding>();
        if (All.Newtons < 1.5 * holding)
            findings.Add(RecoveryFindings.PinsMayShearInFlight(All, Force.FromNewtons(holding)));
        if (separating.Newtons < 1.5 * All.Newtons)
            findings.Add(RecoveryFindings.SeparatingForceTooSmall(separating, All));
        return new PinResult
        {
            Title = $"{Count} shear pins of {Diameter.Show()}",
            Each = Each,
            All = All,
            FlightLoad = Force.FromNewtons(holding),
            Separating = separating,
            PressureToShear = GaugePressure.FromPascals(All.Newtons / area),
            Findings = findings,
            Working = new Working("Shear pins",
            [
                new("Shear of one pin", @"F = \frac{\pi}{4} d^2 \tau", $"π/4 × ({Diameter.Show(4)})² × {ShearStrength.Show(4)}",
                    Each.Show(4), RecoveryLiterature.Gere),
                new("Pressure to shear all", @"p = \frac{n\,F}{\frac{\pi}{4} D^2}", $"{All.Show(4)} over a bore of {pistonBore.Show(4)}",
                    GaugePressure.FromPascals(All.Newtons / area).ToString(), RecoveryLiterature.Gere),
            ]),
        };
    }
}

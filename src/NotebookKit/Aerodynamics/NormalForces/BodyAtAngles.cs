using NotebookKit.Aerodynamics.Airflow;
using NotebookKit.Aerodynamics.Bodies;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Aerodynamics.NormalForces;

/// <summary>Margin of a finned body against angle of attack.</summary>
public static class BodyAtAngles
{
    private static readonly ValidRange<Angle> Attack = new(Angle.Zero, 20.Degrees());

    /// <summary>
    /// Margin against angle of attack. A long body carries cross-flow lift well forward of its fins, so a margin that is ample at zero may
    /// be gone at the angle a crosswind makes off the rail.
    /// Source: H. J. Allen and E. W. Perkins, NACA TR 1048, 1951 (unverified).
    /// </summary>
    /// <param name="body">The body and its fins.</param>
    /// <param name="centreOfGravity">Centre of gravity, aft of the nose tip; 0 to the vehicle's length.</param>
    /// <param name="upTo">Largest angle of attack; 1 to 20°; 20° where none is given.</param>
    /// <param name="mach">Mach number [-]; 0 to 0.9.</param>
    /// <param name="finiteLengthFactor">Share of a long cylinder's cross drag [-]; 0 to 1; by the body's fineness where none is
    /// given.</param>
    /// <exception cref="InvalidDesignException">The body can't be computed; carries all findings.</exception>
    /// <exception cref="OutOfRangeException">An input is beyond the model.</exception>
    public static AngleOfAttackResult AtAngles(this FinnedBody body, Length centreOfGravity, Angle? upTo = null, double mach = 0,
        double? finiteLengthFactor = null)
    {
        var linear = body.NormalForce(mach);
        body.CheckCentreOfGravity(centreOfGravity);
        var limit = new ValidRange<Angle>(1.Degrees(), 20.Degrees()).Check(upTo ?? 20.Degrees(), "largest angle of attack",
            "Fins stall and bodies shed vortices beyond; no simple model holds there.");
        var factor = body.CrossFactor(finiteLengthFactor);
        var steps = (int)Math.Ceiling(limit.Degrees / 0.5);
        var (angles, potentials, viscous, centres, margins) =
            (new double[steps + 1], new double[steps + 1], new double[steps + 1], new double[steps + 1], new double[steps + 1]);
        for (var i = 0; i <= steps; i++)
        {
            angles[i] = limit.Degrees * i / steps;
            (potentials[i], viscous[i], centres[i]) = Inclined(body, linear, angles[i] * Math.PI / 180, factor);
            margins[i] = (centres[i] - centreOfGravity.Meters) / body.ReferenceM;
            centres[i] *= 1000;
        }

        // A margin that isn't there at 0° doesn't go later.
        var gone = margins[0] <= 0 ? Angle.Zero.ToUnit(AngleUnit.Degree) : CrossingOf(angles, margins, 0);
        return new AngleOfAttackResult
        {
            Title = $"Margin against angle of attack, {body.Name}",
            Angle = new Series("Angle of attack", "°", angles),
            Potential = new Series("Normal force, linear parts", "-", potentials),
            Viscous = new Series("Normal force, cross flow", "-", viscous),
            CentreOfPressure = new Series("Centre of pressure aft of tip", "mm", centres),
            Margin = new Series("Static margin", "calibres", margins),
            MarginGoneAt = gone,
            OneCalibreAt = margins[0] <= 1 ? Angle.Zero.ToUnit(AngleUnit.Degree) : CrossingOf(angles, margins, 1),
            Findings = [.. linear.Findings, .. AngleFindings(margins[0], gone)],
            Working = AngleWorking(body, linear, factor, limit, margins[^1]),
        };
    }

    /// <summary>Margin at one angle of attack, with the body's cross-flow lift [calibres]. Source: NACA TR 1048, 1951
    /// (unverified).</summary>
    /// <param name="body">The body and its fins.</param>
    /// <param name="centreOfGravity">Centre of gravity, aft of the nose tip; 0 to the vehicle's length.</param>
    /// <param name="angle">Angle of attack; 0 to 20°.</param>
    /// <param name="mach">Mach number [-]; 0 to 0.9.</param>
    /// <param name="finiteLengthFactor">Share of a long cylinder's cross drag [-]; 0 to 1; by the body's fineness where none is
    /// given.</param>
    /// <exception cref="InvalidDesignException">The body can't be computed; carries all findings.</exception>
    /// <exception cref="OutOfRangeException">An input is beyond the model.</exception>
    public static double MarginAt(this FinnedBody body, Length centreOfGravity, Angle angle, double mach = 0,
        double? finiteLengthFactor = null)
    {
        body.CheckCentreOfGravity(centreOfGravity);
        Attack.Check(angle, "angle of attack", "Fins stall and bodies shed vortices beyond; no simple model holds there.");
        return (Inclined(body, body.NormalForce(mach), angle.Radians,
            body.CrossFactor(finiteLengthFactor)).CentreM - centreOfGravity.Meters) / body.ReferenceM;
    }

    internal static double CrossFactor(this FinnedBody body, double? stated)
    {
        if (stated is { } given) return new ValidRange<double>(0, 1).Check(given, "finite-length factor",
            "It is a share of a long cylinder's drag.");
        var widest = body.Parts.Max(p => p.AftM);
        return Crossflow.FiniteLengthFactor(Math.Clamp(body.LengthM / widest, 1, 60));
    }

    internal static void CheckCentreOfGravity(this FinnedBody body, Length centreOfGravity) =>
        new ValidRange<Length>(Length.Zero, body.Length).Check(centreOfGravity, "centre of gravity",
            "Measure it aft of the nose tip; it lies on the body.");

    private static (double Potential, double Viscous, double CentreM) Inclined(FinnedBody body, NormalForceResult linear, double angle,
        double factor)
    {
        var sine = Math.Sin(angle);
        var potential = linear.TotalSlope * sine;
        var viscous = factor * Crossflow.LongCylinder * (body.PlanformM2 / body.ReferenceM2) * sine * sine;
        var centre = linear.CentreOfPressure.Meters;
        return sine == 0
            ? (0, 0, centre)
            : (potential, viscous, ((potential * centre) + (viscous * body.PlanformCentroidM)) / (potential + viscous));
    }

    private static Angle? CrossingOf(double[] angles, double[] margins, double level)
    {
        for (var i = 1; i < margins.Length; i++)
            if (margins[i - 1] > level && margins[i] <= level)
                return Angle.FromDegrees(angles[i - 1] + ((angles[i] - angles[i - 1]) * (margins[i - 1] - level) / (margins[i - 1] -
                    margins[i])));
        return null;
    }

    private static IEnumerable<Finding> AngleFindings(double atZero, Angle? gone)
    {
        if (atZero <= 0)
            yield return AerodynamicsFindings.MarginIsNegativeAtZeroAngle(atZero);
        else if (gone is { } angle)
            yield return AerodynamicsFindings.MarginIsGoneAtAngleOfAttack(angle);
    }

    private static Working AngleWorking(FinnedBody body, NormalForceResult linear, double factor, Angle angle, double margin)
    {
        var (potential, viscous, centre) = Inclined(body, linear, angle.Radians, factor);
        return new Working("Margin at an angle of attack",
        [
            new("Linear parts", @"C_N = C_{N\alpha}\,\sin\alpha", $"{Digits.Round(linear.TotalSlope, 4)} × sin {angle.Show()}",
                Digits.Round(potential, 4), Literature.BarrowmanThesis),
            new("Cross flow", @"C_N = \eta\,c_{dn}\,\frac{A_p}{A}\,\sin^2\alpha",
                $"{Digits.Round(factor)} × {Crossflow.LongCylinder} × {Digits.Round(body.PlanformM2 / body.ReferenceM2, 4)} × sin² "
                    + $"{angle.Show()}", Digits.Round(viscous, 4), Literature.AllenPerkins),
            new("Centre of pressure", @"x = \frac{C_{N,1}\,x_1 + C_{N,2}\,x_2}{C_{N,1} + C_{N,2}}",
                $"{Digits.Round(potential, 4)} at {MillimetreText.Of(linear.CentreOfPressure.Meters)}, {Digits.Round(viscous, 4)} at "
                    + $"{MillimetreText.Of(body.PlanformCentroidM)}",
                $"{MillimetreText.Of(centre)}, margin {Digits.Round(margin)} calibres", Literature.Jorgensen),
        ]);
    }
}

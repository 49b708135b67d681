using NotebookKit.Aerodynamics.Airflow;
using NotebookKit.Aerodynamics.Bodies;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Aerodynamics.Drag;

/// <summary>Drag of a finned body.</summary>
public static class BodyDrag
{
    /// <summary>
    /// Drag at zero angle of attack, part by part, as a band.
    /// Source: Schlichting; Hoerner, 1965; Fleeman, 2001; Barrowman, 1967 (unverified; see the result's model card).
    /// </summary>
    /// <param name="body">The body and its fins.</param>
    /// <param name="speed">Speed through the air; 1 m/s up to Mach 0.9.</param>
    /// <param name="air">Air it flies in; sea level on a standard day where none is given.</param>
    /// <param name="assumptions">Roughness, transition and the rest; the defaults where none are given.</param>
    /// <param name="jet">Diameter of the jet at the base while it runs; zero for none, up to the base.</param>
    /// <exception cref="InvalidDesignException">The body or the assumptions can't be computed; carries all findings.</exception>
    /// <exception cref="OutOfRangeException">An input is beyond the model.</exception>
    public static DragResult Drag(this FinnedBody body, Speed speed, AirConditions? air = null, DragAssumptions? assumptions = null,
        Length? jet = null)
    {
        air ??= AirConditions.SeaLevel;
        assumptions ??= new DragAssumptions();
        new ValidRange<Speed>(1.MetresPerSecond(), Speed.FromMetersPerSecond(air.SoundMps)).Check(speed, "speed",
            "Below walking pace drag doesn't matter; the model ends at Mach 0.9.");
        var mach = Ranges.CheckMach(air.Mach(speed));
        var findings = CheckDrag(body, assumptions);
        var jetM2 = JetArea(body, jet);
        var geometry = new DragGeometry(body, assumptions);
        var perMetre = air.DensityKgM3 * speed.MetersPerSecond / air.ViscosityPaS;
        var late = new DragBuildUp(geometry, assumptions, mach, perMetre, jetM2, late: true);
        var early = new DragBuildUp(geometry, assumptions, mach, perMetre, jetM2, late: false);

        var bands = Bands(late, early, assumptions.ProtuberanceDrag);
        var middle = bands.Sum(b => (b.Low + b.High) / 2);
        return new DragResult
        {
            Title = $"Drag by parts, {body.Name}",
            Speed = speed,
            Mach = mach,
            Reynolds = perMetre * body.LengthM,
            ReferenceArea = body.ReferenceArea,
            DynamicPressure = air.DynamicPressure(speed),
            Components = bands.Select(b => new DragComponent(b.Name, b.Low, b.High,
                Ratio.FromPercent(50 * (b.Low + b.High) / middle))).ToArray(),
            Findings = [.. findings, .. DragFindings(assumptions, late, early)],
            Working = DragWorking(body, geometry, late, early, perMetre, mach),
        };
    }

    /// <summary>
    /// Drag against Mach number as tables for a flight, low, middle and high. The Reynolds number follows speed and height: a flight reads
    /// the tables with the air of the height it is at. Source: as <see cref="Drag"/>.
    /// </summary>
    /// <param name="body">The body and its fins.</param>
    /// <param name="air">Air at the pad, which the tables are made for; sea level on a standard day where none is given.</param>
    /// <param name="assumptions">Roughness, transition and the rest; the defaults where none are given.</param>
    /// <param name="jet">Diameter of the jet at the base while it runs; zero for none, up to the base.</param>
    /// <exception cref="InvalidDesignException">The body or the assumptions can't be computed; carries all findings.</exception>
    public static DragCurves DragCurves(this FinnedBody body, AirConditions? air = null, DragAssumptions? assumptions = null,
        Length? jet = null)
    {
        air ??= AirConditions.SeaLevel;
        assumptions ??= new DragAssumptions();
        CheckDrag(body, assumptions);
        var tabulation = new DragTabulation(body, air, assumptions, JetArea(body, jet));
        return new DragCurves(tabulation.Curve("low", 0), tabulation.Curve("middle", 0.5), tabulation.Curve("high", 1));
    }

    /// <summary>One curve of the band with and one without the jet, of one build-up.</summary>
    /// <param name="body">The body and its fins.</param>
    /// <param name="air">Air at the pad.</param>
    /// <param name="assumptions">Roughness, transition and the rest.</param>
    /// <param name="jet">Diameter of the jet at the base while it runs.</param>
    /// <param name="name">What the curve is called: "low".</param>
    /// <param name="weight">Its place in the band: 0 its low end, 1 its high end.</param>
    internal static (DragCurve JetOn, DragCurve JetOff) DragCurvesAt(this FinnedBody body, AirConditions air, DragAssumptions assumptions,
        Length jet, string name, double weight)
    {
        CheckDrag(body, assumptions);
        var jetM2 = JetArea(body, jet);
        var still = new DragTabulation(body, air, assumptions, 0);
        return (still.WithJet(jetM2).Curve(name, weight), still.Curve(name, weight));
    }

    private static (string Name, double Low, double High)[] Bands(in DragBuildUp late, in DragBuildUp early, double protuberance)
    {
        var bands = new List<(string, double, double)>
        {
            ("Body friction", Math.Min(late.BodyFriction, early.BodyFriction), Math.Max(late.BodyFriction, early.BodyFriction)),
            ("Nose and shoulder pressure", early.BodyPressure, early.BodyPressure),
            ("Boat-tail pressure", 0, early.BoatTail),
            ("Base", Math.Min(late.LowerBase, early.LowerBase), Math.Max(late.UpperBase, early.UpperBase)),
            ("Fin friction", Math.Min(late.FinFriction, early.FinFriction), Math.Max(late.FinFriction, early.FinFriction)),
            ("Fin leading edges", early.FinLeading, early.FinLeading + early.SharpLeading),
            ("Fin trailing edges", early.FinTrailing, early.FinTrailing),
            ("Fin junctions", early.FinJunction, early.FinJunction),
            ("Rail buttons, joints and the rest", protuberance, protuberance),
        };
        return bands.Where(b => b.Item3 > 0).ToArray();
    }

    private static IEnumerable<Finding> DragFindings(DragAssumptions assumptions, DragBuildUp late, DragBuildUp early)
    {
        var (low, high) = (DragBuildUp.Low(late, early, 0), DragBuildUp.High(late, early, 0));
        if (high > 1.2 * low)
            yield return AerodynamicsFindings.PublishedFormsLeaveDragBand(low, high);
        if (assumptions.ProtuberanceDrag == 0)
            yield return AerodynamicsFindings.RailButtonsAreNotCounted();
    }

    private static IReadOnlyList<Finding> CheckDrag(FinnedBody body, DragAssumptions assumptions)
    {
        IReadOnlyList<Finding> findings = [.. body.Validate(), .. assumptions.Validate()];
        InvalidDesignException.ThrowIfAny($"Drag of {body.Name}", findings);
        return findings;
    }

    private static double JetArea(FinnedBody body, Length? jet)
    {
        if (jet is not { } diameter) return 0;
        new ValidRange<Length>(Length.Zero, Length.FromMeters(body.BaseM)).Check(diameter, "jet diameter",
            "A jet can't be wider than the base it leaves.");
        return BodyPart.Circle(diameter.Meters);
    }

    private static Working DragWorking(FinnedBody body, DragGeometry geometry, in DragBuildUp late, in DragBuildUp early, double perMetre,
        double mach)
    {
        var wetted = Area.FromSquareMeters(geometry.WettedM2).Show(AreaUnit.SquareCentimeter, 4);
        var reference = body.ReferenceArea.Show(AreaUnit.SquareCentimeter, 4);
        return new Working("Drag by parts",
        [
            new("Reynolds number", @"Re = \frac{\rho\,V\,L}{\mu}", $"{Digits.Round(perMetre)} /m × {body.Length.Show()}",
                Digits.Round(perMetre * body.LengthM), Literature.Schlichting),
            new("Body friction", @"C_D = C_F\,\left(1 + \frac{d}{2L}\right)\frac{S_w}{A}",
                $"form {Digits.Round(geometry.BodyForm, 4)}, wetted {wetted}, on {reference}",
                    $"{Digits.Round(late.BodyFriction)} to {Digits.Round(early.BodyFriction)}", Literature.Hoerner),
            new("Base by the body's friction", @"C_D = \frac{0.029}{\sqrt{C_{Df}}}\,\frac{A_b}{A}",
                $"0.029 / √{Digits.Round(early.BodyFriction)}", Digits.Round(early.BaseByFriction), Literature.Hoerner),
            new("Base by Mach number", @"C_D = (0.12 + 0.13\,M^2)\,\frac{A_b}{A}", $"0.12 + 0.13 × {Digits.Round(mach)}²",
                Digits.Round(early.BaseByMach), Literature.Fleeman),
            new("Fin friction", @"C_D = C_F\,\left(1 + \frac{2t}{c}\right)\frac{S_w}{A}", "over both faces of all fins",
                $"{Digits.Round(late.FinFriction)} to {Digits.Round(early.FinFriction)}", Literature.Hoerner),
            new("Fin edges", @"C_D = \left(c_{le}\,\cos^2\Lambda + c_{te}\right)\frac{n\,s\,t}{A}",
                $"leading {Edge(early.FinLeading, early.SharpLeading)}, trailing {Digits.Round(early.FinTrailing)}",
                Edge(early.FinLeading + early.FinTrailing, early.SharpLeading), Literature.BarrowmanDrag),
        ]);

        static string Edge(double low, double band) => band > 0 ? $"{Digits.Round(low)} to {Digits.Round(low + band)}" : Digits.Round(low);
    }
}

/// <summary>The band of drag against Mach number, for a flight to carry as uncertainty. Source: see <see cref="DragResult"/>.</summary>
/// <param name="Low">Late transition and the lower base form.</param>
/// <param name="Middle">Middle of the band.</param>
/// <param name="High">Early transition and the higher base form.</param>
public sealed record DragCurves(DragCurve Low, DragCurve Middle, DragCurve High);

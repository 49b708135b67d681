using NotebookKit.Aerodynamics.Airflow;
using NotebookKit.Aerodynamics.Bodies;
using NotebookKit.Aerodynamics.Fins;
using NotebookKit.Aerodynamics.NormalForces;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Aerodynamics.FinStructures;

/// <summary>The fins of a body as structure.</summary>
public static class BodyFinStructure
{
    /// <summary>
    /// A set of fins as structure at the fastest speed: flutter, divergence, root bending and root bond.
    /// Source: NACA TN 4197, 1958; Bisplinghoff et al., 1955; Gere (see the result's model card).
    /// </summary>
    /// <param name="body">The body and its fins.</param>
    /// <param name="sheet">What the fins are cut from.</param>
    /// <param name="bond">The fillets that hold them.</param>
    /// <param name="fastest">Fastest flight speed; 1 m/s to Mach 0.9.</param>
    /// <param name="gust">Sideways gust to bear at that speed; 0 to 30 m/s.</param>
    /// <param name="air">Air where that speed is reached; sea level on a standard day where none is given.</param>
    /// <param name="set">Which set of fins, in the body's order; 0 to the number of sets less one.</param>
    /// <exception cref="InvalidDesignException">Something can't be computed; carries all findings.</exception>
    /// <exception cref="OutOfRangeException">An input is outside its range.</exception>
    public static FinStructureResult FinStructure(this FinnedBody body, FinSheet sheet, FinBond bond, Speed fastest, Speed gust,
        AirConditions? air = null, int set = 0)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(bond);
        InvalidDesignException.ThrowIfAny($"Fins of {body.Name}", [.. body.Validate(), .. sheet.Validate(), .. bond.Validate()]);
        if (body.Fins.Count == 0)
            throw new InvalidDesignException(body.Name, [AerodynamicsFindings.BodyHasNoFins()]);
        ArgumentOutOfRangeException.ThrowIfNegative(set);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(set, body.Fins.Count);
        new ValidRange<Speed>(Speed.Zero, 30.MetresPerSecond()).Check(gust, "sideways gust", "Take the gust of the worst day you fly in.");
        air ??= AirConditions.SeaLevel;
        var fins = body.Fins[set];
        var flutter = fins.Flutter(sheet.ShearModulus, fastest, air);
        var fin = fins.Planform.Integrals;
        var panel = NormalForceModel.PanelSlope(fin, body.ReferenceM2, flutter.Mach) * NormalForceModel.Interference(fins.Count,
            body.RadiusUnderM(fins), fin.SpanM);

        var divergence = FinAeroelasticity.DivergencePa(fins.Planform.Strips, fins.Thickness.Meters, sheet.ShearModulus.Pascals,
            panel * body.ReferenceM2 / fin.AreaM2);
        var divergenceMps = Math.Sqrt(2 * divergence / air.DensityKgM3);
        var angle = Math.Atan2(gust.MetersPerSecond, fastest.MetersPerSecond) + Math.Abs(fins.Cant.Radians);
        var dynamic = air.DynamicPressure(fastest).Pascals;
        var load = dynamic * body.ReferenceM2 * panel * angle;
        var moment = load * fin.MeanChordOutM;
        var (root, thickness, leg) = (fins.Planform.RootLength.Meters, fins.Thickness.Meters, bond.FilletLeg.Meters);
        var stress = 6 * moment / (root * thickness * thickness);
        var throat = leg / Math.Sqrt(2);
        // Fillet forces act at the throats' middles, a quarter of the leg out from either face.
        var bondStress = (moment / (thickness + (leg / 2)) + (load / 2)) / (root * throat);
        var (sheetFactor, bondFactor) = (sheet.FlexuralStrength.Pascals / stress, bond.Strength.Pascals / bondStress);
        return new FinStructureResult
        {
            Title = $"Fins as structure, {fins.Name} of {body.Name}",
            Sheet = sheet,
            Bond = bond,
            Gust = gust,
            Fins = fins,
            Flutter = flutter,
            DivergencePressure = Pressure.FromPascals(divergence),
            DivergenceSpeed = Speed.FromMetersPerSecond(divergenceMps),
            LoadAngle = Angle.FromRadians(angle).ToUnit(AngleUnit.Degree),
            FinLoad = Force.FromNewtons(load),
            RootMoment = Torque.FromNewtonMeters(moment),
            RootStress = Pressure.FromPascals(stress),
            SheetFactor = sheetFactor,
            BondStress = Pressure.FromPascals(bondStress),
            BondFactor = bondFactor,
            IsSweptForward = IsSweptForward(fin, root),
            Findings = [.. flutter.Findings, .. StructureFindings(fins.Name, divergenceMps / fastest.MetersPerSecond, sheetFactor,
                bondFactor, angle), .. SweepFindings(fins.Name, fin, root)],
            Working = new Working("Fins as structure",
            [
                .. flutter.Working.Steps,
                new("Divergence", @"q_D = \left(\frac{\pi}{2s}\right)^2 \frac{G\,J}{e\,c^2\,a}",
                    "lowest eigenvalue over the fin's own chords", Pressure.FromPascals(divergence).Show(PressureUnit.Kilopascal, 4),
                    Literature.Bisplinghoff),
                new("Load on one fin", @"N = q\,A\,C_{N\alpha,1}\,K\,\alpha",
                    $"{Digits.Round(dynamic, 4)} Pa × {body.ReferenceArea.Show(AreaUnit.SquareCentimeter, 4)} × {Digits.Round(panel, 4)} "
                    + $"/rad × {Digits.Round(angle, 4)} rad", $"{Digits.Round(load, 4)} N", Literature.BarrowmanThesis),
                new("Root bending", @"\sigma = \frac{6\,N\,\bar y}{c_r\,t^2}",
                    $"6 × {Digits.Round(load, 4)} N × {MillimetreText.Of(fin.MeanChordOutM)} / ({MillimetreText.Of(root)} × "
                    + $"({MillimetreText.Of(thickness)})²)", Pressure.FromPascals(stress).Show(PressureUnit.Megapascal), Literature.Gere),
                new("Bond", @"\tau = \frac{N\,\bar y/(t + h/2) + N/2}{c_r\,h/\sqrt 2}", $"leg h = {MillimetreText.Of(leg)}",
                    Pressure.FromPascals(bondStress).Show(PressureUnit.Megapascal), Literature.Gere),
            ]),
        };
    }

    private static bool IsSweptForward(in FinIntegrals fin, double rootM) => fin.MeanChordLeadM + (fin.MeanChordM / 2) < 0.48 * rootM;

    // Fins whose middles lie forward of the root's bend their leading edges up; strip theory with torsion alone doesn't see it.
    private static IEnumerable<Finding> SweepFindings(string name, FinIntegrals fin, double rootM)
    {
        if (IsSweptForward(fin, rootM))
            yield return AerodynamicsFindings.FinsAreSweptForward(name);
    }

    private static IEnumerable<Finding> StructureFindings(string name, double divergenceMargin, double sheetFactor, double bondFactor,
        double angle)
    {
        if (divergenceMargin < FlutterResult.RequiredMargin)
            yield return AerodynamicsFindings.DivergenceMarginTooSmall(name, divergenceMargin, FlutterResult.RequiredMargin);
        if (sheetFactor < FinStructureResult.RequiredSheetFactor)
            yield return AerodynamicsFindings.SheetFactorTooSmall(name, sheetFactor, FinStructureResult.RequiredSheetFactor);
        if (bondFactor < FinStructureResult.RequiredBondFactor)
            yield return AerodynamicsFindings.BondFactorTooSmall(name, bondFactor, FinStructureResult.RequiredBondFactor);
        if (angle == 0)
            yield return AerodynamicsFindings.NeitherGustNorCantIsGiven(name);
        if (angle > 15 * Math.PI / 180)
            yield return AerodynamicsFindings.FinsStallAtLoadAngle(name, Angle.FromRadians(angle));
    }
}

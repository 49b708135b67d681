using NotebookKit.Aerodynamics.Airflow;
using NotebookKit.Aerodynamics.Fins;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Aerodynamics.FinStructures;

/// <summary>Flutter of a set of fins.</summary>
public static class FinFlutter
{
    /// <summary>
    /// Flutter speed of the fins as clamped plates. Source: D. J. Martin, NACA TN 4197, 1958, eq. 18 (constant 39.3 with p / 14.7 psi).
    /// </summary>
    /// <param name="fins">The set of fins.</param>
    /// <param name="shearModulus">Shear modulus that twisting sees; 0.1 to 100 GPa.</param>
    /// <param name="fastest">Fastest flight speed; 1 m/s to Mach 0.9.</param>
    /// <param name="air">Air where that speed is reached; sea level on a standard day where none is given.</param>
    /// <exception cref="InvalidDesignException">The fins can't be computed; carries all findings.</exception>
    /// <exception cref="OutOfRangeException">An input is outside its range.</exception>
    public static FlutterResult Flutter(this FinSet fins, Pressure shearModulus, Speed fastest, AirConditions? air = null)
    {
        air ??= AirConditions.SeaLevel;
        InvalidDesignException.ThrowIfAny(fins.Name, fins.Validate());
        FinSheet.ShearModuli.Check(shearModulus, "shear modulus of the fin", "5 GPa for a 0/90 carbon sheet, 30 GPa for ±45 cloth.");
        new ValidRange<Speed>(1.MetresPerSecond(), 400.MetresPerSecond()).Check(fastest, "fastest flight speed",
            "Take it from the flight.");
        var mach = Ranges.CheckMach(air.Mach(fastest));
        var (root, span, area) = (fins.Planform.RootLength.Meters, fins.Planform.Reach.Meters, fins.Planform.Integrals.AreaM2);
        // (λ + 1) / 2 of a trapezoid is its mean chord over its root: that ratio stands for the taper of any outline. A tip corner says
        // nothing.
        var (aspect, taper, ratio) = (span * span / area, (2 * area / (span * root)) - 1,
            fins.Thickness.Meters / fins.Planform.LongestChordM);
        var speed = FinAeroelasticity.FlutterMps(shearModulus.Pascals, ratio, aspect, taper, air.Pressure.Pascals, air.SoundMps);
        var wanted = fins.Thickness * Math.Pow(FlutterResult.RequiredMargin * fastest.MetersPerSecond / speed, 2.0 / 3);
        return new FlutterResult
        {
            Title = $"Flutter, {fins.Name}",
            FlutterSpeed = Speed.FromMetersPerSecond(speed),
            Fastest = fastest,
            Mach = mach,
            RequiredThickness = wanted,
            Findings = FlutterFindings(fins, speed / fastest.MetersPerSecond, mach, wanted),
            Working = new Working("Flutter speed",
            [
                new("Panel aspect ratio", @"A = \frac{s^2}{S}",
                    $"({fins.Planform.Reach.Show(LengthUnit.Millimeter, 4)})² / {fins.Planform.Area.Show(AreaUnit.SquareCentimeter, 4)}",
                    Digits.Round(aspect, 4), Literature.Martin),
                new("Flutter speed", @"V = a\,\sqrt{\frac{G\,(t/c)^3\,(A + 2)}{2.674\,A^3\,p\,(\lambda + 1)/2}}",
                    $"{Digits.Round(air.SoundMps, 4)} m/s × √({shearModulus.Show()} × {Digits.Round(ratio, 4)}³ × "
                        + $"{Digits.Round(aspect + 2, 4)} / (2.674 × {Digits.Round(aspect, 4)}³ × "
                        + $"{Digits.Round(air.Pressure.Pascals, 5)} Pa × {Digits.Round((taper + 1) / 2, 4)}))",
                    $"{Digits.Round(speed, 4)} m/s", Literature.Martin),
            ]),
        };
    }

    private static List<Finding> FlutterFindings(FinSet fins, double margin, double mach, Length wanted)
    {
        var findings = new List<Finding>();
        if (mach > FlutterResult.MaximumMach)
            findings.Add(AerodynamicsFindings.FastestSpeedBeyondFlutterModel(fins.Name, mach, FlutterResult.MaximumMach));
        if (margin < 1)
            findings.Add(AerodynamicsFindings.FastestSpeedIsAboveFlutterSpeed(fins.Name, margin, wanted));
        else if (margin < FlutterResult.RequiredMargin)
            findings.Add(AerodynamicsFindings.FlutterMarginTooSmall(fins.Name, margin, FlutterResult.RequiredMargin, wanted));
        return findings;
    }
}

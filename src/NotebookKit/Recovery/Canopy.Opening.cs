using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Recovery;

public sealed partial record Canopy
{
    /// <summary>
    /// Load while it opens, with the body slowing as it fills, at the high end of its type's drag.
    /// Source: T. W. Knacke, NWC TP 6575, 1991, table 5-6; E. Pflanz, 1942.
    /// </summary>
    /// <param name="mass">Mass that hangs from the canopy; 10 g to 500 kg.</param>
    /// <param name="speed">Speed at which it opens; 1 to 150 m/s.</param>
    /// <param name="density">Air density; 0.3 to 1.6 kg/m³, 1.225 kg/m³ where none is given.</param>
    /// <param name="growthExponent">Growth of drag area while filling [-]; 0.5 to 3; by its type where none is given.</param>
    /// <exception cref="InvalidDesignException">The canopy can't be computed; carries all findings.</exception>
    /// <exception cref="OutOfRangeException">An input is outside its range.</exception>
    public OpeningResult Open(Mass mass, Speed speed, Density? density = null, double? growthExponent = null)
    {
        var findings = new List<Finding>(Validate());
        InvalidDesignException.ThrowIfAny("Canopy", findings);
        Masses.Check(mass, "descending mass", "Give the empty mass.");
        new ValidRange<Speed>(1.MetresPerSecond(), 150.MetresPerSecond()).Check(speed, "opening speed",
            "Fill times are published up to 152 m/s.");
        var air = CheckDensity(density);
        var (data, v, m) = (Data, speed.MetersPerSecond, mass.Kilograms);
        var exponent = growthExponent ?? data.GrowthExponent;
        var fill = data.FillConstant * NominalDiameter.Meters / v;
        var parameter = 2 * m / (air * DragAreaHighM2 * v * fill);
        var factor = OpeningForce.FiniteMassFactor(parameter, exponent);
        var steady = 0.5 * air * v * v * DragAreaHighM2;
        var infinite = data.OpeningFactor * steady;
        var weight = m * StandardConstants.Gravity;
        if (v < 45.7)
            findings.Add(RecoveryFindings.FillConstantIsExtrapolated(speed, Force.FromNewtons(infinite)));
        if (v > 2 * Terminal(m, air, DragAreaHighM2) && infinite * factor > 20 * weight)
            findings.Add(RecoveryFindings.OpeningLoadIsHigh(infinite * factor / weight));
        return new OpeningResult
        {
            Title = $"Opening load of {Describe()}",
            At = speed,
            FillTime = Duration.FromSeconds(fill),
            BallisticParameter = parameter,
            FiniteMassFactor = factor,
            SteadyDrag = Force.FromNewtons(steady),
            InfiniteMass = Force.FromNewtons(infinite),
            FiniteMass = Force.FromNewtons(infinite * factor),
            Weight = Force.FromNewtons(weight),
            Findings = findings,
            Working = new Working("Opening load",
            [
                new("Fill time", @"t_f = \frac{n\,D_0}{v}", $"{data.FillConstant} × {NominalDiameter.Show(4)} / {speed.Show(4)}",
                    $"{Digits.Round(fill, 4)} s", data.OpeningSource),
                new("Load at infinite mass", @"F = C_x\,\frac{\rho v^2}{2}\,C_D S",
                    $"{data.OpeningFactor} × {Digits.Round(0.5 * air * v * v, 4)} Pa × {Digits.Round(DragAreaHighM2, 4)} m²",
                    $"{Digits.Round(infinite, 4)} N", data.OpeningSource),
                new("Ballistic parameter", @"A = \frac{2\,m}{\rho\,C_D S\,v\,t_f}",
                    $"2 × {Digits.Round(m, 4)} kg / ({Digits.Round(air, 4)} kg/m³ × {Digits.Round(DragAreaHighM2, 4)} m² × "
                    + $"{Digits.Round(v, 4)} m/s × {Digits.Round(fill, 4)} s)", Digits.Round(parameter, 4), RecoveryLiterature.Pflanz),
                new("Load at finite mass", @"F = X_1\,C_x\,\frac{\rho v^2}{2}\,C_D S",
                    $"{Digits.Round(factor, 4)} × {Digits.Round(infinite, 4)} N", $"{Digits.Round(infinite * factor, 4)} N",
                    RecoveryLiterature.Pflanz),
            ]),
        };
    }
}

using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Quantities.Numbers;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Recovery;

/// <summary>A canopy by its type and its constructed size. Source of its figures: T. W. Knacke, NWC TP 6575, 1991, tables 5-1 and
/// 5-6.</summary>
/// <param name="Type">Type of canopy.</param>
/// <param name="NominalDiameter">Diameter of the circle that has the area of all its cloth; 0.1 to 30 m.</param>
public sealed partial record Canopy(CanopyType Type, Length NominalDiameter)
{

    private static readonly ValidRange<Length> Diameters = new(0.1.Metres(), 30.Metres());
    private static readonly ValidRange<Density> Densities = new(0.3.KilogramsPerCubicMetre(), 1.6.KilogramsPerCubicMetre());
    private static readonly ValidRange<Mass> Masses = new(10.Grams(), 500.Kilograms());

    /// <summary>Number of equal canopies opened together; 1 to 4.</summary>
    public int Count { get; init; } = 1;

    /// <summary>Number of gores that one canopy is sewn from; 4 to 32; none where it isn't given, or the canopy is bought.</summary>
    public int? Gores { get; init; }

    /// <summary>
    /// A drag coefficient of one's own on the nominal area, from drop tests [-]; 0.2 to 1.2. The handbook's band where none is given.
    /// Figures of 1.5 and more that sellers quote are on another, smaller area.
    /// </summary>
    public double? DragCoefficient { get; init; }

    /// <summary>The handbook's figures for its type.</summary>
    public CanopyData Data => CanopyData.For(Type);

    /// <summary>Nominal area of one canopy.</summary>
    public Area NominalArea => Area.FromSquareMeters(NominalM2);

    /// <summary>
    /// Share of the drag of single canopies that a cluster keeps [-]: 0.93, 0.83, 0.78 for two, three, four (unverified; three against two
    /// agrees with the 22 and 25 mph of a crew capsule under three and two ringsails).
    /// </summary>
    public double ClusterFactor => Count switch
    {
        1 => 1,
        2 => 0.93,
        3 => 0.83,
        _ => 0.78,
    };

    internal double DragAreaLowM2 => Count * ClusterFactor * NominalM2 * (DragCoefficient ?? Data.DragLow);

    internal double DragAreaHighM2 => Count * ClusterFactor * NominalM2 * (DragCoefficient ?? Data.DragHigh);

    private double NominalM2 => Math.PI / 4 * NominalDiameter.Meters * NominalDiameter.Meters;

    /// <summary>
    /// The smallest canopy that comes down no faster than a speed, at the low end of its type's drag.
    /// Source: weight equals drag; drag coefficient of Knacke, table 5-1.
    /// </summary>
    /// <param name="type">Type of canopy.</param>
    /// <param name="mass">Mass that hangs from the canopy; 10 g to 500 kg.</param>
    /// <param name="descent">Descent speed not to exceed; 1 to 30 m/s.</param>
    /// <param name="density">Air density at the ground; 0.3 to 1.6 kg/m³, 1.225 kg/m³ where none is given.</param>
    /// <exception cref="OutOfRangeException">An input, or the canopy it asks for, is outside its range.</exception>
    public static Canopy ForSpeed(CanopyType type, Mass mass, Speed descent, Density? density = null)
    {
        var air = CheckDensity(density);
        Masses.Check(mass, "descending mass", "Give the empty mass.");
        new ValidRange<Speed>(1.MetresPerSecond(), 30.MetresPerSecond()).Check(descent, "descent speed",
            "4 to 7 m/s is usual for a landing.");
        var speed = descent.MetersPerSecond;
        var area = 2 * mass.Kilograms * StandardConstants.Gravity / (air * speed * speed * CanopyData.For(type).DragLow);
        var diameter = Length.FromMeters(Math.Sqrt(4 * area / Math.PI));
        return new Canopy(type, Diameters.Check(diameter, "nominal diameter that this asks for", "Choose another descent speed."));
    }

    /// <summary>Everything that is wrong with the canopy.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        var findings = new List<Finding>();
        if (Diameters.Find(NominalDiameter, "nominal diameter of the canopy", "Measure the cloth laid flat.")
            is { } size) findings.Add(size);
        if (Count is < 1 or > 4) findings.Add(RecoveryFindings.NumberOfCanopiesOutOfRange(Count));
        if (Gores is < 4 or > 32) findings.Add(RecoveryFindings.NumberOfGoresOutOfRange(Gores.Value));
        if (DragCoefficient is { } drag && new ValidRange<double>(0.2, 1.2).Find(drag, "drag coefficient of the canopy",
            "It is on the nominal (constructed) area; figures of 1.5 and more are on another area.") is { } wrong)
            findings.Add(wrong);
        return findings;
    }

    /// <summary>Steady descent: speed as a band, energy at landing. Source: weight equals drag; drag coefficient of Knacke, table
    /// 5-1.</summary>
    /// <param name="mass">Mass that hangs from the canopy; 10 g to 500 kg.</param>
    /// <param name="density">Air density; 0.3 to 1.6 kg/m³, 1.225 kg/m³ where none is given.</param>
    /// <exception cref="InvalidDesignException">The canopy can't be computed; carries all findings.</exception>
    /// <exception cref="OutOfRangeException">An input is outside its range.</exception>
    public DescentResult Descend(Mass mass, Density? density = null)
    {
        var findings = Validate();
        InvalidDesignException.ThrowIfAny("Canopy", findings);
        Masses.Check(mass, "descending mass", "Give the empty mass.");
        var air = CheckDensity(density);
        var fast = Terminal(mass.Kilograms, air, DragAreaLowM2);
        var slow = Terminal(mass.Kilograms, air, DragAreaHighM2);
        var warnings = new List<Finding>(findings);
        if (fast > 9)
            warnings.Add(RecoveryFindings.ComesDownTooFast(Speed.FromMetersPerSecond(fast)));
        return new DescentResult
        {
            Title = $"Descent under {Describe()}",
            Mass = mass,
            Slowest = Speed.FromMetersPerSecond(slow),
            Fastest = Speed.FromMetersPerSecond(fast),
            LandingEnergy = Energy.FromJoules(0.5 * mass.Kilograms * fast * fast),
            Findings = warnings,
            Working = new Working("Descent speed",
            [
                new("Nominal area", @"S_0 = \frac{\pi}{4} D_0^2",
                    $"π/4 × ({NominalDiameter.Show(4)})²" + (Count > 1 ? $", {Count} canopies, cluster factor {ClusterFactor}" : ""),
                    NominalArea.Show(AreaUnit.SquareMeter, 4), RecoveryLiterature.Knacke),
                new("Descent speed, fastest", @"v = \sqrt{\frac{2\,m\,g}{\rho\,C_D\,S_0}}",
                    $"√(2 × {mass.Show(MassUnit.Kilogram, 4)} × 9.807 m/s² / ({Digits.Round(air, 4)} kg/m³ × "
                        + $"{Digits.Round(DragAreaLowM2, 4)} m²))",
                    Speed.FromMetersPerSecond(fast).Show(4), Data.DragSource),
                new("Energy at landing", @"E = \frac{m\,v^2}{2}",
                    $"{mass.Show(MassUnit.Kilogram, 4)} × ({Speed.FromMetersPerSecond(fast).Show(4)})² / 2",
                    Energy.FromJoules(0.5 * mass.Kilograms * fast * fast).Show(), RecoveryLiterature.Goldstein),
            ]),
        };
    }

    internal string Describe() => $"{(Count > 1 ? $"{Count} " : "a ")}{NominalDiameter.Show(LengthUnit.Meter)} {Words()} "
        + $"{(Count > 1 ? "canopies" : "canopy")}";

    private static double Terminal(double massKg, double densityKgM3, double dragAreaM2) =>
        Math.Sqrt(2 * massKg * StandardConstants.Gravity / (densityKgM3 * dragAreaM2));

    private static double CheckDensity(Density? density) => Densities.Check(
        density ?? 1.225.KilogramsPerCubicMetre(), "air density",
            "It is 1.225 kg/m³ at sea level and a third of that at 10 km.").KilogramsPerCubicMeter;

    private string Words() => string.Concat(Type.ToString().Select((c, i) => i > 0 && char.IsUpper(c) ? $" {char.ToLowerInvariant(c)}"
        : $"{char.ToLowerInvariant(c)}"));
}

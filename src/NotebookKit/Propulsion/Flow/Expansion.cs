using NotebookKit.Provenance;

namespace NotebookKit.Propulsion.Flow;

/// <summary>How the gas cools while it expands.</summary>
/// <remarks>
/// p Vⁿ constant. Source: any textbook of thermodynamics; measured expansions lie between isothermal and adiabatic: A. Romanelli, I. Bove,
/// F. González Madina, Air expansion in the water rocket, Am. J. Phys. 81 (2013) 762.
/// </remarks>
public sealed record Expansion
{
    private Expansion(ExpansionKind kind, string name, double? exponent)
    {
        Kind = kind;
        Name = name;
        Exponent = exponent;
    }

    /// <summary>The temperature stays (slow, or a gas that takes up heat as fast as it cools).</summary>
    public static Expansion Isothermal { get; } = new(ExpansionKind.Polytropic, "isothermal", 1);

    /// <summary>No heat enters: n is the gas' own ratio of specific heats. Right for an expansion of a tenth of a second.</summary>
    public static Expansion Adiabatic { get; } = new(ExpansionKind.Adiabatic, "adiabatic", null);

    /// <summary>
    /// No heat enters, and the gas follows its reference equation of state: right for 30 to 90 bar, where air is stiffer than γ = 1.4
    /// tells.
    /// Source: E. W. Lemmon et al., J. Phys. Chem. Ref. Data 29 (2000) 331 for air.
    /// </summary>
    public static Expansion RealGas { get; } = new(ExpansionKind.RealGas, "real gas, no heat", null);

    /// <summary>
    /// No heat enters, but the air is saturated with vapour that condenses while it cools; droplets stay with the air, ice is left out.
    /// Matters below 10 bar and over warm water. Source: reversible saturated adiabat; vapour pressure of D. Bolton, Mon. Weather Rev. 108
    /// (1980) 1046.
    /// </summary>
    public static Expansion MoistAir { get; } = new(ExpansionKind.MoistAir, "moist air with condensation", null);

    /// <summary>Which law it follows.</summary>
    public ExpansionKind Kind { get; }

    /// <summary>Its name as results show it.</summary>
    public string Name { get; }

    /// <summary>The exponent n where the law has one of its own [-]; 1 to 1.7.</summary>
    public double? Exponent { get; }

    /// <summary>p Vⁿ constant with an exponent of one's own, for instance one fitted to a measured expansion. Source: definition.</summary>
    /// <param name="exponent">Exponent n [-]; 1 to 1.7.</param>
    /// <exception cref="OutOfRangeException">The exponent is outside.</exception>
    public static Expansion Polytropic(double exponent) => new(
        ExpansionKind.Polytropic,
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"polytropic, n = {exponent:0.###}"),
        new ValidRange<double>(1, 1.7).Check(exponent, "polytropic exponent",
            "1 is isothermal, 1.4 adiabatic air, about 1.48 real air from 60 bar."));

    /// <summary>The name.</summary>
    public override string ToString() => Name;

    internal double ExponentFor(double heatCapacityRatio) => Exponent ?? heatCapacityRatio;
}

using NotebookKit.Provenance;

namespace NotebookKit.Recovery;

/// <summary>
/// Peak force of an opening canopy on a body that it slows while it fills. Source: E. Pflanz, 1942, in the closed form for a drag area that
/// grows with (t / t_f)^j and no gravity (unverified; the closed form was checked against a numerical maximum).
/// </summary>
public static class OpeningForce
{
    /// <summary>The force-reduction factor X₁: peak force over the force at infinite mass [-].</summary>
    /// <param name="ballisticParameter">A = 2 m / (ρ C_D S v₀ t_f) [-]; 0.001 to 1e6. Large means the body hardly slows.</param>
    /// <param name="growthExponent">j of the drag area's growth [-]; 0.5 to 3. Two for solid cloth, one for ribbons.</param>
    /// <exception cref="OutOfRangeException">An input is outside its range.</exception>
    public static double FiniteMassFactor(double ballisticParameter, double growthExponent)
    {
        var a = new ValidRange<double>(0.001, 1e6).Check(ballisticParameter, "ballistic parameter A",
            "It compares the body's mass with the air the canopy meets while filling.");
        var j = new ValidRange<double>(0.5, 3).Check(growthExponent, "growth exponent j", "Two for solid cloth, one for ribbons.");
        var y = j * (j + 1) / (j + 2);
        var peak = Math.Pow(a * y, 1 / (j + 1));
        return peak <= 1
            ? Math.Pow(peak, j) / Square(1 + (y / (j + 1)))
            : 1 / Square(1 + (1 / (a * (j + 1))));

        static double Square(double x) => x * x;
    }
}

using System.Numerics;

namespace NotebookKit.Quantities;

/// <summary>Sonic conductances as data sheets print them: <c>0.2.LitresPerSecondBar()</c>.</summary>
public static class SonicConductanceLiterals
{
    /// <summary>The number as a sonic conductance in dm³/(s·bar).</summary>
    /// <param name="value">Conductance [dm³/(s·bar)]; above 0.</param>
    public static SonicConductance LitresPerSecondBar<T>(this T value) where T : struct, INumber<T> =>
        SonicConductance.FromLitresPerSecondBar(double.CreateChecked(value));
}

using System.Runtime.CompilerServices;

namespace NotebookKit.Propulsion.Flow;

/// <summary>The water jet as numbers: what leaves and what it pushes with, at a pressure difference.</summary>
/// <remarks>Source: Bernoulli between water surface and jet; sections of the vessel taken as a straight cylinder of its bore.</remarks>
internal readonly struct WaterJet
{
    public WaterJet(double jetAreaM2, double boreAreaM2, double velocityCoefficient, double density)
    {
        JetAreaM2 = jetAreaM2;
        BoreAreaM2 = boreAreaM2;
        Density = density;
        AreaRatio = jetAreaM2 / boreAreaM2;
        Loss = (1 - AreaRatio * AreaRatio) / (velocityCoefficient * velocityCoefficient);
    }

    public double JetAreaM2 { get; }

    public double BoreAreaM2 { get; }

    public double Density { get; }

    /// <summary>Jet area over bore area φ [-].</summary>
    public double AreaRatio { get; }

    /// <summary>Pressure difference over jet dynamic pressure, (1 − φ²)/Cv² [-].</summary>
    public double Loss { get; }

    /// <summary>Jet speed [m/s] by pressure alone.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double Speed(double differencePa) => differencePa > 0 ? Math.Sqrt(2 * differencePa / (Density * Loss)) : 0;

    /// <summary>Jet speed [m/s] with the head of the column added: at rest under gravity.</summary>
    public double SpeedHeld(double differencePa, double columnM, double gravity) => Speed(differencePa + Density * gravity * columnM);

    /// <summary>
    /// Jet speed [m/s] with the head of the column added in a free vehicle, whose acceleration is that of the jet's own thrust:
    /// ρ Loss u²/2 = Δp + ρ h (ρ A u² − D)/M.
    /// </summary>
    public double SpeedFree(double differencePa, double columnM, double dragN, double massKg)
    {
        var push = differencePa - Density * columnM * dragN / massKg;
        var resistance = Density * (0.5 * Loss - Density * JetAreaM2 * columnM / massKg);
        return push > 0 && resistance > 0 ? Math.Sqrt(push / resistance) : 0;
    }
}

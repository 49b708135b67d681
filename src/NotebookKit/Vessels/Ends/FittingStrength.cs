using NotebookKit.Materials.Solids;
using NotebookKit.Vessels.Design;
using NotebookKit.Vessels.Ends.Modes;
using UnitsNet;

namespace NotebookKit.Vessels.Ends;

/// <summary>What a fitting in an opening holds.</summary>
/// <remarks>
/// Source: threads, FED-STD-H28/2B, where the thread's limits are known, else half of the cylinder π·d·l, which lies below it; shear at
/// 0.577 of the yield strength (von Mises); bonds as <see cref="PlugStrength"/>; balance of forces.
/// </remarks>
internal static class FittingStrength
{
    private const double ShearShare = 0.577;

    public static IEnumerable<EndMode> Modes(Fitting fitting, Closure closure)
    {
        var hole = closure.Opening.Meters;
        switch (fitting)
        {
            case ThreadedFitting thread:
                var stripped = Thread("fitting's thread", "thread of the fitting stripped", thread.Nominal, thread.Pitch,
                    thread.EngagedIn(closure), thread.Material, closure.Material);
                yield return BossPascals(thread, closure) is var torn && torn < stripped.Pascals
                    ? stripped with { Pascals = torn, Cause = "boss around the fitting's thread torn off", Formula = BossFormula }
                    : stripped;
                break;
            case BondedFitting bond:
                var plug = new BondedPlug(bond.Adhesive, bond.Overlap, bond.ClosureSurface, bond.FittingSurface) { BondLine =
                    bond.BondLine };
                var wall = closure.Material.Modulus.Value.Pascals * closure.Wall.Meters;
                var pressure = PlugStrength.ShearPascals(plug, hole, wall, bond.Modulus.Pascals * bond.Wall.Meters);
                yield return new("fitting's bond", pressure, PartFailure.Burst, "bond of the fitting sheared", EndDriver.Bond,
                    PlugStrength.ShearFormula, VesselSources.ShearLag);
                break;
            case ShoulderedFitting shoulder:
                foreach (var mode in Flange("shoulder", shoulder.Material, shoulder.Shoulder, shoulder.ShoulderDiameter, closure))
                    yield return mode;
                break;
            case ClampedFitting clamped:
                if (clamped.FlangeInside)
                {
                    foreach (var mode in Flange("flange", clamped.Material, clamped.Flange, clamped.FlangeDiameter, closure))
                        yield return mode;
                    break;
                }

                // The nut draws the flange on from outside: the thrust on the whole opening goes through the thread.
                var strip = Thread("fitting's nut", "thread of the nut stripped", clamped.Nominal, clamped.Pitch, clamped.NutHeight,
                    clamped.Material, clamped.Material);
                var nominal = clamped.Nominal.Meters;
                yield return strip with { Pascals = strip.Pascals * Math.Min(1, nominal * nominal / (hole * hole)) };
                break;
        }
    }

    private const string BossFormula = @"p = \sigma_y\left(\frac{D^2}{d^2}-1\right)";

    // The boss pulls on the closure by its ring of metal around the thread.
    private static double BossPascals(ThreadedFitting thread, Closure closure) => thread.Boss is { } boss
        ? closure.Material.YieldStrength.Value.Pascals * (Math.Pow(boss / thread.Nominal, 2) - 1)
        : double.PositiveInfinity;

    private static EndMode Thread(string name, string cause, Length nominal, Length pitch, Length engagement, IsotropicMaterial outer,
        IsotropicMaterial inner)
    {
        double d = nominal.Meters, length = Math.Min(engagement.Meters, d), first = Shear(outer), second = Shear(inner);
        var limits = ThreadLimits.Metric.FirstOrDefault(t => Math.Abs((t.Nominal - nominal).Millimeters) < 0.01
            && Math.Abs((t.Pitch - pitch).Millimeters) < 0.01);
        var force = limits is null
            ? 0.5 * Math.PI * d * length * Math.Min(first, second)
            : Math.Min(
                first * ThreadArea.Stripped(length, pitch.Meters, limits.InternalMinor.Meters,
                    limits.ExternalPitch.Meters - limits.InternalMinor.Meters),
                second * ThreadArea.Stripped(length, pitch.Meters, limits.ExternalMajor.Meters,
                    limits.ExternalMajor.Meters - limits.InternalPitch.Meters));
        return new(name, force / (Math.PI / 4 * d * d), PartFailure.Burst, cause, EndDriver.Closure,
            limits is null ? @"p = \frac{\frac{1}{2}\,\pi\,d\,l\,\tau}{\pi d^2/4}"
                : @"p = \frac{\min(A_s\,\tau_s,\ A_n\,\tau_n)}{\pi d^2/4}", ModeSources.StripAreas);
    }

    private static IEnumerable<EndMode> Flange(string what, IsotropicMaterial material, Length thickness, Length diameter, Closure closure)
    {
        double hole = closure.Opening.Meters, outer = diameter.Meters;
        yield return new($"fitting's {what}", 4 * thickness.Meters * Shear(material) / hole, PartFailure.Burst, $"{what} sheared off",
            EndDriver.Closure, @"p = \frac{4\,t\,\tau}{d}", ModeSources.Equilibrium);
        var bearing = Math.Min(material.YieldStrength.Value.Pascals, closure.Material.YieldStrength.Value.Pascals);
        yield return new($"edge under the {what}", bearing * (outer * outer / (hole * hole) - 1), PartFailure.Burst,
            $"edge of the opening crushed by the {what}", EndDriver.Closure, @"p = \sigma_y\left(\frac{D^2}{d^2}-1\right)",
            ModeSources.Equilibrium);
    }

    private static double Shear(IsotropicMaterial material) => ShearShare * material.YieldStrength.Value.Pascals;
}

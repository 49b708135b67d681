using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Ends.Modes;

/// <summary>Areas of a 60° screw thread: the one that a pull stretches, and those that it shears off.</summary>
/// <remarks>
/// Source: ISO 898-1 (stress area); FED-STD-H28/2B (areas that strip), as tabulated in Bickford, Introduction to the Design and Behavior
/// of Bolted Joints, 4th ed.; unified threads, FED-STD-H28.
/// </remarks>
public static class ThreadArea
{
    /// <summary>Stress area of a metric external thread, π/4·(d − 0.9382·P)². Source: ISO 898-1.</summary>
    /// <param name="nominal">Nominal diameter, d; 1 to 300 mm.</param>
    /// <param name="pitch">Pitch, P; 0.2 to 8 mm, at most a quarter of the diameter.</param>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public static Area Stress(Length nominal, Length pitch) => Stretched(nominal, pitch, 0.9382);

    /// <summary>Stress area of a unified external thread, π/4·(D − 0.9743/n)². Source: FED-STD-H28.</summary>
    /// <param name="nominal">Nominal diameter, D; 1 to 300 mm.</param>
    /// <param name="turnsAnInch">Turns an inch, n [1/in]; 4 to 80.</param>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public static Area UnifiedStress(Length nominal, double turnsAnInch)
    {
        var n = new ValidRange<double>(4, 80).Check(turnsAnInch, "turns an inch", "Count them over an inch.");
        return Stretched(nominal, (1 / n).Inches(), 0.9743);
    }

    /// <summary>Area of the external thread that strips, at the crests of the internal one. Source: FED-STD-H28/2B.</summary>
    /// <param name="thread">The thread and its limits.</param>
    /// <param name="engagement">Length over which the threads engage; 0.1 to 500 mm.</param>
    /// <exception cref="InvalidDesignException">The thread isn't valid.</exception>
    /// <exception cref="OutOfRangeException">The engagement is out of range.</exception>
    public static Area ExternalStrips(ThreadLimits thread, Length engagement)
    {
        var length = Check(thread, engagement);
        return Area.FromSquareMeters(
            Stripped(length, thread.Pitch.Meters, thread.InternalMinor.Meters, thread.ExternalPitch.Meters - thread.InternalMinor.Meters));
    }

    /// <summary>Area of the internal thread that strips, at the crests of the external one. Source: FED-STD-H28/2B.</summary>
    /// <param name="thread">The thread and its limits.</param>
    /// <param name="engagement">Length over which the threads engage; 0.1 to 500 mm.</param>
    /// <exception cref="InvalidDesignException">The thread isn't valid.</exception>
    /// <exception cref="OutOfRangeException">The engagement is out of range.</exception>
    public static Area InternalStrips(ThreadLimits thread, Length engagement)
    {
        var length = Check(thread, engagement);
        return Area.FromSquareMeters(
            Stripped(length, thread.Pitch.Meters, thread.ExternalMajor.Meters, thread.ExternalMajor.Meters - thread.InternalPitch.Meters));
    }

    /// <summary>
    /// Engagement at which the external thread strips as the bolt's core tears, both of one material: 2·As over its strip area a length.
    /// Source: FED-STD-H28.
    /// </summary>
    /// <param name="thread">The thread and its limits.</param>
    /// <exception cref="InvalidDesignException">The thread isn't valid.</exception>
    public static Length FullStrengthEngagement(ThreadLimits thread)
    {
        var each = ExternalStrips(thread, 1.Millimetres()).SquareMeters / 1e-3;
        return Length.FromMillimeters(1000 * 2 * Stretched(thread.Nominal, thread.Pitch, 0.9743).SquareMeters / each);
    }

    /// <summary>π·l/P·D·(P/2 + (depth)/√3) [m²], lengths in metres.</summary>
    internal static double Stripped(double engagement, double pitch, double circle, double depth) =>
        Math.PI * engagement / pitch * circle * (pitch / 2 + 0.57735 * depth);

    private static Area Stretched(Length nominal, Length pitch, double share)
    {
        var d = new ValidRange<Length>(1.Millimetres(), 300.Millimetres())
            .Check(nominal, "nominal diameter of the thread", "Measure over the external thread.");
        var p = new ValidRange<Length>(0.2.Millimetres(), UnitMath.Min(8.Millimetres(), d / 4))
            .Check(pitch, "pitch of the thread", "Measure over ten turns.");
        var core = d.Meters - share * p.Meters;
        return Area.FromSquareMeters(Math.PI / 4 * core * core);
    }

    private static double Check(ThreadLimits thread, Length engagement)
    {
        ArgumentNullException.ThrowIfNull(thread);
        InvalidDesignException.ThrowIfAny("Thread", thread.Validate());
        return new ValidRange<Length>(0.1.Millimetres(), 500.Millimetres())
            .Check(engagement, "engagement of the thread", "Threads that don't engage hold nothing; three turns at the least.").Meters;
    }
}

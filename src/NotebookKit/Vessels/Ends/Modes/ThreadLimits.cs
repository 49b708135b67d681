using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Ends.Modes;

/// <summary>
/// A 60° screw thread with the limits of its tolerances that leave the least thread to shear: the smallest external thread in the widest
/// internal one. Basic sizes in their place give a quarter more area than there may be.
/// </summary>
/// <param name="Name">What the thread is called: "M12".</param>
/// <param name="Nominal">Nominal diameter, d; 1 to 300 mm.</param>
/// <param name="Pitch">Pitch, P; 0.2 to 8 mm and below a quarter of the diameter.</param>
/// <param name="ExternalMajor">Least major diameter of the external thread; at most the nominal diameter.</param>
/// <param name="ExternalPitch">Least pitch diameter of the external thread; below the internal one's.</param>
/// <param name="InternalMinor">Largest minor diameter of the internal thread; below the least pitch diameter of the external one.</param>
/// <param name="InternalPitch">Largest pitch diameter of the internal thread; above the external one's.</param>
/// <remarks>Source: ISO 965, 6g in 6H (unverified; proved by the tabulated areas that they give to the last digit); FED-STD-H28.</remarks>
public sealed record ThreadLimits(
    string Name, Length Nominal, Length Pitch, Length ExternalMajor, Length ExternalPitch, Length InternalMinor, Length InternalPitch)
{
    private static readonly ThreadLimits[] Coarse =
    [
        Of("M12", 12, 1.75, 11.701, 10.679, 10.441, 11.063),
        Of("M16", 16, 2, 15.682, 14.503, 14.210, 14.913),
        Of("M20", 20, 2.5, 19.623, 18.164, 17.744, 18.600),
        Of("M24", 24, 3, 23.577, 21.803, 21.252, 22.316),
        Of("M30", 30, 3.5, 29.522, 27.462, 26.771, 28.007),
    ];

    /// <summary>The coarse metric threads that the library has limits of: M12, M16, M20, M24, M30, 6g in 6H.</summary>
    public static IReadOnlyList<ThreadLimits> Metric => Coarse;

    /// <summary>Height of the thread's overlap across the radius. Source: half the difference of the two diameters.</summary>
    public Length Overlap => (ExternalMajor - InternalMinor) / 2;

    /// <summary>A coarse metric thread by its name.</summary>
    /// <param name="name">Name: "M12", "M16", "M20", "M24" or "M30".</param>
    /// <exception cref="ArgumentException">The library has no limits of that thread.</exception>
    public static ThreadLimits Named(string name) =>
        Coarse.FirstOrDefault(t => string.Equals(t.Name, name, StringComparison.OrdinalIgnoreCase))
        ?? throw new ArgumentException(
            $"The library has no limits of the thread {name}; it has {string.Join(", ", Coarse.Select(t => t.Name))}. Give the thread's " +
            "own limits from its standard.", nameof(name));

    /// <summary>All that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() => ModeInput.All(
        new ValidRange<Length>(1.Millimetres(), 300.Millimetres())
            .Find(Nominal, "nominal diameter of the thread", "Measure over the external thread."),
        new ValidRange<Length>(0.2.Millimetres(), UnitMath.Min(8.Millimetres(), Nominal / 4))
            .Find(Pitch, "pitch of the thread", "Measure over ten turns."),
        ExternalMajor <= Nominal ? null : Finding.Error(OutOfRangeException.Sentence(
            "least major diameter of the external thread", ExternalMajor.Show(5), "above 0", $"the nominal {Nominal.Show(5)}",
                "Give the lower limit of its tolerance.")),
        ModeInput.Below(ExternalPitch, InternalPitch, "least pitch diameter of the external thread",
            "internal thread's widest pitch diameter",
            "Alike, they are basic sizes without tolerances, which give up to a quarter more area than there may be."),
        ModeInput.Below(InternalMinor, ExternalPitch, "largest minor diameter of the internal thread",
            "external thread's least pitch diameter", "The threads have to reach into each other."),
        ModeInput.Below(InternalPitch, ExternalMajor, "largest pitch diameter of the internal thread",
            "external thread's least major diameter", "The threads have to reach into each other."));

    private static ThreadLimits Of(string name, double d, double pitch, double major, double external, double minor,
        double internalPitch) => new(
        name, d.Millimetres(), pitch.Millimetres(), major.Millimetres(), external.Millimetres(), minor.Millimetres(),
            internalPitch.Millimetres());
}

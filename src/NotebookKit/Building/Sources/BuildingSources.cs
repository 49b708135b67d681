using NotebookKit.Provenance;

namespace NotebookKit.Building;

/// <summary>Where the models of the bench come from.</summary>
internal static class BuildingSources
{
    public static Source Nesting { get; } = new(
        "J. A. Bennell, J. F. Oliveira", "The geometry of nesting problems: a tutorial, Eur. J. Oper. Res. 184, 397", 2008,
            "no-fit polygon, bottom-left placement", SourceKind.Unverified);

    public static Source Geometry { get; } = new("", "plane geometry", null);

    public static Source CriticalPath { get; } = new(
        "J. E. Kelley, M. R. Walker", "Critical-path planning and scheduling, Proc. Eastern Joint Computer Conf., 160", 1959,
            "forward and backward pass", SourceKind.Unverified);

    public static Source SerialSchedule { get; } = new(
        "R. Kolisch", "Serial and parallel resource-constrained project scheduling methods revisited, Eur. J. Oper. Res. 90, 320", 1996,
            "serial scheme", SourceKind.Unverified);

    public static Source BenchPractice { get; } = Source.CommonPractice("allowances of the bench: sleeve ends, overlaps, resin "
        + "left in the pot");
}

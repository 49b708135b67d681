using NotebookKit.Numerics.Ode;

namespace NotebookKit.Flight.Motion;

/// <summary>Error control of flights: tight where everything is recorded, loose where thousands are flown.</summary>
internal static class FlightAccuracy
{
    public static readonly OdeSettings Recorded = new() { RelativeTolerance = 1e-8 };

    public static readonly OdeSettings RecordedSixDegrees = new() { RelativeTolerance = 1e-7 };

    public static readonly OdeSettings Fast = new() { RelativeTolerance = 1e-6 };
}

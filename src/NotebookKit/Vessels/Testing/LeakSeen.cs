using NotebookKit.Quantities;

namespace NotebookKit.Vessels.Testing;

/// <summary>A leak that a test showed. No part has given way by it: every part held at least the pressure of the test.</summary>
/// <param name="Where">Where the water came out: "nozzle end, seal".</param>
/// <param name="Pressure">Lowest pressure at which it was seen; above 0, up to that of the test.</param>
public sealed record LeakSeen(string Where, GaugePressure Pressure)
{
    /// <summary>Drops a minute [1/min]; 0.01 to 1000; none where nobody counted.</summary>
    public double? DropsPerMinute { get; init; }
}

using NotebookKit.Quantities;
using NotebookKit.Vessels.Design;
using UnitsNet;

namespace NotebookKit.Vessels.Testing;

/// <summary>One vessel tested with water. What isn't given of it is not given: no drops seen is no dry vessel.</summary>
/// <param name="Vessel">Its design; a short twin has its own.</param>
/// <param name="Id">Name or number of the very vessel: two tests of one vessel aren't two witnesses.</param>
/// <param name="Pressure">Highest pressure it saw; 0.5 to 1000 bar gauge.</param>
public abstract record VesselTest(PressureVessel Vessel, string Id, GaugePressure Pressure)
{
    /// <summary>Batch it was made in: the same hands, roll of sleeve, resin and season; empty where none is given.</summary>
    public string Batch { get; init; } = "";

    /// <summary>Mark of the vessel that was tested, as written down with the test; none where nobody did.</summary>
    public string? MadeAs { get; init; }

    /// <summary>Mark of <see cref="Vessel"/> as its design's file states it; none where it comes from no file.</summary>
    public string? Mark { get; init; }

    /// <summary>What the gauge may have read too high, 0.001 to 20 bar: the test counts for that much less; none where nobody
    /// compared the gauge, and the test counts as read.</summary>
    public Pressure? GaugeError { get; init; }

    /// <summary>Pressure that the vessel saw for sure: the reading less the gauge's error where that is given.</summary>
    internal GaugePressure Sure => GaugeError is { } error ? Pressure + -error : Pressure;

    /// <summary>A leak: where, and from which pressure on; none where none is given.</summary>
    public LeakSeen? Leak { get; init; }

    /// <summary>Whether drops were looked for and seen; none where nobody looked or said.</summary>
    public bool? DropsSeen { get; init; }

    /// <summary>Growth of the inside under pressure, 0.001 mL to 10 L; none where it wasn't measured.</summary>
    public Volume? Growth { get; init; }

    /// <summary>What the measured growth may be off by either way, in 95 of 100 readings, 0.001 mL to 10 L; none where that isn't given:
    /// such a growth contradicts nothing.</summary>
    public Volume? GrowthUncertainty { get; init; }

    /// <summary>Pressure at which the growth was measured, above 0 to the test's; that of a held proof where none is given. Of a burst
    /// none: nobody reads a burette in that moment.</summary>
    public GaugePressure? GrowthPressure { get; init; }
}

/// <summary>A leak that a test showed. No part has given way by it: every part held at least the pressure of the test.</summary>
/// <param name="Where">Where the water came out: "nozzle end, seal".</param>
/// <param name="Pressure">Lowest pressure at which it was seen; above 0, up to that of the test.</param>
public sealed record LeakSeen(string Where, GaugePressure Pressure)
{
    /// <summary>Drops a minute [1/min]; 0.01 to 1000; none where nobody counted.</summary>
    public double? DropsPerMinute { get; init; }
}

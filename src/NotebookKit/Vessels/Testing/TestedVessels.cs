using NotebookKit.Vessels.Design;
using System.Collections.Concurrent;
using System.Runtime.CompilerServices;

namespace NotebookKit.Vessels.Testing;

/// <summary>What is computed of tested vessels, each design once: twins differ in nothing but their names. A vessel in hand that is changed
/// leaves those that were tested as they are.</summary>
internal sealed class TestedVessels
{
    private readonly ConcurrentDictionary<PressureVessel, TestedVessel> _known = new();
    private readonly ConditionalWeakTable<PressureVessel, TestedVessel> _same = [];

    /// <summary>What is computed of a vessel, or of its twin.</summary>
    public TestedVessel Of(PressureVessel vessel) => _same.GetValue(vessel, v => _known.GetOrAdd(v with { Name = "" },
        _ => new TestedVessel(v)));
}

using BenchmarkDotNet.Attributes;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Benchmarks.Vessels;

/// <summary>Budgets: learning eight parts from ten tests 100 ms, which test next out of four 1 s, on two cores.</summary>
[MemoryDiagnoser]
public class PartEvidenceBenchmarks
{
    private readonly PredictedPart[] _parts =
        [.. Enumerable.Range(0, 8).Select(k => new PredictedPart($"part {k}",
            (150 + 10 * k).BarGauge()) { Stressed = k == 0 ? Volume.FromCubicCentimeters(400) : null })];

    private PartEvidence _evidence = null!;
    private PartLearning _learning = null!;
    private TestOption[] _options = null!;

    [GlobalSetup]
    public void Setup()
    {
        _evidence = PartEvidence.Of([.. Enumerable.Range(0, 10).Select(i => i % 2 == 0
            ? (PartTest)new PartBurst($"{i}", (110 + i).BarGauge(), $"part {i / 2}", _parts)
            : new PartHeld($"{i}", 90.BarGauge(), _parts))]);
        _learning = _evidence.Learn(_parts);
        _options =
        [
            new("proof", Duration.FromHours(2), _parts) { Proof = 90.BarGauge() }, new("burst of a twin", Duration.FromHours(12), _parts),
            new("burst of an end", Duration.FromHours(4), [_parts[1]]),
                new("burst of two ends", Duration.FromHours(6), [_parts[1], _parts[2]]),
        ];
    }

    /// <summary>What is believed of eight parts after so many tests.</summary>
    public static object Learned(int tests)
    {
        var parts = new PartEvidenceBenchmarks()._parts;
        return PartEvidence.Of([.. Enumerable.Range(0, tests).Select(i => i % 2 == 0
            ? (PartTest)new PartBurst($"{i}", (110 + (i % 10)).BarGauge(), $"part {i / 2 % 5}", parts)
            : new PartHeld($"{i}", 90.BarGauge(), parts))]).Learn(parts);
    }

    /// <summary>Eight parts, ten tests.</summary>
    [Benchmark]
    public double Eight_parts_learned() => _evidence.Learn(_parts).BBasis.Bar;

    /// <summary>Four tests to choose from.</summary>
    [Benchmark]
    public double Which_test_next() => _learning.NextTest(_options).Best.GainPerHour;
}

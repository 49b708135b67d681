using BenchmarkDotNet.Attributes;
using NotebookKit.Flight.Dispersion;

namespace NotebookKit.Benchmarks.Flight;

/// <summary>Dispersions. Budgets on two cores: 10 000 flights in three degrees of freedom 3 s, 1000 in six 8 s.</summary>
[MemoryDiagnoser]
public class DispersionBenchmarks
{
    private static readonly Spread Usual = new();

    /// <summary>10 000 flights in three degrees of freedom.</summary>
    [Benchmark]
    public int Ten_thousand_in_three_degrees() => BenchmarkVehicle.Trainer.Disperse(BenchmarkVehicle.Site, Usual, 10_000, 1).Failed;

    /// <summary>1000 flights in six degrees of freedom.</summary>
    [Benchmark]
    public int A_thousand_in_six_degrees() => BenchmarkVehicle.Trainer.Disperse(BenchmarkVehicle.Site, Usual, 1000, 1,
        sixDegrees: true).Failed;

    /// <summary>3000 flights of two stages in three degrees of freedom, each to the ground: as long as 10 000 of one stage, were they three
    /// flights each.</summary>
    [Benchmark]
    public int Three_thousand_of_two_stages() => BenchmarkVehicle.TwoStages.Disperse(BenchmarkVehicle.Site, new(), 3000, 1).Failed;
}

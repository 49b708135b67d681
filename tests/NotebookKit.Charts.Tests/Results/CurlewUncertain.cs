using NotebookKit.Flight.Dispersion;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Tests.Results;

/// <summary>What isn't known of the invented trainer, and what was measured on it.</summary>
public static class CurlewUncertain
{
    public static DispersionResult Dispersion { get; } = Curlew.Vehicle.Disperse(Curlew.Windy with { Ceiling = 30.Metres() }, new Spread(),
        200, 7);

    public static BurstDistribution Distribution { get; } = Curlew.Vessel.SampleBursts(2_000);

    public static EfficiencyUpdate Update { get; } = VesselEvidence.Of(new HeldProof(Curlew.Vessel, "no. 1",
        Curlew.Rating.ProofPressure)).Learn(Curlew.Vessel);

    public static FillFit FillFit { get; } = new FillLog { Fill = Curlew.Fill.Fill, Time = Curlew.Fill.Time,
        Pressure = Curlew.Fill.Pressure }.Fit();

    public static LaunchBudgetResult Budget { get; } = new LaunchBudget
    {
        Chamber = Curlew.Charge.Chamber, Target = Curlew.Rating.WorkingPressure / 1.5, WaterFraction = 32.Percent(),
        Cylinders = [new SourceCylinder("A", 10.Litres(), 200.BarGauge()), new SourceCylinder("B", 10.Litres(), 80.BarGauge())],
    }.Run();
}

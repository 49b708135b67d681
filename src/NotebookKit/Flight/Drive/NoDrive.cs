using System.Runtime.CompilerServices;

namespace NotebookKit.Flight.Drive;

/// <summary>No jet: what is left stays aboard.</summary>
internal readonly struct NoDrive(double waterLeftKg, double gasLeftKg) : IDrive
{
    public int Unknowns => 0;

    public bool IsJetOn => false;

    public int Ends => 0;

    public double ContentsKg(ReadOnlySpan<double> own) => waterLeftKg + gasLeftKg;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public DriveState Run(double ambientPa, double resistanceN, double speedMps, double dryKg, ReadOnlySpan<double> own,
        Span<double> ownRates) =>
        new(0, waterLeftKg, gasLeftKg, 0, double.NaN);

    public double End(int way, double ambientPa, ReadOnlySpan<double> own) => 1;
}

using NotebookKit.Flight.Drive;
using NotebookKit.Flight.Site;
using NotebookKit.Numerics.Ode;

namespace NotebookKit.Flight.Motion;

/// <summary>
/// A flight off the rail, in three or in six degrees of freedom. Both begin with north, east, down from the pad and their rates, so that
/// the same events watch both.
/// </summary>
internal interface IFreePath<TDrive> : IOdeSystem, IDescribed
    where TDrive : struct, IDrive
{
    /// <summary>Where the drive's own unknowns begin.</summary>
    int Own { get; }

    /// <summary>What drives it.</summary>
    TDrive Drive { get; }

    /// <summary>Number of ways in which its drive ends of itself.</summary>
    int Ends { get; }

    /// <summary>A number that falls through zero where the drive ends in one of its ways.</summary>
    double End(int way, double ambientPa, ReadOnlySpan<double> y);

    /// <summary>The vehicle on its site.</summary>
    FlightNumbers Numbers { get; }

    /// <summary>The air at a state.</summary>
    AirSample Air(double t, ReadOnlySpan<double> y);
}

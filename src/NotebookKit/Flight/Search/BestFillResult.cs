using NotebookKit.Flight.Vertical;
using NotebookKit.Propulsion.Flow;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Flight.Search;

/// <summary>The best fill of a vehicle, and how much it matters. Source: see <see cref="Model"/>.</summary>
public sealed record BestFillResult : Result
{
    private const double FlatPoints = 10;

    internal BestFillResult(BestFill search, VerticalFlightResult flight, double low, double high, int flights)
    {
        Search = search;
        Flight = flight;
        FlatFrom = Ratio.FromPercent(100 * low);
        FlatTo = Ratio.FromPercent(100 * high);
        Flights = flights;
    }

    /// <summary>What was searched.</summary>
    public BestFill Search { get; }

    /// <summary>The flight with the best fill.</summary>
    public VerticalFlightResult Flight { get; }

    /// <summary>Water fractions of the search, evenly spread.</summary>
    public required Series Water { get; init; }

    /// <summary>Height or speed with each at the best throat; not a number where the vehicle doesn't lift.</summary>
    public required Series GoalValue { get; init; }

    /// <summary>The best water fraction.</summary>
    public Ratio WaterFraction => Flight.Flight.Charge.WaterFraction;

    /// <summary>The best throat, or the flight's own where it wasn't searched.</summary>
    public Length Throat => Flight.Flight.Nozzle.Throat;

    /// <summary>Least water fraction that loses no more than 1 %.</summary>
    public Ratio FlatFrom { get; }

    /// <summary>Greatest water fraction that loses no more than 1 %.</summary>
    public Ratio FlatTo { get; }

    /// <summary>Whether the choice hardly matters: more than ten percentage points of water lose no more than 1 %.</summary>
    public bool IsFlat => (FlatTo - FlatFrom).Percent > FlatPoints;

    /// <summary>Flights computed.</summary>
    public int Flights { get; }

    /// <inheritdoc/>
    public override string Title => $"Best fill, {Search.Flight.Name}";

    /// <inheritdoc/>
    public override ModelCard Model => Flight.Model;

    /// <inheritdoc/>
    public override ResultStatus Status => Flight.Status;

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Water fraction", WaterFraction.Show(), $"{FlatFrom.Show(2)} to {FlatTo.Show(2)} lose no more than 1 %"),
        new("Nozzle throat", Throat.Show(), Search.Throats is null ? "as given" : ""),
        new("Apogee above pad", Flight.Apogee.Show()),
        new("Maximum speed", Flight.MaximumSpeed.Show()),
        new("Acceleration at release", $"{Digits.Round(Flight.FirstAcceleration.MetersPerSecondSquared / StandardConstants.Gravity, 2)} g",
            "fins, bonds and recovery gear have to stand it"),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings
    {
        get
        {
            List<Finding> findings = [.. Flight.Findings];
            if (IsFlat)
            {
                findings.Add(FlightFindings.OptimumIsFlat(FlatFrom, FlatTo, GoalName));
            }

            var least = Search.WaterFractions.Minimum.Percent;
            var most = Search.WaterFractions.Maximum.Percent;
            if (WaterFraction.Percent - least < 0.1 || most - WaterFraction.Percent < 0.1)
                findings.Add(FlightFindings.BestWaterFractionIsAtEnd(WaterFraction));
            if (Search.Throats is { } throats && (Throat - throats.Minimum < 0.01.Millimetres()
                || throats.Maximum - Throat < 0.01.Millimetres()))
                findings.Add(FlightFindings.BestThroatIsAtEnd(Throat));
            if (Search.Throats is not null && FiringChecks.JetShare(Flight.Flight.Nozzle,
                Flight.Flight.Charge) > 0.98 * FiringChecks.MaximumJetShare)
                findings.Add(FlightFindings.BestThroatIsWidestModelled(Throat));
            return findings;
        }
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Flight.Cautions;

    /// <inheritdoc/>
    public override Working Working => Flight.Working;

    private string GoalName => Search.Goal == FlightGoal.Apogee ? "height" : "speed";
}

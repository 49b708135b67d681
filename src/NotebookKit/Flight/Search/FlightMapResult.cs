using NotebookKit.Flight.Vertical;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Flight.Search;

/// <summary>Height and speed over two variables. Source: see <see cref="Model"/>.</summary>
public sealed record FlightMapResult : Result
{
    private readonly int _best;

    internal FlightMapResult(FlightMap map, double[] apogee, double[] speed)
    {
        Map = map;
        Apogee = new("Apogee above pad", "m", apogee);
        MaximumSpeed = new("Maximum speed", "m/s", speed);
        _best = Enumerable.Range(0, apogee.Length).Where(i => !double.IsNaN(apogee[i])).MaxBy(i => apogee[i]);
        Refused = apogee.Count(double.IsNaN);
    }

    /// <summary>What was asked.</summary>
    public FlightMap Map { get; }

    /// <summary>Values of the horizontal variable.</summary>
    public Series X => Map.X.Values;

    /// <summary>Values of the vertical variable.</summary>
    public Series Y => Map.Y.Values;

    /// <summary>Heights, row by row: all X at the first Y, then all X at the second. Not a number where the setting is refused.</summary>
    public Series Apogee { get; }

    /// <summary>Maximum speeds, in the same order.</summary>
    public Series MaximumSpeed { get; }

    /// <summary>The vessel's rated pressure: the line beyond which the map stays empty.</summary>
    public GaugePressure RatedPressure => Map.Flight.Charge.Chamber.RatedPressure;

    /// <summary>Cells that were refused: above the rating, too heavy to lift, down with water and pressure aboard, too fast for the drag
    /// model.</summary>
    public int Refused { get; }

    /// <summary>The flight of the highest cell.</summary>
    public VerticalFlight Best => Map.X.Apply(Map.Y.Apply(Map.Flight, _best / X.Count), _best % X.Count);

    /// <inheritdoc/>
    public override string Title => $"{X.Name} and {char.ToLowerInvariant(Y.Name[0])}{Y.Name[1..]}, {Map.Flight.Name}";

    /// <inheritdoc/>
    public override ModelCard Model => VerticalFlightModel.Card(Map.Flight);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Maximum on the map", $"{Digits.Round(Apogee[_best])} m",
            $"{X.Name} {Digits.Round(X[_best % X.Count])} {X.Unit}, {Y.Name} {Digits.Round(Y[_best / X.Count])} {Y.Unit}"),
        new("Fastest on the map", $"{Digits.Round(MaximumSpeed.Values.Where(v => !double.IsNaN(v)).Max())} m/s"),
        new("Rated pressure", RatedPressure.ToString(), "nothing is computed above it"),
        new("Cells", $"{X.Count} × {Y.Count}", Refused == 0 ? "" : $"{Refused} refused"),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings
    {
        get
        {
            List<Finding> findings = [];
            var near = Apogee.Values.Count(v => v >= 0.99 * Apogee[_best]);
            if (near > 0.05 * Apogee.Count)
            {
                findings.Add(FlightFindings.TopOfMapIsFlat(100.0 * near / Apogee.Count));
            }

            if (Refused > 0) findings.Add(FlightFindings.SomeCellsAreEmpty(Refused, Apogee.Count));
            return findings;
        }
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFlight;

    /// <inheritdoc/>
    public override Working Working => VerticalFlightWorking.For(Best, Best.Setup(Best.Tables))
        with { Title = "Thrust and acceleration at release, highest cell of the map" };
}

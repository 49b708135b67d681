using NotebookKit.Flight.Vertical;
using NotebookKit.Propulsion.Flow;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Flight.Search;

/// <summary>One vehicle flown with every way of describing water and gas: what each assumption is worth. Source: see
/// <see cref="Model"/>.</summary>
public sealed record FlowComparison : Result
{
    internal FlowComparison(VerticalFlight flight)
    {
        Flight = flight;
        (string, FlowModel)[] ways =
        [
            ("real gas (default)", FlowModel.Real),
            ("ideal gas, γ constant", FlowModel.Plain),
            ("ideal gas, isothermal while water leaves", FlowModel.Plain with { WaterPhase = Expansion.Isothermal }),
            ("ideal gas, moist with condensation", FlowModel.Moist),
            ("real gas, head of the column", FlowModel.Real with { Water = WaterFlow.QuasiSteadyWithHead }),
            ("real gas, unsteady jet", FlowModel.Real with { Water = WaterFlow.Unsteady }),
            ("real gas, heat from the wall", FlowModel.Real with { WallWarming = WallWarming.FreeConvection }),
        ];
        Variants = [.. ways.Select(w => FlowVariant.Of(flight, w.Item1, w.Item2))];
    }

    /// <summary>The vehicle.</summary>
    public VerticalFlight Flight { get; }

    /// <summary>Its flights, the default first.</summary>
    public IReadOnlyList<FlowVariant> Variants { get; }

    /// <inheritdoc/>
    public override string Title => $"Effect of each assumption, {Flight.Name}";

    /// <inheritdoc/>
    public override ModelCard Model => VerticalFlightModel.Card(Flight);

    /// <inheritdoc/>
    public override ResultStatus Status => Variants.Any(v => v.Flight is { Status: ResultStatus.Completed }) ? ResultStatus.Completed
        : ResultStatus.Failed;

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines => [.. Variants.Select(Line)];

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings => [.. Variants.Where(v => v.Refused.Length > 0).Select(v =>
        Finding.Note($"{v.Name}: {v.Refused}"))];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFlight;

    /// <inheritdoc/>
    public override Working Working => Variants.First(v => v.Flight is not null).Flight!.Working;

    private ResultLine Line(FlowVariant variant)
    {
        if (variant.Flight is not { Status: ResultStatus.Completed } flight) return new(variant.Name, "not computed", variant.Refused);
        if (flight.ComesDownCharged) return new(variant.Name, "not a flight", "the vehicle comes down with water and pressure aboard");
        var first = Variants[0].Flight;
        var change = first is { Status: ResultStatus.Completed, ComesDownCharged: false } && !ReferenceEquals(first, flight)
            ? $"{Signed(100 * (flight.Apogee / first.Apogee - 1))} %; "
            : "";
        var pressure = flight.WaterOut is null ? "" : $"water out at {Digits.Round(flight.WaterOut.Time.Seconds * 1e3)} ms, ";
        return new(variant.Name, $"apogee {flight.Apogee.Show()}",
            $"{change}{pressure}impulse {Digits.Round(flight.Curve.Impulse.NewtonSeconds)} N s");
    }

    private static string Signed(double percent) => (percent >= 0 ? "+" : "") + Digits.Round(percent, 2);
}

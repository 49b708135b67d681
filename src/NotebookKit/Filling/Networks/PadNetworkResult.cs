using NotebookKit.Filling.Balances;
using NotebookKit.Filling.Restrictors;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.Networks;

/// <summary>Pressures, temperatures and flows of a network over time; its parts with their ratings; how well mass and energy
/// close.</summary>
/// <remarks>Source: as <see cref="PadNetwork"/>.</remarks>
public sealed record PadNetworkResult : Result
{
    /// <summary>Less water than this wets nothing [m³].</summary>
    private const double Drop = 1e-9;

    private readonly NetworkModel _model;
    private readonly NetworkTrace _trace;

    internal PadNetworkResult(PadNetwork pad, NetworkModel model, double seconds, IReadOnlyList<Finding> findings)
    {
        (Pad, _model) = (pad, model);
        _trace = NetworkTrace.Run(model, seconds);
        Time = new("Time", "s", Column(_trace.Seconds));
        Parts = NetworkRatings.Of(pad, Highest);
        Findings = [.. findings, .. Say(seconds)];
    }

    /// <summary>The network that was run.</summary>
    public PadNetwork Pad { get; }

    /// <summary>Times.</summary>
    public Series Time { get; }

    /// <summary>Every part with its rating, its proof and what may stand in it.</summary>
    public IReadOnlyList<PartRating> Parts { get; }

    /// <summary>The part whose rating is the least over what may stand in it; none where no part has a rating.</summary>
    public PartRating? Weakest => Parts.Where(p => p.Margin is not null).MinBy(p => p.Margin);

    /// <summary>What a verdict on the ratings needs and isn't given, by name: ratings of parts, creep of regulators. Empty where nothing is
    /// missing.</summary>
    public IReadOnlyList<string> NotGiven =>
    [
        .. Parts.Where(p => p.RatedTo is null).Select(p => p.Name),
        .. Pad.Links.SelectMany(l => l.Parts.OfType<RegulatorPart>().Where(r => r is { Creep: null, RelievesAt: null })
            .Select(r => $"creep of the {r.Name} ({l.Name})")),
    ];

    /// <summary>What the ratings say, on what is given alone: a part without a rating is never taken for a sufficient one.</summary>
    public NetworkVerdict Verdict => _trace.PassedRating is not null || Parts.Any(p => p.Margin < 1) ? NetworkVerdict.PassesRating
        : NotGiven.Count > 0 ? NetworkVerdict.NoVerdict : NetworkVerdict.WithinRatings;

    /// <summary>Whether every part has a rating and none may be passed: on what is given alone.</summary>
    public bool IsWithinRatings => Verdict == NetworkVerdict.WithinRatings;

    /// <summary>Right-hand sides computed.</summary>
    public int Evaluations => _trace.Evaluations;

    /// <summary>What is amiss with the mass at the end, over the mass that was there or came in [-].</summary>
    public double MassError
    {
        get
        {
            var (now, should, total) = Books(MassOf, [0, 0, 1, 0, 0]);
            return Math.Abs(now - should) / total;
        }
    }

    /// <summary>What is amiss with the energy at the end, over the energy that was there or came in [-].</summary>
    public double EnergyError
    {
        get
        {
            var (now, should, total) = Books((s, y) => MassOf(s, y) * _model.Gas(s, y).Energy
                + y[NetworkModel.PerStore * s + NetworkModel.Warmth], [1, 1, 0, -1, 0]);
            now += _model.Lines.Where(l => l.WaterAt >= 0).Sum(l => Last[l.WaterAt + 1]);
            return Math.Abs(now - should) / total;
        }
    }

    /// <summary>What is amiss with the water at the end, in vessels, lines and outside, over the water that there was [-]; 0 without
    /// water.</summary>
    public double WaterError
    {
        get
        {
            double AllOf(ReadOnlySpan<double> y)
            {
                var sum = y[_model.TotalsAt + NetworkModel.WaterOut];
                for (var s = 0; s < _model.Stores.Count; s++) sum += y[NetworkModel.PerStore * s + NetworkModel.Water];
                foreach (var line in _model.Lines)
                {
                    if (line.WaterAt >= 0) sum += y[line.WaterAt];
                }

                return sum;
            }

            var first = AllOf(_trace.State(0));
            return first > 0 ? Math.Abs(AllOf(Last) - first) / first : 0;
        }
    }

    /// <summary>Pressure of a node over time.</summary>
    /// <param name="node">Its name.</param>
    /// <exception cref="InvalidDesignException">There is no node of that name.</exception>
    public Series Pressure(string node)
    {
        var at = Node(node);
        return new($"Pressure of {node}", "bar gauge", Column(i => (_trace.Pascals(i, at) - Pad.Ambient.Pascals) / 1e5));
    }

    /// <summary>Temperature of the gas in a cylinder or vessel over time.</summary>
    /// <param name="node">Its name.</param>
    /// <exception cref="InvalidDesignException">There is no cylinder or vessel of that name.</exception>
    public Series Temperature(string node) => Own(node, "Gas temperature", "°C", NetworkModel.Kelvins, k => k - 273.15);

    /// <summary>Temperature of a vessel's wall over time; that of the start where its heat isn't followed.</summary>
    /// <param name="node">Its name.</param>
    /// <exception cref="InvalidDesignException">There is no cylinder or vessel of that name.</exception>
    public Series WallTemperature(string node) => Own(node, "Wall temperature", "°C", NetworkModel.Wall, k => k - 273.15);

    /// <summary>Temperature of a vessel's water over time; that of the start where it isn't followed
    /// (<see cref="FillWall.WaterSurface"/>).</summary>
    /// <param name="node">Its name.</param>
    /// <exception cref="InvalidDesignException">There is no cylinder or vessel of that name.</exception>
    public Series WaterTemperature(string node)
    {
        var (s, at) = (Store(node), NetworkModel.PerStore * Store(node));
        return new($"Water temperature of {node}", "°C", Column(i =>
            _model.Stores[s].WaterKelvins(_trace.State(i).Slice(at, NetworkModel.PerStore)) - 273.15));
    }

    /// <summary>
    /// Pressure of saturated vapour at the warmest temperature of a vessel's water, or of the wall where the water counts as wall: about
    /// what vapour can add. No pressure here has it in. None where the vessel never holds water. It is that of water by itself; compressed
    /// gas raises it, by about a fifth at 60 bar (unverified). Source: W. Wagner, A. Pruss 1993.
    /// </summary>
    /// <param name="node">Its name.</param>
    /// <exception cref="InvalidDesignException">There is no cylinder or vessel of that name.</exception>
    public AbsolutePressure? SaturatedVapour(string node) => WarmestWater(Store(node)) is { } kelvins
        ? AbsolutePressure.FromPascals(Materials.Fluids.Water.SaturationPascals(Math.Max(kelvins, 273.16))) : null;

    /// <summary>Water in a vessel over time.</summary>
    /// <param name="node">Its name.</param>
    /// <exception cref="InvalidDesignException">There is no cylinder or vessel of that name.</exception>
    public Series Water(string node) => Own(node, "Water", "L", NetworkModel.Water, v => 1000 * v);

    /// <summary>Water in the hoses of a line over time; 0 throughout where none can be there.</summary>
    /// <param name="from">Where the line begins.</param>
    /// <param name="to">Where it ends.</param>
    /// <exception cref="InvalidDesignException">There is no such line.</exception>
    public Series WaterIn(string from, string to)
    {
        var at = _model.Lines[Line(from, to)].WaterAt;
        return new($"Water in the line {from} to {to}", "mL", Column(i => at < 0 ? 0 : 1e6 * _trace.State(i)[at]));
    }

    /// <summary>Water that has run back past the full hoses of a line by the end, or was blown out of them; 0 where none has.</summary>
    /// <param name="from">Where the line begins.</param>
    /// <param name="to">Where it ends.</param>
    /// <exception cref="InvalidDesignException">There is no such line.</exception>
    public Volume WaterPastHose(string from, string to) => Volume.FromCubicMeters(
        _model.Lines[Line(from, to)].WaterAt is >= 0 and var at ? Last[at + NetworkLine.Past] : 0).ToUnit(
            UnitsNet.Units.VolumeUnit.Milliliter);

    /// <summary>Water that has left the network by the end: outside, or into a supply.</summary>
    public Volume WaterOut => Volume.FromCubicMeters(Last[_model.TotalsAt + NetworkModel.WaterOut]).ToUnit(
        UnitsNet.Units.VolumeUnit.Milliliter);

    /// <summary>Flow of gas through a line over time; below 0 where gas runs back.</summary>
    /// <param name="from">Where the line begins.</param>
    /// <param name="to">Where it ends.</param>
    /// <exception cref="InvalidDesignException">There is no such line.</exception>
    public Series Flow(string from, string to)
    {
        var line = Line(from, to);
        return new($"Flow from {from} to {to}", "g/s", Column(i => 1000 * _trace.Flow(i, line)));
    }

    /// <summary>Pressure of a node at the end.</summary>
    /// <param name="node">Its name.</param>
    /// <exception cref="InvalidDesignException">There is no node of that name.</exception>
    public GaugePressure End(string node) =>
        AbsolutePressure.FromPascals(_trace.Pascals(_trace.Count - 1, Node(node))).ToGauge(Pad.Ambient);

    /// <summary>Highest pressure of a node on the way.</summary>
    /// <param name="node">Its name.</param>
    /// <exception cref="InvalidDesignException">There is no node of that name.</exception>
    public GaugePressure Highest(string node)
    {
        var at = Node(node);
        return AbsolutePressure.FromPascals(Column(i => _trace.Pascals(i, at)).Max()).ToGauge(Pad.Ambient);
    }

    /// <summary>When a valve was shut by its gauge; none where it wasn't.</summary>
    /// <param name="valve">Its name.</param>
    public Duration? ShutAt(string valve) => _trace.ShutAt.TryGetValue(valve, out var seconds) ? Duration.FromSeconds(seconds) : null;

    /// <summary>Pressure of a vessel after it has cooled to the surroundings from the end of the run.</summary>
    /// <param name="node">Its name.</param>
    /// <exception cref="InvalidDesignException">There is no cylinder or vessel of that name.</exception>
    public GaugePressure Settled(string node) => AbsolutePressure.FromPascals(_model.Stores[Store(node)].SettledPa(
        new GasLaw(Pad.Gas, Pad.Properties), Last.Slice(NetworkModel.PerStore * Store(node), NetworkModel.PerStore),
        Pad.Temperature.Kelvins)).ToGauge(Pad.Ambient);

    /// <inheritdoc/>
    public override string Title => $"Network of {Pad.Nodes.Count} {(Pad.Nodes.Count == 1 ? "place" : "places")} and {Pad.Links.Count} "
        + (Pad.Links.Count == 1 ? "line" : "lines");

    /// <inheritdoc/>
    public override ResultStatus Status =>
        _trace.PassedRating is null && _trace.Trouble is null ? ResultStatus.Completed : ResultStatus.Failed;

    /// <inheritdoc/>
    public override ModelCard Model => new("Network of stores and lines",
        [
            "Gas is mixed at every instant in every cylinder and vessel; lines and junctions hold none, and hoses are followed at rest "
                + "only.",
            "A regulator answers at once, by its set pressure, supply effect and droop; a check valve's spring takes its cracking "
                + "pressure.",
            "The last thousandth of the pressure ahead is passed in proportion to the drop.",
            "Water moves first through a port under it, by the same parts; its head counts where a vessel is said to stand.",
            _model.Stores.Any(s => s.FollowsWater)
                ? "Water whose surface is given has one temperature and takes heat there from the gas; gas that comes up through it "
                    + "arrives as warm as the water."
                : "Water counts as wall.",
            "Vapour of the water is in no pressure; that of the water by itself is said. The heat that it takes is left out.",
            "Water that runs back fills the hose, and then goes on to what lies ahead of it.",
            "A junction passes on the water it gets by every line that leads on, mixed with the gas it gets; without slip between the two, "
                + "which passes about the least, 23 % less to 2 % more up to 60 bar. A vent is long by it; a vessel that is filled "
                + "through water in a junction comes up sooner than shown.",
        ],
        "To 300 bar gauge.",
        [
            FillingSources.Charging, FillingSources.Iso6358, FillingSources.Naca1135, FillingSources.Torricelli,
            .. Pad.Links.SelectMany(l => l.Parts).Select(p => p.Narrowest).OfType<IRestrictor>().Any(WaterPassage.IsUnsourced)
                && HasWater ? [WaterPassage.Unsourced] : Array.Empty<Source>(),
            .. Pad.Nodes.OfType<VesselNode>().Where(v => v.Heat == FillHeat.Wall).SelectMany(v => v.WallOrPlain.Sources).Distinct(),
            .. _model.Stores.Any(s => s.FollowsWater) ? [WaterBath.Source] : Array.Empty<Source>(),
            .. Enumerable.Range(0, _model.Stores.Count).Any(s => WarmestWater(s) is not null)
                ? [Materials.Fluids.Water.VapourSource] : Array.Empty<Source>(),
            .. Pad.Nodes.OfType<JunctionNode>().Any() && HasWater ? [FillingSources.NoSlip] : Array.Empty<Source>(),
        ]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        .. Pad.Nodes.Where(n => _model.StoreOf[Node(n.Name)] >= 0).Select(n => new ResultLine($"{n.Name} at the end",
            End(n.Name).ToString(),
            n is VesselNode ? $"settles at {Settled(n.Name)}, gas at {Digits.Round(Temperature(n.Name).Values[^1])} °C" : "")),
        .. Pad.Nodes.OfType<VesselNode>().Where(v => SaturatedVapour(v.Name) is not null).Select(v => new ResultLine(
            $"Vapour in {v.Name}", $"{Digits.Round(SaturatedVapour(v.Name)!.Value.Pascals / 100)} mbar, by the water alone",
            $"saturated at {Digits.Round(WarmestWater(Store(v.Name))!.Value - 273.15)} °C, on top of the pressures here; gas at 60 bar "
                + "raises it by about a fifth")),
        .. _trace.ShutAt.Select(s => new ResultLine($"{s.Key} shut at", $"{Digits.Round(s.Value)} s")),
        .. Weakest is { } weak ? [new ResultLine("Weakest part", $"{weak.Name}, to {weak.RatedTo}",
            $"{weak.MayStand} may stand in it; {weak.ProofText}")] : Array.Empty<ResultLine>(),
        new("Within all ratings", Verdict switch
        {
            NetworkVerdict.WithinRatings => "yes", NetworkVerdict.PassesRating => "no", _ => "not shown",
        }, NotGiven.Count > 0 ? $"not given: {string.Join(", ", NotGiven)}" : LeftOut),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFilling;

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        new("Every store", @"\frac{dU}{dt} = \sum \dot m\,h + Q - p\,\frac{dV}{dt}", $"{Evaluations} evaluations in steps of time",
            $"mass closes to {Digits.Round(MassError, 2)}, energy to {Digits.Round(EnergyError, 2)}", FillingSources.Charging),
    ]);

    private bool HasWater => Pad.Links.Any(l => l.WaterInLine is not null)
        || Pad.Nodes.OfType<VesselNode>().Any(v => v.WaterFraction > Ratio.Zero);

    private string LeftOut => Pad.Nodes.OfType<VesselNode>().Any(v => SaturatedVapour(v.Name) is not null)
        ? "vapour of the water is left out" : "";

    private ReadOnlySpan<double> Last => _trace.State(_trace.Count - 1);

    private double[] Column(Func<int, double> value)
    {
        var column = new double[_trace.Count];
        for (var i = 0; i < column.Length; i++) column[i] = value(i);
        return column;
    }

    private Series Own(string node, string what, string unit, int which, Func<double, double> show)
    {
        var at = (NetworkModel.PerStore * Store(node)) + which;
        return new($"{what} of {node}", unit, Column(i => show(_trace.State(i)[at])));
    }

    private int Node(string name) => Pad.Nodes.ToList().FindIndex(n => n.Name == name) is >= 0 and var at ? at
        : throw new InvalidDesignException("Network of the pad", [FillingFindings.NoSuchPlace(name)]);

    private int Line(string from, string to) => Pad.Links.ToList().FindIndex(l => l.From == from && l.To == to) is >= 0 and var at ? at
        : throw new InvalidDesignException("Network of the pad", [FillingFindings.NoSuchPlace($"line from {from} to {to}")]);

    private int Store(string name) => _model.StoreOf[Node(name)] is >= 0 and var at ? at
        : throw new InvalidDesignException("Network of the pad", [FillingFindings.NoSuchPlace($"cylinder or vessel {name}")]);

    // Warmest water of a store, K; none where it never holds any.
    private double? WarmestWater(int store)
    {
        double? warmest = null;
        for (var i = 0; i < _trace.Count; i++)
        {
            var own = _trace.State(i).Slice(NetworkModel.PerStore * store, NetworkModel.PerStore);
            if (own[NetworkModel.Water] > Drop)
                warmest = Math.Max(warmest ?? 0, _model.Stores[store].SurfaceKelvins(own));
        }

        return warmest;
    }

    private static double MassOf(int store, ReadOnlySpan<double> y) => y[NetworkModel.PerStore * store];

    private delegate double Holds(int store, ReadOnlySpan<double> y);

    // What there is, what should be, and by what the difference is measured.
    private (double Now, double Should, double Total) Books(Holds holds, double[] signs)
    {
        double now = 0, should = 0;
        for (var s = 0; s < _model.Stores.Count; s++)
        {
            now += holds(s, Last);
            should += holds(s, _trace.State(0));
        }

        var total = Math.Max(Math.Abs(now), Math.Abs(should));
        for (var k = 0; k < NetworkModel.Totals; k++) should += signs[k] * Last[_model.TotalsAt + k];
        return (now, should, total);
    }

    // From a junction water goes on by every line.
    private string? Onwards(int line) => _model.Lines[line].Goal is not (>= 0 and var goal) ? null
        : Pad.Nodes[_model.Lines[line].From] is JunctionNode junction ? $"through {junction.Name}" : $"into {Pad.Nodes[goal].Name}";

    private IEnumerable<Finding> Say(double seconds)
    {
        if (_trace.PassedRating is { } over)
        {
            var vessel = (VesselNode)_model.Stores[over].Node;
            yield return FillingFindings.VesselPassesRating(vessel.Name, vessel.Chamber.RatedPressure, Time[Time.Count - 1]);
        }

        if (_trace.Trouble is { } trouble) yield return Finding.Error(trouble);
        foreach (var vessel in _trace.PassedRating is null ? Pad.Nodes.OfType<VesselNode>() : [])
        {
            var (highest, rated) = (Highest(vessel.Name), vessel.Chamber.RatedPressure);
            if (SaturatedVapour(vessel.Name) is { } vapour && highest.Pascals + vapour.Pascals > rated.Pascals)
                yield return FillingFindings.VapourMayPassRating(vessel.Name, highest, vapour, rated);
        }

        foreach (var part in Parts.Where(p => p.Margin < 1))
            yield return FillingFindings.PadPartBelowPressure(part.Name, part.RatedTo!.Value, part.MayStand);
        if (NotGiven.Count > 0) yield return FillingFindings.NoVerdictOnRatings(NotGiven);
        var unproved = Parts.Where(p => p.ProvedOn is null).Select(p => p.Name).ToList();
        if (unproved.Count > 0) yield return FillingFindings.PadPartsUnproved(unproved);
        foreach (var (line, after) in _trace.FilledAt)
            yield return FillingFindings.WaterFillsLine(Pad.Links[line].Name, Onwards(line),
                WaterPastHose(Pad.Links[line].From, Pad.Links[line].To), _model.Lines[line].HoseM3 > 0, after);
        if (Status != ResultStatus.Completed) yield break;
        foreach (var link in Pad.Links)
        {
            foreach (var valve in link.Parts.OfType<ValvePart>().Where(v => v.ShutsAt is not null && ShutAt(v.Name) is null))
                yield return FillingFindings.ValveNeverShut(valve.Name, valve.Watches ?? link.To, valve.ShutsAt!.Value,
                    End(valve.Watches ?? link.To), seconds);
        }
    }
}

/// <summary>What the ratings of a network's parts say.</summary>
public enum NetworkVerdict
{
    /// <summary>A rating or a regulator's creep isn't given, so nothing can be said. A flight card counts it as a no.</summary>
    NoVerdict,

    /// <summary>Every part is rated to what may stand in it.</summary>
    WithinRatings,

    /// <summary>More may stand in a part than it is rated to.</summary>
    PassesRating,
}

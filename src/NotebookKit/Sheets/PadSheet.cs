using NotebookKit.Clearance.Cards;
using NotebookKit.Filling.Fills;
using NotebookKit.Filling.Vents;
using NotebookKit.Launching;
using NotebookKit.Launching.Heating;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Sheets;

/// <summary>The paper at the pad: fill steps with the gauge and the time to expect, settling and topping up, venting, who stands where,
/// when to stop. Source: the fill, the vent and the stand-off.</summary>
public sealed record PadSheet : Result, ISheet
{
    private static readonly double[] Shares = [0.25, 0.5, 0.75, 0.9, 1];

    private PadSheet(string vehicle, FillResult fill, VentResult? vent, LaunchStandOff? standOff, PadPlumbing plumbing,
        PadProcedure? procedure, WaitInSunResult? sun)
    {
        (Vehicle, Fill, Vent, StandOff, Plumbing, Sun) = (vehicle, fill, vent, standOff, plumbing, sun);
        Procedure = procedure ?? PadProcedure.Of(new()
        {
            Fill = fill.DurationWithWater ?? fill.Duration, Stand = StandOf(sun), Vent = vent?.WorstState, Crew = standOff?.Crew,
                Spectators = standOff?.Spectators,
        });
        Content = Compose();
    }

    /// <summary>What the vehicle is called.</summary>
    public string Vehicle { get; }

    /// <summary>The fill.</summary>
    public FillResult Fill { get; }

    /// <summary>The vent after an abort; none where the vent isn't given.</summary>
    public VentResult? Vent { get; }

    /// <summary>The filled vessel waiting in the sun; none where it isn't given.</summary>
    public WaitInSunResult? Sun { get; }

    /// <summary>The stand-off; none where it isn't shown.</summary>
    public LaunchStandOff? StandOff { get; }

    /// <summary>The line.</summary>
    public PadPlumbing Plumbing { get; }

    /// <summary>States of the pad: what may follow what, who stands where, the longest time in each.</summary>
    public PadProcedure Procedure { get; }

    /// <inheritdoc/>
    public SheetContent Content { get; }

    /// <inheritdoc/>
    public override string Title => $"Pad sheet, {Vehicle}";

    /// <inheritdoc/>
    public override ModelCard Model => Fill.Model;

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Fill to", Fill.Fill.Target.ToString(), $"never above {Fill.Fill.Chamber.RatedPressure}"),
        new("Fill time", Fill.Duration.Show()), new("Settles at", Fill.SettledPressure.ToString()),
        new("Vent time, slowest", Vent?.WorstState.Show() ?? "not given", Vent is null ? "the dump valve's passage isn't given" : ""),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings =>
        [.. Fill.Findings, .. Plumbing.Findings, .. Vent?.Findings ?? [], .. Sun?.Findings ?? []];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => [.. Provenance.Cautions.ForFilling];

    /// <inheritdoc/>
    public override Working Working => Fill.Working;

    /// <summary>The sheet of a fill. Source: the fill's, the vent's, the stand-off's.</summary>
    /// <param name="vehicle">What the vehicle is called.</param>
    /// <param name="fill">The fill.</param>
    /// <param name="vent">The vent after an abort; without it the time is "not given".</param>
    /// <param name="standOff">The stand-off of the filled vehicle; without it the distances are "not shown".</param>
    /// <param name="equipment">Parts of the line with their ratings; without it the ratings are "not given".</param>
    /// <param name="procedure">The states of the pad; written from fill, vent and stand-off unless given.</param>
    /// <param name="sun">The filled vessel waiting in the sun; without it nothing is said of that.</param>
    public static PadSheet Of(string vehicle, FillResult fill, VentResult? vent, LaunchStandOff? standOff, PadEquipment? equipment = null,
        PadProcedure? procedure = null, WaitInSunResult? sun = null)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        ArgumentNullException.ThrowIfNull(fill);
        if ((fill.Fill.Trace ?? vent?.Vent.Trace) is { } trace)
            throw new InvalidDesignException("Pad sheet", [SheetsFindings.SheetOfPublishedTrace(trace.Source.ToString())]);
        return new(vehicle, fill, vent, standOff, PadPlumbing.Of(fill.Fill, equipment), procedure, sun);
    }

    private SheetContent Compose()
    {
        var fill = Fill.Fill;
        var water = fill.Chamber.Volume * fill.WaterFraction.DecimalFractions;
        return new(Title, "For whoever works the fill valve, behind cover.",
        [
            new("Fill")
            {
                Facts =
                [
                    new("Fill to", fill.Target.ToString(), $"never above {fill.Chamber.RatedPressure}, {fill.Chamber.RestsOn}"),
                    new("Regulator", $"set to {fill.Supply}", "check it before the hose is coupled"),
                    new("Water", water.ToUnit(VolumeUnit.Milliliter).Show(), "measured in before the vehicle goes on the rail"),
                    new("Fill time", Fill.Duration.Show(), Fill.DurationWithWater is { } wet
                        ? $"up to {wet.Show()} with the water in the line" : "from opening the valve to shutting it"),
                    new("Settles at", Fill.SettledPressure.ToString(), "as the gas cools, with the valve shut"),
                    new("Vent time, slowest", Vent?.WorstState.Show() ?? "not given",
                        Vent is { } v ? $"from {v.Vent.From} through {v.Vent.Restrictor}, in the worst state"
                            : "the dump valve's passage isn't given"),
                ],
            },
            new("Who stands where") { Facts =
            [
                new("At the fill valve", StandOff is null ? "not shown" : $"{StandOff.Crew.Show()}, behind cover", "two people: one works "
                    + "the valve, one reads the gauge aloud"),
                new("Spectators", StandOff?.Spectators.Show() ?? "not shown"),
                new("Nobody", "in line of a closure, or nearer than the crew, from the first bar to the empty gauge"),
            ] },
            new("Before the first bar") { Steps =
            [
                "Today's flight card is at hand and says GO; its serial is the vessel's own: ____.",
                "Parts of the line inspected; every rating read off its part.",
                $"Regulator set to {fill.Supply} with the fill valve shut.",
                "Dump valve opened and shut from afar, with the line empty.",
                $"{water.ToUnit(VolumeUnit.Milliliter).Show()} of water measured in; vehicle on the rail; release locked.",
                "Hose coupled; everybody back at the distance above; counted aloud.",
            ] },
            new("Fill, reading the gauge aloud") { Table = Steps() },
            new("Settle and top up") { Steps =
            [
                $"Shut the fill valve at {Fill.ShutPressure}. Write the gauge now, and again after {Watched}.",
                $"The gauge falls to about {Fill.SettledPressure} as the gas cools. A fall that goes on is a leak: vent.",
                $"Top up in short openings, never above {fill.Target}; shut the valve each time.",
                "Range safety officer asked; countdown aloud; release.",
            ], Blanks = [new("Gauge when shut", "bar gauge"), new($"Gauge after {Watched}", "bar gauge"),
                new("Gauge at release", "bar gauge")] },
            .. Sun is null ? Array.Empty<SheetSection>() : [new SheetSection("Waiting in the sun, filled and shut")
                { Facts = Sun.Lines, Table = Warming(Sun) }],
            new("Abort and misfire") { Rules = Procedure.Misfires },
            new("States of the pad: longest time, who stands where, what may follow") { Facts = Procedure.Lines },
            new("Parts of the line") { Facts = Plumbing.Lines },
        ])
        {
            Findings = [.. Findings.Where(f => f.Severity != FindingSeverity.Note)],
            Cautions = Cautions,
            Signatures = ["Filled by", "Gauge read by"],
        };
    }

    // The time that the vessel may stand is the time until the dump valve has to be opened; none shorter than a second counts.
    private static Duration? StandOf(WaitInSunResult? sun) => sun?.VentBy is { } by ? by.Seconds < 1 ? 1.Seconds() : by : null;

    private static SheetTable Warming(WaitInSunResult sun) => new(["After [min]", "Gauge [bar gauge]", "Wall in the sun [°C]",
        "Gauge read [bar gauge]"],
    [
        .. new[] { 0, 0.25, 0.5, 0.75, 1 }.Select(share => share * sun.Time[sun.Time.Count - 1]).Select(t => (IReadOnlyList<string>)
            [Digits.Round(t / 60), Digits.Round(At(sun, sun.Pressure, t)), Digits.Round(At(sun, sun.SunnySide, t)), SheetTable.Blank]),
    ]);

    // Straight between rows.
    private static double At(WaitInSunResult sun, Series series, double t)
    {
        for (var i = 1; i < sun.Time.Count; i++)
        {
            double a = sun.Time[i - 1], b = sun.Time[i];
            if (t <= b) return series[i - 1] + ((series[i] - series[i - 1]) * Math.Clamp((t - a) / (b - a), 0, 1));
        }

        return series[series.Count - 1];
    }

    private SheetTable Steps() => new(["Done", "Gauge [bar gauge]", "After [s]", "Time read [s]", "Note"],
    [
        .. Shares.Select(share => Fill.Fill.Start + ((Fill.ShutPressure - Fill.Fill.Start) * share)).Select(p => (IReadOnlyList<string>)
            [SheetTable.Tick, Digits.Round(p.Bar), TimeAt(p) is { } t ? Digits.Round(t) : "not reached", SheetTable.Blank,
                SheetTable.Blank]),
    ]);

    private string Watched => $"{Digits.Round(Fill.Fill.Watch.Seconds)} s";

    // When the gauge first reads a pressure, straight between the rows of the fill.
    private double? TimeAt(GaugePressure pressure)
    {
        for (var i = 1; i < Fill.Time.Count; i++)
        {
            double a = Fill.Pressure[i - 1], b = Fill.Pressure[i];
            if (b < pressure.Bar - 1e-9 || b <= a) continue;
            return Fill.Time[i - 1] + ((Fill.Time[i] - Fill.Time[i - 1]) * Math.Clamp((pressure.Bar - a) / (b - a), 0, 1));
        }

        return null;
    }
}

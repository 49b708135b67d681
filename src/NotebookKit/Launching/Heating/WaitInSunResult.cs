using NotebookKit.Materials.Fluids;
using NotebookKit.Numerics.Ode;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Launching.Heating;

/// <summary>A vessel that waited in the sun: how warm, how much pressure, and when to vent.</summary>
/// <remarks>Source: as <see cref="WaitInSun"/>.</remarks>
public sealed record WaitInSunResult : Result
{
    private static readonly OdeSettings Settings = new() { RelativeTolerance = 1e-8 };

    internal WaitInSunResult(WaitInSun wait, IReadOnlyList<Finding> findings)
    {
        Wait = wait;
        var system = new SunSystem(wait);
        double[] y = [.. Enumerable.Repeat(wait.Filled.FilledAt.Kelvins, 3)];
        var rows = new TrajectoryBuilder(3);
        rows.Add(0, y);
        var (nothing, observer) = (new NoEvents(), new TrajectoryRecorder(rows, 8));
        OdeDriver.Integrate(ref system, ref nothing, ref observer, 0, wait.Watch.Seconds, y, Settings, [1e-6, 1e-6, 1e-6]);
        var within = Enumerable.Range(0, rows.Count).TakeWhile(i => InRange(rows.State(i)[1])).ToList();
        Time = new("Time", "s", [.. within.Select(rows.Time)]);
        Wall = new("Wall temperature", "°C", [.. within.Select(i => rows.State(i)[0] - 273.15)]);
        SunnySide = new("Wall temperature on the sunny side", "°C", [.. within.Select(i => rows.State(i)[2] - 273.15)]);
        Contents = new("Temperature of gas and water", "°C", [.. within.Select(i => rows.State(i)[1] - 273.15)]);
        Pressure = new("Pressure", "bar gauge", [.. Contents.Values.Select(c => wait.Filled.PressureAt(c.Celsius()).Bar)]);
        LeftRange = within.Count < rows.Count ? Duration.FromSeconds(rows.Time(within.Count)) : null;
        Findings = [.. findings, .. Say()];
    }

    /// <summary>What was computed.</summary>
    public WaitInSun Wait { get; }

    /// <summary>Times.</summary>
    public Series Time { get; }

    /// <summary>Mean temperature of the wall at those times.</summary>
    public Series Wall { get; }

    /// <summary>Temperature of the wall, and so of its resin, where the sun meets the wall square on; that of the whole wall where all of
    /// it does.</summary>
    public Series SunnySide { get; }

    /// <summary>Temperature of gas and water at those times.</summary>
    public Series Contents { get; }

    /// <summary>Pressure at those times.</summary>
    public Series Pressure { get; }

    /// <summary>When water inside freezes or leaves the range of its table; none where it doesn't.</summary>
    public Duration? LeftRange { get; }

    /// <summary>When the pressure passes the highest expected one; none where it doesn't.</summary>
    public Duration? PassesExpected => First(Pressure, Wait.Chamber.MaximumExpectedPressure.Bar);

    /// <summary>When the resin passes its limit; none where it doesn't or no limit is given.</summary>
    public Duration? PassesResin => Wait.ResinLimit is { } limit ? First(SunnySide, limit.DegreesCelsius) : null;

    /// <summary>The first of all these; none where nothing is passed while it is watched.</summary>
    public Duration? MustBeVented => new[] { PassesExpected, PassesResin, LeftRange }.OfType<Duration>().Select(d => (Duration?)d)
        .MinBy(d => d!.Value.Seconds);

    /// <summary>When the dump valve has to be opened at the latest, so that venting is over by then; 0 where it is too late already, none
    /// where
    /// nothing is passed. Without a vent time it is when the limit is passed.</summary>
    public Duration? VentBy => MustBeVented is { } must
        ? Duration.FromSeconds(Math.Max(0, must.Seconds - (Wait.VentTime?.Seconds ?? 0))) : null;

    /// <inheritdoc/>
    public override string Title => $"Waiting in the sun at {Wait.Filled.Pressure}";

    /// <inheritdoc/>
    public override ModelCard Model => new("Wall and contents as two lumps",
        [
            $"{Digits.Round(100 * Wait.ShareInSun)} % of the surface meets the sun square on; surroundings and sky are as warm as the "
                + $"air, which errs "
                + "warm.",
            "Gas and water have one temperature; the vessel doesn't grow; altitude acts by the air pressure given.",
            "The resin is judged where the sun meets the wall square on; what that side gives to the rest of the wall isn't counted.",
        ],
        "From filling to release or venting; water from 0 to 60 °C.",
        [LaunchingSources.HeatBalance, Water.Source]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Pressure at the end", $"{Digits.Round(Pressure.Values[^1])} bar gauge", $"{Wait.Chamber.MaximumExpectedPressure} is the "
            + $"highest expected"),
        new("Wall at the end", $"{Digits.Round(SunnySide.Values[^1])} °C", Wait.ResinLimit is { } limit
            ? $"resin to {limit.ToUnit(TemperatureUnit.DegreeCelsius).Show()}" : "limit of the resin not given"),
        new("Vent by", VentBy is { } by ? $"{Digits.Round(by.Minutes)} min after filling" : "not needed while it is watched",
            Wait.VentTime is { } vent ? $"venting takes {vent.Show()}" : "vent time not given"),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForPressure;

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        new("Wall", @"C_w\,\dot T_w = a\,G\,A_s - h\,A\,(T_w - T_a) - \varepsilon\,\sigma\,A\,(T_w^4 - T_a^4) - h_i\,A\,(T_w - T_i)",
            $"{Wait.Watch.Show()} in steps of time", $"{Digits.Round(Wall.Values[^1])} °C", LaunchingSources.HeatBalance),
    ]);

    private bool InRange(double kelvins) =>
        Wait.Filled.WaterFraction <= Ratio.Zero || Water.Range.Contains((kelvins - 273.15).Celsius());

    private Duration? First(Series series, double limit)
    {
        for (var i = 0; i < series.Count; i++)
        {
            if (series[i] <= limit) continue;
            if (i == 0) return Duration.Zero;
            var share = (limit - series[i - 1]) / (series[i] - series[i - 1]);
            return Duration.FromSeconds(Time[i - 1] + (share * (Time[i] - Time[i - 1])));
        }

        return null;
    }

    private IEnumerable<Finding> Say()
    {
        if (PassesExpected is { } pressure)
            yield return LaunchingFindings.SunPassesExpected(pressure, Wait.Chamber.MaximumExpectedPressure, VentBy!.Value);
        if (PassesResin is { } resin) yield return LaunchingFindings.SunPassesResin(resin, Wait.ResinLimit!.Value, VentBy!.Value);
        if (LeftRange is { } left)
            yield return Contents.Values[^1] < 10 ? LaunchingFindings.WaterFreezes(left) : LaunchingFindings.WaterTooWarm(left);
        if (Wait.ResinLimit is null) yield return LaunchingFindings.ResinLimitNotGiven();
    }
}

using System.Globalization;
using NotebookKit.Filling.ByHand;
using NotebookKit.Filling.Networks;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Logs.Tests.DemoData;

/// <summary>The files in data-demo are what the seeded generator makes, letter for letter; set DEMO_DATA_WRITE=1 to write them
/// anew.</summary>
public class DemoDataTests
{
    private static readonly Dictionary<string, Func<string>> Generators = new()
    {
        ["curlew-proof.csv"] = ProofLogDemo.Text,
        ["curlew-proof-first.csv"] = ProofLogDemo.FirstEveningText,
        ["curlew-fill.csv"] = FillLogDemo.Text,
        ["curlew-fill-wet.csv"] = PadLogsDemo.WetText,
        ["curlew-fill-pulsed.csv"] = PadLogsDemo.PulsedText,
        ["curlew-abort.csv"] = PadLogsDemo.AbortText,
        ["curlew-flight.csv"] = FlightLogDemo.Text,
        ["stock.csv"] = StockListDemo.Text,
    };

    public static TheoryData<string> Files => [.. Generators.Keys];

    private static string Folder { get; } = FindFolder();

    [Theory]
    [MemberData(nameof(Files))]
    public void File_is_what_the_generator_makes(string file)
    {
        var path = Path.Combine(Folder, file);
        var made = Generators[file]();
        if (Environment.GetEnvironmentVariable("DEMO_DATA_WRITE") == "1") File.WriteAllText(path, made);
        Assert.Equal(made.Split('\n'), File.ReadAllText(path).ReplaceLineEndings("\n").Split('\n'));
    }

    [Fact]
    public void Every_file_has_its_generator_and_its_line_in_the_manifest()
    {
        var files = Directory.GetFiles(Folder, "*.csv").Select(f => Path.GetFileName(f)).Order();
        Assert.Equal(Generators.Keys.Order(), files);
        var manifest = File.ReadAllText(Path.Combine(Folder, "README.md"));
        Assert.All(Generators.Keys, f => Assert.Contains($"| {f} |", manifest, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void First_line_says_that_it_is_invented_and_its_seed_stands_in_the_manifest(string file)
    {
        var first = File.ReadLines(Path.Combine(Folder, file)).First();
        Assert.StartsWith("# invented, seeded ", first, StringComparison.Ordinal);
        Assert.EndsWith(", not a real test", first, StringComparison.Ordinal);
        var seed = first["# invented, seeded ".Length..^", not a real test".Length];
        var row = File.ReadLines(Path.Combine(Folder, "README.md")).Single(l => l.StartsWith($"| {file} |", StringComparison.Ordinal));
        Assert.Contains($"| {seed} |", row, StringComparison.Ordinal);
    }

    [Fact]
    public void Proof_log_reads_with_its_gaps_and_reaches_proof_pressure()
    {
        var log = GaugeLog.Read(Path.Combine(Folder, "curlew-proof.csv"));
        Assert.InRange(log.Pressure.Values.Max(), 95.3, 95.6);
        Assert.Contains(log.Findings, f => f.Message.Contains("6 of", StringComparison.Ordinal));
        Assert.Equal("mL", log.Expansion!.Unit);
        // What stays in: permanent expansion, what the fitting lost, and the leak of some 16 minutes.
        Assert.InRange(log.Expansion[^1], ProofLogDemo.PermanentMillilitres + ProofLogDemo.FittingMillilitres,
            ProofLogDemo.PermanentMillilitres + ProofLogDemo.FittingMillilitres + 0.4);
    }

    [Fact]
    public void Proof_log_is_accepted_with_its_drop_and_its_leak_found_again()
    {
        var log = GaugeLog.Read(Path.Combine(Folder, "curlew-proof.csv"));
        var record = new ProofReadings
        {
            Proof = new()
            {
                Vessel = "Curlew",
                Volume = 4.56.Litres(),
                WorkingPressure = ProofLogDemo.WorkingBar.BarGauge(),
                Rule = ProofRule.Club with { Factor = ProofLogDemo.ProofBar / ProofLogDemo.WorkingBar },
                Wall = WallExpansion.Measured(ProofLogDemo.WallGrowthAtProofMillilitres.Millilitres(), 4.56.Litres(),
                    ProofLogDemo.ProofBar.BarGauge()),
                TrappedAir = 4.Millilitres(),
            },
            Time = log.Time,
            Pressure = log.Pressure,
            Temperature = log.Temperature,
            Expansion = log.Expansion,
        }.Judge();
        Assert.Equal(ProofVerdict.Accept, record.Verdict);
        Assert.NotNull(record.Readings.Temperature);
        Assert.DoesNotContain(record.Findings, f => f.Message.Contains("No temperature", StringComparison.Ordinal));
        // The fitting takes 0.3 bar out of the proof hold, which stays above proof nevertheless.
        Assert.InRange(record.HeldAtLeast!.Value.Bar, 94.5, 95.2);
        var drop = Assert.Single(record.Holds.SelectMany(h => h!.Drops));
        Assert.Equal(ProofLogDemo.FittingDropAtSeconds, drop.At.Seconds, 1.5);
        Assert.Equal(ProofLogDemo.LeakMillilitresPerMinute, record.LeakRate!.Value.MillilitersPerMinute, 0.01);
        // What the fitting lost counts as growth: it might have been a crack.
        Assert.Equal(ProofLogDemo.PermanentMillilitres + ProofLogDemo.FittingMillilitres, record.Expansion!.Permanent.Milliliters, 0.12);
    }

    [Fact]
    public void Fill_log_reads_and_falls_after_the_valve_is_shut()
    {
        var log = GaugeLog.Read(Path.Combine(Folder, "curlew-fill.csv"));
        Assert.InRange(log.Pressure.Values.Max(), 57.6, 58.4);
        Assert.InRange(log.Pressure[^1], 50, 57.5);
    }

    // The generator's film is 12 W/K, one coefficient throughout, on a wall of 390 J/K; its ambient is 1.009 bar.
    [Fact]
    public void Fill_log_gives_its_restrictor_back()
    {
        var log = GaugeLog.Read(Path.Combine(Folder, "curlew-fill.csv"));
        var chamber = new Chamber(4.56.Litres(), 66.Millimetres(), 65.BarGauge());
        var fit = new FillLog
        {
            Fill = new()
            {
                Chamber = chamber,
                Wall = FillWall.Of(chamber, 32.Percent()),
                WaterFraction = 32.Percent(),
                Supply = FillLogDemo.RegulatorBar.BarGauge(),
                Restrictor = new SonicRestrictor(0.05.LitresPerSecondBar(), FillLogDemo.CriticalRatio),
                Target = FillLogDemo.ShutBar.BarGauge(),
                Temperature = FillLogDemo.AmbientCelsius.Celsius(),
                Ambient = 1.009.BarAbsolute(),
            },
            Time = log.Time,
            Pressure = log.Pressure,
        }.Fit();
        Assert.Equal(FillLogDemo.ConductanceLitresPerSecondBar, fit.Conductance.LitresPerSecondBar, 0.002);
        Assert.Equal(3, fit.OpenedAt.Seconds, 0.1);
        Assert.Equal(FillLogDemo.ShutBar, fit.ShutAt.Bar, 0.2);
    }

    private static readonly PadFill Pad = new()
    {
        Chamber = new Chamber(4.56.Litres(), 66.Millimetres(), 65.BarGauge()), Wall = FillWall.Of(new Chamber(4.56.Litres(),
            66.Millimetres(), 65.BarGauge()), 32.Percent()) with { HeatCapacity = Entropy.FromJoulesPerKelvin(390) },
                WaterFraction = Ratio.FromDecimalFractions(1.46 / 4.56),
                Supply = 60.BarGauge(),
        Restrictor = new SonicRestrictor(0.05.LitresPerSecondBar(), 0.5), Target = 58.BarGauge(), Temperature = 14.Celsius(),
        Ambient = 1.009.BarAbsolute(), Heat = FillHeat.Wall,
    };

    // The generator's restrictor passes 0.04, its leak 0.0004 dm³/(s·bar).
    [Fact]
    public void Pulsed_log_gives_its_restrictor_and_its_leak_back()
    {
        var log = GaugeLog.Read(Path.Combine(Folder, "curlew-fill-pulsed.csv"));
        var fit = new PulsedFillLog
        {
            Fill = Pad, Time = log.Time, Pressure = log.Pressure,
            Openings = [.. PadLogsDemo.Openings.Select(o => new ValveOpening(o.From.Seconds(), o.To.Seconds()))],
        }.Fit();
        Assert.Equal(PadLogsDemo.ConductanceLitresPerSecondBar, fit.Conductance.LitresPerSecondBar, 0.001);
        Assert.True(fit.ShowsLeak);
        Assert.Equal(PadLogsDemo.LeakLitresPerSecondBar, fit.Leak.LitresPerSecondBar, 1e-4);
    }

    // Water first, then gas: the log lies between the quickest and the slowest vent of the library.
    [Fact]
    public void Abort_log_is_over_between_the_bounds_of_the_vent()
    {
        var log = GaugeLog.Read(Path.Combine(Folder, "curlew-abort.csv"));
        var vent = new Vent { Chamber = Pad.Chamber, Restrictor = new Orifice(1.Millimetres(), 0.8), From = 58.BarGauge(),
            WaterFraction = Pad.WaterFraction, Place = new(0.Percent(), VesselStance.Standing), Temperature = 14.Celsius(),
            Ambient = 1.009.BarAbsolute(), SafePressure = 0.5.BarGauge() }.Run();
        var over = log.Time.Values.Zip(log.Pressure.Values).First(p => p.First > PadLogsDemo.DumpedAt && p.Second <= 0.5).First;
        Assert.InRange(over - PadLogsDemo.DumpedAt, vent.Fastest.Seconds - 1, vent.Slowest.Seconds + 1);
    }

    // For five seconds the gauge hardly moves while the line's water goes in: 60 mL less of gas space raise it by 0.02 bar.
    [Fact]
    public void Wet_log_stands_while_the_water_goes_in()
    {
        var log = GaugeLog.Read(Path.Combine(Folder, "curlew-fill-wet.csv"));
        Assert.All(log.Time.Values.Zip(log.Pressure.Values).Where(p => p.First < 8), p => Assert.InRange(p.Second, -0.2, 0.3));
        Assert.InRange(log.Pressure.Values.Max(), 57.6, 58.4);
        var wet = (Pad with { Restrictor = new SonicRestrictor(PadLogsDemo.ConductanceLitresPerSecondBar.LitresPerSecondBar(), 0.5),
            Place = new(0.Percent(), VesselStance.Standing), WaterInLine = 60.Millilitres(), HasCheckValve = true }).Run();
        Assert.Equal(5.5, wet.WaterFirst!.Value.Seconds, 0.5);
        var shut = log.Time.Values.Zip(log.Pressure.Values).First(p => p.Second >= 57.9).First - 3;
        Assert.InRange(shut, wet.Duration.Seconds, wet.LongestThroughWater!.Value.Seconds);
    }

    [Fact]
    public void Flight_log_reads_and_its_lowest_pressure_is_near_470_metres_above_the_sea()
    {
        var log = AltimeterLog.Read(Path.Combine(Folder, "curlew-flight.csv"));
        var metres = 44_330.8 * (1 - Math.Pow(log.Pressure.Values.Min() / 1.01640, 0.190263));
        Assert.InRange(metres, 450, 490);
        Assert.Equal(12.4, ProofClock(log), 0.5);
    }

    [Fact]
    public void Stock_list_names_what_the_material_library_knows()
    {
        var list = StockList.Read(Path.Combine(Folder, "stock.csv"));
        Assert.Equal(22, list.Items.Count);
        Assert.All(list.Of("sleeve"), s => Assert.NotNull(MaterialLibrary.Typical.Braid(s.Name)));
        Assert.All(list.Of("cloth").Concat(list.Of("tape")).Concat(list.Of("sheet")),
            s => Assert.NotNull(MaterialLibrary.Typical.Cloth(s.Name)));
        Assert.All(list.Of("veil"), s => Assert.NotNull(MaterialLibrary.Typical.Veil(s.Name)));
        Assert.All(list.Of("resin"), s => Assert.NotNull(MaterialLibrary.Typical.Resin(s.Name)));
        Assert.Equal(50, list.Of("tape")[0].Width!.Value.Millimeters, 9);
        Assert.Equal(2, list.Items.Single(i => i.Name == "O-ring").Pieces);
        Assert.Null(list.Of("sleeve")[0].Pieces);
        Assert.Equal(40, list.Of("resin")[0].PotLife!.Value.Minutes, 9);
    }

    private static double ProofClock(AltimeterLog log)
    {
        var ground = log.Pressure.Values.Take(100).Average();
        return log.Time[Enumerable.Range(0, log.Time.Count).First(i => log.Pressure[i] < ground - 0.0005)];
    }

    private static string FindFolder()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
            if (File.Exists(Path.Combine(folder.FullName, "NotebookKit.sln")))
                return Path.Combine(folder.FullName, "data-demo");
        throw new DirectoryNotFoundException(string.Create(CultureInfo.InvariantCulture,
            $"no folder above {AppContext.BaseDirectory} holds NotebookKit.sln."));
    }
}

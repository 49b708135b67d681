using System.Globalization;
using BenchmarkDotNet.Attributes;
using NotebookKit.Logs;

namespace NotebookKit.Benchmarks.Logs;

/// <summary>What a long log and a wide one cost to read.</summary>
[MemoryDiagnoser]
public class LogReaderBenchmarks
{
    private string _long = "", _wide = "";

    [Params(100_000, 1_000_000)]
    public int Rows { get; set; }

    [GlobalSetup]
    public void Write()
    {
        _long = Path.GetTempFileName();
        _wide = Path.GetTempFileName();
        using (var file = new StreamWriter(_long))
        {
            file.WriteLine("time [s],pressure [psi gauge],temperature [°F],expansion [mL]");
            for (var i = 0; i < Rows; i++)
                file.WriteLine(string.Create(CultureInfo.InvariantCulture,
                    $"{i * 0.05:F2},{600 + i % 977 * 0.1:F2},{60 + i % 13 * 0.1:F1},{i % 500 * 0.1:F1}"));
        }

        using var wide = new StreamWriter(_wide);
        wide.WriteLine("time [s]," + string.Join(',', Enumerable.Range(0, 1000).Select(k => $"p{k} [bar gauge]")));
        for (var i = 0; i < Rows / 1000; i++) wide.WriteLine(i + "," + string.Join(',', Enumerable.Range(0, 1000).Select(k => k + i % 7)));
    }

    [GlobalCleanup]
    public void Remove()
    {
        File.Delete(_long);
        File.Delete(_wide);
    }

    [Benchmark]
    public GaugeLog LongGaugeLog() => GaugeLog.Read(_long);

    [Benchmark]
    public LogTable LongTable() => LogReader.Read(_long);

    [Benchmark]
    public LogTable WideTable() => LogReader.Read(_wide);
}

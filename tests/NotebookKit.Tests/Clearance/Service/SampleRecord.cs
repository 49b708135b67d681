using System.Text;
using NotebookKit.Clearance.Service;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Clearance.Service;

/// <summary>Records for tests, invented, in a folder that goes away with them.</summary>
internal sealed class SampleRecord : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("notebookkit-service-").FullName;

    public SampleRecord()
    {
        Clock = new FixedClock(Time("2026-06-01"));
        File = ServiceFile.Create(Path, "Curlew", "C-1", Clock);
    }

    public FixedClock Clock { get; }

    public ServiceFile File { get; }

    public string Path => System.IO.Path.Combine(folder, "curlew-c1.service.jsonl");

    public string Beside(string name) => System.IO.Path.Combine(folder, name);

    public static DateTimeOffset Time(string day) => new(DateOnly.ParseExact(day, "yyyy-MM-dd"), new TimeOnly(9, 30), TimeSpan.Zero);

    public static DateOnly Day(string day) => DateOnly.ParseExact(day, "yyyy-MM-dd");

    public static Made Made(string day = "2026-02-20") => new(Day(day), "braid 12, resin 7", 310.Grams(),
        412.5.Grams()) { At = Time("2026-03-01"), By = "A. Member" };

    public static Proved Proved(string day, double bar = 54, string? writtenOn = null) =>
        new(Day(day), bar.BarGauge(), 1.5, "Club rule", "9f2c") { At = Time(writtenOn ?? day) };

    public static Filled Filled(string day, double bar = 36, double minutes = 2, double celsius = 18) =>
        new(bar.BarGauge(), celsius.Celsius(), minutes.Minutes(), FillMedium.Gas) { At = Time(day) };

    public SampleRecord With(params ServiceEvent[] events)
    {
        foreach (var happened in events) File.Append(happened);
        return this;
    }

    /// <summary>The events as they would be read, without a file.</summary>
    public static ServiceRecord Of(IEnumerable<ServiceEvent> events) =>
        new("Curlew", "C-1", [.. events.Select((e, i) => new ServiceEntry(i + 2, i + 1, e.At!.Value, e, ""))], [], "");

    public ServiceRecord Read(string? knownHead = null) => ServiceFile.Read(Path, knownHead);

    public ServiceStatus Status(string on, LifeLimits? limits = null) => Read().StatusOn(Day(on), limits ?? LifeLimits.Club);

    /// <summary>A made, proved and used vessel.</summary>
    public SampleRecord Used() => With(
        Made(), Proved("2026-03-02"), new Inspected(InspectionResult.Sound) { At = Time("2026-05-01"), By = "A. Member" },
            Filled("2026-05-01"), new Flown("7") { At = Time("2026-05-01") },
        new Weighed(411.Grams()) { At = Time("2026-05-02"), Notes = "dry, after \"a night\" – in the shed" }, Filled("2026-05-09", 30));

    public List<byte[]> Lines() =>
        [.. System.IO.File.ReadAllText(Path).TrimEnd('\n').Split('\n').Select(Encoding.UTF8.GetBytes)];

    public ServiceRecord Rewritten(IEnumerable<byte[]> lines, string? knownHead = null)
        => Rewritten([.. lines.SelectMany(l => l.Append((byte)'\n'))], knownHead);

    public ServiceRecord Rewritten(byte[] bytes, string? knownHead = null) => ServiceRecordReader.Read(bytes, knownHead);

    public void Dispose() => Directory.Delete(folder, recursive: true);

    internal sealed class FixedClock(DateTimeOffset now) : TimeProvider
    {
        public DateTimeOffset Now { get; set; } = now;

        public override DateTimeOffset GetUtcNow() => Now;
    }
}

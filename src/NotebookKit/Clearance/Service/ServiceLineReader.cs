using System.Globalization;
using System.Text.Json;
using NotebookKit.Provenance;

namespace NotebookKit.Clearance.Service;

/// <summary>The members of one line of a service record; what can't be read is said.</summary>
internal sealed class ServiceLineReader
{
    private const string NoText = "holds bytes that spell no text";
    private readonly Dictionary<string, JsonElement> _members = new(StringComparer.Ordinal);
    private readonly List<string> _wrong = [];

    private ServiceLineReader()
    {
    }

    /// <summary>What can't be read, in words that follow "line 4 ".</summary>
    public IReadOnlyList<string> Wrong => _wrong;

    public bool IsHeader => _members.ContainsKey("format");

    public string Format => Text("format");

    public int Version => Number("version");

    public string Vessel => Text("vessel");

    public string Serial => Text("serial");

    public int Sequence => Number("sequence");

    public int RemovedBytes => _members.ContainsKey("removed-bytes") ? Number("removed-bytes") : 0;

    public string Previous => Text("previous");

    public DateTimeOffset At
    {
        get
        {
            var text = Text("at");
            if (DateTimeOffset.TryParseExact(text, ServiceLine.TimeForm, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal,
                out var at)) return at;
            return Say<DateTimeOffset>($"has the time \"{text}\", which isn't a day and time in UTC");
        }
    }

    /// <summary>Reads a line; none where it isn't one JSON object.</summary>
    public static ServiceLineReader? Open(ReadOnlyMemory<byte> line)
    {
        try
        {
            using var document = JsonDocument.Parse(line);
            if (document.RootElement.ValueKind != JsonValueKind.Object) return null;
            var read = new ServiceLineReader();
            foreach (var member in document.RootElement.EnumerateObject())
                if (!read._members.TryAdd(member.Name, member.Value.Clone())) read._wrong.Add($"has \"{member.Name}\" twice");
            return read;
        }
        catch (JsonException)
        {
            return null;
        }
        catch (InvalidOperationException)
        {
            // Half a character in a member's name.
            return null;
        }
    }

    /// <summary>The event with the time given; none where it can't be read.</summary>
    public ServiceEvent? Event(DateTimeOffset at)
    {
        if (Values() is not { } values) return null;
        var findings = new List<Finding>();
        var read = ServiceEvent.Read(Text("kind"), values, findings);
        if (read is not null)
        {
            read = read with { At = at, By = Text("by"), Notes = Text("notes") };
            findings.AddRange(read.Validate());
        }

        foreach (var finding in findings) _wrong.Add("can't be taken: " + finding.Message.TrimEnd('.'));
        return findings.Count == 0 ? read : null;
    }

    private Dictionary<string, string>? Values()
    {
        var values = new Dictionary<string, string>(StringComparer.Ordinal);
        if (!_members.TryGetValue("data", out var data) || data.ValueKind != JsonValueKind.Object) return Fail("has no \"data\"");
        try
        {
            foreach (var member in data.EnumerateObject())
            {
                if (member.Value.ValueKind != JsonValueKind.String) return Fail($"has a {member.Name} that isn't text with its unit");
                if (!values.TryAdd(member.Name, member.Value.GetString()!)) return Fail($"has {member.Name} twice");
            }
        }
        catch (InvalidOperationException)
        {
            return Fail(NoText);
        }

        return values;
    }

    private Dictionary<string, string>? Fail(string words)
    {
        _wrong.Add(words);
        return null;
    }

    private string Text(string name)
    {
        if (_members.TryGetValue(name, out var value) && value.ValueKind == JsonValueKind.String) return Spelled(value);
        _wrong.Add($"has no text \"{name}\"");
        return "";
    }

    // JSON can spell half a character, and a spoiled byte is none.
    private string Spelled(JsonElement value)
    {
        try
        {
            return value.GetString()!;
        }
        catch (InvalidOperationException)
        {
            _wrong.Add(NoText);
            return "";
        }
    }

    private int Number(string name) =>
        _members.TryGetValue(name, out var value) && value.ValueKind == JsonValueKind.Number && value.TryGetInt32(out var number) ? number
            : Say<int>($"has no whole number \"{name}\"");

    private T Say<T>(string words) where T : struct
    {
        _wrong.Add(words);
        return default;
    }
}

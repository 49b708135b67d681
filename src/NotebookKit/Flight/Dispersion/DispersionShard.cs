using System.Text;
using System.Text.Json;
using NotebookKit.Flight.Site;
using NotebookKit.Quantities;

namespace NotebookKit.Flight.Dispersion;

/// <summary>
/// A range of the flights of a dispersion, as one node of a cluster flies it. Written as JSON with every digit, read back and merged with
/// the others it gives the very result that one machine would have given. Source: see <see cref="DispersionResult"/>.
/// </summary>
public sealed record DispersionShard
{
    internal DispersionShard(DispersionPlan plan, ShardNumber part, IReadOnlyList<double> rows)
    {
        Plan = plan;
        Part = part;
        Rows = rows;
        First = Range(plan.Flights, part.Number, part.Of).First;
    }

    /// <summary>What the whole is about.</summary>
    public DispersionPlan Plan { get; }

    /// <summary>Which part of it this is.</summary>
    public ShardNumber Part { get; }

    /// <summary>Number of its first flight.</summary>
    public int First { get; }

    /// <summary>How many flights it has.</summary>
    public int Count => Rows.Count / Layout.RowLength;

    /// <summary>Inputs and outputs of its flights, row after row.</summary>
    internal IReadOnlyList<double> Rows { get; }

    internal DispersionLayout Layout => DispersionLayout.For(Plan.Stages);

    /// <summary>Range of flights that falls to one of so many shards: even, in order, without gap.</summary>
    /// <param name="flights">Flights of the whole; 1 or more.</param>
    /// <param name="number">Number of the shard; 1 to the number of shards.</param>
    /// <param name="of">Number of shards; 1 to the number of flights.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside.</exception>
    public static (int First, int Count) Range(int flights, int number, int of)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(flights, 1);
        if (of < 1 || of > flights) throw new ArgumentOutOfRangeException(nameof(of),
            $"number of shards is {of}; it must be 1 to the {flights} flights.");
        if (number < 1 || number > of) throw new ArgumentOutOfRangeException(nameof(number),
            $"shard is {number}; it must be 1 to {of}. The first is 1.");
        var first = (int)((long)flights * (number - 1) / of);
        return (first, (int)((long)flights * number / of) - first);
    }

    /// <summary>Puts the parts of one dispersion together to its only part. Source: see <see cref="DispersionResult"/>.</summary>
    /// <param name="shards">All its shards, in any order.</param>
    /// <exception cref="ArgumentException">They don't belong together, or some flights are missing or there twice.</exception>
    public static DispersionShard Join(IReadOnlyList<DispersionShard> shards)
    {
        ArgumentNullException.ThrowIfNull(shards);
        if (shards.Count == 0) throw new ArgumentException("there are no shards; give all of a dispersion.", nameof(shards));
        var (plan, of) = (shards[0].Plan, shards[0].Part.Of);
        if (shards.FirstOrDefault(s => s.Plan.Fingerprint != plan.Fingerprint) is { } other)
            throw new ArgumentException($"shard {other.Part} is of another dispersion (fingerprint {other.Plan.Fingerprint}, not "
                + $"{plan.Fingerprint}): another vehicle, site, spread, seed, version or kind of machine. Fly all of them again.",
                nameof(shards));
        if (shards.FirstOrDefault(s => s.Part.Of != of) is { } split)
            throw new ArgumentException($"shard {split.Part} doesn't fit shard {shards[0].Part}: the flights were split in {of} and in "
                + $"{split.Part.Of}. Give the shards of one splitting.", nameof(shards));

        var ordered = shards.OrderBy(s => s.First).ToArray();
        if (ordered.Zip(ordered.Skip(1)).FirstOrDefault(p => p.First.Part == p.Second.Part).First is { } twice)
            throw new ArgumentException($"flights {twice.First} to {twice.First + twice.Count - 1} are there twice: shard {twice.Part}. "
                + "Give every shard once.", nameof(shards));
        if (ordered.Length < of) throw new ArgumentException(Missing(plan, of, ordered), nameof(shards));
        var rows = new List<double>(checked(plan.Flights * shards[0].Layout.RowLength));
        foreach (var shard in ordered) rows.AddRange(shard.Rows);
        return new(plan, ShardNumber.Whole, rows);
    }

    /// <summary>The shard as JSON, every digit kept.</summary>
    public string ToJson() => JsonSerializer.Serialize(Document());

    /// <summary>Writes what <see cref="ToJson"/> gives, as UTF-8: for a million flights, whose text would fill the memory.</summary>
    /// <param name="stream">Where to.</param>
    public void Write(Stream stream) => JsonSerializer.Serialize(stream, Document());

    /// <summary>Reads a shard.</summary>
    /// <param name="json">What <see cref="ToJson"/> wrote.</param>
    /// <exception cref="FormatException">It isn't a shard, or not a whole one.</exception>
    public static DispersionShard FromJson(string json)
    {
        ArgumentNullException.ThrowIfNull(json);
        using var stream = new MemoryStream(Encoding.UTF8.GetBytes(json), writable: false);
        return Read(stream);
    }

    /// <summary>Reads a shard.</summary>
    /// <param name="stream">What <see cref="Write"/> wrote.</param>
    /// <exception cref="FormatException">It isn't a shard, or not a whole one.</exception>
    public static DispersionShard Read(Stream stream)
    {
        ShardDocument? written;
        try
        {
            written = JsonSerializer.Deserialize<ShardDocument>(stream);
        }
        catch (JsonException error)
        {
            throw new FormatException($"this is not a shard of a dispersion: {error.Message}", error);
        }

        if (written?.Rows is null || written.Fingerprint is null || written.Stages is not (1 or 2) || written.Of > written.Flights
            || written.Shard < 1 || written.Shard > written.Of)
            throw new FormatException("this is not a shard of a dispersion: rows, fingerprint or numbers are missing, or it was written "
                + "by another version.");
        var (length, wanted) = (DispersionLayout.For(written.Stages).RowLength, Range(written.Flights, written.Shard, written.Of).Count);
        if (written.Rows.Count != (long)wanted * length)
            throw new FormatException($"shard {written.Shard}/{written.Of} has {written.Rows.Count} numbers; it must have {length} for "
                + $"each of its {wanted} flights. It was cut short, or written by another version.");
        var corners = (written.CornersM ?? []).Chunk(2).Where(c => c.Length == 2).Select(c => new FieldCorner(c[0].Metres(),
            c[1].Metres())).ToArray();
        var field = written.FieldRadiusM is { } radius ? FlyingField.Circle(radius.Metres()) : corners.Length > 0
            ? FlyingField.Outline(corners) : null;
        return new(
            new(written.Vehicle ?? "", written.Site ?? "", written.Flights, written.Seed, written.IsSixDegrees, written.Stages,
                written.CeilingM?.Metres(), field, written.Fingerprint,
                written.Subject ?? "") { IsWindGiven = written.IsWindGiven ?? false },
            new(written.Shard, written.Of), written.Rows);
    }

    /// <inheritdoc/>
    public bool Equals(DispersionShard? other) => other is not null && Plan.Fingerprint == other.Plan.Fingerprint && Part == other.Part
        && Rows.SequenceEqual(other.Rows);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Plan.Fingerprint, Part);

    private static string Missing(DispersionPlan plan, int of, IReadOnlyList<DispersionShard> there)
    {
        var missing = Enumerable.Range(1, of).Except(there.Select(s => s.Part.Number)).ToArray();
        var (first, count) = Range(plan.Flights, missing[0], of);
        return missing.Length == 1
            ? $"flights {first} to {first + count - 1} are missing: shard {missing[0]}/{of}. Fly it."
            : $"flights {first} to {first + count - 1} and more are missing: shards "
                + $"{string.Join(", ", missing.Take(20))}{(missing.Length > 20 ? " ..." : "")} of {of}. Fly them.";
    }

    private ShardDocument Document() => new(
        Plan.Vehicle, Plan.Site, Plan.Flights, Plan.Seed, Plan.IsSixDegrees, Plan.Stages, Plan.Ceiling?.Meters, Plan.Field?.Radius?.Meters,
        Plan.Field?.Corners.SelectMany(c => new[] { c.East.Meters, c.North.Meters }).ToArray(), Plan.Fingerprint, Plan.Subject,
            Part.Number, Part.Of, Plan.IsWindGiven, Rows);
}

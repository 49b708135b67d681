using System.Text.Json;
using NotebookKit.Quantities;

namespace NotebookKit.Flight.Dispersion;

/// <summary>
/// A range of the flights of a dispersion, as one node of a cluster flies it. Written as JSON with every digit, read back and merged with the
/// others it gives the very result that one machine would have given. Source: see <see cref="DispersionResult"/>.
/// </summary>
public sealed record DispersionShard
{
    internal DispersionShard(DispersionPlan plan, int first, IReadOnlyList<double> rows)
    {
        Plan = plan;
        First = first;
        Rows = rows;
    }

    /// <summary>What the whole is about.</summary>
    public DispersionPlan Plan { get; }

    /// <summary>Number of its first flight.</summary>
    public int First { get; }

    /// <summary>How many flights it has.</summary>
    public int Count => Rows.Count / DispersionRun.RowLength;

    /// <summary>Inputs and outputs of its flights, row after row.</summary>
    internal IReadOnlyList<double> Rows { get; }

    /// <summary>Range of flights that falls to one of so many shards: even, in order, without gap.</summary>
    /// <param name="flights">Flights of the whole; 1 or more.</param>
    /// <param name="number">Number of the shard; 1 to the number of shards.</param>
    /// <param name="of">Number of shards; 1 to the number of flights.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside.</exception>
    public static (int First, int Count) Range(int flights, int number, int of)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(flights, 1);
        if (of < 1 || of > flights) throw new ArgumentOutOfRangeException(nameof(of), $"number of shards is {of}; it must be 1 to the {flights} flights.");
        if (number < 1 || number > of) throw new ArgumentOutOfRangeException(nameof(number), $"shard is {number}; it must be 1 to {of}. The first is 1.");
        var first = (int)((long)flights * (number - 1) / of);
        return (first, (int)((long)flights * number / of) - first);
    }

    /// <summary>The shard as JSON, every digit kept.</summary>
    public string ToJson() => JsonSerializer.Serialize(new Written(
        Plan.Vehicle, Plan.Site, Plan.Flights, Plan.Seed, Plan.IsSixDegrees, Plan.Ceiling?.Meters, Plan.Field?.Radius?.Meters,
        Plan.Field?.Corners.SelectMany(c => new[] { c.East.Meters, c.North.Meters }).ToArray(), Plan.Fingerprint, First,
        Rows.Select(v => double.IsNaN(v) ? (double?)null : v).ToArray()));

    /// <summary>Reads a shard.</summary>
    /// <param name="json">What <see cref="ToJson"/> wrote.</param>
    /// <exception cref="FormatException">It isn't a shard.</exception>
    public static DispersionShard FromJson(string json)
    {
        Written? written;
        try
        {
            written = JsonSerializer.Deserialize<Written>(json);
        }
        catch (JsonException error)
        {
            throw new FormatException($"this is not a shard of a dispersion: {error.Message}", error);
        }

        if (written?.Rows is null || written.Fingerprint is null || written.Rows.Length % DispersionRun.RowLength != 0)
            throw new FormatException("this is not a shard of a dispersion: rows or fingerprint are missing, or it was written by another version.");
        var corners = (written.CornersM ?? []).Chunk(2).Select(c => new FieldCorner(c[0].Metres(), c[1].Metres())).ToArray();
        var field = written.FieldRadiusM is { } radius ? FlyingField.Circle(radius.Metres()) : corners.Length > 0 ? FlyingField.Outline(corners) : null;
        return new(
            new(written.Vehicle ?? "", written.Site ?? "", written.Flights, written.Seed, written.IsSixDegrees, written.CeilingM?.Metres(), field, written.Fingerprint),
            written.First, Array.ConvertAll(written.Rows, v => v ?? double.NaN));
    }

    /// <inheritdoc/>
    public bool Equals(DispersionShard? other) => other is not null && Plan.Fingerprint == other.Plan.Fingerprint && First == other.First && Rows.SequenceEqual(other.Rows);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Plan.Fingerprint, First, Count);

    private sealed record Written(
        string? Vehicle, string? Site, int Flights, ulong Seed, bool IsSixDegrees, double? CeilingM, double? FieldRadiusM, double[]? CornersM, string? Fingerprint,
        int First, double?[]? Rows);
}

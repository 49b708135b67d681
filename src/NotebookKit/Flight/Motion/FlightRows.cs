using System.Collections;

namespace NotebookKit.Flight.Motion;

/// <summary>The rows of a flight in the order they came, in blocks small enough for the young part of the heap: one growing array of so
/// wide rows would be collected with the oldest.</summary>
internal sealed class FlightRows : IReadOnlyList<FlightRow>
{
    private const int BlockLength = 256;

    private readonly List<FlightRow[]> _blocks = [];

    public int Count { get; private set; }

    public FlightRow this[int index] => At(index);

    /// <summary>A row in its place.</summary>
    public ref readonly FlightRow At(int index)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual((uint)index, (uint)Count, nameof(index));
        return ref _blocks[index / BlockLength][index % BlockLength];
    }

    public void Add(in FlightRow row)
    {
        if (Count == _blocks.Count * BlockLength) _blocks.Add(new FlightRow[BlockLength]);
        _blocks[^1][Count % BlockLength] = row;
        Count++;
    }

    public IEnumerator<FlightRow> GetEnumerator()
    {
        for (var i = 0; i < Count; i++) yield return this[i];
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}

using System.Globalization;

namespace NotebookKit.Numerics.Bits;

/// <summary>A mark of many numbers by their bits: another bit anywhere gives another mark. Source: FNV-1a, taken by words of 64
/// bits.</summary>
internal sealed class BitMark
{
    private ulong _hash = 14695981039346656037UL;

    public void Add(ulong bits) => _hash = unchecked((_hash ^ bits) * 1099511628211UL);

    public void Add(double number) => Add(BitConverter.DoubleToUInt64Bits(number));

    public override string ToString() => _hash.ToString("x16", CultureInfo.InvariantCulture);
}

namespace NotebookKit.Numerics.Bits;

/// <summary>The counter-based generator Philox 4x32 with ten rounds: four random words from a counter and a key, with no state in
/// between.</summary>
/// <remarks>
/// Source: J. K. Salmon, M. A. Moraes, R. O. Dror, D. E. Shaw, Parallel random numbers: as easy as 1, 2, 3, Proc. SC11, 2011.
/// </remarks>
internal static class Philox
{
    public static (uint W0, uint W1, uint W2, uint W3) Words(uint c0, uint c1, uint c2, uint c3, uint key0, uint key1)
    {
        for (var round = 0; round < 10; round++)
        {
            var first = 0xD2511F53UL * c0;
            var second = 0xCD9E8D57UL * c2;
            (c0, c1, c2, c3) = ((uint)(second >> 32) ^ c1 ^ key0, (uint)second, (uint)(first >> 32) ^ c3 ^ key1, (uint)first);
            key0 += 0x9E3779B9;
            key1 += 0xBB67AE85;
        }

        return (c0, c1, c2, c3);
    }
}

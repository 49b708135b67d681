using MathNet.Numerics;
using NotebookKit.Numerics.Bits;

namespace NotebookKit.Numerics;

/// <summary>
/// Random numbers that depend on nothing but a seed, the number of the sample and the number of the variable: the same seed gives the
/// same answer in any order and on any number of threads.
/// </summary>
/// <remarks>
/// Counter-based generator Philox 4x32-10. Source: J. K. Salmon, M. A. Moraes, R. O. Dror, D. E. Shaw, Parallel random numbers: as easy as
/// 1, 2, 3, Proc. SC11, 2011. Normal values by inversion, so that one uniform number makes one normal one.
/// </remarks>
public readonly struct SeededSamples : IEquatable<SeededSamples>
{
    private readonly uint _key0;
    private readonly uint _key1;

    /// <summary>Creates the samples of a seed.</summary>
    /// <param name="seed">Seed; any number.</param>
    public SeededSamples(ulong seed)
    {
        Seed = seed;
        _key0 = (uint)seed;
        _key1 = (uint)(seed >> 32);
    }

    /// <summary>The seed, to be shown with every result made from it.</summary>
    public ulong Seed { get; }

    /// <summary>A number evenly spread between 0 and 1, both ends excluded [-]; 53 bits.</summary>
    /// <param name="sample">Number of the sample; 0 or above.</param>
    /// <param name="variable">Number of the variable within the sample; 0 or above.</param>
    /// <param name="draw">Number of the draw, where a variable needs several; 0 or above.</param>
    public double Uniform(long sample, int variable, int draw = 0)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(sample);
        ArgumentOutOfRangeException.ThrowIfNegative(variable);
        ArgumentOutOfRangeException.ThrowIfNegative(draw);
        var words = Philox.Words((uint)sample, (uint)((ulong)sample >> 32), (uint)variable, (uint)draw, _key0, _key1);
        var bits = ((ulong)words.W0 << 32 | words.W1) >> 11;
        return (bits + 0.5) * (1.0 / (1UL << 53));
    }

    /// <summary>A normally distributed number with mean 0 and standard deviation 1 [-].</summary>
    /// <param name="sample">Number of the sample; 0 or above.</param>
    /// <param name="variable">Number of the variable within the sample; 0 or above.</param>
    /// <param name="draw">Number of the draw, where a variable needs several; 0 or above.</param>
    public double Normal(long sample, int variable, int draw = 0) =>
        -Constants.Sqrt2 * SpecialFunctions.ErfcInv(2 * Uniform(sample, variable, draw));

    /// <summary>Samples of their own for one part of a computation, independent of these.</summary>
    /// <param name="part">Number of the part; 0 or above.</param>
    public SeededSamples Part(int part)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(part);
        var words = Philox.Words((uint)part, 0x50415254, 0xFFFFFFFF, 0xFFFFFFFF, _key0, _key1);
        return new((ulong)words.W0 << 32 | words.W1);
    }

    /// <inheritdoc/>
    public bool Equals(SeededSamples other) => Seed == other.Seed;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is SeededSamples other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => Seed.GetHashCode();

    /// <summary>Whether two are the same.</summary>
    /// <param name="left">One.</param>
    /// <param name="right">The other.</param>
    public static bool operator ==(SeededSamples left, SeededSamples right) => left.Equals(right);

    /// <summary>Whether two differ.</summary>
    /// <param name="left">One.</param>
    /// <param name="right">The other.</param>
    public static bool operator !=(SeededSamples left, SeededSamples right) => !left.Equals(right);
}

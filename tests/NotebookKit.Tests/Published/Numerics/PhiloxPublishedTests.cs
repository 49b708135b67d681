using NotebookKit.Numerics.Bits;

namespace NotebookKit.Tests.Published.Numerics;

[PublishedCase("Philox", "Salmon, Moraes, Dror, Shaw, Parallel random numbers: as easy as 1, 2, 3, SC11 2011; known-answer vectors of "
    + "Random123, philox4x32 10")]
public class PhiloxPublishedTests
{
    [Theory]
    [InlineData(0, 0, 0, 0, 0, 0, 0x6627e8d5, 0xe169c58d, 0xbc57ac4c, 0x9b00dbd8)]
    [InlineData(0xffffffff, 0xffffffff, 0xffffffff, 0xffffffff, 0xffffffff, 0xffffffff, 0x408f276d, 0x41c83b0e, 0xa20bc7c6, 0x6d5451fd)]
    [InlineData(0x243f6a88, 0x85a308d3, 0x13198a2e, 0x03707344, 0xa4093822, 0x299f31d0, 0xd16cfe09, 0x94fdcceb, 0x5001e420, 0x24126ea1)]
    public void Gives_the_known_answers(
        uint c0, uint c1, uint c2, uint c3, uint k0, uint k1, uint w0, uint w1, uint w2, uint w3) =>
        Assert.Equal((w0, w1, w2, w3), Philox.Words(c0, c1, c2, c3, k0, k1));
}

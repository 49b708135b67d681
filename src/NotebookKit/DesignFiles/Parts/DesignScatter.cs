using NotebookKit.Flight.Dispersion;

namespace NotebookKit.DesignFiles.Parts;

/// <summary>How the landings of a design scatter: so many flights, each with its own draw of what varies.</summary>
/// <param name="Flights">Number of flights; 2 to 10 000.</param>
/// <param name="Seed">Seed: the same gives the same flights.</param>
/// <param name="Spread">What varies, and how far.</param>
public sealed record DesignScatter(int Flights, ulong Seed, Spread Spread);

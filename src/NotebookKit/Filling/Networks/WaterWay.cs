namespace NotebookKit.Filling.Networks;

/// <summary>The way of water past the hoses of a line: where it ends, and how it is held back on it, in SI.</summary>
/// <param name="Node">The place it ends at.</param>
/// <param name="Last">The line that it comes there by; none where the line itself leads there.</param>
/// <param name="AreaM2">Effective area for water of the whole way, m².</param>
/// <param name="CrackingPa">What check valves on it hold back, Pa.</param>
internal sealed record WaterWay(int Node, NetworkLine? Last, double AreaM2, double CrackingPa)
{
    /// <summary>Head of the water above the port that it comes out of, Pa.</summary>
    public double HeadPa => Last is null ? 0 : Last.To == Node ? Last.ToHeadPa : Last.FromHeadPa;
}

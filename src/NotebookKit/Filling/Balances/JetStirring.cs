namespace NotebookKit.Filling.Balances;

/// <summary>How long the jet that fills a vessel is taken to stir the gas in it.</summary>
public enum JetStirring
{
    /// <summary>While the published criterion says that it mixes the gas; then free convection alone, the hotter answer. Source: P. F.
    /// Peterson 1994 (unverified).</summary>
    WhileItMixes,

    /// <summary>As long as gas flows in, whatever the criterion says: for comparison with a vessel that was measured.</summary>
    Throughout,
}

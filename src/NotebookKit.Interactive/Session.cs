using NotebookKit.Flight.Dispersion;
using NotebookKit.Record.Givens;

namespace NotebookKit.Interactive;

/// <summary>
/// What whoever runs a notebook hands it, as the variable <c>session</c> of its first cell. What changes an answer is in here, and the
/// notebook passes it on where it
/// counts: <c>new DesignRecordBuilder("Curlew", session.Givens)</c>, <c>curlew.Disperse(site, spread, flights: 1000, seed: 7, batch:
/// session.Batch)</c>.
/// </summary>
/// <param name="Givens">Values to use instead of the notebook's own givens.</param>
/// <param name="Batch">The part to fly of every dispersion, or flights that were flown before; none flies every dispersion whole.</param>
public sealed record Session(GivenOverrides Givens, IDispersionBatch? Batch = null)
{
    /// <summary>Name of the variable.</summary>
    public const string Variable = "session";

    /// <summary>One that overrides no given and flies every dispersion whole.</summary>
    public static Session Plain => new(GivenOverrides.None);

    /// <summary>The line that gives a kernel that isn't ours a plain one.</summary>
    internal static string Declaration => $"var {Variable} = {typeof(Session).FullName}.{nameof(Plain)};";
}

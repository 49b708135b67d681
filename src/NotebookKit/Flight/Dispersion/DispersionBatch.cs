namespace NotebookKit.Flight.Dispersion;

/// <summary>
/// Lets whoever runs a notebook split its dispersions over several machines, without a word about it in the notebook: the wish travels with the
/// flow of the call, as a request to stop does.
/// </summary>
public static class DispersionBatch
{
    private static readonly AsyncLocal<IDispersionBatch?> Followed = new();

    internal static IDispersionBatch? Current => Followed.Value;

    /// <summary>Dispersions of the current flow, from here on, do what the batch wants.</summary>
    /// <param name="batch">The batch; none flies every dispersion whole.</param>
    public static void Follow(IDispersionBatch? batch) => Followed.Value = batch;
}

using NotebookKit.Charts.Explorers;
using NotebookKit.Quantities;

namespace NotebookKit.Interactive.Live;

/// <summary>A curve that the reader kept for comparison.</summary>
/// <param name="Name">The setting it belongs to, in words.</param>
/// <param name="State">The model's answer to it.</param>
internal sealed record LiveCurve(string Name, ExplorerState State)
{
    /// <summary>The answer to a setting; none where the model has none.</summary>
    /// <param name="explorer">Explorer.</param>
    /// <param name="setting">Setting.</param>
    public static LiveCurve? Of(Explorer explorer, IReadOnlyList<double> setting)
    {
        var state = explorer.Model([.. setting]);
        return state.RefusedBecause.Length > 0 ? null : new(string.Join(", ", explorer.Parameters.Select((p, i) => p.Show(setting[i]))),
            state);
    }

    /// <summary>Horizontal values.</summary>
    /// <param name="explorer">Explorer.</param>
    public Series X(Explorer explorer) => new(explorer.X.Name, explorer.X.Unit, [.. State.X]);

    /// <summary>Vertical values, named by the setting.</summary>
    /// <param name="explorer">Explorer.</param>
    public Series Y(Explorer explorer) => new(Name, explorer.Y.Unit, [.. State.Y]);
}

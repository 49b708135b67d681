using NotebookKit.Charts.Engineering;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Results;

/// <summary>Charts of the choice of a layup: <c>tradeOff.Chart()</c>.</summary>
public static class LayupCharts
{
    /// <summary>Rated pressure against mass for every layup that could be rated; the refused ones with their reason.</summary>
    /// <param name="tradeOff">The search.</param>
    /// <exception cref="InvalidDesignException">No layup could be rated.</exception>
    public static EngineeringChart Chart(this LayupTradeOff tradeOff)
    {
        ArgumentNullException.ThrowIfNull(tradeOff);
        var rated = tradeOff.Options.Where(o => o.Rated is not null && o.Mass is not null).ToList();
        if (rated.Count == 0) throw new InvalidDesignException(tradeOff.Title, tradeOff.Findings);
        return ParetoChart.Draw(
            tradeOff.Title,
            new Series("Empty mass", "g", [.. rated.Select(o => o.Mass!.Value.Grams)]),
            new Series("Rated working pressure", "bar gauge", [.. rated.Select(o => o.Rated!.Value.Bar)]),
            [.. rated.Select(o => o.Name)],
            [.. rated.Select(o => o.Refusal)]);
    }
}

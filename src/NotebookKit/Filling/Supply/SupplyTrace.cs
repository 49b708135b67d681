using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Filling.Supply;

/// <summary>The pressure ahead of the restrictor as it was measured, in place of a regulator: straight lines between readings, the last one
/// kept.</summary>
/// <param name="Time">The clock from the opening of the valve, in s, rising from 0; two readings at the least.</param>
/// <param name="Pressure">The gauge ahead of the restrictor, in bar gauge, one to one with the clock; 0 to 300 bar gauge.</param>
/// <remarks>Source: the user's log.</remarks>
public sealed record SupplyTrace(Series Time, Series Pressure)
{
    /// <summary>Highest reading.</summary>
    public GaugePressure Maximum => Pressure.Values.Max().BarGauge();

    /// <summary>Everything wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() => Find(300.BarGauge());

    internal IReadOnlyList<Finding> Find(GaugePressure highest)
    {
        if (Time.Unit != "s" || Pressure.Unit != "bar gauge")
            return [FillingFindings.SupplyTraceUnitRefused(Time.Unit, Pressure.Unit)];
        if (Time.Count < 2 || Time.Count != Pressure.Count)
            return [FillingFindings.SupplyTraceTooShort(Time.Count, Pressure.Count)];
        if (Time[0] != 0 || Enumerable.Range(1, Time.Count - 1).Any(i => !(Time[i] > Time[i - 1])))
            return [FillingFindings.SupplyTraceClockDoesNotRise(Time[0])];
        return Pressure.Values.Select(p => new ValidRange<GaugePressure>(0.BarGauge(), highest).Find(
            GaugePressure.FromPascals(1e5 * (double.IsFinite(p) ? p : -1)), "measured supply pressure",
            "Take readings that aren't numbers out of the log.")).OfType<Finding>().Take(1).ToList();
    }

    /// <summary>Pressure ahead of the restrictor at a time, in bar gauge.</summary>
    internal double BarAt(double seconds)
    {
        if (seconds >= Time[Time.Count - 1]) return Pressure[Pressure.Count - 1];
        int low = 0, high = Time.Count - 1;
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            if (Time[middle] <= seconds) low = middle;
            else high = middle;
        }

        return Pressure[low] + (Pressure[high] - Pressure[low]) * (seconds - Time[low]) / (Time[high] - Time[low]);
    }
}

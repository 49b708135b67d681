using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Record;

/// <summary>
/// One main number of a notebook, published by showing it: as a cell's last expression, alone or in a list. The runner prints it and puts
/// it on the index page.
/// </summary>
/// <param name="Name">What it is, in the trade's words: "Apogee".</param>
/// <param name="Value">The number with its unit: "149 m".</param>
public sealed record Headline(string Name, string Value)
{
    /// <summary>A quantity as a main number, shown with three digits as everywhere.</summary>
    /// <param name="name">What it is, in the trade's words.</param>
    /// <param name="value">The quantity, in the unit it is to be shown in.</param>
    public static Headline Of(string name, IQuantity value) => new(name, value.Show());

    /// <summary>A gauge pressure as a main number.</summary>
    /// <param name="name">What it is, in the trade's words.</param>
    /// <param name="value">The pressure.</param>
    public static Headline Of(string name, GaugePressure value) => new(name, value.ToString());

    /// <summary>For example "Apogee: 149 m".</summary>
    public override string ToString() => $"{Name}: {Value}";
}

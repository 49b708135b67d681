using NotebookKit.Quantities;
using NotebookKit.Vessels.Design;
using UnitsNet;

namespace NotebookKit.Vessels.Search;

/// <summary>One layup tried in a search.</summary>
/// <param name="Name">Its plies in words, from the inside out, and its ends where a search chooses among several.</param>
/// <param name="Vessel">The vessel with it.</param>
/// <param name="Mass">Empty mass of the vessel; none where the layup can't be laid.</param>
/// <param name="Rated">Working pressure the rules allow; none where the layup can't be laid or rated.</param>
/// <param name="Limit">What limits it: a part of the vessel.</param>
/// <param name="Refusal">Why it isn't a choice, a sentence; empty where it is.</param>
public sealed record LayupOption(string Name, PressureVessel Vessel, Mass? Mass, GaugePressure? Rated, string Limit, string Refusal)
{
    /// <summary>Whether no other layup holds as much for less mass, and it meets every wish.</summary>
    public bool IsChoice => Refusal.Length == 0;
}

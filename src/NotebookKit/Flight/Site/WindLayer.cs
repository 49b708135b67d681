using UnitsNet;

namespace NotebookKit.Flight.Site;

/// <summary>Wind at one height of a measured or forecast profile.</summary>
/// <param name="Height">Height above ground; 0 or above.</param>
/// <param name="Speed">Wind speed; 0 to 60 m/s.</param>
/// <param name="From">Where it blows from, clockwise from north; −360 to 360°.</param>
public readonly record struct WindLayer(Length Height, Speed Speed, Angle From);

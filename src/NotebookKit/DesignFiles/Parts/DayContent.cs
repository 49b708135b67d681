using NotebookKit.Filling.Fills;
using NotebookKit.Materials.Solids;
using UnitsNet;

namespace NotebookKit.DesignFiles.Parts;

/// <summary>What a file says of the day of a flight.</summary>
internal sealed record DayContent(DateOnly Day, string Flight, IReadOnlyList<VesselOfDay> Vessels, string FillOrder,
    IReadOnlyList<ChangeOfDay> Changes)
{
    public IReadOnlyList<PadPart> Gear { get; init; } = [];
}

/// <summary>What was measured on one vessel on the day of the flight.</summary>
/// <param name="Serial">Its serial, as its service record and the log of its proof have it.</param>
/// <param name="WallTemperature">Temperature of the wall at its warmest place; none where it wasn't measured.</param>
/// <param name="ResinMoisture">Water in its resin by weight; none where it wasn't measured.</param>
public sealed record VesselOfDay(string Serial, Temperature? WallTemperature, Property<Ratio>? ResinMoisture)
{
    /// <summary>The mark that was read off the vessel's label, "3f9a-71c2"; none where nobody read it.</summary>
    public string? Label { get; init; }
}

/// <summary>A value of the design that is otherwise on the day: the wind, the water.</summary>
/// <param name="Name">Path or plain name.</param>
/// <param name="Value">The value with its unit.</param>
public sealed record ChangeOfDay(string Name, string Value)
{
    /// <summary>Line of the file, from 1; 0 where it comes from none.</summary>
    public int Line { get; init; }

    /// <summary>Column of the file, from 1; 0 where it comes from none.</summary>
    public int Column { get; init; }
}

using UnitsNet;

namespace NotebookKit.DesignFiles.Parts;

/// <summary>One line of the mass budget as its file has it; what isn't given follows from the layout.</summary>
internal sealed record MassLine(string Name, string? Of, Mass? Weighed, Mass? Estimated, Length? At, Length? Extent, Length? Diameter,
    bool IsSolid, Ratio? Spread);

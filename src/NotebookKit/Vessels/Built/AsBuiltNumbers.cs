namespace NotebookKit.Vessels.Built;

/// <summary>What the readings come to, in SI, each with its standard uncertainty where all readings gave theirs.</summary>
internal sealed record AsBuiltNumbers(
    (double Value, double? Standard) FibreFraction, (double Value, double? Standard) Voids, (double Value, double? Standard) ResinShare,
    (double Value, double? Standard) Thickness, (double Value, double? Standard) FibreMass, (double Value, double? Standard) ResinMass,
    (double Value, double? Standard) WallMass);

namespace NotebookKit.Vessels.Ends.Modes;

/// <summary>How a load on a plate of radius 1 mounts up from the hole outwards: radius times shear, g(r) = α·r² + β.</summary>
internal readonly record struct PlateLoad(double Hole, double Square, double Constant)
{
    /// <summary>Pressure 1 outside the hole, and the share of its thrust on the hole that the edge supports.</summary>
    public static PlateLoad Pressure(double hole, double cover) => new(hole, 0.5, (cover - 1) * hole * hole / 2);

    /// <summary>A load of 2π around the edge of the hole.</summary>
    public static PlateLoad Edge(double hole) => new(hole, 0, 1);

    public double At(double r) => Square * r * r + Constant;

    /// <summary>Mean of g from the hole to a radius, without the difference of the two.</summary>
    public double Mean(double r) => Square * (r * r + r * Hole + Hole * Hole) / 3 + Constant;

    /// <summary>∫ g/r dr, but for a constant.</summary>
    public double SumOver(double r) => Square * r * r / 2 + (Constant == 0 ? 0 : Constant * Math.Log(r));
}

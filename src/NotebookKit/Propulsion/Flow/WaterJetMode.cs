namespace NotebookKit.Propulsion.Flow;

/// <summary>Which terms the established water jet has.</summary>
internal enum WaterJetMode
{
    /// <summary>Pressure alone.</summary>
    Plain,

    /// <summary>Pressure and head.</summary>
    Head,

    /// <summary>Pressure, head, inertia of the column, and the momentum that the column has inside the vessel.</summary>
    Inertial,
}

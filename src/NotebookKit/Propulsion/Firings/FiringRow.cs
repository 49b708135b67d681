namespace NotebookKit.Propulsion.Firings;

/// <summary>One moment of a firing in SI.</summary>
internal readonly record struct FiringRow(
    FiringStage Stage, double Time, double Height, double Speed, double Acceleration, double Thrust, double Pressure, double Temperature, double WaterKg,
    double GasKg, double MassFlow);

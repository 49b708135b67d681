namespace NotebookKit.Propulsion.Phases;

/// <summary>The closed gas follows a tabulated expansion.</summary>
internal readonly struct TableLaw(ExpansionTable table, double startVolumeM3) : IExpansionLaw<TableLaw>
{
    private readonly double _perStartVolume = 1 / startVolumeM3;

    public double Pressure(double volumeM3) => table.Pressure(Math.Log(volumeM3 * _perStartVolume));

    public double Temperature(double volumeM3) => table.Temperature(Math.Log(volumeM3 * _perStartVolume));

    public double EnergyGivenUp(double volumeM3) =>
        startVolumeM3 / table.StartVolume * table.EnergyGivenUp(Math.Log(volumeM3 * _perStartVolume));

    public double Available(double ambientPa)
    {
        var start = table.LogPressure(0);
        var x = table.AtPressure(Math.Log(ambientPa), (start - Math.Log(ambientPa)) / 1.4);
        return startVolumeM3 * (table.EnergyGivenUp(x) / table.StartVolume - ambientPa * (Math.Exp(x) - 1));
    }

    public TableLaw ForStartVolume(double volumeM3) => new(table, volumeM3);
}

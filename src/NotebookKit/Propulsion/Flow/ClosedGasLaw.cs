namespace NotebookKit.Propulsion.Flow;

/// <summary>
/// Pressure and temperature of the closed gas against its volume: p Vⁿ constant for an ideal gas, or a tabulated expansion. Which of the
/// two never changes along a flight, so the test for it costs nothing.
/// </summary>
internal readonly struct ClosedGasLaw
{
    private readonly ExpansionTable? _table;
    private readonly double _startPressurePa;
    private readonly double _startTemperatureK;
    private readonly double _startVolumeM3;
    private readonly double _exponent;
    private readonly double _heatCapacityRatio;

    /// <summary>An ideal gas with an exponent.</summary>
    public ClosedGasLaw(double startPressurePa, double startTemperatureK, double startVolumeM3, double exponent, double heatCapacityRatio)
    {
        (_startPressurePa, _startTemperatureK, _startVolumeM3) = (startPressurePa, startTemperatureK, startVolumeM3);
        (_exponent, _heatCapacityRatio) = (exponent, heatCapacityRatio);
    }

    /// <summary>A tabulated expansion.</summary>
    public ClosedGasLaw(ExpansionTable table, double startVolumeM3)
    {
        _table = table;
        _startVolumeM3 = startVolumeM3;
    }

    /// <summary>Pressure [Pa] at a volume [m³].</summary>
    public double Pressure(double volumeM3) =>
        _table is null ? _startPressurePa * Math.Pow(_startVolumeM3 / volumeM3, _exponent)
            : _table.Pressure(Math.Log(volumeM3 / _startVolumeM3));

    /// <summary>Temperature [K] at a volume [m³].</summary>
    public double Temperature(double volumeM3) =>
        _table is null ? _startTemperatureK * Math.Pow(_startVolumeM3 / volumeM3, _exponent - 1)
            : _table.Temperature(Math.Log(volumeM3 / _startVolumeM3));

    /// <summary>Internal energy given up since the start, had none entered as heat [J]; NaN where the exponent itself implies
    /// heat.</summary>
    public double EnergyGivenUp(double volumeM3)
    {
        if (_table is not null) return _startVolumeM3 / _table.StartVolume * _table.EnergyGivenUp(Math.Log(volumeM3 / _startVolumeM3));
        return _exponent == _heatCapacityRatio
            ? (_startPressurePa * _startVolumeM3 - Pressure(volumeM3) * volumeM3) / (_heatCapacityRatio - 1)
            : double.NaN;
    }

    /// <summary>Work beyond pushing back the outside air that the gas could do without heat down to a pressure [J].</summary>
    public double Available(double ambientPa)
    {
        if (_table is not null)
        {
            var log = Math.Log(ambientPa);
            var x = _table.AtPressure(log, (_table.LogPressure(0) - log) / 1.4);
            return _startVolumeM3 * (_table.EnergyGivenUp(x) / _table.StartVolume - ambientPa * (Math.Exp(x) - 1));
        }

        var expanded = _startVolumeM3 * Math.Pow(_startPressurePa / ambientPa, 1 / _heatCapacityRatio);
        return (_startPressurePa * _startVolumeM3 - ambientPa * expanded) / (_heatCapacityRatio - 1) - ambientPa * (expanded -
            _startVolumeM3);
    }

    /// <summary>The same law for another amount of the same gas, given by the volume it had at the start [m³].</summary>
    public ClosedGasLaw ForStartVolume(double volumeM3) =>
        _table is null ? new(_startPressurePa, _startTemperatureK, volumeM3, _exponent, _heatCapacityRatio) : new(_table, volumeM3);
}

namespace NotebookKit.Filling.Balances;

/// <summary>By how much the real gas chokes at a higher flow than the ideal one, read off between a few pressures.</summary>
internal readonly struct FlowScale
{
    private readonly int _count;
    private readonly double _highestPa;
    private readonly double[]? _factors;

    public FlowScale(GasLaw law, double highestPa, double kelvins)
    {
        _highestPa = highestPa;
        // Twelve to 300 bar; above, one every 25 bar.
        _count = Math.Max(12, (int)(highestPa / 25e5));
        _factors = law.IsReal ? law.FlowFactors(highestPa, kelvins, _count) : null;
    }

    /// <summary>The factor at a pressure ahead of the restrictor.</summary>
    public double At(double pascals)
    {
        if (_factors is null) return 1;
        var place = Math.Clamp(pascals / _highestPa * _count - 1, 0, _count - 1.000001);
        var i = (int)place;
        return _factors[i] + (place - i) * (_factors[i + 1] - _factors[i]);
    }
}

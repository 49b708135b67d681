using NotebookKit.Numerics.Ode;
using NotebookKit.Quantities.Numbers;

namespace NotebookKit.Launching.Heating;

/// <summary>Wall and contents of a vessel that waits in the sun, and the side of the wall that the sun meets square on, in SI.</summary>
internal readonly struct SunSystem : IOdeSystem
{
    // Liquid water, J/(kg K); a kilogram a litre.
    private const double WaterHeat = 4182, StefanBoltzmann = 5.670374419e-8, DryAirCv = 717.6;

    private readonly double _surfaceM2, _insideM2, _wallJPerK, _contentsJPerK, _sunW, _sunnyW, _film, _inside, _emittance, _airK;

    public SunSystem(WaitInSun wait)
    {
        double bore = wait.Chamber.Bore.Meters, end = Math.PI / 4 * bore * bore, volume = wait.Chamber.Volume.CubicMeters;
        _surfaceM2 = _insideM2 = (Math.PI * bore * volume / end) + (2 * end);
        _wallJPerK = _surfaceM2 * wait.Wall.Thickness.Meters * wait.Wall.Density.KilogramsPerCubicMeter
            * wait.Wall.HeatCapacity.JoulesPerKilogramKelvin;
        var water = volume * wait.Filled.WaterFraction.DecimalFractions;
        var gasKg = wait.Filled.Pressure.ToAbsolute(wait.Filled.Ambient).Pascals * (volume - water)
            / (StandardConstants.DryAirGas * wait.Filled.FilledAt.Kelvins);
        _contentsJPerK = (gasKg * DryAirCv) + (1000 * water * WaterHeat);
        _sunW = wait.Sun.Absorptance * wait.Sun.Sun.WattsPerSquareMeter * wait.ShareInSun * _surfaceM2;
        _sunnyW = _sunW / wait.ShareInSun;
        (_film, _inside, _emittance, _airK) = (wait.Sun.FilmWPerM2K, wait.Inside.WattsPerSquareMeterKelvin, wait.Sun.Emittance,
            wait.Sun.Air.Kelvins);
    }

    public int Dimension => 3;

    public void Derivatives(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        dydt[0] = WallRate(y[0], y[1], _sunW);
        dydt[1] = _inside * _insideM2 * (y[0] - y[1]) / _contentsJPerK;
        // What the sunny side gives to the rest of the wall isn't counted, which errs warm.
        dydt[2] = WallRate(y[2], y[1], _sunnyW);
    }

    private double WallRate(double wall, double contents, double sunW) =>
        (sunW - (_surfaceM2 * ((_film * (wall - _airK)) + (_emittance * StefanBoltzmann * (Math.Pow(wall, 4) - Math.Pow(_airK, 4)))))
            - (_inside * _insideM2 * (wall - contents))) / _wallJPerK;
}

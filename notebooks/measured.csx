// What others measured while vessels of theirs were filled and vented: figures sampled from published diagrams, about 1 % of full scale, with the set-up
// as far as it is published. Absolute pressures in kPa or bar and temperatures in K as printed, turned into what a gauge and a thermometer show.
record Reading(Series Time, Series Values);
Reading GasReading(double[] seconds, double[] kelvins) => new(new("Time", "s", seconds), new("Gas temperature", "°C", [.. kelvins.Select(k => k - 273.15)]));
Reading GaugeReading(double ambientBar, double[] seconds, double[] bars) => new(new("Time", "s", seconds), new("Pressure", "bar gauge", [.. bars.Select(b => b - ambientBar)]));
EngineeringChart Laid(string title, Series x, Series predicted, Reading measured) => OverlayChart.Draw(title, x, predicted, measured.Time, measured.Values);

// Air, horizontal steel vessel of 16.2 L, throat 2.71 mm: attributed to J. C. Dutton, R. E. Coverdill, Int. J. Engng Ed. 13 (1997) 123. The throat's coefficient isn't
// given there: 0.86 for venting is fitted to the pressures, and the inlet of 33 mm to the first temperature of the fill.
var lyingVessel = new Chamber(16.18.Litres(), 200.Millimetres(), 20.BarGauge());
var lyingWall = FillWall.Of(lyingVessel, 0.Percent(), ThermalWall.Steel(8.18.Millimetres())) with { Law = FilmLaw.Horizontal };
var airOut = new Vent
{
    Chamber = lyingVessel, Restrictor = new Orifice(2.71.Millimetres(), 0.86), From = 6.9.BarGauge(), SafePressure = 0.01.BarGauge(),
    Ambient = 1.BarAbsolute(), Temperature = 24.85.Celsius(), Wall = lyingWall,
};
var airOutPressure = GaugeReading(1, [0.23, 4.14, 8.06, 12.0, 15.7, 19.6, 23.6, 27.6, 31.5, 35.2], [7.688, 5.675, 4.233, 3.258, 2.621, 2.088, 1.711, 1.412, 1.204, 1.086]);
var airOutGas = GasReading([3.58, 7.65, 11.4, 15.2, 19.2, 23.2, 26.8, 30.8, 34.7], [285.9, 275.3, 265.8, 261.1, 257.8, 256.4, 256.7, 257.8, 260.4]);
var airIn = new PadFill
{
    Chamber = lyingVessel, Restrictor = new Orifice(2.71.Millimetres(), 0.84), Start = 3.7.Kilopascals().Absolute().ToGauge(1.BarAbsolute()), Supply = 0.BarGauge(),
    Target = (-0.01).BarGauge(), Ambient = 1.BarAbsolute(), Temperature = 21.85.Celsius(), Heat = FillHeat.Wall, Watch = 5.Seconds(), Wall = lyingWall with { Inlet = 33.Millimetres(), Stirring = JetStirring.Throughout },
};
var airInPressure = GaugeReading(1, [2.31, 5.02, 6.94, 9.46, 12.4, 16.3, 19.2], [0.177, 0.335, 0.477, 0.637, 0.774, 0.956, 1.001]);
var airInGas = GasReading([1.12, 2.73, 6.91, 12.5, 17.0, 21.8], [309.9, 312.1, 314.1, 313.7, 312.3, 311.4]);

// Nitrogen at 150 bar, vertical steel vessel of 89.2 L, 6.35 mm: M. A. Haque et al., Trans. IChemE 70B (1992) 3, experiment I1. The coefficient of 0.72 is fitted by hand.
var standingVessel = new Chamber(89.2.Litres(), 273.Millimetres(), 200.BarGauge());
var nitrogenOut = new Vent
{
    Chamber = standingVessel, Restrictor = new Orifice(6.35.Millimetres(), 0.72), From = 148.98675.BarGauge(), SafePressure = 1.BarGauge(), Temperature = 14.85.Celsius(),
    Gas = Gas.Nitrogen, Properties = GasProperties.Real, Wall = FillWall.Of(standingVessel, 0.Percent(), ThermalWall.Steel(25.Millimetres())),
};
var nitrogenPressure = GaugeReading(1.01325, [0, 5.0, 9.9, 14.8, 19.5, 24.4, 29.5, 39.3, 49.1], [150, 92.6, 65.7, 50.6, 39.2, 31.7, 25.8, 17.5, 12.0]);
var nitrogenTop = GasReading([10, 20, 30, 40], [238.2, 213.6, 206.7, 206.7]);
var nitrogenBottom = GasReading([10, 20, 30, 40], [228.2, 203.8, 192.0, 187.7]);

// Hydrogen vented from 138 bar in 14, 30 and 480 s, vertical steel cylinder of 49.9 L: J. J. Byrnes, R. C. Reid, F. E. Ruccia, Ind. Eng. Chem. Process Des.
// Dev. 3 (1964) 206, runs 9, 7, 8. The valve isn't published: its bore is fitted to one reading of pressure. In the slow run a water bath holds the wall's temperature.
var hydrogenCylinder = new Chamber(49.9.Litres(), 217.Millimetres(), 200.BarGauge());
var thinSteel = FillWall.Of(hydrogenCylinder, 0.Percent(), ThermalWall.Steel(7.2.Millimetres()));
Vent HydrogenOut(double bar, double kelvins, double bore, FillWall wall) => new()
{
    Chamber = hydrogenCylinder, Restrictor = new Orifice(bore.Millimetres(), 0.8), From = (bar - 1.01325).BarGauge(), SafePressure = 4.BarGauge(),
    Temperature = kelvins.Kelvins(), Gas = Gas.Hydrogen, Properties = GasProperties.Real, Wall = wall,
};
double ColdestBy(VentCurve curve, double seconds) => Enumerable.Range(0, curve.Time.Count).Where(i => curve.Time[i] <= seconds).Min(i => curve.Temperature[i]);
double[] hydrogenSeconds = [14, 30, 480];
double[] hydrogenColdest =
[
    ColdestBy(HydrogenOut(140, 294.6, 3.78, thinSteel).Run().WithWall!, 14), ColdestBy(HydrogenOut(136, 293, 2.70, thinSteel).Run().WithWall!, 29.7),
    ColdestBy(HydrogenOut(137, 291.8, 0.70, thinSteel with { HeatCapacity = null }).Run().WithWall!, 478),
];

// Hydrogen into a steel cylinder of 23.5 L from 50 bar, while the station raises its pressure: M. Striednig et al., Int. J. Hydrogen Energy 39 (2014) 8495.
// Bore and wall aren't published; 230 mm and 8 mm are those of a cylinder of that size (common practice, no source).
var hydrogenTank = new Chamber(23.5.Litres(), 230.Millimetres(), 300.BarGauge());
PadFill HydrogenIn(double megapascalsPerMinute, double seconds) => new()
{
    Chamber = hydrogenTank, Gas = Gas.Hydrogen, Properties = GasProperties.Real, Restrictor = new Orifice(4.Millimetres(), 0.8),
    Start = 48.98675.BarGauge(), Target = (48.98675 + megapascalsPerMinute * seconds / 6).BarGauge(), Supply = 239.BarGauge(),
    SupplyRise = PressureChangeRate.FromMegapascalsPerMinute(megapascalsPerMinute), Temperature = 24.85.Celsius(), Heat = FillHeat.Wall, Watch = 30.Seconds(),
    Wall = FillWall.Of(hydrogenTank, 0.Percent(), ThermalWall.Steel(8.Millimetres())),
};
var hydrogenFast = GasReading([0.23, 3.15, 4.85, 9.49, 12.2, 17.1, 22.8, 24.8, 27.5, 28.5, 34.5, 41.4, 50.8], [299.3, 312.6, 321.8, 337.0, 341.4, 345.4, 347.6, 347.2, 349.7, 351.5, 345.7, 338.9, 329.7]);

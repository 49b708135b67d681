using NotebookKit.Aerodynamics;
using NotebookKit.Charts.Engineering;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Charts.Results;

/// <summary>Charts of fins as structure: <c>fins.ChartFlutter(...)</c>.</summary>
public static class FinCharts
{
    private const int Points = 25;

    /// <summary>Flutter margin over plate thickness (half to twice that of the fins) and span (half to one and a half times), with the margin that is wanted.</summary>
    /// <param name="fins">The fins to start from; chords and sweep stay.</param>
    /// <param name="shearModulus">Shear modulus that twisting sees; 0.1 to 100 GPa.</param>
    /// <param name="fastest">Fastest flight speed; 1 m/s to Mach 0.9.</param>
    /// <param name="air">Air where that speed is reached; sea level on a standard day where none is given.</param>
    /// <exception cref="InvalidDesignException">The fins can't be computed.</exception>
    /// <exception cref="OutOfRangeException">An input is outside its range.</exception>
    public static EngineeringChart ChartFlutter(this FinSet fins, Pressure shearModulus, Speed fastest, AirConditions? air = null)
    {
        ArgumentNullException.ThrowIfNull(fins);
        var given = fins.Flutter(shearModulus, fastest, air);
        Series Range(string name, Length length, double from, double to) => new(name, "mm", [.. Enumerable.Range(0, Points).Select(i => length.Millimeters * (from + ((to - from) * i / (Points - 1))))]);
        var thickness = Range("Fin thickness", fins.Thickness, 0.5, 2);
        var span = Range("Fin span", fins.Planform.Reach, 0.5, 1.5);
        var margins = new double[Points * Points];
        Parallel.For(0, Points, row =>
        {
            var stretched = fins.WithSpanTimes(span[row] / fins.Planform.Reach.Millimeters);
            for (var column = 0; column < Points; column++)
            {
                var trial = stretched with { Thickness = thickness[column].Millimetres() };
                // A plate too thick for the method leaves a blank, not a number.
                margins[(row * Points) + column] = trial.Validate().Any(f => f.Severity == FindingSeverity.Error) ? double.NaN : trial.Flutter(shearModulus, fastest, air).Margin;
            }
        });
        return FlutterChart.Draw(thickness, span, new Series("Flutter margin", "-", margins), FlutterResult.WantedMargin)
            .With(new Notes.Callout(fins.Thickness.Millimeters, fins.Planform.Reach.Millimeters, $"these fins: {Digits.Round(given.Margin)}")) with
        {
            Title = $"Flutter margin at {fastest.Show()}",
        };
    }
}

using NotebookKit.Filling.Fills;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.Measured;

/// <summary>A fill as it was logged, from which the restrictor's effective conductance is fitted: what a maker's sheet or a drill size
/// can't tell.</summary>
/// <remarks>
/// Least squares of the fill model on the gauge, over conductance, time of opening, pressure at shutting, and film coefficient of the wall.
/// The critical ratio is kept as given.
/// Source: K. Levenberg 1944, D. W. Marquardt 1963 (damped Gauss-Newton); G. A. F. Seber, C. J. Wild, Nonlinear Regression, 1989
/// (confidence intervals).
/// </remarks>
public sealed record FillLog
{
    /// <summary>The fill as it was meant: vessel, supply, water, ambient. Its restrictor is only the first guess; the valve open
    /// throughout.</summary>
    public required PadFill Fill { get; init; }

    /// <summary>The clock, in s, rising.</summary>
    public required Series Time { get; init; }

    /// <summary>The gauge, in bar gauge.</summary>
    public required Series Pressure { get; init; }

    /// <summary>Everything wrong with this log.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        List<Finding?> findings =
        [
            .. GaugeColumns.Wrong(Time, Pressure),
            Time.Values.Zip(Time.Values.Skip(1)).All(p => p.Second > p.First) ? null : FillingFindings.TimesDoNotRise(),
            Fill.Valve is null ? null : FillingFindings.FitTakesOneOpeningOfValve(),
        ];
        if (findings.All(f => f is null))
        {
            var rise = Pressure.Values.Max() - Pressure[0];
            if (rise < 1) findings.Add(FillingFindings.GaugeRisesTooLittle(rise));
            if (Pressure.Values.Max() > Fill.Supply.Bar)
                findings.Add(FillingFindings.GaugeReadsMoreThanSupply(Pressure.Values.Max(), Fill.Supply));
        }

        findings.AddRange((Fill with { Target = Fill.Chamber.RatedPressure < Fill.Supply ? Fill.Chamber.RatedPressure
            : Fill.Supply }).Validate());
        return findings.OfType<Finding>().ToList();
    }

    /// <summary>Fits the restrictor to the log. Source: Levenberg 1944, Marquardt 1963.</summary>
    /// <exception cref="InvalidDesignException">The log can't be fitted; all reasons are in it.</exception>
    public FillFit Fit()
    {
        var findings = Validate();
        InvalidDesignException.ThrowIfAny("Fill log", findings);
        return FillFitting.Fit(this, findings);
    }
}

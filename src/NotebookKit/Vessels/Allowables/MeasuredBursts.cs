using MathNet.Numerics.Statistics;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Vessels.Allowables;

/// <summary>Bursts measured on vessels made alike.</summary>
/// <param name="Bursts">Burst pressures; each above 0, 2 or more.</param>
/// <remarks>Source: MIL-HDBK-17-1F (now CMH-17 Volume 1, ch. 8).</remarks>
public sealed record MeasuredBursts(IReadOnlyList<GaugePressure> Bursts)
{
    /// <summary>All that is wrong with them.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        var findings = new List<Finding>();
        if (Bursts.Count < 2) findings.Add(VesselsFindings.TooFewBurstsForBasisValues(Bursts.Count));
        if (Bursts.Any(b => b.Pascals <= 0)) findings.Add(VesselsFindings.BurstIsNotPositive());
        return findings;
    }

    /// <summary>Mean burst. Source: definition.</summary>
    public GaugePressure Mean => GaugePressure.FromBar(Bursts.Average(b => b.Bar));

    /// <summary>Coefficient of variation, with n − 1 [-]. Source: definition.</summary>
    public double Spread => Bursts.Select(b => b.Bar).StandardDeviation() / Mean.Bar;

    /// <summary>Basis values by the normal distribution. Source: MIL-HDBK-17-1F, §8.5.</summary>
    /// <exception cref="InvalidDesignException">The bursts aren't valid.</exception>
    public BasisValue Normal()
    {
        InvalidDesignException.ThrowIfAny("Measured bursts", Validate());
        var n = Bursts.Count;
        double b = ToleranceFactor.BBasis(n), a = ToleranceFactor.ABasis(n);
        var (mean, deviation) = (Mean, Spread * Mean.Bar);
        var lowB = GaugePressure.FromBar(Math.Max(mean.Bar - b * deviation, 0));
        var lowA = GaugePressure.FromBar(Math.Max(mean.Bar - a * deviation, 0));
        var findings = new List<Finding>();
        if (n < 5) findings.Add(VesselsFindings.BasisRestsOnFewBursts(n, b));
        return new BasisValue("normal", n, mean, Spread, lowB, lowA, findings, new Working("Basis values, normal",
        [
            new("Mean and standard deviation", @"\bar p,\quad s = \sqrt{\frac{\sum(p_i-\bar p)^2}{n-1}}",
                string.Join(", ", Bursts.Select(p => Digits.Round(p.Bar))) + " bar",
                $"{Digits.Round(mean.Bar, 4)} bar, {Digits.Round(deviation, 4)} bar", AllowableSources.Normal),
            new("Factor for the B-basis", @"k_B = t'_{0.95}(n-1,\ z_{0.90}\sqrt n)/\sqrt n", $"n = {n}", Digits.Round(b, 5),
                AllowableSources.Normal),
            new("B-basis", @"B = \bar p - k_B\,s", $"{Digits.Round(mean.Bar, 4)} − {Digits.Round(b, 4)} × "
                + $"{Digits.Round(deviation, 4)} bar", lowB.ToString(), AllowableSources.Normal),
            new("A-basis", @"A = \bar p - k_A\,s", $"{Digits.Round(mean.Bar, 4)} − {Digits.Round(a, 4)} × "
                + $"{Digits.Round(deviation, 4)} bar", lowA.ToString(), AllowableSources.Normal),
        ]));
    }

    /// <summary>Basis values by the Weibull distribution; five bursts or more. Source: MIL-HDBK-17-1F, §8.3.4.</summary>
    /// <exception cref="InvalidDesignException">The bursts aren't valid.</exception>
    /// <exception cref="OutOfRangeException">There are fewer than five.</exception>
    public BasisValue Weibull()
    {
        InvalidDesignException.ThrowIfAny("Measured bursts", Validate());
        var n = Bursts.Count;
        var factorB = WeibullFactor.BBasis(n);
        var fit = WeibullFit.Of([.. Bursts.Select(b => b.Bar)]);
        double tenth = fit.Quantile(0.10), b = tenth * Math.Exp(-factorB / (fit.Shape * Math.Sqrt(n)));
        GaugePressure? a = n <= 30 ? GaugePressure.FromBar(fit.Quantile(0.01) * Math.Exp(-WeibullFactor.ABasis(n) / (fit.Shape *
            Math.Sqrt(n)))) : null;
        return new BasisValue("Weibull", n, Mean, fit.Spread, GaugePressure.FromBar(b), a, [], new Working("Basis values, Weibull",
        [
            new("Scale and shape by maximum likelihood", @"\hat\alpha,\ \hat\beta",
                string.Join(", ", Bursts.Select(p => Digits.Round(p.Bar))) + " bar",
                $"{Digits.Round(fit.Scale, 4)} bar, {Digits.Round(fit.Shape, 4)}", AllowableSources.Weibull),
            new("One in ten below", @"q = \hat\alpha\,(0.10536)^{1/\hat\beta}",
                $"{Digits.Round(fit.Scale, 4)} bar × 0.10536^(1/{Digits.Round(fit.Shape, 4)})", $"{Digits.Round(tenth, 4)} bar",
                AllowableSources.Weibull),
            new("B-basis", @"B = q\,e^{-V/(\hat\beta\sqrt n)}", $"V = {Digits.Round(factorB, 4)}, n = {n}",
                GaugePressure.FromBar(b).ToString(), AllowableSources.Weibull),
        ]));
    }
}

using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Life.Retests;

/// <summary>When a regulation wants a kind of cylinder tested again, and when its life ends.</summary>
/// <param name="Name">Kind of cylinder as the regulation names it.</param>
/// <param name="TestFactor">Test over service pressure [-]; 1 to 3; none where no test or another paper says it.</param>
/// <param name="IntervalYears">Years between tests; none where no test or another paper says it.</param>
/// <param name="Source">Where it is printed.</param>
/// <remarks>
/// None of these rules covers a club's own vessel: they are references. Dates: a year later is the same day and month; 29 February becomes
/// 28 February where the year has none. A life counted from a month of making ends with the first day of that month, so that it never ends
/// late. Source: the regulation that the rule names.
/// </remarks>
public sealed record RetestRule(string Name, double? TestFactor, int? IntervalYears, Source Source)
{
    /// <summary>Least time that the test pressure is held; none where it is not given.</summary>
    public Duration? Hold { get; init; }

    /// <summary>Years from making to the end of life; none where it is not given.</summary>
    public int? LifeYears { get; init; }

    /// <summary>Pressurizations to the end of life; none where it is not given.</summary>
    public int? LifePressurizations { get; init; }

    /// <summary>Permanent over total expansion above which it is condemned; none where it is not given.</summary>
    public Ratio? PermanentLimit { get; init; }

    /// <summary>Whether it is condemned when its elastic expansion is above the figure marked on it.</summary>
    public bool HasMarkedElasticLimit { get; init; }

    /// <summary>What else the regulation says.</summary>
    public string Note { get; init; } = "";

    /// <summary>Everything that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() =>
        [.. new[]
        {
            TestFactor is { } factor ? new ValidRange<double>(1, 3).Find(factor, "test over service pressure", "5/3 is usual.") : null,
            IntervalYears is { } years ? new ValidRange<int>(1, 20).Find(years, "years between tests", "3 to 12 are usual.") : null,
            LifeYears is { } life ? new ValidRange<int>(1, 50).Find(life, "years of life", "15 to 24 are usual.") : null,
        }.OfType<Finding>()];

    /// <summary>Day by which the next test is due; none where the rule gives no interval.</summary>
    /// <param name="lastTest">Day of the last test.</param>
    public DateOnly? Due(DateOnly lastTest) => IntervalYears is { } years ? After(lastTest, years) : null;

    /// <summary>First day out of service: the first of the month of making, so many years on; none where the rule gives no life.</summary>
    /// <param name="made">Day or month of making; the month counts.</param>
    public DateOnly? LifeEnds(DateOnly made) => LifeYears is { } years ? After(new(made.Year, made.Month, 1), years) : null;

    private static DateOnly After(DateOnly day, int years) =>
        new ValidRange<int>(1, 9999).Contains(day.Year + years) ? day.AddYears(years)
            : throw new OutOfRangeException("years after " + day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture),
                years.ToString(System.Globalization.CultureInfo.InvariantCulture), (1 - day.Year).ToString(
                    System.Globalization.CultureInfo.InvariantCulture), (9999 - day.Year).ToString(
                    System.Globalization.CultureInfo.InvariantCulture), "Check the day and the rule.");

    /// <summary>Whether a test's expansion condemns it; none where the rule's limits or the marked figure are not given, and nothing else
    /// condemns it.</summary>
    /// <param name="total">Expansion at test pressure; above 0.</param>
    /// <param name="permanent">Expansion that stays; 0 to the total.</param>
    /// <param name="markedElastic">Rejection elastic expansion marked on the cylinder; above 0, none where it was not read.</param>
    /// <exception cref="OutOfRangeException">An expansion is out of range.</exception>
    public bool? IsCondemnedBy(Volume total, Volume permanent, Volume? markedElastic)
    {
        var least = Volume.FromMicroliters(1);
        new ValidRange<Volume>(least, Volume.FromCubicMeters(1)).Check(total, "total expansion", "Without growth nothing can be judged.");
        new ValidRange<Volume>(Volume.Zero, total).Check(permanent, "permanent expansion", "It can't be larger than the total.");
        if (markedElastic is { } marked) new ValidRange<Volume>(least, Volume.FromCubicMeters(1)).Check(marked, "marked elastic expansion",
            "Read it from the cylinder.");
        if (PermanentLimit is { } limit && permanent / total > limit.DecimalFractions) return true;
        if (HasMarkedElasticLimit) return markedElastic is { } ree ? total - permanent > ree : null;
        return PermanentLimit is null ? null : false;
    }

    /// <summary>Its figures in words.</summary>
    public override string ToString()
    {
        List<string> parts = [];
        if (TestFactor is { } f) parts.Add($"test at {Digits.Round(f)} times service pressure");
        if (Hold is { } hold) parts.Add($"held {hold.Show()} or longer");
        if (IntervalYears is { } y) parts.Add($"every {y} years");
        if (LifeYears is { } life) parts.Add($"life {life} years");
        if (LifePressurizations is { } n) parts.Add($"or {n} pressurizations");
        if (Note.Length > 0) parts.Add(Note);
        return $"{Name}: {string.Join(", ", parts)}";
    }
}

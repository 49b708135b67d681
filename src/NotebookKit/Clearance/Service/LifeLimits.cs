using NotebookKit.Life.Retests;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Clearance.Service;

/// <summary>Limits of a vessel's life, each figure with its source. What a set doesn't name it doesn't limit; what must be done after a
/// mishap it always says.</summary>
/// <param name="Name">What the set is called.</param>
/// <param name="Covers">What vessels it was written for.</param>
public sealed record LifeLimits(string Name, string Covers)
{
    /// <summary>What every reference says of a club's vessel.</summary>
    public const string NoneCovers = "None of the published sets covers a hand-laid wet braid; they are for comparison.";

    /// <summary>Longest time between two proofs, in months; the vessel may still be filled on the day a proof is due.</summary>
    public LifeFigure<int>? MonthsBetweenProofs { get; init; }

    /// <summary>Most fills after a proof.</summary>
    public LifeFigure<int>? FillsBetweenProofs { get; init; }

    /// <summary>Most times it is pressed in all its life, proofs among them.</summary>
    public LifeFigure<int>? Pressurisations { get; init; }

    /// <summary>Longest life from the day it was made, in months; its last day is still in it.</summary>
    public LifeFigure<int>? MonthsOfLife { get; init; }

    /// <summary>Largest sum of times at pressure.</summary>
    public LifeFigure<Duration>? TimeAtPressure { get; init; }

    /// <summary>Temperature of the wall above which it has been hot; none: any event of heat counts.</summary>
    public LifeFigure<Temperature>? HotAbove { get; init; }

    /// <summary>What it needs after a hard landing.</summary>
    public LifeFigure<Recheck> AfterHardLanding { get; init; } = Practice(Recheck.Proof, "Proof-test again after a hard landing");

    /// <summary>What it needs after a drop.</summary>
    public LifeFigure<Recheck> AfterDrop { get; init; } = Practice(Recheck.Proof, "Proof-test again after a drop");

    /// <summary>What it needs after it was hot.</summary>
    public LifeFigure<Recheck> AfterHeat { get; init; } = Practice(Recheck.Proof, "Proof-test again after heat");

    /// <summary>What it needs after a repair.</summary>
    public LifeFigure<Recheck> AfterRepair { get; init; } = Practice(Recheck.Proof, "Proof-test again after a repair");

    /// <summary>What it needs after an inspection that found it not sound.</summary>
    public LifeFigure<Recheck> AfterFailedInspection { get; init; } = Practice(Recheck.InspectionAndProof,
        "Proof-test and inspect again after a finding");

    /// <summary>Whether it is inspected on every day it is filled.</summary>
    public LifeFigure<bool> InspectEveryDayOfUse { get; init; } = new(true,
        Source.CommonPractice("Inspect on the day, before the first fill"));

    /// <summary>The club's own: 12 months and 50 fills between proofs, 3 years, 100 pressurisations, 20 h at pressure, hot above 50 °C.
    /// Common practice, no source for any of them.</summary>
    public static LifeLimits Club { get; } = new("Club limits", "a club's own vessels, behind cover")
    {
        MonthsBetweenProofs = Practice(12, "A proof every year"),
        FillsBetweenProofs = Practice(50, "A proof every fifty fills"),
        Pressurisations = Practice(100, "A hundred pressurisations in all"),
        MonthsOfLife = Practice(36, "Three years"),
        TimeAtPressure = Practice(20.Hours(), "Twenty hours at pressure in all"),
        HotAbove = Practice(50.Celsius(), "Hot is above 50 °C, short of where resin cured on the bench goes soft"),
    };

    /// <summary>Cylinders of type 3HT (light steel): interval, life and pressurisations of <see cref="RetestRules.LightSteel"/>. Source: 49
    /// CFR 180.209 and 180.205(i).</summary>
    public static LifeLimits AircraftCylinder { get; } = Of(RetestRules.LightSteel, "49 CFR 180, type 3HT",
        "seamless steel cylinders for aircraft");

    /// <summary>Carbon-wrapped aluminium cylinders: interval and life of <see cref="RetestRules.CarbonCylinder"/>. Source: DOT-E 11194, as
    /// a bulletin quotes it.</summary>
    public static LifeLimits CarbonCylinder { get; } = Of(RetestRules.CarbonCylinder, "DOT-E 11194",
        "carbon on a seamless aluminium liner");

    /// <summary>Vehicle gas cylinders: longest life of <see cref="RetestRules.VehicleGas"/>. Source: ISO 11439:2000, 4.1.3.</summary>
    public static LifeLimits VehicleGasCylinder { get; } = Of(RetestRules.VehicleGas, "ISO 11439", "gas cylinders on board of vehicles");

    /// <summary>All sets, the club's own first.</summary>
    public static IReadOnlyList<LifeLimits> All { get; } = [Club, AircraftCylinder, CarbonCylinder, VehicleGasCylinder];

    /// <summary>All that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() =>
    [
        .. new[]
        {
            ServiceText.Find(Name, "name of the limits", ServiceEvent.LongestText),
                Count(MonthsBetweenProofs, "months between proofs", 120),
            Count(FillsBetweenProofs, "fills between proofs", 100_000), Count(Pressurisations, "pressurisations in all", 100_000),
                Count(MonthsOfLife, "months of life", 600),
            TimeAtPressure is { } time ? new ValidRange<Duration>(0.1.Hours(),
                100_000.Hours()).Find(time.Value.ToUnit(UnitsNet.Units.DurationUnit.Hour), $"{Name}: time at pressure",
                "Leave it out for no limit.") : null,
            HotAbove is { } hot ? new ValidRange<Temperature>(20.Celsius(),
                150.Celsius()).Find(hot.Value.ToUnit(UnitsNet.Units.TemperatureUnit.DegreeCelsius), $"{Name}: hot above",
                "Stay below the resin's softening.") : null,
        }.OfType<Finding>(),
        .. new[] { AfterHardLanding, AfterDrop, AfterHeat, AfterRepair, AfterFailedInspection }.Where(r => !Enum.IsDefined(r.Value))
            .Select(_ => ClearanceFindings.NeedAfterMishapUnknown(Name)),
    ];

    // The figures stand once, with the rule that prints them.
    private static LifeLimits Of(RetestRule rule, string name, string covers) => new(name, covers)
    {
        MonthsBetweenProofs = Months(rule.IntervalYears, rule.Source),
        MonthsOfLife = Months(rule.LifeYears, rule.Source),
        Pressurisations = rule.LifePressurizations is { } most ? new(most, rule.Source) : null,
    };

    private static LifeFigure<int>? Months(int? years, Source source) => years is { } whole ? new(12 * whole, source) : null;

    private Finding? Count(LifeFigure<int>? figure, string name, int most) =>
        figure is null || (figure.Value >= 1 && figure.Value <= most)
            ? null
            : ClearanceFindings.LimitOutOfRange(Name, name, figure.Value, most);

    private static LifeFigure<T> Practice<T>(T figure, string what) where T : struct => new(figure, Source.CommonPractice(what));
}

/// <summary>One figure of a set of limits, and where it comes from.</summary>
/// <typeparam name="T">A count, a quantity or a choice.</typeparam>
/// <param name="Value">The figure.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record LifeFigure<T>(T Value, Source Source) where T : struct;

/// <summary>What a vessel needs after something happened to it, before it is filled again.</summary>
public enum Recheck
{
    /// <summary>A proof, and an inspection that finds it sound.</summary>
    InspectionAndProof,

    /// <summary>A proof.</summary>
    Proof,

    /// <summary>An inspection that finds it sound; a proof will do as well.</summary>
    Inspection,
}

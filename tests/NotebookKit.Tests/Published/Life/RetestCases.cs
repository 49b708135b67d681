using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Published.Life;

public class RetestCases
{
    public static TheoryData<string, double?, int?> Printed => new()
    {
        { "3A, 3AA", 5.0 / 3, 5 },
        { "3AL", 5.0 / 3, 5 },
        { "3HT", 5.0 / 3, 3 },
        { "3T", 5.0 / 3, 5 },
        { "4E", 2, 5 },
        { "3E", null, null },
        { "special permit", null, null },
        { "foreign", 5.0 / 3, 5 },
    };

    [Theory]
    [PublishedCase("L56", "49 CFR 180.209, Table 1 (regulation text)")]
    [MemberData(nameof(Printed))]
    public void Test_pressure_and_interval(string name, double? factor, int? years)
    {
        var rule = RetestRules.All.Single(r => r.Name == name);
        Assert.Equal(factor, rule.TestFactor);
        Assert.Equal(years, rule.IntervalYears);
        Assert.Contains("180.209", rule.Source.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    [PublishedCase("L57", "49 CFR 180.205(i), 2004: 24 years or 4380 pressurizations")]
    public void Light_steel_ends_at_24_years_or_4380_pressurizations()
    {
        var rule = RetestRules.LightSteel;
        Assert.Equal(24 * 365 / 2, rule.LifePressurizations);
        Assert.Equal(new DateOnly(2024, 3, 1), rule.LifeEnds(new DateOnly(2000, 3, 1)));
    }

    [Fact]
    [PublishedCase("L57", "49 CFR 180.205(i), 2004: permanent above 10 % of total, or elastic above the marked figure")]
    public void Light_steel_is_condemned_by_its_expansion()
    {
        var rule = RetestRules.LightSteel;
        Volume total = 100.Millilitres(), marked = 95.Millilitres();
        Assert.Equal(false, rule.IsCondemnedBy(total, 10.Millilitres(), marked));
        Assert.Equal(true, rule.IsCondemnedBy(total, 10.1.Millilitres(), marked));
        Assert.Equal(true, rule.IsCondemnedBy(total, 4.Millilitres(), marked));
        Assert.Null(rule.IsCondemnedBy(total, 4.Millilitres(), null));
    }

    [Fact]
    [PublishedCase("L58", "DOT-E 11194 as a bulletin quotes it: 15 years, tests each 5 years, 5/3, held 60 s; ISO 11439:2000, "
        + "4.1.3: 20 years")]
    public void Wrapped_carbon_lives_15_years_from_its_month()
    {
        var rule = RetestRules.CarbonCylinder;
        Assert.Equal(new DateOnly(2027, 5, 1), rule.LifeEnds(new DateOnly(2012, 5, 31)));
        Assert.Equal(5.0 / 3, rule.TestFactor);
        Assert.Equal(60, rule.Hold!.Value.Seconds);
        Assert.Equal(true, rule.IsCondemnedBy(100.Millilitres(), 1.Millilitres(), 98.Millilitres()));
        Assert.Equal(20, RetestRules.VehicleGas.LifeYears);
    }

    [Fact]
    [PublishedCase("L58", "calendar arithmetic: 29 February becomes 28 February; 2026-11-27 + 5 years is 1826 days, + 3 years 1096 days")]
    public void Due_dates()
    {
        Assert.Equal(new DateOnly(2029, 2, 28), RetestRules.CarbonCylinder.Due(new DateOnly(2024, 2, 29)));
        var day = new DateOnly(2026, 11, 27);
        Assert.Equal(1826, RetestRules.Steel.Due(day)!.Value.DayNumber - day.DayNumber);
        Assert.Equal(1096, RetestRules.LightSteel.Due(day)!.Value.DayNumber - day.DayNumber);
    }
}

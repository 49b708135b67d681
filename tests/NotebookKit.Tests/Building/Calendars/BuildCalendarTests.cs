using CsCheck;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Building.Calendars;

public class BuildCalendarTests
{
    // A Monday.
    private static readonly DateTime Monday = new(2026, 3, 2, 18, 30, 0, DateTimeKind.Unspecified);

    private static BuildTask Task(string name, double hands, double waits, params string[] after)
        => new(name, hands.Hours(), waits.Hours(), after);

    [Fact]
    public void Cures_run_side_by_side_while_hands_take_turns()
    {
        var plan = new BuildCalendar([Task("wrap", 1, 12), Task("fins", 1, 12)], Monday, BenchHours.Evenings).Plan();
        Assert.Equal(Monday.AddHours(14), plan.End);
        Assert.Equal(Monday.AddHours(13), (new BuildCalendar([Task("wrap", 1, 12), Task("fins", 1, 12)], Monday,
            BenchHours.Evenings) { People = 2 }).Plan().End);
    }

    [Fact]
    public void Work_that_would_not_end_by_the_end_of_the_evening_waits_for_the_next()
    {
        var plan = new BuildCalendar([Task("wrap", 2, 0), Task("fillets", 2, 0, "wrap")], Monday, BenchHours.Evenings).Plan();
        Assert.Equal(Monday.AddDays(1), plan.Steps[1].Start);
    }

    [Fact]
    public void Nobody_works_on_days_that_are_not_theirs()
    {
        var friday = Monday.AddDays(4);
        var plan = new BuildCalendar([Task("wrap", 3, 12), Task("fillets", 1, 0, "wrap")], friday, BenchHours.Evenings).Plan();
        Assert.Equal(DayOfWeek.Monday, plan.Steps[1].Start.DayOfWeek);
    }

    [Fact]
    public void No_plan_is_shorter_than_its_longest_chain_and_nobody_is_in_two_places() =>
        Gen.Select(Gen.Double[0.25, 3].Array[2, 9], Gen.Double[0, 20].Array[9], Gen.Int[0, 1000],
            Gen.Int[1, 3]).Sample((hands, waits, shape, people) =>
        {
            var tasks = hands.Select((h, i) => Task($"t{i}", h, waits[i],
                i > 0 && (shape >> i) % 2 == 0 ? [$"t{(shape / (i + 1)) % i}"] : [])).ToList();
            var plan = new BuildCalendar(tasks, Monday, BenchHours.Evenings) { People = people }.Plan();
            Assert.True(plan.End - plan.Steps[0].Start >= TimeSpan.FromHours(plan.Shortest.Hours) - TimeSpan.FromMinutes(1));
            foreach (var step in plan.Steps)
            {
                Assert.All(step.Task.After, b => Assert.True(plan.Steps.Single(s => s.Task.Name == b).Ready <= step.Start));
                Assert.True(step.Start.TimeOfDay >= new TimeSpan(18, 30, 0) && step.WorkEnd.TimeOfDay <= new TimeSpan(22, 0, 0));
                Assert.True(plan.Steps.Count(s => s.Start <= step.Start && step.Start < s.WorkEnd) <= people);
            }
        }, iter: 200);

    [Fact]
    public void Bad_plans_are_refused_with_every_reason()
    {
        var message = Assert.Throws<InvalidDesignException>(() => new BuildCalendar([Task("a", 1, 0, "b"), Task("a", 1, -1),
            Task("c", 30, 0)], Monday, BenchHours.Evenings) { People = 0 }.Plan()).Message;
        Assert.Contains("called 'a'", message, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("waits for 'b'", message, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("wait of a", message, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("hands-on time of c", message, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("Number of people is 0", message, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void A_circle_and_work_longer_than_an_evening_are_refused()
    {
        Assert.Contains("circle", Assert.Throws<InvalidDesignException>(() => new BuildCalendar([Task("a", 1, 0, "b"),
            Task("b", 1, 0, "a")], Monday, BenchHours.Evenings).Plan()).Message, StringComparison.Ordinal);
        Assert.Contains("an evening has 3.5 h", Assert.Throws<InvalidDesignException>(() => new BuildCalendar([Task("a", 5, 0)], Monday,
            BenchHours.Evenings).Plan()).Message, StringComparison.Ordinal);
    }
}

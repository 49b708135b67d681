namespace NotebookKit.Notebooks.Tests;

/// <summary>Sentences of the lessons hold for the numbers that they speak of, and a number has one value on all pages.</summary>
[Collection(AllNotebooksTests.Name)]
public sealed class StatementTests(AllNotebooksRun all)
{
    private static readonly IReadOnlyList<Statement> Statements =
    [
        new("00", "The regulator is set to the rating and no higher",
            s => s.Numbers("Given: working pressure")[0] <= s.Numbers("Working pressure")[0]),
        new("00", "the gauge falls by about a tenth of the fill pressure",
            s => Near(s.Numbers("Pressure after cooling")[1] / s.Numbers("Pressure when the valve shuts")[0], 0.1, 0.2)),
        new("00", "the margin is lowest at release", s => s.Numbers("Minimum margin")[0] == s.Numbers("Margin at the start")[0]),
        new("00", "The first three numbers agree within some 5 %", s => ByHand(s, "Wall bursts at", 0, 1, 0.05)
            && ByHand(s, "Fill takes", 0, 1, 0.05) && ByHand(s, "Maximum speed", 3, 1, 0.05)),
        new("00", "the height by hand is about a seventh too high", s => ByHand(s, "Apogee", 3, 8 / 7.0, 0.03)),
        new("01", "its highest point, 167 m, is two heavy sleeves and one tape",
            s => s.After("Layup that flies highest: ") == "2 × carbon sleeve 65 mm heavy + carbon tape 150 g"),
        new("01", "A light sleeve in place of a heavy one saves 83 g",
            s => s.Numbers("2 × carbon sleeve 65 mm heavy + carbon tape 150 g")[1]
                - s.Numbers("carbon sleeve 65 mm heavy + carbon sleeve 65 mm light + carbon tape 150 g")[1] == 83),
        new("01", "*Curlew*'s layup weighs 889 g here", s => s.Numbers("2 × carbon sleeve 65 mm heavy + carbon tape 150 g")[1] == 889
            && s.Numbers("Empty mass")[0] == 851),
        new("01", "their line says *matrix-dominated*",
            s => s.After("two heavy sleeves").Contains("matrix-dominated", StringComparison.Ordinal)),
        new("02", "so the wall decides", s => s.Numbers("Weakest: wall")[0] > 90),
        new("02", "narrows the fabrication efficiency more than the five proofs do",
            s => Width(s.Numbers("After one burst")) < Width(s.Numbers("After five proofs held"))),
        new("02", "The tests allow 60.3 bar", s => s.Numbers("After K-5")[0] == 60.3),
        new("02", "which is lower than that of the weakest part, 223 bar gauge",
            s => s.Numbers("B-basis of the vessel")[0] < 223 && s.Numbers("Weakest part")[0] == 223),
        new("02", "is 17, 28 and 5 per cent above the measured final strength", s => Above(s, "±55° at 2:1", 736) == 17
            && Above(s, "±45° at 1:1", 502) == 28 && Above(s, "0/90 one way", 609) == 5),
        new("03", "some three hundred joules", s => Near(s.Numbers("Energy in water, wall and trapped air")[0], 300, 0.1)),
        new("03", "The blast formula alone gives about one metre", s => Near(s.Numbers("Stand-off")[1], 1, 0.2)),
        new("03", "lowers the gauge by almost one and a half bar", s => s.Numbers("One millilitre lost")[0] is > 1.35 and < 1.5),
        new("03", "The proof alone would allow 60.3 bar; the rating is 60 bar", s => s.Numbers("Allowed by the proof")[0] == 60.3
            && s.Numbers("Allowed by the rating")[0] == 60 && s.Numbers("Maximum fill pressure")[0] == 60),
        new("04", "1.6 times as long as the gas alone",
            s => Near(s.Numbers("Water first, then gas")[0] / s.Numbers("Gas alone")[0], 1.6, 0.05)),
        new("04", "Sixty bar gauge settle at forty-three bar gauge",
            s => Math.Round(s.Numbers("Settles at [bar absolute]")[0] - 1.01325) == 43),
        new("04", "the area of a hole of 0.64 mm",
            s => Math.Round(Math.Sqrt(4 * s.Numbers("Effective area")[0] / 0.8 / Math.PI), 2) == 0.64),
        new("04", "the cylinder holds 2.5 % less air than Boyle's law says",
            s => Near(1 - s.Numbers("Density at 200 bar")[0] / (200e5 / (287.05 * 293.15)), 0.025, 0.1)),
        new("05", "from 25 % to 38 % of water the height changes by no more than 1 %",
            s => s.Numbers("Water fraction")[1] == 25 && s.Numbers("Water fraction")[2] == 38),
        new("05", "ideal instead of real air changes the height most, by nearly 3 %",
            s => s.Numbers("ideal gas, γ constant")[1] is > 2.5 and < 3
                && s.Numbers("real gas, head of the column")[1] < 2.5 && s.Numbers("real gas, heat from the wall")[1] < 2.5),
        new("06", "Curlew's fins give more than four fifths of the force", s => s.Numbers("Fins ", 2)[2] > 80),
        new("06", "the flutter speed is 2.21 times the fastest flight speed",
            s => Near(s.Numbers("Flutter speed", 1)[0] / s.Numbers("Fastest flight speed")[0], 2.21, 0.01)),
        new("06", "The critical cant is three tenths of a degree",
            s => Near(s.Numbers("Cant where both are equal [°]")[0], 0.3, 0.05)),
        new("06", "The twist alone gives half a degree", s => s.Numbers("Mean cant", 1)[0] == 0.5),
        new("07", "about half a per cent of the drag", s => Near(s.Numbers("Drag coefficient 600 m up")[1], 0.5, 0.2)),
        new("07", "a tenth of pressure had more effect than a tenth of mass",
            s => s.Numbers("pressure, 10 % less")[0] < s.Numbers("dry mass, 10 % more")[0]),
        new("07", "three parts of the mass budget", s => s.Count(", estimated)") == 3),
        new("08", "The height is doubled, for three times the hardware",
            s => Near(s.Numbers("both stages")[0] / s.Numbers("sustainer alone")[0], 2, 0.03)),
        new("08", "at about a fifth of the sustainer's height",
            s => Near(s.Numbers("Booster's apogee")[0] / s.Numbers("Apogee above pad")[0], 0.2, 0.1)),
        new("08", "The middle of the band drops by some eight metres", s => Near((s.Numbers("latch within 30 ms").Take(2).Sum()
            - s.Numbers("latch late by 500 ms").Take(2).Sum()) / 2, 8, 0.15)),
        new("09", "The rail would allow more than twice as much wind; the drift sets the limit",
            s => s.Numbers("Off the rail")[0] > 2 * s.Numbers("By the drift")[0]),
        new("09", "six times what broke the bulkhead", s => Near(s.Numbers("Peak pull", 1)[0] / s.Numbers("Anchor fails at")[0], 6, 0.1)),
        new("09", "on the dry mass more than on drag and thrust together",
            s => s.Numbers("Sensitivity of apogee") is [var mass, var drag, var thrust, ..] && mass > drag + thrust),
        new("10", "the section is smaller by a quarter", s => Near(s.Numbers("Section of one fillet")[0] / 7.73, 0.75, 0.03)),
        new("11", "9.04 s before the flight and 8.91 s now", s => s.Numbers("Timer from now on:")[0] == 8.91),
        new("12", "Fins of 1 mm hold here", s => s.After("40 bar gauge, 1 mm").Contains("all hold", StringComparison.Ordinal)),
    ];

    public static TheoryData<string, string> Sentences
    {
        get
        {
            var sentences = new TheoryData<string, string>();
            foreach (var statement in Statements) sentences.Add(statement.Lesson, statement.Sentence);
            return sentences;
        }
    }

    [Theory, MemberData(nameof(Sentences))]
    public void A_sentence_says_what_the_numbers_beside_it_say(string lesson, string sentence)
    {
        var report = all.Reports.Values.Single(r => r.Name.StartsWith(lesson + "-", StringComparison.Ordinal));
        var shown = new ShownLesson(report.ExecutedFile!);
        Assert.Contains(sentence, shown.Text, StringComparison.Ordinal);
        Assert.True(Statements.Single(s => s.Lesson == lesson && s.Sentence == sentence).Holds(shown),
            $"Lesson {lesson}: \"{sentence}\" isn't what its numbers say.");
    }

    /// <summary>Godwit is another vehicle, so lesson 8 is left out.</summary>
    [Fact]
    public void A_main_number_of_the_vehicle_has_one_value_on_all_pages()
    {
        var numbers = all.Reports.Values.Where(r => !r.Name.StartsWith("08-", StringComparison.Ordinal)).SelectMany(r => r.Answer.Numbers);
        Assert.All(numbers.GroupBy(n => n.Name), n => Assert.Single(n.Select(one => one.Value).Distinct()));
    }

    [Fact]
    public void The_lesson_on_proving_opens_with_its_accepted_proof()
    {
        var opening = all.PageOf(NotebookFolder.Names.Single(n => n.StartsWith("03-", StringComparison.Ordinal)))
            .Split("<details class=\"code\"")[0];
        Assert.Contains("Accepted", opening, StringComparison.Ordinal);
        Assert.DoesNotContain("To be proof-tested again", opening, StringComparison.Ordinal);
    }

    private static bool Near(double value, double said, double within) => Math.Abs(value / said - 1) <= within;

    private static bool ByHand(ShownLesson lesson, string label, int occurrence, double ratio, double within) =>
        lesson.Numbers(label, occurrence) is [var hand, var computed, ..] && Near(hand / computed, ratio, within);

    private static double Width(IReadOnlyList<double> efficiency) => efficiency[2] - efficiency[1];

    private static double Above(ShownLesson lesson, string tube, double measured) =>
        Math.Round(100 * (lesson.Numbers(tube)[0] / measured - 1));

    private sealed record Statement(string Lesson, string Sentence, Func<ShownLesson, bool> Holds);
}

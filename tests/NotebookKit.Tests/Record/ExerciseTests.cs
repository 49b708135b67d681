using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Record;
using UnitsNet;

namespace NotebookKit.Tests.Record;

public class ExerciseTests
{
    // V24 of the thin wall: 6 MPa in a 50 mm radius with 1 mm of wall is 300 MPa around.
    private static readonly Exercise<Pressure> Hoop = new("Hoop stress at 60 bar, radius 50 mm, wall 1 mm?", 300.Megapascals(), 0.01,
        "Hoop stress is p r / t.");

    [Fact]
    public void Takes_a_right_answer_in_any_unit()
    {
        Assert.Equal(ExerciseState.Right, Hoop.Check(300.Megapascals()).State);
        Assert.Equal(ExerciseState.Right, Hoop.Check(3000.Bar()).State);
        Assert.Equal("The answer is 3000 bar.", Hoop.Check(3000.Bar()).Words);
    }

    [Theory]
    [InlineData(150, "too little")]
    [InlineData(600, "too much")]
    [InlineData(30, "look at the units")]
    [InlineData(-300, "sign")]
    public void Says_in_which_way_an_answer_is_wrong(double megapascals, string words)
    {
        var verdict = Hoop.Check(megapascals.Megapascals());
        Assert.Equal(ExerciseState.NotYet, verdict.State);
        Assert.Contains(words, verdict.Words, StringComparison.Ordinal);
        Assert.Contains("p r / t", verdict.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Waits_for_an_answer() => Assert.Equal(ExerciseState.Open, Hoop.Check().State);

    [Fact]
    public void Refuses_a_tolerance_that_takes_everything() =>
        Assert.Throws<OutOfRangeException>(() => new Exercise<Length>("?", 1.Metres(), 2, ""));
}

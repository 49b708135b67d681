using NotebookKit.DesignFiles.Parts;
using NotebookKit.DesignFiles.Shapes;
using NotebookKit.Quantities;
using NotebookKit.Record;
using UnitsNet;

namespace NotebookKit.DesignFiles.Keys;

/// <summary>What is required and what was decided.</summary>
internal static class ReasonKeys
{
    private static readonly ChoiceShape<DesignRequirement> Requirement = new("requirement", "of",
        Of(Kinds.Any<Length>()), Of(Kinds.Any<GaugePressure>()), Of(Kinds.Any<Speed>()), Of(Kinds.Any<Mass>()), Of(Kinds.Any<Duration>()),
        Of(Kinds.Any<Force>()),
        Of(Kinds.Number(0, 1e9, "It is a plain number.")));

    private static readonly ObjectShape<DesignDecision> Decision = new("decision", "What was chosen, what it beat, and why.", f =>
    {
        var name = f.Needs("name", TextShape.Name, "What was to be decided.");
        var chosen = f.Needs("chosen", TextShape.Prose, "What was chosen.");
        var beat = f.Else("beat", Kinds.List(TextShape.Prose, 0, 20), [], "What was turned down, each with its reason.");
        var why = f.Needs("why", TextShape.Prose, "Why it was chosen.");
        var condition = f.Needs("stays right while", TextShape.Name, "Name of the requirement while which the choice stays right.");
        return v => new(name(v), chosen(v), beat(v), why(v), condition(v));
    });

    public static ListShape<DesignRequirement> Requirements { get; } = Kinds.List(Requirement, 0, 100);

    public static ListShape<DesignDecision> Decisions { get; } = Kinds.List(Decision, 0, 100);

    private static (string[] Words, string About, Func<FieldList, Func<Values, DesignRequirement>> Define) Of<T>(ScalarShape<T> limit)
        where T : struct, IComparable<T> => (DesignFigures.Of<T>(), $"What must hold of a {limit.Noun}.", f =>
        {
            var name = f.Needs("name", TextShape.Name, "Its name.");
            var most = f.May("at most", limit, "The figure must not be above this.");
            var least = f.May("at least", limit, "The figure must not be below this.");
            var why = f.Needs("why", TextShape.Prose, "Why it is required.");
            f.EitherOf("at most", "at least");
            return v =>
            {
                var value = most(v) ?? least(v)!.Value;
                return new(name(v), v.Word, most(v) is null ? Limit.AtLeast : Limit.AtMost, limit.Write(value), why(v)) { Value = value };
            };
        });
}

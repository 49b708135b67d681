using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Record;

/// <summary>A question of a lesson that can tell whether an answer is right.</summary>
/// <typeparam name="T">What is asked for: a quantity, so that an answer has its unit.</typeparam>
public sealed class Exercise<T> where T : struct, IQuantity
{
    private readonly T _right;
    private readonly double _within;

    /// <summary>Creates the question.</summary>
    /// <param name="question">The question.</param>
    /// <param name="right">The right answer, computed rather than typed wherever that can be; any value but 0.</param>
    /// <param name="within">Relative tolerance [-]; above 0 to 0.5.</param>
    /// <param name="hint">What to think of when the answer isn't right.</param>
    /// <exception cref="OutOfRangeException">The tolerance is out of range, or the right answer is 0 and no relative tolerance can
    /// be.</exception>
    public Exercise(string question, T right, double within, string hint)
    {
        Question = question;
        Hint = hint;
        _right = right;
        _within = new ValidRange<double>(1e-6, 0.5).Check(within, "tolerance of the exercise", "A wider one can't tell right from wrong.");
        new ValidRange<double>(double.Epsilon, double.MaxValue).Check(Math.Abs((double)right.Value), "size of the right answer",
            "A relative tolerance needs an answer that isn't 0.");
    }

    /// <summary>The question.</summary>
    public string Question { get; }

    /// <summary>What to think of when the answer isn't right.</summary>
    public string Hint { get; }

    /// <summary>Says whether the answer is right, and if not in which way.</summary>
    /// <param name="answer">The answer with its unit, in any unit of its kind; none: not answered yet.</param>
    public ExerciseVerdict Check(T? answer = null)
    {
        if (answer is not { } given) return new(Question, ExerciseState.Open,
            "Not answered yet. In the notebook, put your answer between the brackets, with its unit, and run the cell.");
        var ratio = (double)given.ToUnit(_right.Unit).Value / (double)_right.Value;
        if (Math.Abs(ratio - 1) <= _within) return new(Question, ExerciseState.Right, $"The answer is {given.Show(4)}.");
        var how = ratio switch
        {
            <= 0 => "The sign is the other way round.",
            > 5 or < 0.2 => "It is off by a large factor: look at the units.",
            > 1 => "It is too much.",
            _ => "It is too little.",
        };
        return new(Question, ExerciseState.NotYet, $"{given.Show(4)} isn't it. {how} {Hint}");
    }
}

/// <summary>Where an exercise stands.</summary>
public enum ExerciseState
{
    /// <summary>Nobody has answered.</summary>
    Open,

    /// <summary>The answer isn't right yet.</summary>
    NotYet,

    /// <summary>The answer is right.</summary>
    Right,
}

/// <summary>What an exercise says to an answer.</summary>
/// <param name="Question">The question.</param>
/// <param name="State">Open, not yet, right.</param>
/// <param name="Words">The verdict in words.</param>
public sealed record ExerciseVerdict(string Question, ExerciseState State, string Words)
{
    /// <summary>Question and verdict.</summary>
    public override string ToString() => $"{Question}{Environment.NewLine}{Words}";
}

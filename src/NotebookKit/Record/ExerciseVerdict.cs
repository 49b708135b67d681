namespace NotebookKit.Record;

/// <summary>What an exercise says to an answer.</summary>
/// <param name="Question">The question.</param>
/// <param name="State">Open, not yet, right.</param>
/// <param name="Words">The verdict in words.</param>
public sealed record ExerciseVerdict(string Question, ExerciseState State, string Words)
{
    /// <summary>Question and verdict.</summary>
    public override string ToString() => $"{Question}{Environment.NewLine}{Words}";
}

using System.Text.Json.Serialization;
using NotebookKit.Runner.Engine;

namespace NotebookKit.Runner.Workers;

/// <summary>What a worker answers: one line of JSON each, on its standard output.</summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "say")]
[JsonDerivedType(typeof(ReadyReply), "ready")]
[JsonDerivedType(typeof(OutputReply), "output")]
[JsonDerivedType(typeof(DoneReply), "done")]
internal abstract record WorkerReply;

/// <summary>The session is up, or couldn't start.</summary>
/// <param name="Problem">Why it couldn't; none where it is up.</param>
internal sealed record ReadyReply(string? Problem) : WorkerReply;

/// <summary>A cell shows something.</summary>
/// <param name="Id">Number of the request.</param>
/// <param name="Output">What it shows.</param>
internal sealed record OutputReply(int Id, CellOutput Output) : WorkerReply;

/// <summary>A cell has ended.</summary>
/// <param name="Id">Number of the request.</param>
/// <param name="Outcome">How.</param>
internal sealed record DoneReply(int Id, CellOutcome Outcome) : WorkerReply;

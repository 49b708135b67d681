using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using NotebookKit.Runner.Engine;

namespace NotebookKit.Runner.Workers;

/// <summary>What a worker answers: one line of JSON each, on its standard output.</summary>
/// <param name="Id">Number of the request; 0 where none was made.</param>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "say")]
[JsonDerivedType(typeof(ReadyReply), "ready")]
[JsonDerivedType(typeof(OutputReply), "output")]
[JsonDerivedType(typeof(InputWanted), "ask")]
[JsonDerivedType(typeof(DoneReply), "done")]
[JsonDerivedType(typeof(CompleteReply), "complete")]
[JsonDerivedType(typeof(DescribeReply), "describe")]
[JsonDerivedType(typeof(ControlOpened), "open")]
[JsonDerivedType(typeof(ControlUpdated), "update")]
[JsonDerivedType(typeof(RenewReply), "renew")]
internal abstract record WorkerReply(int Id);

/// <summary>The session is up, or couldn't start.</summary>
/// <param name="Problem">Why it couldn't; none where it is up.</param>
internal sealed record ReadyReply(string? Problem) : WorkerReply(0);

/// <summary>A cell shows something.</summary>
/// <param name="Id">Number of the request.</param>
/// <param name="Output">What it shows.</param>
internal sealed record OutputReply(int Id, CellOutput Output) : WorkerReply(Id);

/// <summary>A cell asks its reader.</summary>
/// <param name="Id">Number of the request.</param>
/// <param name="Input">What for.</param>
internal sealed record InputWanted(int Id, InputRequest Input) : WorkerReply(Id);

/// <summary>A cell has ended.</summary>
/// <param name="Id">Number of the request.</param>
/// <param name="Outcome">How.</param>
internal sealed record DoneReply(int Id, CellOutcome Outcome) : WorkerReply(Id);

/// <summary>What could stand at a place.</summary>
/// <param name="Id">Number of the request.</param>
/// <param name="List">It.</param>
internal sealed record CompleteReply(int Id, CompletionList List) : WorkerReply(Id);

/// <summary>What stands at a place.</summary>
/// <param name="Id">Number of the request.</param>
/// <param name="Description">It; none where nothing can be said.</param>
internal sealed record DescribeReply(int Id, Description? Description) : WorkerReply(Id);

/// <summary>A fresh session is up, or there is none.</summary>
/// <param name="Id">Number of the request.</param>
/// <param name="Why">Why there is none; none where there is one.</param>
internal sealed record RenewReply(int Id, string? Why) : WorkerReply(Id);

/// <summary>A cell made a control.</summary>
/// <param name="Control">Its id.</param>
/// <param name="State">Its state.</param>
internal sealed record ControlOpened(string Control, JsonObject State) : WorkerReply(0);

/// <summary>A control changes.</summary>
/// <param name="Control">Its id.</param>
/// <param name="State">Values that change.</param>
internal sealed record ControlUpdated(string Control, JsonObject State) : WorkerReply(0);

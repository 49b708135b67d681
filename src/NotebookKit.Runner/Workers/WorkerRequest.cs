using System.Text.Json.Nodes;
using System.Text.Json.Serialization;

namespace NotebookKit.Runner.Workers;

/// <summary>What the front asks of a worker: one line of JSON each, on the worker's standard input.</summary>
/// <param name="Id">Number of the request; replies carry it.</param>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "do")]
[JsonDerivedType(typeof(RunRequest), "run")]
[JsonDerivedType(typeof(CompleteRequest), "complete")]
[JsonDerivedType(typeof(DescribeRequest), "describe")]
[JsonDerivedType(typeof(InterruptRequest), "interrupt")]
[JsonDerivedType(typeof(InputGiven), "input")]
[JsonDerivedType(typeof(ControlMoved), "control")]
[JsonDerivedType(typeof(RenewRequest), "renew")]
internal abstract record WorkerRequest(int Id);

/// <summary>Run a cell.</summary>
/// <param name="Id">Number of the request.</param>
/// <param name="Code">The cell's source.</param>
internal sealed record RunRequest(int Id, string Code) : WorkerRequest(Id);

/// <summary>Say what could stand at a place.</summary>
/// <param name="Id">Number of the request.</param>
/// <param name="Code">The cell's source.</param>
/// <param name="Position">Place, from 0.</param>
internal sealed record CompleteRequest(int Id, string Code, int Position) : WorkerRequest(Id);

/// <summary>Say what stands at a place.</summary>
/// <param name="Id">Number of the request.</param>
/// <param name="Code">The cell's source.</param>
/// <param name="Position">Place, from 0.</param>
internal sealed record DescribeRequest(int Id, string Code, int Position) : WorkerRequest(Id);

/// <summary>Ask the running cell to stop.</summary>
/// <param name="Id">Number of the request.</param>
internal sealed record InterruptRequest(int Id) : WorkerRequest(Id);

/// <summary>What the reader typed.</summary>
/// <param name="Id">Number of the run request that asked.</param>
/// <param name="Text">The text; none where nobody could be asked.</param>
internal sealed record InputGiven(int Id, string? Text) : WorkerRequest(Id);

/// <summary>Forget the session and begin a fresh one, if the old one left nothing behind.</summary>
/// <param name="Id">Number of the request.</param>
/// <param name="Folder">Folder that relative paths in cells start from.</param>
internal sealed record RenewRequest(int Id, string Folder) : WorkerRequest(Id);

/// <summary>The reader moved a control.</summary>
/// <param name="Id">Number of the request.</param>
/// <param name="Control">Id of the control.</param>
/// <param name="State">Values that changed.</param>
internal sealed record ControlMoved(int Id, string Control, JsonObject State) : WorkerRequest(Id);

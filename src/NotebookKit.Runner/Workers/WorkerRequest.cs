using System.Text.Json.Serialization;

namespace NotebookKit.Runner.Workers;

/// <summary>What the front asks of a worker: one line of JSON each, on the worker's standard input.</summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "do")]
[JsonDerivedType(typeof(RunRequest), "run")]
[JsonDerivedType(typeof(InterruptRequest), "interrupt")]
internal abstract record WorkerRequest;

/// <summary>Run a cell.</summary>
/// <param name="Id">Number of the request; replies carry it.</param>
/// <param name="Code">The cell's source.</param>
internal sealed record RunRequest(int Id, string Code) : WorkerRequest;

/// <summary>Ask the running cell to stop.</summary>
internal sealed record InterruptRequest : WorkerRequest;

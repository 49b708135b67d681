using System.Text.Json.Nodes;
using System.Text.Json.Serialization;

namespace NotebookKit.Runner.Engine;

/// <summary>Something a running cell shows.</summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "kind")]
[JsonDerivedType(typeof(StreamOutput), "stream")]
[JsonDerivedType(typeof(DisplayOutput), "display")]
[JsonDerivedType(typeof(UpdateOutput), "update")]
[JsonDerivedType(typeof(ResultOutput), "result")]
[JsonDerivedType(typeof(ProgressOutput), "progress")]
internal abstract record CellOutput;

/// <summary>Text written to the console.</summary>
/// <param name="Name">"stdout" or "stderr".</param>
/// <param name="Text">What was written.</param>
internal sealed record StreamOutput(string Name, string Text) : CellOutput;

/// <summary>Something shown on purpose.</summary>
/// <param name="Data">The same thing in several media types.</param>
/// <param name="DisplayId">Its id, by which it can be replaced.</param>
internal sealed record DisplayOutput(JsonObject Data, string? DisplayId) : CellOutput;

/// <summary>Takes the place of something shown before.</summary>
/// <param name="Data">The same thing in several media types.</param>
/// <param name="DisplayId">Which one to replace.</param>
internal sealed record UpdateOutput(JsonObject Data, string DisplayId) : CellOutput;

/// <summary>The value of the cell's last expression.</summary>
/// <param name="Data">The same thing in several media types.</param>
internal sealed record ResultOutput(JsonObject Data) : CellOutput;

/// <summary>How far a long computation of the running cell is. Seen while it runs, and no part of what the cell shows.</summary>
/// <param name="Text">For example "4200 of 10000 flights".</param>
internal sealed record ProgressOutput(string Text) : CellOutput;

using System.Text.Json;
using Microsoft.DotNet.Interactive.Formatting;
using NotebookKit.Clearance;
using NotebookKit.Proofing;
using NotebookKit.Record;

namespace NotebookKit.Interactive.Formatters;

/// <summary>Decisions, in a media type of ours beside the forms of their results, for the program that runs notebooks.</summary>
internal static class VerdictFormatter
{
    public const string Mime = "application/vnd.notebookkit.verdict+json";

    /// <summary>The record itself, so that the next run can be held against it.</summary>
    public const string RecordMime = "application/vnd.notebookkit.record+json";

    /// <summary>Adds the form; html and plain text stay those of the result.</summary>
    public static void Register()
    {
        Add<FlightCard>(MainVerdict.Of);
        Add<TwoStageFlightCard>(MainVerdict.Of);
        Add<ProofRecord>(MainVerdict.Of);
        Add<DesignRecord>(MainVerdict.Of);
        Formatter.Register<DesignRecord>((record, writer) => writer.Write(record.ToJson()), RecordMime);
        Formatter.SetPreferredMimeTypesFor(typeof(DesignRecord), Registry.Html, Registry.Plain, Mime, RecordMime);
    }

    private static void Add<T>(Func<T, MainVerdict> verdict)
    {
        Formatter.Register<T>((result, writer) => writer.Write(JsonSerializer.Serialize(verdict(result))), Mime);
        Formatter.SetPreferredMimeTypesFor(typeof(T), Registry.Html, Registry.Plain, Mime);
    }
}

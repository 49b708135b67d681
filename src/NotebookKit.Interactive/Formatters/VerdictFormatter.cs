using System.Text.Json;
using Microsoft.DotNet.Interactive.Formatting;
using NotebookKit.Clearance.Cards;
using NotebookKit.Clearance.Designs;
using NotebookKit.Proofing.Records;
using NotebookKit.Record;
using NotebookKit.Record.Givens;
using NotebookKit.Sheets;

namespace NotebookKit.Interactive.Formatters;

/// <summary>Decisions, in a media type of ours beside the forms of their results, for the program that runs notebooks.</summary>
internal static class VerdictFormatter
{
    public const string Mime = "application/vnd.notebookkit.verdict+json";

    /// <summary>The record itself, so that the next run can be held against it.</summary>
    public const string RecordMime = "application/vnd.notebookkit.record+json";

    /// <summary>Adds the form; html and plain text stay those of the result.</summary>
    /// <param name="givens">What the run was asked to change: a card's paper says so.</param>
    public static void Register(GivenOverrides givens)
    {
        Add<FlightCard>(MainVerdict.Of, c => SheetFormatter.Json(FlightSheet.Of(c), FlightCardFormatter.Changed(givens)));
        Add<CardWithoutFlight>(MainVerdict.Of, c => SheetFormatter.Json(FlightSheet.Of(c), FlightCardFormatter.Changed(givens)));
        Add<TwoStageFlightCard>(MainVerdict.Of, c => SheetFormatter.Json(FlightSheet.Of(c), FlightCardFormatter.Changed(givens)));
        Add<ProofRecord>(MainVerdict.Of);
        Add<DesignRecord>(MainVerdict.Of);
        Add<Requirement>(MainVerdict.Of);
        Add<DesignCheck>(MainVerdict.Of);
        Formatter.Register<DesignRecord>((record, writer) => writer.Write(record.ToJson()), RecordMime);
        Formatter.SetPreferredMimeTypesFor(typeof(DesignRecord), Registry.Html, Registry.Plain, Mime, RecordMime);
    }

    private static void Add<T>(Func<T, MainVerdict> verdict, Func<T, string>? sheet = null)
    {
        Formatter.Register<T>((result, writer) => writer.Write(JsonSerializer.Serialize(verdict(result))), Mime);
        if (sheet is not null) Formatter.Register<T>((result, writer) => writer.Write(sheet(result)), SheetFormatter.Mime);
        Formatter.SetPreferredMimeTypesFor(typeof(T), [Registry.Html, Registry.Plain, Mime, .. sheet is null ? Array.Empty<string>()
            : [SheetFormatter.Mime]]);
    }
}

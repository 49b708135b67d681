using System.Net;
using System.Text.Json;
using Microsoft.DotNet.Interactive.Formatting;
using NotebookKit.Record;

namespace NotebookKit.Runner.Engine;

/// <summary>Shows main numbers to the reader, and hands them to the runner in a media type of ours.</summary>
internal static class HeadlineFormatter
{
    /// <summary>Registers the formatters; registering again changes nothing.</summary>
    public static void Register()
    {
        Formatter.Register<Headline>((h, w) => w.Write(Html([h])), MediaTypes.Html);
        Formatter.Register<Headline>((h, w) => w.Write(h), MediaTypes.Text);
        Formatter.Register<Headline>((h, w) => w.Write(Json([h])), MediaTypes.Headline);
        Formatter.SetPreferredMimeTypesFor(typeof(Headline), MediaTypes.Html, MediaTypes.Text, MediaTypes.Headline);

        Formatter.Register<IEnumerable<Headline>>((all, w) => w.Write(Html(all)), MediaTypes.Html);
        Formatter.Register<IEnumerable<Headline>>((all, w) => w.Write(string.Join('\n', all)), MediaTypes.Text);
        Formatter.Register<IEnumerable<Headline>>((all, w) => w.Write(Json(all)), MediaTypes.Headline);
        Formatter.SetPreferredMimeTypesFor(typeof(IEnumerable<Headline>), MediaTypes.Html, MediaTypes.Text, MediaTypes.Headline);
    }

    private static string Json(IEnumerable<Headline> headlines) => JsonSerializer.Serialize(headlines);

    private static string Html(IEnumerable<Headline> headlines) =>
        "<dl class=\"headlines\">" + string.Concat(headlines.Select(h =>
            $"<div><dt>{WebUtility.HtmlEncode(h.Name)}</dt><dd>{WebUtility.HtmlEncode(h.Value)}</dd></div>")) + "</dl>";
}

using System.Net;
using System.Text.RegularExpressions;
using Jint;
using Jint.Native;
using Jint.Runtime;

namespace NotebookKit.Runner.Pages;

/// <summary>Sets TeX as MathML, which browsers draw by themselves. Every formula is set once.</summary>
internal sealed partial class Equations
{
    private const string Entry =
        "(function (tex, display) { return temml.renderToString(tex, { displayMode: display, annotate: false, throwOnError: true }); })";

    private readonly Dictionary<(string Tex, bool Display), string> _known = [];
    private readonly Lock _door = new();
    private JsValue? _setter;

    /// <summary>The formula as MathML; where it can't be set, its source with the reason.</summary>
    /// <param name="tex">Formula in TeX.</param>
    /// <param name="display">Whether it stands on a line of its own.</param>
    public string ToHtml(string tex, bool display)
    {
        try
        {
            return ToMathML(tex, display);
        }
        catch (EquationException e)
        {
            return $"<code class=\"tex-problem\" title=\"{Escape.Text(e.Message)}\">{Escape.Text(tex)}</code>";
        }
    }

    /// <summary>The formula as MathML.</summary>
    /// <param name="tex">Formula in TeX.</param>
    /// <param name="display">Whether it stands on a line of its own.</param>
    /// <exception cref="EquationException">It isn't TeX that can be set.</exception>
    public string ToMathML(string tex, bool display)
    {
        lock (_door)
        {
            if (_known.TryGetValue((tex, display), out var html)) return html;
            try
            {
                html = Setter().Call(tex, display).AsString();
            }
            catch (JavaScriptException e)
            {
                throw new EquationException($"The formula {tex} can't be set: {e.Message}");
            }

            return _known[(tex, display)] = html;
        }
    }

    /// <summary>Html with every <c>&lt;span class="tex"&gt;</c> replaced by the formula it holds.</summary>
    /// <param name="html">Html of an output.</param>
    public string SetIn(string html) =>
        html.Contains("class=\"tex", StringComparison.Ordinal)
            ? Marked().Replace(html, m => ToHtml(WebUtility.HtmlDecode(m.Groups["tex"].Value), m.Groups["display"].Success))
            : html;

    private JsValue Setter()
    {
        if (_setter is not null) return _setter;
        var engine = new Jint.Engine();
        engine.Execute(PageResources.EquationSetter);
        return _setter = engine.Evaluate(Entry);
    }

    [GeneratedRegex("""<span class="tex(?<display> tex-display)?">(?<tex>[^<]*)</span>""")]
    private static partial Regex Marked();
}

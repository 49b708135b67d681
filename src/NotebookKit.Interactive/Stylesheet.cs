namespace NotebookKit.Interactive;

/// <summary>
/// How our outputs look. Each output carries <see cref="Element"/>, so that it looks right in any front-end; a page with many outputs takes
/// the elements out (they are all the same text) and puts <see cref="Text"/> into its head once.
/// </summary>
public static class Stylesheet
{
    /// <summary>The rules for a page that draws formulae itself: each is in <c>span.tex</c> as TeX, its plain form is hidden.</summary>
    public const string Text = Rules + ".nk-out .nk-plain{display:none}";

    /// <summary>The style element inside each output: formulae in their plain form, for a front-end that draws no TeX.</summary>
    public const string Element = "<style>" + Rules + ".nk-out .tex{display:none}</style>";

    // Colours are tints over whatever background the front-end has, light or dark; words, not colours alone, carry the meaning.
    private const string Rules =
        """
        .nk-out{font-family:system-ui,-apple-system,'Segoe UI','DejaVu Sans',sans-serif;font-size:14px;line-height:1.45;max-width:60rem;text-align:left}
        .nk-out h4,.nk-out h3.nk-title{font-size:1.05em;margin:.2em 0 .4em;font-weight:650}
        .nk-out table{border-collapse:collapse;margin:.2em 0 .6em;font-size:1em}
        .nk-out th,.nk-out td{padding:.18em .9em .18em 0;text-align:left;vertical-align:top;border:0;border-bottom:1px solid rgba(128,140,150,.28);background:none;white-space:normal}
        .nk-out th{font-weight:400}
        .nk-out thead th{font-weight:600;border-bottom-width:2px}
        .nk-table td:first-child{white-space:nowrap}
        .nk-out td.nk-value{font-weight:650;white-space:nowrap;font-variant-numeric:tabular-nums}
        .nk-out td.nk-long{white-space:normal}
        @media print,(min-width:601px){.nk-out .nk-lines th{min-width:8.5em}.nk-out td.nk-long:not([colspan]){max-width:20em}.nk-out .nk-lines:not(:has(.nk-note)) td.nk-long{max-width:none}.nk-out .nk-lines td.nk-note{min-width:13em}}
        .nk-out td.nk-number{text-align:right;font-variant-numeric:tabular-nums}
        .nk-out .nk-note,.nk-out .nk-source{opacity:.78;font-size:.93em}
        .nk-out .nk-finding,.nk-out .nk-cautions{border-left:4px solid;padding:.3em .7em;margin:.35em 0}
        .nk-out .nk-error{border-color:#b3261e;background:rgba(179,38,30,.1)}
        .nk-out .nk-warning{border-color:#c77700;background:rgba(199,119,0,.12)}
        .nk-out .nk-right{border-color:#2e7d32;background:rgba(46,125,50,.12)}
        .nk-out .nk-remark{border-color:#5b7d9a;background:rgba(91,125,154,.12)}
        .nk-out .nk-cautions{border-color:#801050;background:rgba(128,16,80,.08);font-size:.93em}
        .nk-out .nk-cautions ul{margin:.15em 0 0;padding-left:1.2em}
        .nk-out details{margin:.35em 0}
        .nk-out summary{cursor:pointer;font-weight:600}
        .nk-out ol,.nk-out ul{margin:.2em 0 .5em;padding-left:1.5em}
        .nk-out .nk-ticks{list-style:"\2610\00a0";padding-left:1.6em}
        .nk-out ol.nk-ticks>li{padding:.15em 0}
        .nk-out .nk-blank{display:inline-block;min-width:4.5em;border-bottom:1px solid}
        @media print{.nk-checklist{font-size:11pt;line-height:1.5}.nk-checklist ol.nk-ticks>li{padding:.35em 0;break-inside:avoid}.nk-checklist .nk-blank{min-width:6em}}
        .nk-out .nk-paper{display:none}
        @media print{.nk-out .nk-paper{display:block;margin:.6em 0}.nk-paper .nk-blank{min-width:14em}.nk-exercise .nk-remark{display:none}.nk-exercise{break-inside:avoid}}
        .nk-out .nk-sign{border-bottom:1px solid;margin:1.6em 0 .6em;max-width:34rem}
        @media print{.nk-card{break-before:page;break-after:page;break-inside:avoid;font-size:8.3pt;line-height:1.18}.nk-card .nk-reasons{columns:2;column-gap:1em;font-size:8pt}.nk-card .nk-reasons .nk-finding{break-inside:avoid}.nk-card th{white-space:nowrap}.nk-card .nk-evidence{font-size:7.6pt}.nk-card .nk-evidence ul{columns:3;column-gap:1.6em;margin:.2em 0}.nk-card .nk-missing{display:none}.nk-card .nk-ticks{columns:2;column-gap:1.6em}.nk-card .nk-ticks li{break-inside:avoid}.nk-card .nk-remark{display:none}.nk-card .nk-finding,.nk-card .nk-cautions{padding:.15em .6em;margin:.2em 0}.nk-card .nk-cautions{font-size:7.6pt}.nk-card .nk-cautions ul{columns:2;column-gap:1.4em;margin:.1em 0}.nk-card .nk-sign{margin:.8em 0 .2em}.nk-card details{display:none}.nk-card table{margin:0 0 .3em}.nk-card th,.nk-card td{padding-top:.05em;padding-bottom:.05em}}
        @media screen and (max-width:600px){.nk-out table.nk-lines,.nk-out table.nk-lines tbody{display:block}.nk-out table.nk-lines tr{display:grid;grid-template-columns:minmax(6rem,38%) minmax(0,1fr);grid-template-rows:auto 1fr}.nk-out table.nk-lines th{grid-row:1/span 2;overflow-wrap:anywhere}.nk-table td:first-child{white-space:normal}.nk-out table.nk-lines td{white-space:normal;overflow-wrap:anywhere}.nk-out table.nk-lines td.nk-note{grid-column:2;border-top:0;padding-top:0}.nk-out table.nk-lines .nk-note:empty{display:none}}
        @media screen and (max-width:600px){.nk-out table.nk-lines tr{border-bottom:1px solid rgba(128,140,150,.28)}
        .nk-out table.nk-lines th,.nk-out table.nk-lines td{border-bottom:0}}
        .nk-out .nk-step{margin:.45em 0}
        .nk-out .nk-answer{font-weight:650}
        .nk-out .nk-plain{font-style:italic}
        .nk-out svg{max-width:100%;height:auto}
        .nk-out .nk-narrow{display:none}
        @media screen and (max-width:700px){.nk-out .nk-narrow{display:block}.nk-out .nk-wide{display:none}}
        .nk-explorer-sliders{display:grid;grid-template-columns:repeat(auto-fit,minmax(13rem,1fr));gap:.4rem 1.4rem;margin:.5rem 0}
        .nk-explorer-sliders label{display:block}
        .nk-explorer-sliders select{display:block;width:100%;margin:.2rem 0 0;font:inherit}
        .nk-explorer-sliders button{align-self:end;justify-self:start;font:inherit;padding:.15rem .7rem}
        .nk-explorer-sliders input{width:100%;margin:.2rem 0 0}
        .nk-explorer-sliders output{float:right;font-weight:650;font-variant-numeric:tabular-nums}
        .nk-explorer-numbers{display:flex;flex-wrap:wrap;gap:.6rem;margin:.6rem 0}
        .nk-explorer-numbers>div{border:1px solid rgba(128,140,150,.4);border-radius:4px;padding:.25rem .8rem;min-width:7.5rem}
        .nk-explorer-numbers dt{font-size:.85em;opacity:.8}
        .nk-explorer-numbers dd{margin:0;font-size:1.15em;font-weight:650;font-variant-numeric:tabular-nums}
        .nk-explorer-numbers dd.nk-note{font-size:.85em;font-weight:400}
        """;
}

using NotebookKit.Provenance;

namespace NotebookKit.Filling.Reliefs;

/// <summary>The sources that relief rests on, each written once.</summary>
internal static class ReliefSources
{
    public static Source Iso4126 { get; } = new("ISO", "4126-1 Safety devices for protection against excessive pressure", 2013,
        "critical flow", SourceKind.Unverified);

    public static Source Api520 { get; } = new("API", "Standard 520, part 1, Sizing of pressure-relieving devices", 2014,
        "critical flow, and its worked example", SourceKind.Unverified);

    public static Source Un { get; } = new("United Nations", "Model Regulations, Transport of Dangerous Goods", 2015, "6.7.2.12.2.1, table "
        + "of the flow function");
}

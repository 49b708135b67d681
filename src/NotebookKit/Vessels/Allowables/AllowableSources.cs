using NotebookKit.Provenance;

namespace NotebookKit.Vessels.Allowables;

/// <summary>The works that basis values name.</summary>
internal static class AllowableSources
{
    public static Source Handbook { get; } = new("Department of Defense", "MIL-HDBK-17-1F (now CMH-17 Volume 1)", 2002, "ch. 8");

    public static Source Weibull { get; } = Handbook with { Where = "§8.3.4, Table 8.5.8" };

    public static Source Normal { get; } = Handbook with { Where = "§8.5, Tables 8.5.10 and 8.5.11" };
}

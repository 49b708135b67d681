using ArchUnitNET.Domain;
using ArchUnitNET.Loader;

namespace NotebookKit.Tests.House;

/// <summary>Dependencies point one way.</summary>
public class LayerTests
{
    private static readonly Architecture Code = new ArchLoader().LoadAssemblies(Repository.Library).Build();

    // Who may see whom, itself apart. What isn't listed may not be seen.
    private static readonly Dictionary<string, string[]> MaySee = new()
    {
        ["Quantities"] = [],
        ["Numerics"] = [],
        ["Provenance"] = ["Quantities"],
        ["Materials"] = ["Quantities", "Numerics", "Provenance"],
        ["Vessels"] = ["Quantities", "Numerics", "Provenance", "Materials"],
        ["Proofing"] = ["Quantities", "Numerics", "Provenance", "Materials", "Vessels"],
        ["Life"] = ["Quantities", "Numerics", "Provenance", "Materials", "Vessels", "Proofing"],
        ["Building"] = ["Quantities", "Numerics", "Provenance", "Materials", "Vessels"],
        ["Filling"] = ["Quantities", "Numerics", "Provenance", "Materials", "Vessels"],
        ["Propulsion"] = ["Quantities", "Numerics", "Provenance", "Materials", "Vessels"],
        ["Launching"] = ["Quantities", "Numerics", "Provenance", "Materials", "Vessels", "Life"],
        ["Aerodynamics"] = ["Quantities", "Numerics", "Provenance", "Materials"],
        ["Recovery"] = ["Quantities", "Numerics", "Provenance", "Materials"],
        ["Flight"] = ["Quantities", "Numerics", "Provenance", "Materials", "Vessels", "Propulsion", "Aerodynamics", "Recovery"],
        ["Evidence"] = ["Quantities", "Numerics", "Provenance", "Materials", "Vessels", "Proofing", "Filling", "Propulsion", "Flight"],
        ["Record"] = ["Quantities", "Provenance"],
        ["DesignFiles"] =
        [
            "Quantities", "Numerics", "Provenance", "Materials", "Vessels", "Proofing", "Life", "Building", "Filling", "Propulsion",
                "Aerodynamics", "Recovery", "Flight", "Evidence",
            "Record",
        ],
        ["Clearance"] =
        [
            "Quantities", "Numerics", "Provenance", "Materials", "Vessels", "Proofing", "Life", "Building", "Filling", "Propulsion",
                "Aerodynamics", "Recovery", "Flight", "Evidence",
            "Record", "DesignFiles",
        ],
        ["Sheets"] =
        [
            "Quantities", "Numerics", "Provenance", "Materials", "Vessels", "Proofing", "Life", "Building", "Filling", "Propulsion",
                "Aerodynamics", "Recovery", "Flight", "Evidence",
            "Record", "DesignFiles", "Clearance", "Launching",
        ],
    };

    // Propulsion and filling see a vessel only as volume, bore and rated pressure; a flight passes that on.
    private static readonly string[] OnlySeesTheChamber = ["Propulsion", "Filling", "Flight"];

    public static TheoryData<string> Layers => [.. MaySee.Keys];

    [Theory]
    [MemberData(nameof(Layers))]
    public void A_layer_sees_only_what_it_may(string layer)
    {
        var wrong =
            from type in Code.Types
            where LayerOf(type) == layer
            from dependency in type.Dependencies
            where dependency.Target is not GenericParameter
            let seen = LayerOf(dependency.Target)
            where seen is not null && seen != layer
            where !MaySee[layer].Contains(seen) || (seen == "Vessels" && OnlySeesTheChamber.Contains(layer)
                && dependency.Target.Name != "Chamber")
            select $"{type.FullName} -> {dependency.Target.FullName}";

        Violations.None(wrong.Distinct());
    }

    [Fact]
    public void Every_namespace_of_the_library_is_a_known_layer() =>
        Violations.None(Repository.Library.GetTypes()
            .Where(t => t.Namespace?.StartsWith("NotebookKit", StringComparison.Ordinal) == true)
            .Select(t => t.Namespace!.Split('.').ElementAtOrDefault(1) ?? "")
            .Distinct().Except(MaySee.Keys));

    [Fact]
    public void The_library_knows_no_notebook_plot_or_data_frame() =>
        Assert.All(
            Repository.Library.GetReferencedAssemblies().Select(a => a.Name!),
            name => Assert.Matches(@"^(System(\..+)?|UnitsNet|MathNet\.Numerics|NetTopologySuite|netstandard)$", name));

    private static string? LayerOf(IType type)
    {
        var name = type.Namespace?.FullName ?? "";
        return name.StartsWith("NotebookKit.", StringComparison.Ordinal) ? name.Split('.')[1] : null;
    }
}

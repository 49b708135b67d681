using System.Globalization;
using System.Xml.Linq;
using NotebookKit.Charts.Drawings;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Charts.Tests.Drawings;

public sealed class SchemeTests
{
    private static readonly WallLayer[] Wall =
    [
        new("liner", WallLayerKind.Liner, 0.3.Millimetres()), new("sleeve", WallLayerKind.Sleeve, 0.52.Millimetres()),
        new("hoop", WallLayerKind.Hoop, 0.3.Millimetres()), new("cloth", WallLayerKind.Cloth, 0.11.Millimetres()),
            new("veil", WallLayerKind.Veil, 0.04.Millimetres()),
    ];

    [Fact]
    public void Every_layer_carries_its_true_thickness_and_can_be_seen()
    {
        var svg = XElement.Parse(LayupDrawing.Draw("Wall", 62.Millimetres(), Wall).Svg);
        var layers = svg.Descendants().Where(e => e.Attribute("class")?.Value == "layer").ToList();
        Assert.Equal(Wall.Select(l => l.Thickness.Millimeters),
            layers.Select(e => double.Parse(e.Attribute("data-thickness-mm")!.Value, CultureInfo.InvariantCulture)));
        Assert.All(layers, e => Assert.True(double.Parse(e.Attribute("data-drawn-mm")!.Value, CultureInfo.InvariantCulture) > 2.5));
        foreach (var text in new[] { "0.3 mm", "0.52 mm", "0.11 mm", "0.04 mm", "bore ⌀ 62 mm" }) Assert.Contains(svg.Descendants(),
            e => e.Value == text);
        Assert.Contains("Wall 1.27 mm in all", svg.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wall_of_nothing_is_refused_with_all_reasons()
    {
        Assert.Equal(2, Assert.Throws<InvalidDesignException>(() => LayupDrawing.Draw("Wall", Length.Zero, [])).Findings.Count);
        Assert.Throws<InvalidDesignException>(() => LayupDrawing.Draw("Wall", 62.Millimetres(),
            [Wall[0] with { Thickness = (-1).Millimetres() }]));
    }

    [Fact]
    public void The_proof_says_pressure_distance_and_what_to_keep_clear_of()
    {
        var drawing = ProofDrawing.Draw(GaugePressure.FromBar(82.5), 30.Metres());
        var text = XElement.Parse(drawing.Svg).Value;
        foreach (var part in new[] { "Proof with water at 82.5 bar gauge", "stand-off at least 30 m", "nobody in line",
            "bleed, highest point", "water only" }) Assert.Contains(part, text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_proof_without_pressure_or_distance_is_refused() =>
        Assert.Equal(2, Assert.Throws<InvalidDesignException>(() => ProofDrawing.Draw(GaugePressure.Zero, Length.Zero)).Findings.Count);
}

using NotebookKit.Aerodynamics.Bodies;
using NotebookKit.Aerodynamics.Fins;
using NotebookKit.DesignFiles.Shapes;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.DesignFiles.Keys;

/// <summary>The outside: body parts from the nose tip aft, and fins.</summary>
internal static class BodyKeys
{
    private static readonly UnitShape<Length> PartLength = Kinds.Millimetres(1, 10_000, "Measure along the axis.");
    private static readonly UnitShape<Length> Diameter = Kinds.Millimetres(5, 1000, "Give the outside diameter.");
    private static readonly UnitShape<Length> Chord = Kinds.Millimetres(1, 2000, "Measure along the body.");
    private static readonly UnitShape<Length> Station = Kinds.Metres(0, 20, "Measure aft of the nose tip.");

    private static readonly ChoiceShape<BodyPart> Part = new("body part", "kind",
        (["cone"], "A conical nose.", f => NosePart(f, Nose.Cone)),
        (["tangent ogive"], "A nose whose side is a circular arc tangent to the body.", f => NosePart(f, Nose.TangentOgive)),
        (["ellipsoid"], "Half an ellipsoid as a nose.", f => NosePart(f, Nose.Ellipsoid)),
        (["parabolic nose"], "A nose of the parabolic series.", f => NosePart(f, "bluntness",
            Kinds.Number(0, 1, "0 is a cone, 1 is tangent to the body."), null, "K' of the series.", Nose.Parabolic)),
        (["power nose"], "A nose of the power series.", f => NosePart(f, "exponent",
            Kinds.Number(0.5, 1, "0.5 is a paraboloid, 1 a cone."), null, "n of the series.", Nose.Power)),
        (["Haack nose"], "A nose of least wave drag.", f => NosePart(f, "volume weight",
            Kinds.Number(0, 2.0 / 3, "0 or 1/3 are the usual choices."), 0, "C of the series.", Nose.Haack)),
        (["tube"], "A straight length of body.", f =>
        {
            var length = f.Needs("length", PartLength, "Length along the axis.");
            var diameter = f.Needs("diameter", Diameter, "Outside diameter.");
            return Named(f, v => new BodyTube(length(v), diameter(v)));
        }),
        (["transition"], "A conical change of diameter.", f =>
        {
            var length = f.Needs("length", PartLength, "Length along the axis.");
            var fore = f.Needs("fore diameter", Diameter, "Diameter at the fore end.");
            var aft = f.Needs("aft diameter", Diameter, "Diameter at the aft end.");
            return Named(f, v => new Transition(length(v), fore(v), aft(v)));
        }));

    private static readonly ObjectShape<PlanformPoint> Corner = new("corner of a fin", "A corner of a fin's outline.", f =>
    {
        var aft = f.Needs("aft", Kinds.Metres(-5, 5, "Measure aft of the root's leading edge."), "Aft of the root's leading edge.");
        var reach = f.Needs("out", Kinds.Metres(0, 2, "Measure from the body's surface."), "Out from the body.");
        return v => new(aft(v), reach(v));
    });

    private static readonly ChoiceShape<FinPlanform> Planform = new("planform", "kind",
        (["trapezoid"], "Straight edges and a tip parallel to the body.", f =>
        {
            var root = f.Needs("root", Chord, "Chord at the body.");
            var tip = f.Needs("tip", Kinds.Millimetres(0, 2000, "Zero makes a pointed tip."), "Chord at the tip.");
            var span = f.Needs("span", Chord, "Body surface to tip.");
            var sweep = f.Needs("sweep", Kinds.Metres(-5, 5, "Negative where the tip lies forward."),
                "How far the tip's leading edge lies aft of the root's.");
            return v => new TrapezoidPlanform(root(v), tip(v), span(v), sweep(v));
        }),
        (["polygon"], "Any straight-sided outline.", f =>
        {
            var corners = f.Needs("corners", Kinds.List(Corner, 3, 200),
                "Corners from the root's leading edge round the tip to the root's trailing edge.");
            return v => new PolygonPlanform(corners(v));
        }));

    private static readonly ObjectShape<Func<Length, FinSet>> Fins = new("fins", "Equal fins spaced evenly round the body.", f =>
    {
        var name = f.Else("name", TextShape.Name, "Fins", "What the set is called; \"Fins\" unless given.");
        var count = f.Needs("count", Kinds.Count(3, 6, "Three to six fins can be computed."), "Number of fins.");
        var planform = f.Needs("planform", Planform, "Outline of one fin outside the body.");
        var thickness = f.Needs("thickness", Kinds.Millimetres(0.1, 50, "Measure the bare plate."), "Plate thickness.");
        var at = f.May("leading edge at", Station, "Root's leading edge, aft of the nose tip; the root ends with the body unless given.");
        var leading = f.Has("leading edge", Edge, FinEdge.Rounded, "Finish of the leading edge.");
        var trailing = f.Has("trailing edge", Edge, FinEdge.Square, "Finish of the trailing edge.");
        var cant = f.Has("cant", Kinds.Degrees(-5, 5, "A larger angle stalls the fins."), 0.Degrees(), "Angle of every fin to the axis.");
        return v => end => new FinSet(count(v), planform(v), thickness(v), at(v) ?? end - planform(v).RootLength)
        {
            Name = name(v), LeadingEdge = leading(v), TrailingEdge = trailing(v), Cant = cant(v),
        };
    });

    public static ObjectShape<FinnedBody> Body { get; } = new("body", "The outside as the air sees it.", f =>
    {
        var parts = f.Needs("parts", Kinds.List(Part, 1, 40), "Body parts from the nose tip aft.");
        var fins = f.Else("fins", Kinds.List(Fins, 0, 6), [], "Fin sets; none unless given.");
        var reference = f.May("reference diameter", Diameter, "Length a calibre stands for; the largest diameter unless given.");
        return v =>
        {
            var bare = new FinnedBody(parts(v), []) { Reference = reference(v) };
            return bare with { Fins = [.. fins(v).Select(s => s(bare.Length))] };
        };
    });

    private static WordShape<FinEdge> Edge => new("edge", ("square", FinEdge.Square), ("rounded", FinEdge.Rounded), ("sharp",
        FinEdge.Sharp));

    private static Func<Values, BodyPart> NosePart(FieldList f, Func<Length, Length, Nose> make)
    {
        var length = f.Needs("length", PartLength, "Tip to base.");
        var diameter = f.Needs("diameter", Diameter, "Outside diameter at the base.");
        return Named(f, v => make(length(v), diameter(v)));
    }

    private static Func<Values, BodyPart> NosePart(FieldList f, string key, NumberShape shape, double? otherwise, string about,
        Func<Length, Length, double, Nose> make)
    {
        var length = f.Needs("length", PartLength, "Tip to base.");
        var diameter = f.Needs("diameter", Diameter, "Outside diameter at the base.");
        var parameter = otherwise is { } number ? f.Has(key, shape, number, about) : f.Needs(key, shape, about);
        return Named(f, v => make(length(v), diameter(v), parameter(v)));
    }

    private static Func<Values, BodyPart> Named(FieldList f, Func<Values, BodyPart> make)
    {
        var name = f.Part("name", TextShape.Name, "What it is called; \"Nose\", \"Body\" or \"Transition\" unless given.");
        return v => name(v) is { } own ? make(v) with { Name = own } : make(v);
    }
}

using NotebookKit.Aerodynamics.Bodies;
using NotebookKit.Aerodynamics.Fins;
using NotebookKit.Building.Cuts;
using NotebookKit.Building.Nests;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Recovery;
using NotebookKit.Vessels.Design;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Sheets;

/// <summary>Patterns of one stage at full size: fins, jig with slots, fin marks around the body, marks to cut sleeves by, cloth plies,
/// cap discs, gores of the canopy; and the fins laid on their stock sheet.
/// Source: geometry of the design; what is cut longer, the cut list's.</summary>
public sealed partial record TemplateSheet : Result
{
    // Common practice, no source: card that slides on the body and takes the fin without play that can be felt.
    private static readonly Length SlotPlay = 0.2.Millimetres(), BodyPlay = 0.5.Millimetres(), JigRim = 25.Millimetres();
    private static readonly Length Strip = 22.Millimetres(), SleeveStrip = 30.Millimetres();

    private readonly string _name;

    private TemplateSheet(string name, IReadOnlyList<Template> templates, IReadOnlyList<NestResult> nests, IReadOnlyList<string> left)
    {
        (_name, Templates, Nests, LeftOut) = (name, templates, nests, left);
        Findings = [Finding.Note("Measure the printer's ruler before the first cut: 100 mm must be 100 mm. Print at full size, \"fit to "
            + "page\" switched off.")];
    }

    /// <summary>The patterns.</summary>
    public IReadOnlyList<Template> Templates { get; }

    /// <summary>The fins laid on the sheets that the stock list names, a layout a set; empty where it names none that holds them.</summary>
    public IReadOnlyList<NestResult> Nests { get; }

    /// <summary>What the design has no pattern for, a sentence each.</summary>
    public IReadOnlyList<string> LeftOut { get; }

    /// <inheritdoc/>
    public override string Title => $"Templates at full size, {_name}";

    /// <inheritdoc/>
    public override ModelCard Model { get; } = new("Patterns at full size",
    [
        $"Slots of the jig are {SlotPlay.Show()} wider than the fin, its hole is {BodyPlay.Show()} wider than the body (common practice, "
            + "no source).",
        "Sleeves are marked as they lie relaxed on the bench, at their own diameter.",
    ], "Sizes of the design; check them on the parts before cutting.", [Source.CommonPractice("patterns of the bench")]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines => [.. Templates.Select(t => new ResultLine(t.Name,
        $"{Digits.Round(t.Length.Millimeters, 4)} × {Digits.Round(t.Width.Millimeters, 4)} mm", t.Note))];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForBench;

    /// <inheritdoc/>
    public override Working Working => new(Title, []);

    /// <summary>Patterns of a stage. Source: as the type.</summary>
    /// <param name="name">What the stage is called.</param>
    /// <param name="cuts">What its vessel is cut from.</param>
    /// <param name="body">Its outside; without it there is no pattern of fins.</param>
    /// <param name="shelf">The stock list, with the sheets that fins are laid on; none where there is none.</param>
    /// <param name="canopy">What it comes down on; none where it isn't given.</param>
    public static TemplateSheet Of(string name, CutList cuts, FinnedBody? body, IReadOnlyList<ShelfItem>? shelf = null,
        Canopy? canopy = null)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(cuts);
        List<Template> templates = [];
        List<NestResult> nests = [];
        List<string> left = [];
        foreach (var fins in body?.Fins ?? [])
        {
            var around = Around(body!, fins);
            templates.AddRange([Fin(fins), Jig(fins, around), Marks(fins, around)]);
            if (FinNest.Of(fins, shelf ?? []) is { } nest) nests.Add(nest);
            else left.Add($"The stock list names no \"{FinNest.SheetName(fins)}\" with a length and a width that hold a fin: the fins "
                + "aren't laid on a sheet.");
        }

        if (templates.Count == 0) left.Add("The design gives no fins: no pattern of fins, jig and fin marks.");
        // The pieces of the plies come first, one a ply.
        List<(int Ply, double Mm)> sleeves = [.. cuts.Layup.Vessel.Plies.Select((p, i) => (p, i)).Where(p => p.p is BraidedSleeve)
            .Select(p => (p.i + 1, cuts.Pieces[p.i].Along.Millimeters))];
        if (sleeves.Count > 0) templates.Add(Sleeves(sleeves));
        else left.Add("The vessel has no sleeves: no strip to cut them by.");
        foreach (var (piece, wrap) in cuts.Pieces.Zip(cuts.Layup.Vessel.Plies).Where(p => p.Second is ClothWrap))
            templates.Add(Cloth(piece, (ClothWrap)wrap));
        var vessel = cuts.Layup.Vessel;
        foreach (var (end, of) in new[] { ("nozzle end", vessel.NozzleEnd), ("forward end", vessel.ForwardEnd) })
        {
            if (of.Discs is { } discs) templates.Add(Disc(end, of.Closure, discs, vessel.Liner.Bore));
            else left.Add($"The {end} has no cap discs: no pattern of discs.");
        }

        if (canopy is not null && CanopyGore.Of(canopy) is { } gore) templates.Add(Gore(gore, canopy));
        else if (canopy is { Gores: null }) left.Add("The design doesn't say how many gores its canopy has "
            + "(\"gores\"): no pattern of gores.");
        else if (canopy is not null) left.Add("Gores are drawn for a flat circular and a hemispherical canopy alone: no pattern of gores.");
        return new(name, templates, nests, left);
    }

    // Diameter of the body where the root's middle stands.
    private static Length Around(FinnedBody body, FinSet fins)
    {
        var (at, fore) = (fins.LeadingEdgeAt + (fins.Planform.RootLength / 2), Length.Zero);
        foreach (var part in body.Parts)
        {
            if (at <= fore + part.Length) return part.DiameterAt(at - fore);
            fore += part.Length;
        }

        return body.ReferenceDiameter;
    }

    private static Template Fin(FinSet fins)
    {
        var corners = fins.Planform.Corners;
        var (first, last) = (corners.Min(c => c.Aft.Millimeters), corners.Max(c => c.Aft.Millimeters));
        var reach = corners.Max(c => c.Out.Millimeters);
        SheetPoint At(PlanformPoint c) => Point(c.Aft.Millimeters - first, c.Out.Millimeters);
        var (middle, low) = ((last - first) / 2, reach * 0.36);
        return new($"fin, cut {fins.Count}", $"Sheet of {fins.Thickness.Show()}. The long straight side is the root, on the body; front to "
            + "the left. The arrow lies along the sheet's grain.", Mm(last - first), Mm(reach))
        {
            Lines =
            [
                new([.. corners.Select(At)], TemplateLineKind.Cut, IsClosed: true),
                new([Point(middle - 22, low), Point(middle + 22, low)], TemplateLineKind.Grain),
            ],
            Words = [new(Point(middle, low + 4), "grain"), new(Point(fins.Planform.RootLength.Millimeters / 2 - first, 4),
                $"root {Digits.Round(fins.Planform.RootLength.Millimeters)} mm, tip {Digits.Round(TipOf(corners))} mm, "
                + $"span {Digits.Round(reach)} mm")],
        };
    }

    private static double TipOf(IReadOnlyList<PlanformPoint> corners)
    {
        var reach = corners.Max(c => c.Out.Millimeters);
        var tip = corners.Where(c => c.Out.Millimeters > reach - 0.01).Select(c => c.Aft.Millimeters).ToList();
        return tip.Max() - tip.Min();
    }

    private static Template Jig(FinSet fins, Length body)
    {
        var hole = (body + BodyPlay).Millimeters;
        var outer = hole + (2 * JigRim.Millimeters);
        var (c, half) = (outer / 2, (fins.Thickness + SlotPlay).Millimeters / 2);
        var slots = Enumerable.Range(0, fins.Count).Select(i =>
        {
            var (sin, cos) = Math.SinCos(2 * Math.PI * i / fins.Count);
            SheetPoint At(double along, double aside) => Point(c + (along * sin) + (aside * cos), c + (along * cos) - (aside * sin));
            // From inside the hole's edge, so that slot and hole are one opening.
            var (inner, end) = (Math.Sqrt((hole * hole / 4) - (half * half)), (outer / 2) - 7);
            return new TemplateLine([At(inner, -half), At(end, -half), At(end, half), At(inner, half)], TemplateLineKind.Cut);
        });
        var play = Digits.Round(2 * half, 3);
        return new("jig for the fins, cut 2", $"Two of stiff card or thin ply, one at each end of the root. Hole "
            + $"{Digits.Round(hole, 4)} mm, slots {play} mm wide for fins of {fins.Thickness.Show()}.", Mm(outer), Mm(outer))
        {
            Circles = [new(Point(c, c), Mm(outer), TemplateLineKind.Cut), new(Point(c, c), Mm(hole), TemplateLineKind.Cut)],
            Lines = [.. slots, new([Point(c - 8, c), Point(c + 8, c)], TemplateLineKind.Centre),
                new([Point(c, c - 8), Point(c, c + 8)], TemplateLineKind.Centre)],
            Words = [new(Point(c, c - 14), $"hole {Digits.Round(hole, 4)} mm, slots {play} mm")],
        };
    }

    private static Template Marks(FinSet fins, Length body)
    {
        var around = Math.PI * body.Millimeters;
        List<TemplateLine> lines = [Frame(around, Strip.Millimeters)];
        List<TemplateWord> words = [];
        for (var i = 0; i < fins.Count; i++)
        {
            var at = around * (i + 0.5) / fins.Count;
            lines.Add(new([Point(at, 0), Point(at, Strip.Millimeters)], TemplateLineKind.Mark));
            words.Add(new(Point(at + 8, 4), $"fin {i + 1}"));
        }

        return new("fin marks around the body", $"Wrap it around the body of {body.ToUnit(LengthUnit.Millimeter).Show()}: the ends meet. "
            + $"{Digits.Round(around, 4)} mm around.", Mm(around), Strip) { Lines = lines, Words = words };
    }

    private static Template Sleeves(IReadOnlyList<(int Ply, double Mm)> sleeves)
    {
        var (longest, high) = (sleeves.Max(s => s.Mm), SleeveStrip.Millimeters);
        List<TemplateLine> lines = [Frame(longest, high)];
        List<TemplateWord> words = [new(Point(12, 4), "0: end")];
        for (var tick = 10; tick < longest; tick += 10)
        {
            var tall = tick % 100 == 0 ? 6.0 : tick % 50 == 0 ? 4 : 2.5;
            lines.Add(new([Point(tick, high), Point(tick, high - tall)], TemplateLineKind.Mark));
            if (tick % 100 == 0) words.Add(new(Point(tick, high - 9), $"{tick}"));
        }

        foreach (var (cut, i) in sleeves.GroupBy(s => Math.Ceiling(s.Mm)).OrderBy(g => g.Key).Select((g, i) => (g, i)))
        {
            var at = cut.Max(s => s.Mm);
            lines.Add(new([Point(at, 0), Point(at, high - 6)], TemplateLineKind.Cut));
            // Beside its line, in two rows that alternate, so that near cuts don't write over each other.
            words.Add(new(Point(at - 7, 4 + (9 * (i % 2))), $"ply {string.Join(", ", cut.Select(s => s.Ply))}"));
            words.Add(new(Point(at - 7, 8 + (9 * (i % 2))), $"{Digits.Round(at, 4)} mm"));
        }

        return new("strip to cut sleeves by", "Lay the sleeve relaxed, at its own diameter, along the strip; figures are mm from its end. "
            + "The allowance at both ends is in it.", Mm(longest), SleeveStrip) { Lines = lines, Words = words };
    }

    private static Template Cloth(CutPiece piece, ClothWrap wrap)
    {
        var (along, around) = (piece.Along.Millimeters, piece.Around!.Value.Millimeters);
        // The warp runs along the vessel, around it, or at 45 degrees to both.
        var reach = 0.35 * Math.Min(Math.Min(along, around), 120);
        var (dx, dy) = wrap.Lay switch { ClothLay.WarpAxial => (reach, 0.0), ClothLay.WarpAround => (0.0, reach),
            _ => (reach * Math.Sqrt(0.5), reach * Math.Sqrt(0.5)) };
        return new($"{piece.Ply}, cut {piece.Count}", $"{piece.Material}, {Digits.Round(along, 4)} mm along the vessel, "
            + $"{Digits.Round(around, 4)} mm around, allowances in it. The arrow lies along the warp.", Mm(along), Mm(around))
        {
            Lines =
            [
                Frame(along, around),
                new([Point((along / 2) - dx, (around / 2) - dy), Point((along / 2) + dx, (around / 2) + dy)], TemplateLineKind.Grain),
            ],
            Words = [new(Point(along / 2, (around / 2) + dy + 5), "warp")],
        };
    }

    private static Template Disc(string end, Closure closure, CapDiscs discs, Length bore)
    {
        var diameter = discs.DiameterOver(closure, bore).Millimeters;
        var c = diameter / 2;
        List<TemplateCircle> circles = [new(Point(c, c), Mm(diameter), TemplateLineKind.Cut)];
        if (closure.Opening.Meters > 0) circles.Add(new(Point(c, c), closure.Opening, TemplateLineKind.Cut));
        List<TemplateLine> lines = [new([Point(c - (c * 0.8), c), Point(c + (c * 0.8), c)], TemplateLineKind.Grain),
            new([Point(c, 0), Point(c, diameter)], TemplateLineKind.Centre)];
        return new($"cap disc, {end}, cut {discs.Count}", $"{discs.Cloth.Name}, {Digits.Round(diameter, 4)} mm across; turn each against "
            + "the one beneath. The arrow lies along the warp.", Mm(diameter), Mm(diameter))
        {
            Circles = circles, Lines = lines, Words = [new(Point(c, c + (c * 0.5)), $"{Digits.Round(diameter, 4)} mm across")],
        };
    }

    private static TemplateLine Frame(double length, double width) =>
        new([Point(0, 0), Point(length, 0), Point(length, width), Point(0, width)], TemplateLineKind.Cut, IsClosed: true);

    private static SheetPoint Point(double alongMm, double acrossMm) => new(Mm(alongMm), Mm(acrossMm));

    private static Length Mm(double mm) => Length.FromMillimeters(mm);
}

using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Design;
using NotebookKit.Vessels.Laying;
using UnitsNet;

namespace NotebookKit.Building.Cuts;

/// <summary>Sizes of the pieces that a layup is cut from.</summary>
internal static class CutModel
{
    public static CutList List(Layup layup, CutAllowances allowances)
    {
        List<CutPiece> pieces = [];
        List<Finding> findings = [.. layup.Findings.Where(f => f.Severity != FindingSeverity.Note)];
        for (var i = 0; i < layup.Plies.Count; i++)
        {
            var (ply, name) = (layup.Plies[i], layup.NameOf(i));
            if (ply is { Ply: BraidedSleeve, Fit: null } or { Ply: ClothWrap, CutWidth: null })
            {
                findings.Add(BuildingFindings.PlyHasNoCut(name));
                continue;
            }

            switch (ply.Ply)
            {
                case BraidedSleeve sleeve:
                    pieces.Add(Sleeve(name, sleeve.Braid, ply, allowances));
                    break;
                case ClothWrap wrap:
                    pieces.Add(Cloth(name, wrap, ply, allowances, findings));
                    break;
                case HoopWrap hoop:
                    pieces.Add(Tape(name, hoop, ply, allowances));
                    break;
                default:
                    var along = ply.CutLength + 2 * allowances.PerEnd;
                    pieces.Add(new(name, ply.Ply.Name, 1, along, ply.CutWidth, along, ""));
                    break;
            }
        }

        AddDiscs(pieces, "nozzle end", layup.Vessel.NozzleEnd, layup.Vessel.Liner.Bore);
        AddDiscs(pieces, "forward end", layup.Vessel.ForwardEnd, layup.Vessel.Liner.Bore);
        if (allowances.PeelPly)
        {
            var (along, around) = (LengthOf(layup) + 2 * allowances.PerEnd, Math.PI * layup.OuterDiameter + allowances.Join);
            pieces.Add(new("peel ply", "peel ply", 1, along, around, along, "taken off again: its weave keys the next bond"));
        }

        if (findings.Any(f => f.Severity == FindingSeverity.Error)) throw new InvalidDesignException($"Cut list, {layup.Vessel.Name}",
            findings);
        return new CutList(layup, allowances, pieces, findings);
    }

    private static Length LengthOf(Layup layup) => layup.Vessel.Length + layup.Vessel.NozzleEnd.Reach + layup.Vessel.ForwardEnd.Reach;

    private static void AddDiscs(List<CutPiece> pieces, string end, VesselEnd of, Length bore)
    {
        if (of.Discs is not { } discs) return;
        var diameter = discs.DiameterOver(of.Closure, bore);
        var note = "round, each turned against the one beneath" + (of.Closure.Opening.Meters > 0
            ? $", with a hole of {of.Closure.Opening.Show()}" : "");
        pieces.Add(new($"cap discs, {end}", discs.Cloth.Name, discs.Count, diameter, diameter, discs.Count * diameter, note));
    }

    private static CutPiece Sleeve(string name, Braid braid, PlyGeometry ply, CutAllowances allowances)
    {
        var fit = ply.Fit!;
        var cut = ply.CutLength + 2 * allowances.PerEnd / fit.LengthFactor;
        var change = 100 * (fit.LengthFactor - 1);
        var note = Math.Abs(change) < 0.5
            ? "covers its own length"
            : $"pulled from {braid.NominalDiameter.Show()} to {ply.InnerDiameter.Show()} it {(change < 0 ? "shortens" : "lengthens")} by "
                + $"{Digits.Round(Math.Abs(change), 2)} %";
        return new(name, braid.Name, 1, cut, null, cut, note);
    }

    private static CutPiece Tape(string name, HoopWrap hoop, PlyGeometry ply, CutAllowances allowances)
    {
        var turns = Math.PI * ply.OuterDiameter * allowances.TapeTurns * hoop.Layers;
        var length = ply.CutLength + turns;
        return new(name, hoop.Tape.Name, 1, length, null, length, $"{hoop.Layers} layers, in one piece if the roll allows");
    }

    private static CutPiece Cloth(string name, ClothWrap wrap, PlyGeometry ply, CutAllowances allowances, List<Finding> findings)
    {
        double along = (ply.CutLength + 2 * allowances.PerEnd).Meters, around = ply.CutWidth!.Value.Meters,
            roll = wrap.Cloth.RollWidth.Meters, join = allowances.Join.Meters;
        switch (wrap.Lay)
        {
            case ClothLay.WarpAxial:
            {
                // The roll's length lies along the vessel, its width goes around.
                var (count, width) = Sections(around, roll, join);
                return Piece(count, along, width, count * along,
                    count > 1 ? $"joined around from {count} sections, stagger the joins" : "");
            }

            case ClothLay.WarpAround:
            {
                var (count, width) = Sections(along, roll, join);
                return Piece(count, width, around, count * around, count > 1 ? $"joined along from {count} sections" : "");
            }

            default:
            {
                // A rectangle at 45° needs (a + b)/√2 of the roll's width; so much along it may be at the most.
                var longest = Math.Sqrt(2) * roll - around;
                if (longest <= 2 * join)
                {
                    findings.Add(BuildingFindings.BiasClothNeedsWiderRoll(
                        name, 1000 * around, wrap.Cloth.RollWidth, 1000 * (around + 2 * join) / Math.Sqrt(2)));
                    return Piece(1, along, around, 0, "");
                }

                var (count, width) = Sections(along, longest, join);
                return Piece(count, width, around, count * (width + around) / Math.Sqrt(2),
                    count > 1 ? $"cut at 45°, joined along from {count} sections" : "cut at 45°");
            }
        }

        CutPiece Piece(int count, double alongM, double aroundM, double rollM, string note) =>
            new(name, wrap.Cloth.Name, count, Length.FromMeters(alongM), Length.FromMeters(aroundM), Length.FromMeters(rollM), note);
    }

    /// <summary>Fewest sections of equal width that cover a width with joins between them.</summary>
    private static (int Count, double Width) Sections(double widthM, double rollM, double joinM)
    {
        var count = widthM <= rollM ? 1 : (int)Math.Ceiling((widthM - joinM) / (rollM - joinM));
        return (count, (widthM + (count - 1) * joinM) / count);
    }
}

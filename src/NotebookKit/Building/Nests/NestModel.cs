using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Prepared;
using NetTopologySuite.Operation.Union;
using NotebookKit.Numerics;
using NotebookKit.Provenance;
using UnitsNet;

namespace NotebookKit.Building.Nests;

/// <summary>Lays pieces on sheets, in millimetres.</summary>
internal sealed class NestModel
{
    // Outlines may touch: a micrometre of overlap is none.
    private const double Touch = 1e-3;
    private const int MostSheets = 50;

    private readonly WorkRun _run = WorkRun.Current;
    private readonly SheetNest _nest;
    private readonly SeededSamples _samples;
    private readonly int[] _turns;
    private readonly List<(int Piece, int Copy)> _pieces = [];
    private readonly Polygon[][] _shapes;
    private readonly Dictionary<(int, int, int, int), Geometry> _noFits = [];

    public NestModel(SheetNest nest)
    {
        _nest = nest;
        _samples = new SeededSamples(nest.Seed);
        _turns = nest.Turns switch { SheetTurns.AsDrawn => [0], SheetTurns.Quarter => [0, 1, 2, 3], _ => [0, 2] };
        for (var i = 0; i < nest.Pieces.Count; i++)
            for (var copy = 0; copy < nest.Pieces[i].Count; copy++)
                _pieces.Add((i, copy));
        _shapes = [.. nest.Pieces.Select(p => _turns.Select(q => NoFit.Turned(NoFit.Grown(NoFit.PolygonOf(p.Outline),
            nest.Gap.Millimeters), q)).ToArray())];
        foreach (var (a, b) in from a in Enumerable.Range(0, _shapes.Length) from b in Enumerable.Range(0, _shapes.Length) select (a, b))
            for (var i = 0; i < _turns.Length; i++)
                for (var j = 0; j < _turns.Length; j++)
                {
                    _run.ThrowIfStopped();
                    _noFits[(a, i, b, j)] = NoFit.Of(_shapes[a][i], _shapes[b][j]);
                }
    }

    public NestResult Best()
    {
        for (var i = 0; i < _shapes.Length; i++)
            if (_shapes[i].All(s => Room(s) is null))
                throw new InvalidDesignException("Pieces on a sheet", [BuildingFindings.PieceDoesNotFitSheet(
                    _nest.Pieces[i].Name, _nest.SheetLength, _nest.SheetWidth, _nest.Gap, _nest.Turns == SheetTurns.Quarter)]);

        var tries = new (List<Set> Sets, int Sheets, double Used)[_nest.Tries];
        Parallel.For(0, _nest.Tries, _run.Parallel(), k => tries[k] = Lay(Order(k), k));
        var best = tries.Where(t => t.Sets.Count == _pieces.Count).OrderBy(t => t.Sheets).ThenBy(t => t.Used).FirstOrDefault();
        if (best.Sets is null)
            throw new InvalidDesignException("Pieces on a sheet", [BuildingFindings.PiecesTakeTooManySheets(MostSheets)]);
        return new NestResult(_nest, [.. best.Sets.Select(Placement)], best.Sheets, Length.FromMillimeters(best.Used));
    }

    private readonly record struct Set(int Piece, int Turn, int Sheet, Coordinate At);

    private NestPlacement Placement(Set set)
    {
        var outline = NoFit.Moved(NoFit.Turned(NoFit.PolygonOf(_nest.Pieces[set.Piece].Outline), _turns[set.Turn]), set.At);
        return new(_nest.Pieces[set.Piece], set.Sheet + 1, _turns[set.Turn],
            [.. outline.Coordinates.SkipLast(1).Select(c => new SheetPoint(Length.FromMillimeters(c.X), Length.FromMillimeters(c.Y)))]);
    }

    // The largest first, then the longest first, then shuffled from the largest by up to half its size.
    private List<int> Order(int attempt)
    {
        double Key(int i)
        {
            var shape = _shapes[_pieces[i].Piece][0];
            return attempt switch
            {
                0 => shape.Area,
                1 => shape.EnvelopeInternal.Width,
                _ => shape.Area * (0.5 + _samples.Uniform(attempt, i)),
            };
        }

        return [.. Enumerable.Range(0, _pieces.Count).OrderByDescending(Key).ThenBy(i => i)];
    }

    private (List<Set> Sets, int Sheets, double Used) Lay(List<int> order, int attempt)
    {
        List<Set> sets = [];
        List<double> used = [];
        foreach (var i in order)
        {
            // Where two turns are equally good the one taken first decides what the next piece can do: it differs from try to try.
            var (piece, first) = (_pieces[i].Piece, attempt == 0 ? 0 : (int)(_turns.Length * _samples.Uniform(attempt, i, 1)));
            for (var sheet = 0; sheet < MostSheets; sheet++)
            {
                _run.ThrowIfStopped();
                if (sheet == used.Count) used.Add(0);
                if (Find(sets, sheet, piece, first, used[sheet]) is not { } set) continue;
                sets.Add(set);
                used[sheet] = Math.Max(used[sheet], set.At.X + _shapes[piece][set.Turn].EnvelopeInternal.MaxX + Inset);
                break;
            }
        }

        used.RemoveAll(u => u == 0);
        return (sets, used.Count, used.Count == 0 ? 0 : used[^1]);
    }

    private double Inset => _nest.Gap.Millimeters / 2;

    /// <summary>Where a shape's origin may be on an empty sheet; none where it is too large.</summary>
    private Envelope? Room(Polygon shape)
    {
        var size = shape.EnvelopeInternal;
        var (x0, x1) = (Inset - size.MinX, _nest.SheetLength.Millimeters - Inset - size.MaxX);
        var (y0, y1) = (Inset - size.MinY, _nest.SheetWidth.Millimeters - Inset - size.MaxY);
        return x1 < x0 - Touch || y1 < y0 - Touch ? null : new Envelope(x0, Math.Max(x0, x1), y0, Math.Max(y0, y1));
    }

    // Where the used length grows least, then furthest back, then lowest.
    private Set? Find(List<Set> sets, int sheet, int piece, int first, double used)
    {
        Set? best = null;
        var (bestUsed, bestX, bestY) = (double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity);
        for (var k = 0; k < _turns.Length; k++)
        {
            var turn = (first + k) % _turns.Length;
            if (Room(_shapes[piece][turn]) is not { } room) continue;
            var reach = _shapes[piece][turn].EnvelopeInternal;
            foreach (var at in Places(sets, sheet, piece, turn, room))
            {
                var (u, x, y) = (Math.Max(used, Math.Round(at.X + reach.MaxX, 3)), Math.Round(at.X + reach.MinX, 3),
                    Math.Round(at.Y + reach.MinY, 3));
                if ((u, x, y).CompareTo((bestUsed, bestX, bestY)) >= 0) continue;
                (bestUsed, bestX, bestY) = (u, x, y);
                best = new Set(piece, turn, sheet, at);
            }
        }

        return best;
    }

    /// <summary>Corners of the places that are left: where sides of no-fit polygons and of the room meet, and no no-fit polygon
    /// holds.</summary>
    private List<Coordinate> Places(List<Set> sets, int sheet, int piece, int turn, Envelope room)
    {
        var forbidden = sets.Where(s => s.Sheet == sheet).Select(s => NoFit.Moved(_noFits[(s.Piece, s.Turn, piece, turn)], s.At)).ToList();
        var corner = new Coordinate(room.MinX, room.MinY);
        if (forbidden.Count == 0) return [corner];
        var factory = GeometryFactory.Default;
        Geometry frame = room.Width < Touch || room.Height < Touch
            ? factory.CreateLineString([corner, new Coordinate(room.MaxX, room.MaxY)])
            : factory.ToGeometry(room).Boundary;
        var lines = UnaryUnionOp.Union([.. forbidden.Select(f => f.Boundary), frame]);
        var closed = forbidden.Select(f => PreparedGeometryFactory.Prepare(f.Buffer(-Touch))).ToList();
        var wide = new Envelope(room);
        wide.ExpandBy(Touch);
        return [.. lines.Coordinates.Distinct().Where(c => wide.Contains(c) && !closed.Any(f => f.Intersects(factory.CreatePoint(c))))];
    }
}

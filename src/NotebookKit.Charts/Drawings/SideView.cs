namespace NotebookKit.Charts.Drawings;

/// <summary>Where things stand on paper in a side view: scale, axis, and the plain stretch left out between break lines.</summary>
internal sealed class SideView
{
    /// <summary>Room for the side view on the sheet [mm].</summary>
    public const double Room = 208;

    // Reduction scales, ISO 5455:1979, Technical drawings - Scales.
    private static readonly double[] Reductions = [1, 2, 5, 10, 20, 50, 100];

    private const double Kept = 14;
    private const double BreakGap = 3;

    private readonly double _noseMm;
    private readonly double _breakFromMm = double.PositiveInfinity;
    private readonly double _breakToMm = double.PositiveInfinity;

    public SideView(DrawingModel model, double left, double room = Room)
    {
        Left = left;
        _noseMm = model.Outline[0].Station.Millimeters;
        var length = model.Length.Millimeters;
        Scale = Reductions.FirstOrDefault(s => length / s <= room, Math.Ceiling(length / room / 100) * 100);
        var (from, to) = PlainStretch(model);
        var broken = Reductions.FirstOrDefault(s => (length - Math.Max(0, to - from - (2 * Kept * s))) / s <= room - BreakGap, Scale);
        // Breaking is worth it only where the whole body would come out as thin as a pencil line.
        if (broken < Scale && model.Diameter.Millimeters / Scale < 6)
        {
            Scale = broken;
            (_breakFromMm, _breakToMm) = (from + (Kept * Scale), to - (Kept * Scale));
        }
    }

    public double Left { get; }

    /// <summary>Reduction [-]: 5 for 1:5.</summary>
    public double Scale { get; }

    public bool Broken => double.IsFinite(_breakFromMm);

    public (double From, double To) BreakOnPaper => (X(_breakFromMm), X(_breakToMm));

    public double BreakFromMm => _breakFromMm;

    public double BreakToMm => _breakToMm;

    /// <summary>Place on paper [mm] of a station [mm].</summary>
    public double X(double stationMm)
    {
        var whole = stationMm - _noseMm;
        if (stationMm <= _breakFromMm) return Left + (whole / Scale);
        var before = (_breakFromMm - _noseMm) / Scale;
        if (stationMm >= _breakToMm) return Left + before + BreakGap + ((stationMm - _breakToMm) / Scale);
        return Left + before + (BreakGap * (stationMm - _breakFromMm) / (_breakToMm - _breakFromMm));
    }

    /// <summary>Size on paper [mm] of a length [mm].</summary>
    public double Size(double mm) => mm / Scale;

    // The longest run of plain cylinder with nothing on it.
    private static (double From, double To) PlainStretch(DrawingModel model)
    {
        var busy = model.Outline.Select(p => p.Station)
            .Concat(model.Vessel.Select(p => p.Station))
            .Concat(model.Fins.SelectMany(f => f.Corners).Select(p => p.Station))
            .Concat(model.CentresOfGravity.Select(m => m.Station))
            .Concat(model.Labels.Select(m => m.Station))
            .Concat(model.CentreOfPressure is { } cp ? [cp] : [])
            .Concat(model.WaterLevel is { } level ? [level] : [])
            .Select(s => s.Millimeters).Order().ToList();
        var best = (From: 0.0, To: 0.0);
        for (var i = 1; i < busy.Count; i++)
        {
            if (busy[i] - busy[i - 1] <= best.To - best.From) continue;
            var plain = Math.Abs(RadiusAt(model.Outline, busy[i - 1]) - RadiusAt(model.Outline, busy[i])) < 1e-6;
            if (plain) best = (busy[i - 1], busy[i]);
        }
        return best;
    }

    /// <summary>Radius [mm] of an outline at a station [mm], straight between its points.</summary>
    public static double RadiusAt(IReadOnlyList<OutlinePoint> outline, double stationMm)
    {
        for (var i = 1; i < outline.Count; i++)
        {
            var (a, b) = (outline[i - 1], outline[i]);
            if (stationMm > b.Station.Millimeters) continue;
            var span = b.Station.Millimeters - a.Station.Millimeters;
            return span <= 0 ? b.Radius.Millimeters : a.Radius.Millimeters
                + ((b.Radius.Millimeters - a.Radius.Millimeters) * (stationMm - a.Station.Millimeters) / span);
        }
        return outline[^1].Radius.Millimeters;
    }
}

namespace NotebookKit.Charts.Drawings;

/// <summary>The profile of one end [mm]: along the axis from the end of the straight part, outwards positive; across from
/// the axis.</summary>
internal sealed class EndSection
{
    private readonly VesselEnd _end;

    public EndSection(VesselEnd end, Layup layup)
    {
        _end = end;
        var bore = layup.Vessel.Liner.Bore;
        BoreMm = bore.Millimeters / 2;
        LinerMm = BoreMm + (layup.Vessel.Liner.Wall.Millimeters * EndDrawing.Thicker);
        WallMm = LinerMm + (layup.Thickness.Millimeters * EndDrawing.Thicker);
        SleeveMm = layup.Plies.Where(p => p.Ply is BraidedSleeve).Sum(p => p.Thickness.Millimeters) * EndDrawing.Thicker;
        ThickMm = end.Closure.Wall.Millimeters;
        DepthMm = end.Closure is FlatClosure ? 0 : end.Closure.DepthInside(bore).Millimeters;
        CrownMm = DepthMm + ThickMm;
        OverlapMm = Math.Max(end.Joints.OfType<BondedPlug>().Select(p => p.Overlap.Millimeters).DefaultIfEmpty(0).Max(),
            end.Joints.OfType<ThreadedBoss>().Select(p => p.Engagement.Millimeters).DefaultIfEmpty(0).Max());
        var sleeve = end.Joints.OfType<CarriedSleeve>().FirstOrDefault();
        NeckMm = sleeve is null ? 0 : Math.Min((sleeve.Neck?.Millimeters ?? (bore.Millimeters * 0.4)) / 2, BoreMm + ThickMm);
        TailMm = sleeve?.Tail?.Millimeters ?? 0;
        NeckFromMm = sleeve is null ? CrownMm : AlongAt(NeckMm);
        (FittingMm, FittingFromMm, FittingToMm) = end.Fitting switch
        {
            ThreadedFitting t => (t.Nominal.Millimeters / 2, DepthMm, DepthMm + Math.Max(ThickMm, t.Engagement.Millimeters) + 8),
            ShoulderedFitting => (end.Closure.Opening.Millimeters / 2, DepthMm, CrownMm + 12),
            BondedFitting t => (end.Closure.Opening.Millimeters / 2, CrownMm - t.Overlap.Millimeters, CrownMm + 10),
            ClampedFitting t => (t.Nominal.Millimeters / 2, DepthMm, CrownMm + t.NutHeight.Millimeters + 8),
            _ => (0, CrownMm, CrownMm),
        };
        FittingSealAtMm = end.Fitting is ThreadedFitting thread ? DepthMm + Math.Max(ThickMm, thread.Engagement.Millimeters) + 1
            : end.Fitting is ShoulderedFitting ? DepthMm - 1 : CrownMm + 1;
        FirstMm = -Math.Max(40, OverlapMm + 16);
        LastMm = Math.Max(Math.Max(CrownMm, FittingToMm), NeckFromMm + TailMm) + 3;
        OutsideMm = Math.Max(WallMm, BoreMm + ThickMm + SleeveMm) + (end.Discs is null ? 0 : 2);
    }

    public double BoreMm { get; }

    public double LinerMm { get; }

    public double WallMm { get; }

    public double SleeveMm { get; }

    public double ThickMm { get; }

    public double DepthMm { get; }

    public double CrownMm { get; }

    public double OverlapMm { get; }

    public double NeckMm { get; }

    public double NeckFromMm { get; }

    public double TailMm { get; }

    public double FittingMm { get; }

    public double FittingFromMm { get; }

    public double FittingToMm { get; }

    public double FittingSealAtMm { get; }

    public double FirstMm { get; }

    public double LastMm { get; }

    public double OutsideMm { get; }

    /// <summary>Radius of the closure's outside at a place along [mm].</summary>
    public double OuterAt(double along) => Radius(along, BoreMm + ThickMm, CrownMm);

    /// <summary>Radius of the closure's inside at a place along [mm].</summary>
    public double InnerAt(double along) => Radius(along, BoreMm, DepthMm);

    /// <summary>Radius over the sleeve at a place along [mm].</summary>
    public double SleeveAt(double along) => OuterAt(along) + SleeveMm;

    // Where the closure's outside has a radius.
    private double AlongAt(double radius)
    {
        var rim = BoreMm + ThickMm;
        return _end.Closure switch
        {
            FlatClosure => ThickMm,
            ConicalClosure cone => (rim - radius) / Math.Tan(cone.HalfAngle.Radians),
            _ => CrownMm * Math.Sqrt(Math.Max(0, 1 - (radius * radius / (rim * rim)))),
        };
    }

    private double Radius(double along, double rim, double crown) => _end.Closure switch
    {
        FlatClosure => rim,
        ConicalClosure cone => Math.Max(0, rim - (along * Math.Tan(cone.HalfAngle.Radians))),
        _ => rim * Math.Sqrt(Math.Max(0, 1 - (along * along / (crown * crown)))),
    };
}

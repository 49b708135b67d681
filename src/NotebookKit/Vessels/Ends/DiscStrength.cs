using NotebookKit.Vessels.Design;

namespace NotebookKit.Vessels.Ends;

/// <summary>
/// What cap discs add over a curved closure: half of their fibres in each of two directions, no more than their lap on the wall hands on,
/// and half of it beside an opening.
/// </summary>
/// <remarks>
/// Source: netting analysis; a hole in a sheet pulled alike in both directions doubles the stress, Kirsch 1898; a third of the resin's
/// shear strength over the lap is common practice, no source.
/// </remarks>
internal static class DiscStrength
{
    /// <summary>Part of the resin's shear strength that a lap of any length is trusted with [-]; common practice, no source.</summary>
    public const double ShareOfResin = 1 / 3.0;

    public static double Pascals(CapDiscs discs, Closure closure, in EndContext context)
    {
        var pull = 0.5 * context.Efficiency * discs.Cloth.Fibre.TensileStrength.Value.Pascals * discs.FibreThicknessM;
        if (closure.Opening.Meters > 0) pull /= 2;
        pull = Math.Min(pull, ShareOfResin * context.ResinShear * discs.Lap.Meters);
        var outer = context.Bore / 2 + closure.Wall.Meters;
        return closure switch
        {
            DomedClosure dome => 2 * pull / Math.Max(RimLimit.CrownRadius(dome, context.Bore), outer),
            ConicalClosure cone => pull * Math.Cos(cone.HalfAngle.Radians) / outer,
            _ => 0,
        };
    }
}

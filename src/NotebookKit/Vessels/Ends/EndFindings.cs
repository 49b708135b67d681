using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Design;
using UnitsNet;

namespace NotebookKit.Vessels.Ends;

/// <summary>What has to be said of an end whose pressures are computed: what isn't known, and what isn't counted.</summary>
internal static class EndFindings
{
    public static IEnumerable<Finding> Of(string name, VesselEnd end, EndContext context)
    {
        if (Missing(end) is { } missing && context.SleevePascals > 0)
        {
            var sleeve = end.Joints.OfType<CarriedSleeve>().First();
            var torn = SleeveStrength.FailurePascals(sleeve, context);
            var sure = EndModel.SurePascals(end, context);
            yield return VesselsFindings.TailIsNotGiven(name, missing, GaugePressure.FromPascals(torn),
                (Length.FromMillimeters(1000 * SleeveStrength.TailFor(sleeve, context, torn)),
                    Length.FromMillimeters(1000 * SleeveStrength.NeckOf(sleeve, context))),
                sure > 0 ? GaugePressure.FromPascals(sure) : null);
        }

        if (end.Closure is not DomedClosure dome || !(dome.Opening.Meters > 0)) yield break;
        if (RimLimit.FirstYield(dome, context.Bore, end.Fitting) is null)
        {
            yield return VesselsFindings.RimYieldIsNotKnown(name, dome.Opening,
                Length.FromMillimeters(2000 * RimLimit.CrownRadius(dome, context.Bore)), dome.IsDuctile);
        }
        else if (end.Fitting is not null and not ThreadedFitting { Boss: not null })
        {
            yield return VesselsFindings.FittingIsNotReinforcement(name, end.Fitting.Name);
        }
    }

    /// <summary>Why no rating is given while what keeps a carried sleeve on its neck isn't.</summary>
    public static IEnumerable<Finding> Refusals(string name, VesselEnd end)
    {
        if (Missing(end) is { } missing)
            yield return VesselsFindings.NoRatingWithoutTail(name, missing, end.Joints.Any(j => j is BondedPlug));
    }

    // What isn't given of neck and tail; none where the hold of the sleeve is known.
    private static string? Missing(VesselEnd end)
    {
        if (end.Joints.OfType<CarriedSleeve>().FirstOrDefault() is not { } sleeve
            || SleeveStrength.HoldOf(sleeve) != SleeveHold.NotGiven) return null;
        return sleeve.Neck is not null ? "tail" : sleeve.IsTiedOff || sleeve.Tail is not null ? "neck" : "neck and the tail";
    }
}

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
        if (end.Joints.OfType<CarriedSleeve>().FirstOrDefault() is { IsTiedOff: false, Tail: null } sleeve && context.SleevePascals > 0)
        {
            var torn = SleeveStrength.FailurePascals(sleeve, context);
            yield return VesselsFindings.TailIsNotGiven(name, GaugePressure.FromPascals(torn),
                Length.FromMillimeters(1000 * SleeveStrength.TailFor(sleeve, context, torn)), sleeve.Neck);
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
}

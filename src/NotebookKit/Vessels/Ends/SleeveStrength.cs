using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Design;
using NotebookKit.Vessels.Ends.Modes;
using UnitsNet;

namespace NotebookKit.Vessels.Ends;

/// <summary>What sleeves carried over a closure hold: torn over it, or slipped off it.</summary>
/// <remarks>
/// The yarns' pull along the axis has to equal the thrust: 2·Σσt·cos²θ/R, each sleeve at its own radius, times what a dome delivers of it.
/// A tail that isn't tied off holds by its bond to the neck, and friction over the turn multiplies that; friction alone holds nothing. A
/// neck on which the sleeve's yarns jam is refused with the design. Source: netting analysis, Evans and Gibson, Proc. R. Soc. A 458, 2002;
/// capstan equation; the dome's share and a third of the resin's shear strength in the tail are common practice, no source.
/// </remarks>
internal static class SleeveStrength
{
    public const string Cause = "sleeve torn over the closure";

    public const string SlipCause = "sleeve slipped off the neck";

    public const string Formula = @"p = 2\,\sum\frac{\sigma_f t_f\cos^2\theta}{R}\,\eta_{end}";

    public const string SlipFormula = @"p = \frac{4\,\tau\,l\,d_{neck}}{d^2}\,e^{\mu\beta}";

    private static readonly Angle EdgeAngle = Angle.FromRadians(Math.Asin(Math.Sqrt(1 / 3.0)));

    public static double FailurePascals(CarriedSleeve sleeve, in EndContext context) =>
        context.SleevePascals * sleeve.Delivers.DecimalFractions;

    /// <summary>What keeps the sleeve on its neck.</summary>
    public static SleeveHold HoldOf(CarriedSleeve sleeve) => sleeve switch
    {
        { Neck: null } => SleeveHold.NotGiven,
        { IsTiedOff: true } => SleeveHold.TiedOff,
        { Tail: null } => SleeveHold.NotGiven,
        _ => SleeveHold.Bonded,
    };

    /// <summary>Pressure at which the sleeve slips off: infinite where it is tied off, 0 where nothing can be counted [Pa].</summary>
    public static double SlipPascals(CarriedSleeve sleeve, in EndContext context) => HoldOf(sleeve) switch
    {
        SleeveHold.TiedOff => double.PositiveInfinity,
        SleeveHold.Bonded => BondedTailPascals(sleeve, context, sleeve.Tail!.Value.Meters, sleeve.Neck!.Value.Meters),
        _ => 0,
    };

    private static double BondedTailPascals(CarriedSleeve sleeve, in EndContext context, double tail, double neck)
    {
        // Yarns at 54.7° cross the edge at 35.3° to its run; the turn counted is the least that a yarn makes.
        var friction = YarnFriction.PullRatio(sleeve.Friction, sleeve.Turn, EdgeAngle);
        var pull = DiscStrength.ShareOfResin * context.ResinShear * tail * Math.PI * neck * friction;
        return pull / (Math.PI / 4 * context.Bore * context.Bore);
    }

    /// <summary>Tail that doesn't slip below a pressure, on the neck or, where none is given, on the least that the sleeves close down to
    /// [m].</summary>
    public static double TailFor(CarriedSleeve sleeve, in EndContext context, double pascals) =>
        BondedTailPascals(sleeve, context, 1, NeckOf(sleeve, context)) is > 0 and var metre ? pascals / metre : 0;

    /// <summary>The neck, or the least that the sleeves close down to where none is given [m].</summary>
    public static double NeckOf(CarriedSleeve sleeve, in EndContext context) => sleeve.Neck?.Meters
        ?? (context.LeastNeck > 0 ? context.LeastNeck : context.Bore);

    public static IEnumerable<WorkingStep> Work(CarriedSleeve sleeve, EndContext context)
    {
        yield return new WorkingStep(
            "Sleeve carried over the closure tears", Formula,
            $"{GaugePressure.FromPascals(context.SleevePascals)} × {sleeve.Delivers.Show()}",
            GaugePressure.FromPascals(FailurePascals(sleeve, context)).ToString(), VesselSources.Netting);
        if (sleeve.IsTiedOff) yield break;
        var wanted = TailFor(sleeve, context, FailurePascals(sleeve, context));
        yield return new WorkingStep(
            "Tail that holds as much as the sleeve", @"l = \frac{p\,d^2}{4\,\tau\,d_{neck}\,e^{\mu\beta}}",
            $"a third of the resin's shear strength, friction {Digits.Round(sleeve.Friction)} over {sleeve.Turn.Show()}",
            Length.FromMillimeters(1000 * wanted).Show(), ModeSources.Capstan);
    }
}

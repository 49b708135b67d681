using NotebookKit.Provenance;
using NotebookKit.Vessels.Design;
using NotebookKit.Vessels.Ends.Modes;

namespace NotebookKit.Vessels.Ends;

/// <summary>Every way an end gives way, each with its own pressure: in series but where bond and sleeve act side by side.</summary>
internal static class EndModel
{
    private const string Tail = "sleeve's tail";

    /// <summary>Bursts and leaks of an end, the closure first.</summary>
    public static List<EndMode> Modes(VesselEnd end, in EndContext context)
    {
        var modes = new List<EndMode>(8);
        AddClosure(modes, end, context);
        if (end.Fitting is { } fitting && end.Closure.Opening.Meters > 0) modes.AddRange(FittingStrength.Modes(fitting, end.Closure));
        AddJoints(modes, end, context);
        AddSeal(modes, end.Seal, "closure's");
        AddSeal(modes, end.Fitting?.Seal, "fitting's");
        return modes;
    }

    /// <summary>Whether a part of an end is what holds the closure in the vessel: sleeve, tail or bond.</summary>
    /// <param name="part">Its name, after that of the end: "nozzle end, sleeve carried over".</param>
    /// <param name="end">The end.</param>
    public static bool IsOfHold(string part, VesselEnd end) => part.EndsWith($", {Tail}", StringComparison.OrdinalIgnoreCase)
        || end.Joints.Any(j => j is CarriedSleeve or BondedPlug && part.Contains($", {j.Name}", StringComparison.OrdinalIgnoreCase));

    /// <summary>First yield of the closure and of its rim; none of what breaks where it first yields.</summary>
    public static IEnumerable<EndMode> Yields(VesselEnd end, double bore)
    {
        var closure = end.Closure;
        if (!closure.IsDuctile) yield break;
        var (formula, source) = closure.YieldFormula();
        yield return new(closure.Shape, closure.YieldPascals(bore), PartFailure.Yield,
            closure.Opening.Meters > 0 && closure is FlatClosure ? "first yield at the edge of the opening" : "first yield",
            EndDriver.Closure, formula, source);
        if (closure is DomedClosure dome && dome.Opening.Meters > 0 && RimLimit.FirstYield(dome, bore, end.Fitting) is { } rim)
        {
            yield return new("rim of the opening", rim.Pascals, PartFailure.Yield, "first yield at the rim of the opening",
                EndDriver.Closure, @"p = \frac{\sigma_y}{k\,R/(2\,t)}", ModeSources.ShellEdge);
        }
    }

    /// <summary>What holds an end whatever its carried sleeve does, where the tail that keeps the sleeve on isn't given [Pa]; infinite
    /// where it is.</summary>
    public static double SurePascals(VesselEnd end, in EndContext context)
    {
        if (end.Joints.OfType<CarriedSleeve>().FirstOrDefault() is not { } sleeve
            || SleeveStrength.HoldOf(sleeve) != SleeveHold.NotGiven) return double.PositiveInfinity;
        var bond = double.PositiveInfinity;
        foreach (var plug in end.Joints.OfType<BondedPlug>()) bond = Math.Min(bond, PlugStrength.FailurePascals(plug, context));
        return double.IsFinite(bond) ? bond : 0;
    }

    private static void AddClosure(List<EndMode> modes, VesselEnd end, in EndContext context)
    {
        var closure = end.Closure;
        if (closure is FlatClosure flat && flat.IsDuctile)
        {
            modes.Add(new("plate collapse", PlateStrength.CollapsePascals(flat, context.Bore), PartFailure.Burst,
                $"plate of {closure.Material.Name} collapses", EndDriver.Closure, PlateStrength.CollapseFormula,
                    ModeSources.HopkinsPrager));
            return;
        }

        var (formula, source) = closure.YieldFormula();
        var discs = end.Discs is { } laid ? DiscStrength.Pascals(laid, closure, context) : 0;
        var own = closure.YieldPascals(context.Bore);
        // Yielded metal goes on pulling beside the fibres; what breaks doesn't.
        modes.Add(new(closure.Shape, closure.IsDuctile ? own + discs : Math.Max(own, discs), PartFailure.Burst,
            $"{closure.Material.Name} {(closure.IsDuctile ? "yields" : "breaks")}{(discs > 0 ? " and the cap discs tear" : "")}",
            EndDriver.Closure, formula, source));
        if (closure is not DomedClosure dome || !(dome.Opening.Meters > 0)) return;
        var rim = dome.IsDuctile ? RimLimit.Pascals(dome, context.Bore, end.Fitting)
            : RimLimit.FirstYield(dome, context.Bore, end.Fitting)?.Pascals ?? own / 2;
        modes.Add(new("rim of the opening", Math.Min(rim, own), PartFailure.Burst, "rim of the opening torn", EndDriver.Closure,
            RimLimit.Formula, RimLimit.Source));
    }

    private static void AddJoints(List<EndMode> modes, VesselEnd end, in EndContext context)
    {
        var sleeve = end.Joints.OfType<CarriedSleeve>().FirstOrDefault();
        var (bonds, bosses) = (0, 0);
        double bondPascals = double.PositiveInfinity, bondStiffness = 0;
        foreach (var joint in end.Joints)
        {
            switch (joint)
            {
                case CarriedSleeve: break;
                case BondedPlug plug:
                    bonds++;
                    var pressure = PlugStrength.FailurePascals(plug, context);
                    if (pressure < bondPascals) (bondPascals, bondStiffness) = (pressure, PlugStrength.SlipStiffness(plug, context));
                    if (sleeve is null) modes.Add(Joint(joint, Numbered(joint.Name, bonds), pressure, EndDriver.Bond));
                    break;
                default:
                    bosses++;
                    modes.Add(Joint(joint, Numbered(joint.Name, bosses), joint.FailurePascals(context), EndDriver.Closure));
                    break;
            }
        }

        if (sleeve is null) return;
        var torn = SleeveStrength.FailurePascals(sleeve, context);
        // Bonds in a row: the weakest lets go.
        var length = end.Closure.Meridian(UnitsNet.Length.FromMeters(context.Bore)).Meters;
        var share = bonds > 0 ? SharedHold.BondShare(bondStiffness, context.SleeveStiffness / Math.Max(length, 1e-3)) : 0;
        if (bonds > 0)
        {
            modes.Add(new("bonded plug", SharedHold.BondLetsGo(bondPascals, share), PartFailure.Leak, "bond lets go, the sleeve holds on",
                EndDriver.Bond, PlugStrength.ShearFormula, VesselSources.ShearLag));
        }

        AddSleeve(sleeve.Name, torn, SleeveStrength.Cause, EndDriver.Sleeve);
        if (SleeveStrength.HoldOf(sleeve) == SleeveHold.Bonded)
            AddSleeve(Tail, SleeveStrength.SlipPascals(sleeve, context), SleeveStrength.SlipCause, EndDriver.Bond);

        void AddSleeve(string name, double alone, string cause, EndDriver driver) => modes.Add(new(name,
            bonds > 0 ? SharedHold.Pascals(bondPascals, alone, share) : alone, PartFailure.Burst,
            bonds > 0 && bondPascals > alone ? $"{cause}, then the bond lets go" : cause, bonds > 0 ? EndDriver.Shared : driver,
            driver == EndDriver.Sleeve ? SleeveStrength.Formula : SleeveStrength.SlipFormula,
            driver == EndDriver.Sleeve ? VesselSources.Netting : ModeSources.Capstan) { Pair = (bondPascals, alone, share) });
    }

    private static EndMode Joint(EndJoint joint, string name, double pascals, EndDriver driver) => new(name, pascals, PartFailure.Burst,
        joint.Cause(), driver, @"p = F/A", VesselSources.Equilibrium);

    private static string Numbered(string name, int number) => number == 1 ? name : $"{name} {number}";

    private static void AddSeal(List<EndMode> modes, Seal? seal, string whose)
    {
        if (seal?.HoldsTo is { } held)
        {
            modes.Add(new($"{whose} {seal.Name}", held.Pascals, PartFailure.Leak, "held no further by its maker or a test",
                EndDriver.Closure, "p", Source.CommonPractice("as given")));
        }
    }
}

using NotebookKit.Numerics;
using NotebookKit.Aerodynamics;
using NotebookKit.Numerics.Ode;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight.Staging;

/// <summary>
/// A booster with a sustainer on top, each a whole vehicle of its own. The booster's own nose sits inside the sustainer's tail, or becomes the
/// shoulder between two diameters. Source of its models: those of a flight; momentum over the parting.
/// </summary>
/// <param name="Name">What it is called.</param>
/// <param name="Booster">The lower stage, with the nose it falls with.</param>
/// <param name="Sustainer">The upper stage.</param>
public sealed partial record TwoStageVehicle(string Name, Vehicle Booster, Vehicle Sustainer)
{
    private const double JointToleranceM = 0.5e-3;

    /// <summary>What parts the stages; a latch at the end of the booster's jet unless given.</summary>
    public Separation Separation { get; init; } = Separation.AtBurnOut();

    /// <summary>A drag curve of one's own for both together; by the build-up where none is given.</summary>
    public DragCurve? MeasuredStackDrag { get; init; }

    /// <summary>Everything that is wrong with it on a site.</summary>
    /// <param name="site">Where it starts.</param>
    public IReadOnlyList<Finding> Validate(LaunchSite site) => Validate(site, isSixDegrees: false);

    private List<Finding> Validate(LaunchSite site, bool isSixDegrees)
    {
        ArgumentNullException.ThrowIfNull(site);
        // The spent booster comes down in three degrees of freedom; on the way up its parts are the stack's.
        List<Finding> all =
        [
            .. Booster.Validate(site, startsOnPad: false).Select(f => f with { Message = $"booster: {f.Message}" }),
            .. (isSixDegrees ? Sustainer.ValidateSixDegrees(site, startsOnPad: false) : Sustainer.Validate(site, startsOnPad: false)).Select(f => f with { Message = $"sustainer: {f.Message}" }),
        ];
        if (string.IsNullOrWhiteSpace(Name)) all.Add(Finding.Error("the vehicle has no name; a flight belongs to one vehicle, so write the name that stands on it."));
        if (Sustainer.LaunchTube is not null)
            all.Add(Finding.Error("the sustainer has a launch tube; it starts in the air, off the booster. Set its LaunchTube to null."));
        if (Booster.Body.Parts.Count < 2)
            all.Add(Finding.Error($"the booster's body has {Booster.Body.Parts.Count} part; it must have a nose and a tube. The nose is what sits in the sustainer's tail."));
        if (all.Exists(f => f.Severity == FindingSeverity.Error)) return all;
        // Warnings of its parts stand above already; what is left is whether both together hop.
        var stack = Stack(site);
        var known = stack.Validate(site, startsOnPad: false).Where(f => f.Severity != FindingSeverity.Error).ToHashSet();
        all.AddRange(stack.Validate(site).Where(f => !known.Contains(f)).Select(f => f with { Message = $"stack: {f.Message}" }));
        return all;
    }

    /// <summary>Both stages together as one vehicle, driven by the booster: for its drag, its margin and its flight to the parting.</summary>
    /// <param name="site">Where it starts; the sustainer's gas is weighed in its air.</param>
    public Vehicle Stack(LaunchSite site)
    {
        ArgumentNullException.ThrowIfNull(site);
        var (body, shift) = StackBody();
        List<MassPart> parts =
        [
            .. Sustainer.Parts.Parts.Select(p => p with { Name = $"sustainer: {p.Name}" }),
            .. Booster.Parts.Parts.Select(p => p with { Name = $"booster: {p.Name}", At = p.At + shift }),
            .. ChargeParts(site),
        ];
        return new(Name, body, new(parts), Booster.Charge, Booster.Nozzle, Booster.NozzleEndAt + shift)
        {
            Flow = Booster.Flow,
            LaunchTube = Booster.LaunchTube,
            Surface = Booster.Surface,
            DragEnd = Booster.DragEnd,
            MeasuredDrag = MeasuredStackDrag,
            Deployment = Deployment.Never,
        };
    }

    /// <summary>Flies it in three degrees of freedom: the stack to the parting, the sustainer and the booster each to the ground. Source: see the result's model.</summary>
    /// <param name="site">Where it starts.</param>
    /// <exception cref="InvalidDesignException">Something can't be computed; carries all findings.</exception>
    public TwoStageResult Fly(LaunchSite site) => Fly(site, isSixDegrees: false, FlightAccuracy.Recorded);

    /// <summary>Flies stack and sustainer in six degrees of freedom, the spent booster in three. Source: see the result's model.</summary>
    /// <param name="site">Where it starts.</param>
    /// <exception cref="InvalidDesignException">Something can't be computed; carries all findings.</exception>
    public TwoStageResult FlySixDegrees(LaunchSite site) => Fly(site, isSixDegrees: true, FlightAccuracy.RecordedSixDegrees);

    /// <summary>Height against the delay between the end of the booster's jet and the parting, by a latch. Source: see <see cref="Fly(LaunchSite)"/>.</summary>
    /// <param name="site">Where it starts.</param>
    /// <param name="longest">Longest delay; 0.1 to 30 s.</param>
    /// <exception cref="InvalidDesignException">Something can't be computed; carries all findings.</exception>
    /// <exception cref="OutOfRangeException">The delay is outside.</exception>
    public DelayCost CostOfDelay(LaunchSite site, Duration longest)
    {
        const int Points = 21;
        new ValidRange<Duration>(0.1.Seconds(), 30.Seconds()).Check(longest, "longest delay", "A second already costs much.");
        InvalidDesignException.ThrowIfAny(Name, Validate(site));
        var stack = Stack(site).Numbers(site);
        var sustainer = Sustainer.Numbers(site);
        var (delays, heights) = (new double[Points], new double[Points]);
        Parallel.For(0, Points, i =>
        {
            StopRequest.ThrowIfAsked();
            delays[i] = longest.Seconds * i / (Points - 1);
            var waiting = this with { Separation = Separation.AtBurnOut(delays[i].Seconds()) };
            var marks = FlightRun.FlyStack(stack, null, waiting.Numbers(site), FlightAccuracy.Fast, null, out var end);
            heights[i] = marks.Failed || marks.HasLanded || marks.HasTopped
                ? double.NaN
                : Top(FlightRun.Continue(sustainer, null, FlightAccuracy.Fast, end, true, Parted(marks)));
        });
        return new(new("Delay between the stages", "s", delays), new("Apogee above pad", "m", heights));
    }

    private static double Top(in FlightMarks marks) => marks.Failed ? double.NaN : marks.ApogeeM;

    /// <summary>What parts the stages, in SI numbers.</summary>
    internal SeparationNumbers Numbers(LaunchSite site) => new(
        Separation.Trigger, Separation.Delay.Seconds, Separation.Joint.Meters,
        Sustainer.Parts.State().MassKg + Sustainer.Charge.WaterMass.Kilograms + Sustainer.GasKg(site),
        Booster.Parts.State().MassKg, Separation.Trigger == SeparationTrigger.Drag ? Sustainer.Drag(site).JetOff : null);

    /// <summary>How far the booster's stations lie further aft in the stack.</summary>
    internal Length BoosterShift => StackBody().Shift;

    /// <summary>Water and gas of the sustainer as the stack carries them.</summary>
    internal MassState SustainerCharge(LaunchSite site) => ChargeParts(site).Aggregate(default(MassState), (sum, part) => part.State.With(sum));

    /// <summary>Why the stages don't part in order, where they don't.</summary>
    internal static PartingFault NoParting(in FlightMarks marks, in AirStart parting) =>
        marks.Failed || !double.IsFinite(parting.Time) ? PartingFault.NoFlight
        : marks.HasLanded ? PartingFault.OnGround
        : marks.HasTopped ? PartingFault.AfterTop
        : double.IsNaN(marks.JetEndTime) ? PartingFault.WhileDriven
        : PartingFault.None;

    /// <summary>Marks with which a stage goes on by itself: what it has not done yet is open again.</summary>
    internal static FlightMarks Parted(in FlightMarks marks) => marks with
    {
        WaterOutTime = double.NaN,
        JetEndTime = double.NaN,
        ApogeeTime = double.NaN,
        ApogeeM = double.NaN,
        LeftGaugePa = double.NaN,
    };

    private TwoStageResult Fly(LaunchSite site, bool isSixDegrees, OdeSettings settings)
    {
        var findings = Validate(site, isSixDegrees);
        InvalidDesignException.ThrowIfAny(Name, findings);
        findings.AddRange(site.WindFindings());
        var stack = Stack(site);
        var (rows, sustainerRows, boosterRows) = (new List<FlightRow>(1024), new List<FlightRow>(2048), new List<FlightRow>(1024));
        var marks = FlightRun.FlyStack(stack.Numbers(site), isSixDegrees ? stack.SixDegrees() : null, Numbers(site), settings, rows, out var parting);
        var failure = NoParting(marks, parting) switch
        {
            PartingFault.None => null,
            PartingFault.OnGround => $"the stages come down together: they part by {Separation}, and the ground comes first. The sustainer is still charged to {Sustainer.Charge.Pressure}. Part them sooner.",
            PartingFault.AfterTop => "the stages part after the top of the flight, and the sustainer would drive itself into the ground. Part them sooner.",
            PartingFault.WhileDriven => FormattableString.Invariant($"the stages would part at {parting.Time:0.###} s, while the booster's jet still runs and presses them together. Part them later."),
            _ => marks.HasLanded || marks.IsCharged ? $"both stages together: {marks.Failure} The sustainer is still charged to {Sustainer.Charge.Pressure}." : marks.Failure,
        };
        if (failure is not null) return TwoStageResult.Failed(this, site, findings, failure);

        var sustainer = FlightRun.Continue(
            Sustainer.Numbers(site), isSixDegrees ? Sustainer.SixDegrees() : null, settings, parting, isDriven: true, Parted(marks), sustainerRows);
        var booster = FlightRun.Continue(
            Booster.Numbers(site), null, FlightAccuracy.Recorded, parting, isDriven: false, Parted(marks) with { JetEndTime = marks.JetEndTime }, boosterRows);
        return new(this, site, stack, rows, marks, parting,
            FlightReport.For(Sustainer, site, sustainer, sustainerRows, isSixDegrees, [], stack),
            FlightReport.For(Booster, site, booster, boosterRows, false, [], stack, isSpent: true), findings);
    }

    private List<MassPart> ChargeParts(LaunchSite site)
    {
        var tank = Sustainer.Airframe.Tank;
        var (water, gas) = (Sustainer.Charge.WaterMass, Sustainer.GasKg(site).Kilograms());
        var level = water.Kilograms / tank.WaterDensity.KilogramsPerCubicMeter / (Math.PI / 4 * tank.Bore.Meters * tank.Bore.Meters);
        var ullage = tank.InsideLength.Meters - level;
        List<MassPart> parts =
        [
            new("sustainer: gas", gas, Sustainer.NozzleEndAt - (level + (ullage / 2)).Metres()) { Extent = ullage.Metres(), Basis = MassBasis.Weighed },
        ];
        if (water > Mass.Zero) parts.Add(new("sustainer: water", water, Sustainer.NozzleEndAt - (level / 2).Metres()) { Extent = level.Metres(), Basis = MassBasis.Weighed });
        return parts;
    }

    private (FinnedBody Body, Length Shift) StackBody()
    {
        var (above, below) = (Sustainer.Body, Booster.Body);
        List<BodyPart> parts = [.. above.Parts];
        var nose = below.Parts[0].Length;
        var shift = above.Length - nose;
        if (Math.Abs(above.BaseM - below.Parts[1].ForeM) > JointToleranceM)
        {
            parts.Add(new Transition(nose, above.BaseM.Metres(), below.Parts[1].ForeM.Metres()) { Name = "Shoulder" });
            shift = above.Length;
        }

        parts.AddRange(below.Parts.Skip(1).Select(p => p with { Name = $"Booster {p.Name}" }));
        return (new FinnedBody(parts,
        [
            .. above.Fins.Select(f => f with { Name = $"Sustainer {f.Name}" }),
            .. below.Fins.Select(f => f with { Name = $"Booster {f.Name}", LeadingEdgeAt = f.LeadingEdgeAt + shift }),
        ])
        {
            Name = Name,
        }, shift);
    }
}

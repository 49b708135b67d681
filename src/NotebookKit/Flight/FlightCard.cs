using NotebookKit.Aerodynamics;
using NotebookKit.Flight.Dispersion;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Flight;

/// <summary>One page for the safety officer: what flies, how high, where it comes down, what must be so before it does. Source: the flights it is made from.</summary>
public sealed record FlightCard : IResult
{
    // The least factor of any proof rule here.
    private const double LeastProof = 1.1;

    // A rule that is broken more often than this, beyond the doubt of few flights, is broken; a doubt alone is a warning.
    private static readonly Ratio MostBroken = 1.Percent();

    internal FlightCard(Vehicle vehicle, LaunchSite site, CardNotes notes, FlightResult flight, Length lowest, Length highest, Speed windLimit, StabilityResult stability)
    {
        Vehicle = vehicle;
        Site = site;
        Notes = notes;
        Flight = flight;
        LowestApogee = lowest;
        HighestApogee = highest;
        WindLimit = windLimit;
        LeastMargin = stability.Margin[stability.LeastRow];
        Findings = [.. notes.Validate(), .. Say(stability.Limits), .. SayOfFins(), .. SayOfScatter(), .. flight.Findings, .. stability.Findings];
    }

    /// <summary>What flies.</summary>
    public Vehicle Vehicle { get; }

    /// <summary>Where.</summary>
    public LaunchSite Site { get; }

    /// <summary>What was added by hand.</summary>
    public CardNotes Notes { get; }

    /// <summary>The flight as expected.</summary>
    public FlightResult Flight { get; }

    /// <summary>Height of the top at the high end of the drag band; as expected where the drag was measured.</summary>
    public Length LowestApogee { get; }

    /// <summary>Height of the top at the low end of the drag band, the one to hold against the ceiling.</summary>
    public Length HighestApogee { get; }

    /// <summary>Most wind for a quarter of the speed off the rail, at most 15°, and at least one calibre of margin there.</summary>
    public Speed WindLimit { get; }

    /// <summary>Least static margin of the whole flight [calibres].</summary>
    public double LeastMargin { get; }

    /// <summary>Whether nothing on the card forbids the flight.</summary>
    public bool MayFly => Findings.All(f => f.Severity != FindingSeverity.Error);

    /// <inheritdoc/>
    public string Title => $"Flight card, {Vehicle.Name} at {Site.Name}{(Notes.Flight.Length > 0 ? $", {Notes.Flight}" : "")}";

    /// <inheritdoc/>
    public ModelCard Model => Flight.Model;

    /// <inheritdoc/>
    public ResultStatus Status => ResultStatus.Completed;

    /// <inheritdoc/>
    public IReadOnlyList<Finding> Findings { get; }

    /// <inheritdoc/>
    public IReadOnlyList<Caution> Cautions => [.. Provenance.Cautions.ForFlight, Provenance.Cautions.Composite];

    /// <inheritdoc/>
    public Working Working => Flight.Working;

    /// <inheritdoc/>
    public IReadOnlyList<ResultLine> Lines
    {
        get
        {
            var (f, charge) = (Flight.Figures, Vehicle.Charge);
            return
            [
                new("Verdict", MayFly ? "nothing on this card forbids it" : "DON'T FLY", MayFly ? $"{Warned} the range safety officer decides" : $"{Findings.Count(x => x.Severity == FindingSeverity.Error)} reasons below"),
                new("Dry mass", Vehicle.Balance().Mass.Show(MassUnit.Gram)),
                new("Mass at release", $"{Digits.Round(Flight.Mass[0])} kg", $"{charge.Water.Show(VolumeUnit.Milliliter)} of water"),
                new("Charge pressure", charge.Pressure.ToString(), $"rated {charge.Chamber.RatedPressure}"),
                new("Proof", Notes.ProofPressure.ToString(), Notes.ProofReference),
                new("Stand-off", Notes.StandOff.Show(), "everybody, from the first bar to the landing or the vent"),
                new("Least static margin", $"{Digits.Round(LeastMargin)} calibres", "0° angle of attack, over the whole flight"),
                new("Rail", Site.Rail.Guided.Show(), $"{Site.Rail.Elevation.Show()} above the horizon, towards {Site.Rail.Towards.Show()}"),
                new("Speed off the rail", f.RailExitSpeed.Show(SpeedUnit.MeterPerSecond)),
                new("Most wind", WindLimit.Show(SpeedUnit.MeterPerSecond), $"at the rail; planned for {f.RailWind.Show(SpeedUnit.MeterPerSecond)}"),
                new("Apogee", f.Apogee.Show(LengthUnit.Meter), $"{LowestApogee.Show(LengthUnit.Meter)} to {HighestApogee.Show(LengthUnit.Meter)} over the drag band"),
                new("Ceiling", Site.Ceiling is { } ceiling ? ceiling.Show(LengthUnit.Meter) : "none stated"),
                new("Time of apogee", f.ApogeeTime.Show(DurationUnit.Second), $"canopy: {Vehicle.Deployment}"),
                new("Greatest speed", f.GreatestSpeed.Show(SpeedUnit.MeterPerSecond)),
                new("Fins", Notes.Fins is { } fins ? $"flutter at {fins.Flutter.FlutterSpeed.Show(SpeedUnit.MeterPerSecond)}" : "not on this card", Notes.Fins is null ? "flutter, divergence and bond not judged here" : "predicted; at least 1.5 times the greatest speed is wanted"),
                new("Descent", f.DescentSpeed.Show(SpeedUnit.MeterPerSecond), $"{f.LandingEnergy.Show()} at the ground after {f.LandingTime.Show()}"),
                new("Drift", f.Drift.Show(LengthUnit.Meter), $"{f.LandingEast.Show(LengthUnit.Meter)} east, {f.LandingNorth.Show(LengthUnit.Meter)} north"),
                .. Notes.Scatter?.Landings is { } landings ? [new ResultLine("90 % of landings", $"{landings.Axes(90.Percent()).Major.Show()} by {landings.Axes(90.Percent()).Minor.Show()}", $"semi-axes about {landings.MeanEast.Show()} east, {landings.MeanNorth.Show()} north")] : Array.Empty<ResultLine>(),
                .. Notes.Scatter?.AboveCeiling is { } above ? [new ResultLine("Above the ceiling", above.ToString())] : Array.Empty<ResultLine>(),
                .. Notes.Scatter?.OffField is { } off ? [new ResultLine("Off the field", off.ToString())] : Array.Empty<ResultLine>(),
            ];
        }
    }

    /// <summary>What is ticked off before, during and after the flight.</summary>
    public IReadOnlyList<string> Checklist
    {
        get
        {
            var (f, charge) = (Flight.Figures, Vehicle.Charge);
            return
            [
                "Site permission, ceiling and airspace confirmed for today; sky and field clear downwind.",
                $"Wind measured at the rail: at most {WindLimit.Show(SpeedUnit.MeterPerSecond)}.",
                $"Vessel inspected: no cracks, white spots, dents or loose fibres; proof in date ({Notes.ProofReference}).",
                "Nozzle, seals and closures inspected; nothing hand-tight that should be tight.",
                $"Canopy packed, cord and pins checked; {Vehicle.Deployment}{(Vehicle.Deployment.Trigger == DeploymentTrigger.Timer ? $"; apogee expected at {f.ApogeeTime.Show()}" : "")}.",
                $"Centre of gravity checked on the finished vehicle: {Vehicle.Balance().CentreOfGravity.Show(LengthUnit.Millimeter)} aft of the tip, empty.",
                $"{charge.Water.Show(VolumeUnit.Milliliter)} of water measured in.",
                $"Rail at {Site.Rail.Elevation.Show()} above the horizon, towards {Site.Rail.Towards.Show()}, clamped.",
                $"Everybody beyond {Notes.StandOff.Show()}; nobody in line of a closure or under the flight path.",
                "Remote vent tried before the first bar.",
                $"Fill from afar to {charge.Pressure}; never above {charge.Chamber.RatedPressure}.",
                "On any doubt: vent from afar, wait, then approach.",
                "Count down aloud; all eyes on the vehicle until it is down.",
                "After landing: make sure that it is empty of pressure before anybody touches it; inspect; write the flight down.",
            ];
        }
    }

    private string Warned => Findings.Count(x => x.Severity == FindingSeverity.Warning) switch
    {
        0 => "",
        1 => "1 warning below;",
        var many => $"{many} warnings below;",
    };

    private IEnumerable<Finding> SayOfFins()
    {
        if (Flight.Figures.GreatestMach > FlutterResult.HighestMach)
            yield return Finding.Error($"it reaches Mach {Digits.Round(Flight.Figures.GreatestMach)}; no flutter pass is given above Mach {FlutterResult.HighestMach}. Fly slower, or have the fins tested.");
        if (Notes.Fins is not { } fins) yield break;
        if (fins.Flutter.Fastest < Flight.Figures.GreatestSpeed)
            yield return Finding.Error($"the fins were checked to {fins.Flutter.Fastest.Show()}; this flight reaches {Flight.Figures.GreatestSpeed.Show()}. Check them for that.");
        if (!fins.Holds)
            yield return Finding.Error($"the fins don't hold ({fins.Title}). Mend what their own check names.");
        foreach (var finding in fins.Findings) yield return finding;
    }

    private IEnumerable<Finding> SayOfScatter()
    {
        if (Notes.Scatter is not { } scatter) yield break;
        if (scatter.Plan.Vehicle != Vehicle.Name || scatter.Plan.Site != Site.Name)
            yield return Finding.Error($"the scatter on the card is of {scatter.Plan.Vehicle} from {scatter.Plan.Site}, not of {Vehicle.Name} from {Site.Name}. Disperse this one.");
        if (scatter.Part != ShardNumber.Whole)
            yield return Finding.Error($"the scatter on the card is shard {scatter.Part} only. Merge all of them.");
        if (scatter.Plan.Ceiling?.Meters != Site.Ceiling?.Meters)
            yield return Finding.Warning($"the scatter on the card was judged by {(scatter.Plan.Ceiling is { } other ? $"a ceiling of {other.Show()}" : "no ceiling")}, not by this site's. Disperse again.");
        if (scatter.AboveCeiling is { } above && above.Low > MostBroken)
            yield return Finding.Error($"the ceiling is passed in {above} of the flights; more than {MostBroken.Show()} is too many (common practice). Use less pressure, or ask for a higher ceiling.");
        if (scatter.OffField is { } off && off.Low > MostBroken)
            yield return Finding.Error($"it lands off the field in {off} of the flights; more than {MostBroken.Show()} is too many (common practice). Lean the rail into the wind, open lower, or wait.");
        foreach (var finding in scatter.Findings) yield return finding;
    }

    private IEnumerable<Finding> Say(StabilityLimits limits)
    {
        if (LeastMargin < limits.Least)
            yield return Finding.Error($"the least static margin is {Digits.Round(LeastMargin)} calibres; at least {Digits.Round(limits.Least)} is wanted throughout. Add ballast in the nose or enlarge the fins.");
        if (Flight.Figures.OpeningTime is null)
            yield return Finding.Error($"it comes down without a canopy, at {Flight.Figures.LandingSpeed.Show()}. Give it one, and let it come out.");
        else if (Notes.RecoveryStrength is { } strength && Flight.Figures.Opening is { } opening && opening.DesignLoad > strength)
            yield return Finding.Error($"the canopy opens with {opening.DesignLoad.Show()}; the weakest of cord, pins and bulkhead takes {strength.Show()}. Use stronger gear, or open nearer to the top.");
        if (Notes.ProofPressure < Vehicle.Charge.Pressure)
            yield return Finding.Error($"the vessel was proved to {Notes.ProofPressure}, below the charge of {Vehicle.Charge.Pressure}. Charge it to less, or prove it again.");
        else if (Notes.ProofPressure < Vehicle.Charge.Pressure * LeastProof)
            yield return Finding.Error($"the vessel was proved to {Notes.ProofPressure}, less than {LeastProof} times the charge of {Vehicle.Charge.Pressure}; that proves nothing beyond the charge itself. Charge it to less, or prove it higher.");
        if (Site.Ceiling is { } ceiling && HighestApogee > ceiling && Flight.Apogee <= ceiling)
            yield return Finding.Warning($"at the low end of the drag band it reaches {HighestApogee.Show()}, above the ceiling of {ceiling.Show()}. Use less pressure, or measure its drag first.");
        if (Flight.Figures.RailWind > WindLimit)
            yield return Finding.Error($"the wind planned for at the rail, {Flight.Figures.RailWind.Show()}, is above the most it may have, {WindLimit.Show()}. Wait, or leave the rail faster.");
    }
}

using NotebookKit.Aerodynamics.Airflow;
using NotebookKit.Aerodynamics.Bodies;
using NotebookKit.Aerodynamics.NormalForces;
using NotebookKit.Flight.Design;
using NotebookKit.Numerics;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Flight.Stability;

/// <summary>Static margin of a vehicle or an airframe.</summary>
public static class StabilityVerbs
{
    private const int Rows = 101;

    /// <summary>Static margin against the water left. Source: J. S. Barrowman, M.S. thesis, 1967 (unverified).</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="limits">Margin it is held to; 1 to 4 calibres where none is given.</param>
    /// <exception cref="InvalidDesignException">The vehicle can't be computed; carries all findings.</exception>
    public static StabilityResult Stability(this Vehicle vehicle, StabilityLimits? limits = null)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        return vehicle.Airframe.Stability(vehicle.Charge.WaterFraction, vehicle.Charge.GasMass(AbsolutePressure.StandardSeaLevel), 0,
            limits);
    }

    /// <summary>
    /// Static margin against the water left, from the full load down to none, and at last empty of gas too.
    /// Source: J. S. Barrowman, M.S. thesis, 1967 (unverified); parallel-axis theorem.
    /// </summary>
    /// <param name="airframe">The airframe.</param>
    /// <param name="waterFraction">Share of the vessel filled with water at launch; 0 to 100 %.</param>
    /// <param name="gas">Mass of the compressed gas at launch; 0 to 10 kg.</param>
    /// <param name="mach">Mach number to take the centre of pressure at [-]; 0 to 0.9. Zero gives the lowest margin.</param>
    /// <param name="limits">Margin it is held to; 1 to 4 calibres where none is given.</param>
    /// <exception cref="InvalidDesignException">The airframe can't be computed; carries all findings.</exception>
    /// <exception cref="OutOfRangeException">An input is outside its range.</exception>
    public static StabilityResult Stability(this Airframe airframe, Ratio waterFraction, Mass gas, double mach = 0,
        StabilityLimits? limits = null)
    {
        ArgumentNullException.ThrowIfNull(airframe);
        InvalidDesignException.ThrowIfAny($"Airframe {airframe.Body.Name}", airframe.Validate());
        var water = airframe.Chamber.Water(waterFraction).Kilograms;
        var gasKg = new ValidRange<Mass>(Mass.Zero, 10.Kilograms()).Check(gas, "mass of the gas",
            "It is the vessel's volume times the density of the compressed gas.").Kilograms;
        var left = new double[Rows + 1];
        var (waters, gases, machs) = (new double[Rows + 1], new double[Rows + 1], new double[Rows + 1]);
        for (var i = 0; i < Rows; i++)
        {
            left[i] = 100.0 * (Rows - 1 - i) / (Rows - 1);
            waters[i] = water * left[i] / 100;
            gases[i] = gasKg;
            machs[i] = mach;
        }

        machs[Rows] = mach;
        return StabilityAlong(airframe, new Series("Water left", "%", left), waters, gases, machs, limits ?? new StabilityLimits());
    }

    /// <summary>
    /// Static margin against time, from the masses and the Mach number that a thrust or flight computation gives.
    /// Source: J. S. Barrowman, M.S. thesis, 1967 (unverified); parallel-axis theorem.
    /// </summary>
    /// <param name="airframe">The airframe.</param>
    /// <param name="time">Time [s].</param>
    /// <param name="water">Water left in the vessel [kg], as many rows as the time.</param>
    /// <param name="gas">Gas left in the vessel [kg], as many rows as the time.</param>
    /// <param name="mach">Mach number [-], as many rows as the time; zero throughout where none is given.</param>
    /// <param name="limits">Margin it is held to; 1 to 4 calibres where none is given.</param>
    /// <exception cref="InvalidDesignException">The airframe can't be computed; carries all findings.</exception>
    /// <exception cref="ArgumentException">The columns differ in length, or are empty.</exception>
    public static StabilityResult StabilityDuring(this Airframe airframe, Series time, Series water, Series gas, Series? mach = null,
        StabilityLimits? limits = null)
    {
        ArgumentNullException.ThrowIfNull(airframe);
        ArgumentNullException.ThrowIfNull(time);
        ArgumentNullException.ThrowIfNull(water);
        ArgumentNullException.ThrowIfNull(gas);
        InvalidDesignException.ThrowIfAny($"Airframe {airframe.Body.Name}", airframe.Validate());
        if (time.Count == 0 || time.Count != water.Count || time.Count != gas.Count || (mach is not null && mach.Count != time.Count))
            throw new ArgumentException($"time has {time.Count} rows, water {water.Count}, gas {gas.Count}; all must have the same "
                + "number, at least one.", nameof(time));
        if (water.Unit != "kg" || gas.Unit != "kg")
            throw new ArgumentException($"water is in {water.Unit} and gas in {gas.Unit}; both must be in kg. Convert the columns first.",
                nameof(water));
        return StabilityAlong(airframe, time, water.Values, gas.Values, mach?.Values ?? new double[time.Count],
            limits ?? new StabilityLimits());
    }

    private static StabilityResult StabilityAlong(
        Airframe airframe, Series along, IReadOnlyList<double> waters, IReadOnlyList<double> gases, IReadOnlyList<double> machs,
            StabilityLimits limits)
    {
        var count = along.Count;
        var states = new MassState[count];
        var (masses, centres, pressures, margins, inertias) = (new double[count], new double[count], new double[count], new double[count],
            new double[count]);
        var dry = airframe.MassBudget.State();
        var (numbers, reference) = (new AerodynamicNumbers(airframe.Body), airframe.Body.ReferenceDiameter.Meters);
        var least = 0;
        for (var i = 0; i < count; i++)
        {
            var sums = numbers.At(Ranges.CheckMach(machs[i]));
            var centre = sums.SlopeStation / sums.Slope;
            states[i] = dry.With(airframe.Chamber.Contents(waters[i], gases[i]));
            masses[i] = states[i].MassKg;
            centres[i] = states[i].CentreM * 1000;
            pressures[i] = centre * 1000;
            margins[i] = (centre - states[i].CentreM) / reference;
            inertias[i] = states[i].PitchKgM2;
            if (margins[i] < margins[least]) least = i;
        }

        var remedy = margins[least] < limits.Minimum ? Remedy(airframe.Body, states, pressures, machs[least], limits.Minimum) : null;
        return new StabilityResult
        {
            Title = $"Static margin, {airframe.Body.Name}",
            Abscissa = along,
            Mass = new Series("Mass", "kg", masses),
            CentreOfGravity = new Series("Centre of gravity aft of tip", "mm", centres),
            CentreOfPressure = new Series("Centre of pressure aft of tip", "mm", pressures),
            Margin = new Series("Static margin", "calibres", margins),
            PitchInertia = new Series("Pitch inertia", "kg m²", inertias),
            MinimumRow = least,
            Limits = limits,
            Remedy = remedy,
            Findings = [.. airframe.Body.NormalForce(machs[least]).Findings, .. airframe.MassBudget.Validate(),
                .. MarginFindings(margins, least, limits, remedy)],
            Working = new Working("Minimum static margin",
            [
                new("Centre of gravity", @"x_{cg} = \frac{\sum m_i\,x_i}{\sum m_i}",
                    $"dry {Mass.FromKilograms(dry.MassKg).Show(MassUnit.Gram, 4)} at {Digits.Round(dry.CentreM * 1000, 4)} mm, water "
                        + $"{Digits.Round(waters[least] * 1000, 4)} g, gas {Digits.Round(gases[least] * 1000, 3)} g",
                    $"{Digits.Round(centres[least], 4)} mm", MassLiterature.Goldstein),
                new("Static margin", @"\frac{x_{cp} - x_{cg}}{d}",
                    $"({Digits.Round(pressures[least], 4)} mm − {Digits.Round(centres[least], 4)} mm) / "
                        + $"{Digits.Round(reference * 1000)} mm",
                    $"{Digits.Round(margins[least])} calibres", MassLiterature.Barrowman),
            ]),
        };
    }

    /// <summary>Ballast at the nose base that holds the limit in every state, and the fin span that does the same.</summary>
    private static StabilityRemedy Remedy(FinnedBody body, MassState[] states, double[] pressuresMm, double mach, double wanted)
    {
        var at = body.Parts[0].Length.Meters * 0.75;
        var reference = body.ReferenceDiameter.Meters;
        double ballast = 0, furthest = 0;
        for (var i = 0; i < states.Length; i++)
        {
            var target = (pressuresMm[i] / 1000) - (wanted * reference);
            ballast = target > at ? Math.Max(ballast, states[i].MassKg * (states[i].CentreM - target) / (target - at))
                : double.PositiveInfinity;
            furthest = Math.Max(furthest, states[i].CentreM);
        }

        return new StabilityRemedy(double.IsFinite(ballast) ? Mass.FromKilograms(ballast) : null, Length.FromMeters(at),
            SpanFor(body, mach, furthest + (wanted * reference)));
    }

    private static Length? SpanFor(FinnedBody body, double mach, double centreM)
    {
        if (body.Fins.Count == 0) return null;
        var fins = body.Fins.MaxBy(f => f.LeadingEdgeAt)!;
        const double Most = 4;
        if (Centre(Most) < centreM) return null;
        return fins.Planform.Reach * (BracketedRoot.TrySolve(f => Centre(f) - centreM, 1, Most, 0, out var found) ? found.Root : 1);

        double Centre(double factor) =>
            (body with { Fins = body.Fins.Select(f => ReferenceEquals(f, fins) ? f.WithSpanTimes(factor)
                : f).ToArray() }).NormalForce(mach).CentreOfPressure.Meters;
    }

    private static IEnumerable<Finding> MarginFindings(double[] margins, int least, StabilityLimits limits, StabilityRemedy? remedy)
    {
        if (remedy is not null)
        {
            var ballast = remedy.NoseBallast is { } mass ? $"Add {mass.Show(MassUnit.Gram)} at "
                + $"{remedy.BallastAt.Show(LengthUnit.Millimeter)}" : "No ballast in the nose is enough";
            var how = ballast + (remedy.FinSpan is { } span ? $", or make the fin span {span.Show(LengthUnit.Millimeter)}."
                : "; a longer span alone doesn't reach it.");
            yield return margins[least] <= 0
                ? FlightFindings.VehicleIsUnstable(margins[least], how)
                : FlightFindings.MinimumMarginCalibresBelow(margins[least], limits.Minimum, how);
        }

        if (margins.Max() > limits.Maximum)
            yield return FlightFindings.MarginTooLarge(margins.Max(), limits.Maximum);
    }
}

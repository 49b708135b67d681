using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Flight.Design;

/// <summary>
/// Every part that flies, empty of water and gas: estimated while it is a plan, weighed as it is built.
/// Source: parallel-axis theorem, H. Goldstein, Classical Mechanics (unverified).
/// </summary>
/// <param name="Parts">The parts; at least one.</param>
public sealed record MassBudget(IReadOnlyList<MassPart> Parts)
{
    /// <summary>What flies.</summary>
    public string Name { get; init; } = "vehicle";

    /// <summary>The mass budget with one more part.</summary>
    /// <param name="part">The part.</param>
    public MassBudget With(MassPart part) => this with { Parts = [.. Parts, part] };

    /// <summary>The mass budget with one part's mass replaced by a reading of the scale.</summary>
    /// <param name="name">Name of the part, as the mass budget has it.</param>
    /// <param name="reading">Mass as weighed; above 0 to 50 kg.</param>
    /// <exception cref="ArgumentException">No part has that name, or more than one has.</exception>
    public MassBudget Weighed(string name, Mass reading)
    {
        if (Parts.Count(p => p.Name == name) != 1)
            throw new ArgumentException($"the mass budget has {Parts.Count(p => p.Name == name)} parts called \"{name}\"; it must have "
                + $"one. Its parts are: {string.Join(", ", Parts.Select(p => p.Name))}.", nameof(name));
        return this with { Parts = Parts.Select(p => p.Name == name ? p.Weighed(reading) : p).ToArray() };
    }

    /// <summary>Everything that is wrong with the mass budget.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        var findings = new List<Finding>(Parts.SelectMany(p => p.Validate()));
        if (Parts.Count == 0) findings.Add(FlightFindings.MassBudgetIsEmpty());
        foreach (var twice in Parts.GroupBy(p => p.Name).Where(g => g.Count() > 1))
            findings.Add(FlightFindings.PartNameIsNotUnique(twice.Count(), twice.Key));
        return findings;
    }

    /// <summary>Mass, centre of gravity and inertias. Source: parallel-axis theorem.</summary>
    /// <exception cref="InvalidDesignException">The mass budget can't be computed; carries all findings.</exception>
    public MassProperties MassProperties()
    {
        var findings = Validate();
        InvalidDesignException.ThrowIfAny($"Mass budget of {Name}", findings);
        var state = State();
        double massVariance = 0, centreVariance = 0, weighed = 0;
        foreach (var part in Parts)
        {
            var deviation = part.Mass.Kilograms * part.SpreadShare;
            massVariance += deviation * deviation;
            centreVariance += Math.Pow(deviation * (part.At.Meters - state.CentreM) / state.MassKg, 2);
            if (part.Basis == MassBasis.Weighed) weighed += part.Mass.Kilograms;
        }

        return new MassProperties
        {
            Title = $"Mass and balance, {Name}",
            Mass = Mass.FromKilograms(state.MassKg),
            MassSpread = Mass.FromKilograms(Math.Sqrt(massVariance)),
            CentreOfGravity = Length.FromMeters(state.CentreM),
            CentreSpread = Length.FromMeters(Math.Sqrt(centreVariance)),
            RollInertia = MassMomentOfInertia.FromKilogramSquareMeters(state.RollKgM2),
            PitchInertia = MassMomentOfInertia.FromKilogramSquareMeters(state.PitchKgM2),
            WeighedShare = Ratio.FromPercent(100 * weighed / state.MassKg),
            Parts = Parts,
            Findings = findings,
            Working = new Working("Centre of gravity",
            [
                new("Centre of gravity", @"x = \frac{\sum m_i\,x_i}{\sum m_i}",
                    string.Join(" + ", Parts.Select(p => $"{p.Mass.Show(MassUnit.Gram, 4)} × {p.At.Show(LengthUnit.Millimeter, 4)}"))
                        + $", over {Mass.FromKilograms(state.MassKg).Show(MassUnit.Gram, 4)}",
                    Length.FromMeters(state.CentreM).Show(LengthUnit.Millimeter, 4), MassLiterature.Goldstein),
                new("Pitch inertia", @"I = \sum \left(I_i + m_i\,(x_i - x)^2\right)", $"over {Parts.Count} parts",
                    MassMomentOfInertia.FromKilogramSquareMeters(state.PitchKgM2).Show(MassMomentOfInertiaUnit.KilogramSquareMeter),
                        MassLiterature.Goldstein),
            ]),
        };
    }

    internal MassState State()
    {
        var state = default(MassState);
        foreach (var part in Parts) state = state.With(part.State);
        return state;
    }
}

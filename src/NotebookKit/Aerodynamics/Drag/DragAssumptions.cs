using NotebookKit.Aerodynamics.Airflow;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Aerodynamics.Drag;

/// <summary>
/// What the drag build-up can't know from the shape. Where the layer turns turbulent decides the friction of a clean slender body more
/// than anything else, so it is stated as a band and carried into the answer.
/// </summary>
public sealed record DragAssumptions
{
    /// <summary>Sand-grain roughness of the surface; 0 (smooth) to 500 µm. Common practice: 5 µm polished, 20 µm painted, 60 µm as laid
    /// up.</summary>
    public Length Roughness { get; init; } = 20.Micrometres();

    /// <summary>Reynolds number of transition, early end of the band [-]; 0 (turbulent from the start) to 1e7.</summary>
    public double EarlyTransition { get; init; }

    /// <summary>Reynolds number of transition, late end of the band [-]; at least the early end, to 1e7.</summary>
    public double LateTransition { get; init; } = 5e5;

    /// <summary>Which published form factor the body takes.</summary>
    public FormFactorLaw BodyForm { get; init; } = FormFactorLaw.Barrowman;

    /// <summary>Whether friction falls with Mach number by 1 − 0.1 M². Source: Barrowman, 1967, ch. 4 (unverified).</summary>
    public bool CompressibleFriction { get; init; } = true;

    /// <summary>Drag of what sticks out (rail buttons, joints, screws), on the reference area [-]; 0 to 1.</summary>
    public double ProtuberanceDrag { get; init; }

    /// <summary>Smooth and turbulent from the tip, friction without Mach correction: the textbook case.</summary>
    public static DragAssumptions SmoothTurbulent { get; } = new() { Roughness = Length.Zero, LateTransition = 0,
        CompressibleFriction = false };

    /// <summary>Everything that is wrong with the assumptions.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        var findings = new List<Finding>();
        var transitions = new ValidRange<double>(0, 1e7);
        const string Why = "Zero means turbulent from the start; natural transition in flight lies between 3e5 and 3e6.";
        findings.AddIf(new ValidRange<Length>(Length.Zero, 500.Micrometres()).Find(Roughness, "surface roughness",
            "Painted surfaces are near 20 µm."));
        findings.AddIf(transitions.Find(EarlyTransition, "early transition Reynolds number", Why));
        findings.AddIf(transitions.Find(LateTransition, "late transition Reynolds number", Why));
        if (LateTransition < EarlyTransition)
            findings.Add(AerodynamicsFindings.LateTransitionBelowEarly(LateTransition, EarlyTransition));
        findings.AddIf(new ValidRange<double>(0, 1).Find(ProtuberanceDrag, "protuberance drag coefficient",
            "It is on the reference area; a pair of rail buttons is some hundredths."));
        return findings;
    }
}

/// <summary>Published corrections from flat-plate friction to a body's profile drag.</summary>
public enum FormFactorLaw
{
    /// <summary>1 + 0.5 d / L. Source: J. S. Barrowman, M.S. thesis, 1967 (unverified).</summary>
    Barrowman,

    /// <summary>1 + 1.5 (d / L)^1.5 + 7 (d / L)³. Source: S. F. Hoerner, Fluid-Dynamic Drag, 1965 (unverified).</summary>
    Hoerner,

    /// <summary>1 + 60 / f³ + 0.0025 f with f = L / d. Source: USAF Stability and Control DATCOM (unverified).</summary>
    Datcom,
}

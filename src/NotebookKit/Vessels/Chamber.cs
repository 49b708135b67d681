using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels;

/// <summary>All that propulsion and filling need to know of a vessel: how much it holds, how wide it is, what it may be filled to and what
/// that rests on.</summary>
public sealed record Chamber
{
    /// <summary>A chamber with a rated pressure that is stated by hand; a rating makes a predicted one, a proved vessel a proved
    /// one.</summary>
    /// <param name="volume">Internal volume; above 0.</param>
    /// <param name="bore">Internal diameter; above 0.</param>
    /// <param name="ratedPressure">Highest pressure it may be filled to; above 0.</param>
    public Chamber(Volume volume, Length bore, GaugePressure ratedPressure)
    {
        Volume = volume;
        Bore = bore;
        RatedPressure = ratedPressure;
    }

    /// <summary>Internal volume; above 0. Changing it makes the rated pressure a stated one.</summary>
    public Volume Volume
    {
        get;
        init
        {
            field = value;
            Forget();
        }
    }

    /// <summary>Internal diameter; above 0. Changing it makes the rated pressure a stated one.</summary>
    public Length Bore
    {
        get;
        init
        {
            field = value;
            Forget();
        }
    }

    /// <summary>Highest pressure it may be filled to; above 0. Changing it makes it a stated one.</summary>
    public GaugePressure RatedPressure
    {
        get;
        init
        {
            field = value;
            Forget();
        }
    }

    /// <summary>
    /// Highest pressure it is expected ever to see over the rated one [-], as its rule set has it; 1 to 1.5, 1.05 unless given (common
    /// practice, no source).
    /// </summary>
    public double Overshoot { get; init; } = 1.05;

    /// <summary>What the rated pressure rests on.</summary>
    public PressureBasis Basis { get; private set; }

    /// <summary>The rating or the proof behind it, in words; empty where it is stated.</summary>
    public string Reference { get; private set; } = "";

    /// <summary>Highest pressure it is expected ever to see (MEOP): rated pressure with regulator creep and warming. Source: the rule set's
    /// overshoot.</summary>
    public GaugePressure MaximumExpectedPressure => RatedPressure * Overshoot;

    /// <summary>What the rated pressure rests on, for a line of a result: "predicted: Curlew by club rule; not proved".</summary>
    public string RestsOn => Basis switch
    {
        PressureBasis.Proved => $"proved: {Reference}",
        PressureBasis.Predicted => $"predicted: {Reference}; not proved",
        _ => "stated by hand; no rating and no proof stand behind it",
    };

    internal static Chamber Predicted(Volume volume, Length bore, GaugePressure rated, double overshoot, string reference) =>
        new(volume, bore, rated) { Overshoot = overshoot, Basis = PressureBasis.Predicted, Reference = reference };

    internal static Chamber Proved(Volume volume, Length bore, GaugePressure rated, double overshoot, string reference) =>
        new(volume, bore, rated) { Overshoot = overshoot, Basis = PressureBasis.Proved, Reference = reference };

    private void Forget() => (Basis, Reference) = (PressureBasis.Stated, "");
}

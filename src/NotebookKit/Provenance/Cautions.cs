namespace NotebookKit.Provenance;

/// <summary>The cautions of the trade, each said in one place and shown wherever it applies.</summary>
public static class Cautions
{
    /// <summary>Stored pneumatic energy.</summary>
    public static Caution StoredEnergy { get; } = new(
        "Stored energy",
        "Compressed air can kill. Never approach a pressurised vessel; have a remote vent; keep everybody out of line of its closures.");

    /// <summary>Proof testing.</summary>
    public static Caution Proof { get; } = new(
        "Proof",
        "Prove with water, from behind cover, remotely, nobody in line of a closure. Never proof with air; bleed trapped air first.");

    /// <summary>Composite damage.</summary>
    public static Caution Composite { get; } = new(
        "Composite",
        "A composite vessel loses strength with damage, heat, moisture and cycles. Inspect before every fill; retire on doubt.");

    /// <summary>Dust and resin.</summary>
    public static Caution Bench { get; } = new(
        "Bench",
        "Carbon and glass dust and epoxy harm lungs and skin: mask, gloves, ventilation.");

    /// <summary>What a prediction is not.</summary>
    public static Caution Prediction { get; } = new(
        "Prediction",
        "A prediction isn't a certificate. Local pressure-equipment law, the flying site's rules, aviation authority rules and a "
            + "competent, licensed person come first. These are engineering estimates for education and planning.");

    /// <summary>Flying.</summary>
    public static Caution Flight { get; } = new(
        "Flight",
        "Fly only with the site's permission, below its ceiling, with a clear field downwind, everybody watching and nobody under the "
            + "flight path.");

    /// <summary>Shown with a vessel's pressure.</summary>
    public static IReadOnlyList<Caution> ForPressure { get; } = [StoredEnergy, Composite, Prediction];

    /// <summary>Shown with a proof.</summary>
    public static IReadOnlyList<Caution> ForProof { get; } = [Proof, StoredEnergy, Composite, Prediction];

    /// <summary>Shown with a fill.</summary>
    public static IReadOnlyList<Caution> ForFilling { get; } = [StoredEnergy, Composite, Prediction];

    /// <summary>Shown with a flight.</summary>
    public static IReadOnlyList<Caution> ForFlight { get; } = [StoredEnergy, Flight, Prediction];

    /// <summary>Shown with bench work.</summary>
    public static IReadOnlyList<Caution> ForBench { get; } = [Bench];
}

/// <summary>A danger that must be said wherever it applies.</summary>
/// <param name="Topic">One or two words.</param>
/// <param name="Text">The caution itself.</param>
public sealed record Caution(string Topic, string Text)
{
    /// <summary>For example "Proof: prove with water, ...".</summary>
    public override string ToString() => $"{Topic}: {Text}";
}

namespace NotebookKit.Vessels.Allowables;

/// <summary>What is believed of a chance or a rate of failure before any test.</summary>
public enum NoFailurePrior
{
    /// <summary>Jeffreys: Beta(½, ½) of a chance, Gamma(½) of a rate.</summary>
    Jeffreys,

    /// <summary>Flat: Beta(1, 1) of a chance, Gamma(1) of a rate.</summary>
    Uniform,
}

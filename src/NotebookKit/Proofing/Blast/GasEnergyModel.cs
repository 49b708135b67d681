namespace NotebookKit.Proofing.Blast;

/// <summary>How the energy in compressed gas is counted. The four differ by more than a factor of two for the same vessel.</summary>
public enum GasEnergyModel
{
    /// <summary>Work of an isentropic expansion to ambient. Source: ASME PCC-2, Appendix 501-II; W. E. Baker et al., Explosion Hazards and
    /// Evaluation, 1983.</summary>
    Isentropic,

    /// <summary>The same with the rounded exponent 0.286 that the standard prints for air. Source: ASME PCC-2, Appendix 501-II, equation
    /// II-1.</summary>
    IsentropicAsPrinted,

    /// <summary>Heat needed to raise the gas to its pressure at constant volume. Source: H. L. Brode 1959, in D. A. Crowl, Understanding
    /// Explosions, 2003, Appendix B.</summary>
    Brode,

    /// <summary>Work of an isothermal expansion to ambient, work on the surrounding air not taken off. Source: Crowl 2003, Appendix
    /// B.</summary>
    Isothermal,

    /// <summary>Most work the gas can do on anything but the surrounding air. Source: Crowl 2003, Appendix B.</summary>
    Availability,
}

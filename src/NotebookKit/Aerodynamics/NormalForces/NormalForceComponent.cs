using UnitsNet;

namespace NotebookKit.Aerodynamics.NormalForces;

/// <summary>What one part adds to the normal force. Source: J. S. Barrowman, M.S. thesis, 1967, ch. 3 (unverified).</summary>
/// <param name="Name">Part.</param>
/// <param name="Slope">Normal-force slope CNα on the reference area [1/rad]; negative for a boat-tail.</param>
/// <param name="At">Its centre of pressure, aft of the nose tip.</param>
/// <param name="Share">Its part of the total slope; the shares add up to 100 %.</param>
public sealed record NormalForceComponent(string Name, double Slope, Length At, Ratio Share);

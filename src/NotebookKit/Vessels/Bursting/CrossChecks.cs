using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Bursting;

/// <summary>Simple answers beside the laminate's: they bracket it, and say by how much the fibres' direction counts.</summary>
/// <param name="Netting">Every fibre at its strength, resin and liner nothing, fibres not turning.</param>
/// <param name="ThinWall">The same fibre spread evenly in every direction, thin wall.</param>
/// <param name="ThickWall">The same fibre spread evenly in every direction, thick wall by Lamé.</param>
/// <param name="IsotropicStrength">Strength of that isotropic wall: its modulus times the fibres' breaking strain.</param>
/// <remarks>
/// Source: Evans and Gibson, Proc. R. Soc. A 458, 2002 (netting); Shigley, Mechanical Engineering Design (thin and thick wall); Tsai and
/// Hahn, Introduction to Composite Materials, 1980 (modulus of the isotropic wall from its invariants).
/// </remarks>
public sealed record CrossChecks(GaugePressure Netting, GaugePressure ThinWall, GaugePressure ThickWall, Pressure IsotropicStrength);

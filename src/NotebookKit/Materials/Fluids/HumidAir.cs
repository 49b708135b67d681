using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Materials.Fluids;

/// <summary>Air over water, saturated with its vapour: how much vapour is in it.</summary>
/// <remarks>
/// Vapour and air are ideal gases side by side; dissolving, and the few per cent that pressure adds to vapour pressure (some 5 % at 60 bar,
/// from memory), are left out. Source: W. Wagner, A. Pruss, J. Phys. Chem. Ref. Data 22 (1993) 783 (vapour pressure); Dalton's law.
/// </remarks>
/// <param name="Pressure">Pressure of air and vapour together; above the vapour pressure.</param>
/// <param name="Temperature">Temperature; 0 °C to 60 °C.</param>
public sealed record HumidAir(AbsolutePressure Pressure, Temperature Temperature)
{
    // Molar masses of water and dry air, g/mol.
    private const double MassRatio = 18.01528 / 28.96546;

    /// <summary>Everything wrong with this air.</summary>
    public IReadOnlyList<Finding> Validate() =>
        new[]
        {
            Water.Range.Find(Temperature.ToUnit(UnitsNet.Units.TemperatureUnit.DegreeCelsius), "temperature of the air",
                "Water freezes below 0 °C; above 60 °C a laminating resin has lost its strength."),
            Pressure.Pascals > 20_000 ? null : MaterialsFindings.PressureOutOfRange(Pressure),
        }.OfType<Finding>().ToList();

    /// <summary>Pressure of the vapour alone. Source: Wagner and Pruss 1993.</summary>
    /// <exception cref="InvalidDesignException">Pressure or temperature is outside its range.</exception>
    public AbsolutePressure VapourPressure
    {
        get
        {
            InvalidDesignException.ThrowIfAny("Humid air", Validate());
            return new Water(Temperature).VapourPressure;
        }
    }

    /// <summary>Mass of vapour over mass of dry air [-]. Source: Dalton's law.</summary>
    /// <exception cref="InvalidDesignException">Pressure or temperature is outside its range.</exception>
    public double HumidityRatio
    {
        get
        {
            var vapour = VapourPressure.Pascals;
            return MassRatio * vapour / (Pressure.Pascals - vapour);
        }
    }

    /// <summary>Specific gas constant of air and vapour together. Source: Dalton's law.</summary>
    /// <exception cref="InvalidDesignException">Pressure or temperature is outside its range.</exception>
    public SpecificEntropy GasConstant
    {
        get
        {
            var ratio = HumidityRatio;
            return SpecificEntropy.FromJoulesPerKilogramKelvin(Gas.Air.GasConstant.JoulesPerKilogramKelvin * (1 + ratio / MassRatio) / (1
                + ratio));
        }
    }

    /// <summary>For example "saturated air at 5 bar absolute, 20 °C".</summary>
    public override string ToString() => $"saturated air at {Pressure}, {Temperature.Show()}";
}

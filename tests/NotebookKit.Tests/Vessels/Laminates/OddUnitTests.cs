using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Laminates;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Tests.Vessels.Laminates;

/// <summary>Units that can't say every value, the sine of an angle and the height of an air column, are refused in plain words.</summary>
public class OddUnitTests
{
    private static readonly Lamina Ply = new(140.Gigapascals(), 9.Gigapascals(), 5.Gigapascals(), 0.3);

    // sin 30° = 0.5 is an angle; no angle has a sine of 2.
    [Fact]
    public void An_angle_may_be_given_by_its_sine_and_no_angle_has_a_sine_of_two()
    {
        var plain = Ply.At(30.Degrees());
        var bySine = Ply.At(Angle.From(0.5, AngleUnit.Tilt));
        Assert.Equal(plain.Axial.Pascals, bySine.Axial.Pascals, 1e-3);
        var refused = Assert.Throws<ArgumentOutOfRangeException>(() => Ply.At(Angle.From(2, AngleUnit.Tilt)));
        Assert.Contains("angle of the fibres is 2 Tilt, which is no angle. Give it in degrees.", refused.Message, StringComparison.Ordinal);
    }

    // Above 44.3 km the formula of the standard atmosphere's lowest layer has no pressure.
    [Fact]
    public void A_modulus_that_is_no_pressure_is_refused_with_the_range()
    {
        var odd = Ply with { Transverse = Pressure.From(50_000, PressureUnit.MeterOfElevation) };
        var refused = Assert.Throws<InvalidDesignException>(() => odd.At(30.Degrees()));
        Assert.Contains("moduli must be 1 Pa to 10 000 GPa", refused.Message, StringComparison.Ordinal);
        Assert.False(new ValidRange<Pressure>((-1).Gigapascals(), 1.Gigapascals()).Contains(odd.Transverse));
    }
}

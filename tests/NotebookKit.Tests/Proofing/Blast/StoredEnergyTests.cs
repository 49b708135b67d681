using CsCheck;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Proofing.Blast;

public class StoredEnergyTests
{
    private static readonly AbsolutePressure Ambient = AbsolutePressure.StandardSeaLevel;

    [Fact]
    public void Isothermal_is_over_availability_over_Brode_over_isentropic() =>
        Gen.Double[20, 300].Sample(bar =>
        {
            double Of(GasEnergyModel model) => StoredEnergy.OfGas(bar.BarGauge(), 1.Litres(), Ambient, model).Joules;
            return Of(GasEnergyModel.Isothermal) > Of(GasEnergyModel.Availability)
                && Of(GasEnergyModel.Availability) > Of(GasEnergyModel.Isentropic)
                && Of(GasEnergyModel.Brode) > Of(GasEnergyModel.Isentropic);
        });

    // A second road to the same number: the work of the expansion by quadrature, displaced surrounding air not taken off.
    [Theory]
    [InlineData(10)]
    [InlineData(60)]
    [InlineData(200)]
    public void Isentropic_energy_is_the_work_of_the_expansion(double bar)
    {
        double pa = Ambient.Pascals, pt = bar * 1e5 + pa, v1 = 1e-3, v2 = v1 * Math.Pow(pt / pa, 1 / 1.4);
        const int n = 20_000;
        double h = Math.Log(v2 / v1) / n, sum = 0;
        for (var i = 0; i <= n; i++)
        {
            var v = v1 * Math.Exp(i * h);
            sum += pt * Math.Pow(v1 / v, 1.4) * v * (i == 0 || i == n ? 1 : i % 2 == 1 ? 4 : 2);
        }

        Tolerance.Relative(sum * h / 3, StoredEnergy.OfGas(bar.BarGauge(), 1.Litres(), Ambient).Joules, 1e-9);
    }

    [Fact]
    public void No_pressure_holds_no_energy() =>
        Assert.All(Enum.GetValues<GasEnergyModel>(), m => Assert.Equal(0,
            StoredEnergy.OfGas(GaugePressure.Zero, 1.Litres(), Ambient, m).Joules, 9));

    [Fact]
    public void Refuses_suction() =>
        Assert.Contains("pressure of the gas is −1 bar gauge",
            Assert.Throws<OutOfRangeException>(() => StoredEnergy.OfGas((-1).BarGauge(), 1.Litres(), Ambient)).Message,
            StringComparison.Ordinal);

    [Fact]
    public void Refuses_no_volume_and_a_gauge_reading_given_as_ambient()
    {
        Assert.Contains("gas volume", Assert.Throws<OutOfRangeException>(() => StoredEnergy.OfGas(1.BarGauge(), Volume.Zero,
            Ambient)).Message, StringComparison.Ordinal);
        Assert.Contains("gauge pressure meant", Assert.Throws<OutOfRangeException>(() => StoredEnergy.OfGas(1.BarGauge(), 1.Litres(),
            60.BarAbsolute())).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Refuses_the_printed_form_for_another_gas() =>
        Assert.Contains("constants", Assert.Throws<OutOfRangeException>(() => StoredEnergy.OfGas(1.BarGauge(), 1.Litres(), Ambient,
            GasEnergyModel.IsentropicAsPrinted, 1.3)).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData(1.0)]
    [InlineData(double.NaN)]
    public void Refuses_an_impossible_heat_capacity_ratio(double ratio) =>
        Assert.Throws<OutOfRangeException>(() => StoredEnergy.OfGas(1.BarGauge(), 1.Litres(), Ambient, heatCapacityRatio: ratio));

    [Fact]
    public void Stand_off_refuses_more_energy_than_the_method_covers() =>
        Assert.Contains("barrier", Assert.Throws<OutOfRangeException>(() => StandOff.ForEnergy(Energy.FromMegajoules(272))).Message,
            StringComparison.Ordinal);

    [Fact]
    public void Tnt_equivalent_refuses_less_than_nothing() => Assert.Throws<OutOfRangeException>(() =>
        TntEquivalent.Of(Energy.FromJoules(-1)));

    [Fact]
    public void Wall_expansion_refuses_a_thick_wall_and_shrinking()
    {
        Assert.Contains("wall thickness", Assert.Throws<OutOfRangeException>(() => WallExpansion.Isotropic(50.Millimetres(),
            20.Millimetres(), 70.Gigapascals(), 0.3, 60.BarGauge())).Message, StringComparison.Ordinal);
        Assert.Contains("expansion of the vessel", Assert.Throws<OutOfRangeException>(() => WallExpansion.Measured((-1).Millilitres(),
            1.Litres(), 60.BarGauge())).Message, StringComparison.Ordinal);
    }
}

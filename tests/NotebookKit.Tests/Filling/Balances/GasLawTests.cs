using NotebookKit.Quantities;

namespace NotebookKit.Tests.Filling.Balances;

public class GasLawTests
{
    // Newton's method in temperature and density against a bracket in temperature, which the published states of air are held to.
    [Theory]
    [InlineData(300, 293.15, 60)]
    [InlineData(200, 250, 40)]
    [InlineData(20, 350, 1)]
    public void Gas_behind_a_regulator_is_as_cold_as_by_a_bracket(double fromBar, double kelvins, double toBar)
    {
        var before = RealGas.Air.At(fromBar.BarAbsolute(), kelvins.Kelvins());
        var after = RealGas.Air.Throttled(before, toBar.BarAbsolute());
        GasLaw law = new(Gas.Air, GasProperties.Real);
        Tolerance.Relative(after.Temperature.Kelvins, law.ThrottledKelvins(before.Point, toBar * 1e5), 1e-9);
        // And again from where that search ended.
        Tolerance.Relative(after.Temperature.Kelvins, law.ThrottledKelvins(before.Point, toBar * 1e5), 1e-9);
    }

    [Fact]
    public void An_ideal_gas_keeps_its_temperature_behind_a_regulator_and_has_it_by_its_enthalpy()
    {
        GasLaw law = new(Gas.Air, GasProperties.Ideal);
        var point = law.AtPressure(2e7, 280);
        Assert.Equal(280, law.ThrottledKelvins(point, 1e6));
        Tolerance.Relative(280, law.KelvinsAtEnthalpy(1e6, point.Enthalpy, 200), 1e-12);
    }

    // Each search begins along the slopes of the one before: a law of its own for every state finds the same.
    [Fact]
    public void A_search_from_the_last_state_finds_what_one_from_afar_finds()
    {
        var law = new GasLaw(Gas.Air, GasProperties.Real);
        for (var i = 0; i < 200; i++)
        {
            double pascals = 43e5 + (i % 7 * 1e5) + (i > 100 ? 100e5 : 0), kelvins = 293 - (0.3 * i);
            var before = law.AtPressure(200e5, kelvins);
            var afresh = new GasLaw(Gas.Air, GasProperties.Real).KelvinsAtEnthalpy(pascals, before.Enthalpy, kelvins);
            Tolerance.Relative(afresh, law.KelvinsAtEnthalpy(pascals, before.Enthalpy, kelvins), 1e-11);
            Assert.Equal(law.KelvinsAtEnthalpy(pascals, before.Enthalpy, kelvins), law.KelvinsAtEnthalpy(pascals, before.Enthalpy, 250));
            Tolerance.Relative(before.Enthalpy, law.AtPressure(pascals, afresh).Enthalpy, 1e-9);
        }
    }
}

using NotebookKit.Quantities;

namespace NotebookKit.Tests.Propulsion.Flow;

/// <summary>Tables blended for a drawn fill pressure are those that the pressure would have had of its own.</summary>
public class FiringTableFamilyTests
{
    private const double AmbientPa = 101_325;

    private static readonly Charge Nominal = new(new Chamber(3.Litres(), 66.Millimetres(), 200.BarGauge()), 33.Percent(), 40.BarGauge(),
        15.Celsius());

    [Theory]
    [InlineData(1.5)]
    [InlineData(5)]
    [InlineData(38.4)]
    [InlineData(40)]
    [InlineData(41.6)]
    [InlineData(70)]
    [InlineData(150)]
    public void Blended_tables_give_pressure_flow_and_thrust_of_tables_of_their_own(double bar)
    {
        var charge = Nominal with { Pressure = bar.BarGauge() };
        var family = new FiringTableFamily(Nominal, FlowModel.Real, AmbientPa);
        var (own, blended) = (FiringTables.For(charge, FlowModel.Real, AmbientPa), family.For(charge));
        Close(own.Closed!.StartVolume, blended.Closed!.StartVolume);
        Close(own.StartEnergy, blended.StartEnergy);
        var end = own.Closed.AtPressure(Math.Log(1.02 * AmbientPa), 1);
        for (var i = 0; i <= 50; i++)
        {
            var x = end * i / 50;
            Close(own.Closed.Pressure(x), blended.Closed.Pressure(x));
            Close(own.Closed.Temperature(x), blended.Closed.Temperature(x));
            Close(own.Closed.Exponent(x), blended.Closed.Exponent(x));
            var flow = own.Jet!.MassFlow(x, own.Closed.Pressure(x), 1e-4, AmbientPa, out var thrust);
            Close(flow, blended.Jet!.MassFlow(x, blended.Closed.Pressure(x), 1e-4, AmbientPa, out var blendedThrust));
            Close(thrust, blendedThrust);
        }

        static void Close(double expected, double actual) => Assert.Equal(1, actual / expected, 1e-12);
    }

    [Fact]
    public void An_ideal_gas_needs_no_tables() =>
        Assert.Same(FiringTables.None, new FiringTableFamily(Nominal, FlowModel.Plain, AmbientPa).For(Nominal));

    [Fact]
    public void A_gas_without_a_state_is_refused_as_it_would_be_by_itself() =>
        Assert.Throws<NotebookKit.Provenance.InvalidDesignException>(() => new FiringTableFamily(Nominal, FlowModel.Real, AmbientPa)
            .For(Nominal with { Pressure = 20_000.BarGauge() }));

    [Fact]
    public void The_jet_at_the_exit_obeys_the_energy_equation()
    {
        var tables = FiringTables.For(Nominal, FlowModel.Real, AmbientPa);
        var (closed, jet) = (tables.Closed!, tables.Jet!);
        var x = closed.AtPressure(Math.Log(1.5 * AmbientPa), 2);
        var exit = closed.AtPressure(Math.Log(AmbientPa), 2);
        var speed = jet.ExitSpeed(x, closed.Pressure(x), AmbientPa);
        Assert.Equal(1, speed * speed / 2 / closed.EnthalpyDrop(x, exit), 1e-11);
        Assert.Equal(Math.Log(AmbientPa), closed.LogPressure(exit), 1e-13);
    }
}

using CsCheck;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Filling.Fills;

public class FillSimulationTests
{
    private static readonly PadFill Curlew = new()
    {
        Chamber = new Chamber(2.5.Litres(), 66.Millimetres(), 45.BarGauge()),
        Supply = 45.BarGauge(),
        Restrictor = new SonicRestrictor(0.1.LitresPerSecondBar(), 0.35),
        Target = 40.BarGauge(),
        WaterFraction = 32.Percent(),
    };

    private static readonly PadFill WithWall = Curlew with { Heat = FillHeat.Wall };

    // Two roads to one answer: a sum over pressure and steps of time.
    [Theory]
    [InlineData(FillHeat.Adiabatic)]
    [InlineData(FillHeat.Isothermal)]
    public void Steps_of_time_meet_the_sum_over_pressure(FillHeat heat)
    {
        var fill = Curlew with { Heat = heat };
        var steps = FillSimulation.Integrate(fill);
        var sum = fill.Run();
        Assert.Null(steps.Trouble);
        Tolerance.Relative(sum.Duration.Seconds, steps.Seconds[^1], 1e-6);
        Tolerance.Relative(sum.ShutTemperature.Kelvins, steps.Kelvins[^1], 1e-7);
        Tolerance.Relative(sum.GasMass.Kilograms, steps.LastMass, 1e-7);
    }

    [Fact]
    public void Real_adiabatic_fill_meets_the_energy_balance_of_the_equation_of_state()
    {
        var fill = Curlew with { Properties = GasProperties.Real };
        var result = fill.Run();
        var ambient = fill.Ambient;
        var hot = RealGas.Air.Charged(RealGas.Air.At(ambient, fill.Temperature),
            RealGas.Air.At(fill.Supply.ToAbsolute(ambient), fill.Temperature), fill.Target.ToAbsolute(ambient));
        Tolerance.Relative(hot.Temperature.Kelvins, result.ShutTemperature.Kelvins, 1e-6);
        Tolerance.Relative(hot.Density.KilogramsPerCubicMeter * fill.GasVolume.CubicMeters, result.GasMass.Kilograms, 1e-6);
        Tolerance.Relative(RealGas.Air.Settled(hot, fill.Temperature).Pressure.Pascals, result.SettledPressure.ToAbsolute(ambient).Pascals,
            1e-6);
    }

    [Fact]
    public void Heat_to_the_wall_lies_between_the_bounds()
    {
        var wall = WithWall.Run();
        FillResult fast = Curlew.Run(), slow = (Curlew with { Heat = FillHeat.Isothermal }).Run();
        Assert.InRange(wall.Duration.Seconds, fast.Duration.Seconds, slow.Duration.Seconds);
        Assert.InRange(wall.ShutTemperature.DegreesCelsius, 20, fast.ShutTemperature.DegreesCelsius);
        Assert.InRange(wall.SettledPressure.Bar, fast.SettledPressure.Bar, 40);
        Assert.True(wall.WallTemperature!.Values.Max() > 20);
        Assert.True(wall.Time[^1] > wall.Duration.Seconds + 119);
    }

    [Fact]
    public void No_film_is_adiabatic_and_a_strong_one_isothermal()
    {
        FillResult Film(double factor, double w) => (WithWall with
        {
            Wall = FillWall.Of(WithWall.Chamber, WithWall.WaterFraction)
                with { FilmFactor = factor, Film = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(w), HeatCapacity = null },
        }).Run();
        Tolerance.Relative(Curlew.Run().Duration.Seconds, Film(0, 100).Duration.Seconds, 1e-6);
        Tolerance.Relative((Curlew with { Heat = FillHeat.Isothermal }).Run().Duration.Seconds, Film(10, 5000).Duration.Seconds, 1e-3);
    }

    [Fact]
    public void Goal_after_cooling_is_met_by_the_run_that_finds_it()
    {
        var fill = WithWall with { Goal = FillGoal.AfterCooling, Target = 32.BarGauge(), Supply = 60.BarGauge() };
        var result = fill.Run();
        Tolerance.Relative(32, result.SettledPressure.Bar, 1e-8);
        Assert.True(result.ShutPressure.Bar > 33);
    }

    [Fact]
    public void Refuses_to_pass_the_rating_while_hot()
    {
        var trap = WithWall with { Goal = FillGoal.AfterCooling, Target = 44.BarGauge(), Supply = 80.BarGauge() };
        Assert.Contains("pass the vessel's rated pressure of 45 bar gauge",
            Assert.Throws<InvalidDesignException>(() => trap.Run()).Message, StringComparison.Ordinal);
        // A hand that pulses the valve gets there.
        var pulsed = (trap with { Valve = new ValvePulses(1.Seconds(), 20.Seconds()) }).Run();
        Tolerance.Relative(44, pulsed.SettledPressure.Bar, 1e-8);
        Assert.True(pulsed.MaximumPressure <= 45.001.BarGauge());
    }

    // Without heat to the wall a shut valve cools nothing: the next pulse must not start where the last one stopped, at the rating.
    [Theory]
    [InlineData(FillHeat.Adiabatic, GasProperties.Real)]
    [InlineData(FillHeat.Adiabatic, GasProperties.Ideal)]
    public void A_pulse_is_not_opened_at_the_rating(FillHeat heat, GasProperties properties)
    {
        var trap = WithWall with { Goal = FillGoal.AfterCooling, Target = 44.BarGauge(), Supply = 80.BarGauge(), Heat = heat,
            Properties = properties, Valve = new ValvePulses(1.Seconds(), 2.Seconds()) };
        Assert.Contains("doesn't cool below it", Assert.Throws<InvalidDesignException>(() => trap.Run()).Message, StringComparison.Ordinal);
    }

    // Whatever the supply, the source, the way in and the hand: no fill that runs reads above the rating, on its way or after.
    [Fact]
    public void No_fill_passes_the_rating() =>
        (from target in Gen.Double[20, 45]
            from over in Gen.Double[0.5, 60]
            from cylinder in Gen.Double[0.5, 20]
            from bar in Gen.Double[60, 300]
            from shut in Gen.Double[0.5, 10]
            from pulsed in Gen.Bool
            from hosed in Gen.Bool
            from settled in Gen.Bool
            from wall in Gen.Bool
            select Curlew with
            {
                Target = target.BarGauge(), Supply = (target + over).BarGauge(), Heat = wall ? FillHeat.Wall : FillHeat.Adiabatic,
                    Properties = GasProperties.Real,
                Goal = settled ? FillGoal.AfterCooling : FillGoal.WhenShut, Cylinder = new("A", cylinder.Litres(), bar.BarGauge()),
                Valve = pulsed ? new ValvePulses(1.Seconds(), shut.Seconds()) : null,
                Restrictor = hosed ? new RestrictorChain(new Hose(4.Millimetres(), 5.Metres()), Curlew.Restrictor)
                    : new SonicRestrictor(0.3.LitresPerSecondBar(), 0.3),
            }).Sample(fill =>
        {
            try
            {
                var result = fill.Run();
                Assert.True(result.MaximumPressure.Bar <= 45.001 && result.SettledPressure.Bar <= 45.001,
                    $"{result.MaximumPressure.Bar} and {result.SettledPressure.Bar}");
            }
            catch (InvalidDesignException refused)
            {
                Assert.Contains(refused.Findings, f => f.Severity == FindingSeverity.Error
                    && f.Message.Contains("gauge", StringComparison.Ordinal));
            }
        }, iter: 40);

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_hose_fills_from_a_regulator_that_is_wound_up_from_the_vessels_own_pressure(bool chained)
    {
        var hose = new Hose(5.Millimetres(), 16.Metres());
        var wound = Curlew with
        {
            SupplyRise = PressureChangeRate.FromBarsPerSecond(1.2),
                Restrictor = chained ? new RestrictorChain(hose, Curlew.Restrictor) : new RestrictorChain(Curlew.Restrictor, hose),
        };
        Tolerance.Relative(40, wound.Run().ShutPressure.Bar, 1e-6);
        Assert.Equal(0, hose.Flow(AbsolutePressure.FromBar(5), 20.Celsius(), AbsolutePressure.FromPascals(Math.BitDecrement(5e5)),
            Gas.Air).KilogramsPerSecond, 9);
    }

    [Fact]
    public void Pulses_take_longer_and_leave_more_after_cooling()
    {
        FillResult steady = WithWall.Run(), pulsed = (WithWall with { Valve = new ValvePulses(2.Seconds(), 6.Seconds()) }).Run();
        Assert.True(pulsed.Duration > steady.Duration);
        Assert.True(pulsed.SettledPressure > steady.SettledPressure);
        Assert.True(pulsed.ShutTemperature < steady.ShutTemperature);
    }

    [Fact]
    public void Cylinder_gives_what_the_vessel_takes()
    {
        var cylinder = new SourceCylinder("A", 10.Litres(), 200.BarGauge());
        var fill = WithWall with { Cylinder = cylinder, Properties = GasProperties.Real };
        var result = fill.Run();
        // A regulator cools what comes from 200 bar: less heating than from a supply at ambient temperature.
        Assert.True(result.ShutTemperature < (WithWall with { Properties = GasProperties.Real }).Run().ShutTemperature);
        var before = RealGas.Air.At(cylinder.Pressure.ToAbsolute(fill.Ambient), fill.Temperature).Density.KilogramsPerCubicMeter * 0.01;
        // The cylinder's gas cools a little as it expands: by mass it must balance, and its pressure must be below the warm one.
        var warm = RealGas.Air.AtDensity(Density.FromKilogramsPerCubicMeter((before - result.GasTaken.Kilograms) / 0.01),
            fill.Temperature).Pressure.ToGauge(fill.Ambient).Bar;
        var end = result.CylinderPressure!.Values[^1];
        Assert.InRange(end, 0.97 * warm, warm);
    }

    [Fact]
    public void Refuses_a_cylinder_that_is_too_empty_and_says_so()
    {
        Assert.Contains("is at or below the target", Assert.Throws<InvalidDesignException>(() => (WithWall
            with { Cylinder = new("B", 10.Litres(), 38.BarGauge()) }).Run()).Message, StringComparison.Ordinal);
        Assert.Contains("use a fuller cylinder", Assert.Throws<InvalidDesignException>(() => (WithWall
            with { Cylinder = new("C", 2.Litres(), 45.BarGauge()) }).Run()).Message, StringComparison.Ordinal);
    }

    // A cylinder of 1 L falls from 300 to some 80 bar within seconds: its gas arrives cold, and the vessel would settle 2 bar above its
    // rating.
    [Theory]
    [InlineData(FillHeat.Adiabatic)]
    [InlineData(FillHeat.Wall)]
    public void Refuses_cold_gas_that_warms_up_past_the_rating_behind_the_shut_valve(FillHeat heat)
    {
        var cold = new PadFill
        {
            Chamber = new Chamber(3.Litres(), 70.Millimetres(), 60.BarGauge()), Supply = 60.BarGauge(),
                Restrictor = new Orifice(2.Millimetres(), 0.8), Target = 60.BarGauge(),
            Properties = GasProperties.Real, Heat = heat, Cylinder = new("A", 1.Litres(), 300.BarGauge()),
        };
        var refused = Assert.Throws<InvalidDesignException>(() => cold.Run());
        Assert.Contains("warms up to 6", refused.Message, StringComparison.Ordinal);
        Assert.Contains("above the vessel's rated pressure of 60 bar gauge", refused.Message, StringComparison.Ordinal);
        var after = (cold with { Goal = FillGoal.AfterCooling }).Run();
        Assert.True(after.ShutPressure < after.SettledPressure);
        Tolerance.Relative(60, after.SettledPressure.Bar, 1e-5);
    }

    [Fact]
    public void A_hot_vessel_at_the_regulators_pressure_is_told_to_fill_slowly()
    {
        var hot = WithWall with { Goal = FillGoal.AfterCooling, Chamber = WithWall.Chamber with { RatedPressure = 80.BarGauge() } };
        var message = Assert.Throws<InvalidDesignException>(() => (hot with { Target = 44.BarGauge() }).Run()).Message;
        Assert.Contains("44 bar gauge after cooling isn't reached", message, StringComparison.Ordinal);
        Assert.Contains("Fill more slowly or in pulses", message, StringComparison.Ordinal);
        Assert.Contains("at most to the rated 80 bar gauge", message, StringComparison.Ordinal);
    }

    [Fact]
    public void Refuses_a_gas_that_it_knows_too_little_of()
    {
        var helium = new Gas("helium", SpecificEntropy.FromJoulesPerKilogramKelvin(2077), 1.667, Source.CommonPractice("test"));
        Assert.Contains("no equation of state", Assert.Throws<InvalidDesignException>(() => (Curlew
            with { Gas = helium, Properties = GasProperties.Real }).Run()).Message, StringComparison.Ordinal);
        Assert.Contains("fixed film coefficient", Assert.Throws<InvalidDesignException>(() => (WithWall
            with { Gas = helium }).Run()).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Wall_says_everything_that_is_wrong_with_it()
    {
        var bad = FillWall.Of(Curlew.Chamber, 0.Percent()) with { Surface = Area.Zero, FilmFactor = -1,
            Film = HeatTransferCoefficient.Zero, Inlet = 1.Metres(), HeatCapacity = Entropy.Zero };
        Assert.Equal(5, bad.Validate().Count);
        Assert.Equal(2, new ValvePulses(0.Seconds(), 1.Hours()).Validate().Count);
        Assert.Equal(2, new SourceCylinder("A", 10.Millilitres(), 500.BarGauge()).Validate().Count);
    }

    // Nothing is made on the heap per step: a hundred times the steps may cost only the rows that are kept.
    [Fact]
    public void Right_hand_side_allocates_nothing()
    {
        var law = new GasLaw(Gas.Air, GasProperties.Real);
        var system = new FillSystem(law, Curlew.Restrictor, new FlowScale(law, 46e5, 293.15), 1.7e-3, 46e5, 293.15, 293.15)
        {
            Heat = new HeatPath(FillWall.Of(Curlew.Chamber, Curlew.WaterFraction), law),
            Open = true,
            CylinderM3 = 0.01,
            CylinderWattsPerKelvin = 5,
        };
        Span<double> y = [0.02, 300, 295, 2.3, 293], dydt = stackalloc double[5];
        system.Derivatives(0, y, dydt);
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var i = 0; i < 100; i++) system.Derivatives(i, y, dydt);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }
}

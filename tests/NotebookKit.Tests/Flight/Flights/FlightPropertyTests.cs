using CsCheck;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Flight.Flights;

/// <summary>What must hold whatever is flown, and wherever.</summary>
public class FlightPropertyTests
{
    private static readonly Vehicle Trainer = SampleVehicles.Trainer;

    private static readonly Gen<Vehicle> AnyVehicle =
        from water in Gen.Double[0, 90]
        from bar in Gen.Double[1, 60]
        from throat in Gen.Double[3, 30]
        from ballast in Gen.Double[0.01, 3]
        from at in Gen.Double[0.05, 1.5]
        from cant in Gen.Double[-2, 2]
        from time in Gen.Double[0.2, 20]
        from choice in Gen.Int[0, 5]
        select Trainer with
        {
            Flow = choice % 2 == 0 ? FlowModel.Real : FlowModel.Plain,
            Charge = Trainer.Charge with { WaterFraction = water.Percent(), Pressure = bar.BarGauge() },
            Nozzle = new Nozzle(throat.Millimetres()),
            Parts = Trainer.Parts.With(new("ballast", ballast.Kilograms(), at.Metres())),
            Body = choice == 5 ? Trainer.Body with { Fins = [] }
                : Trainer.Body with { Fins = [Trainer.Body.Fins[0] with { Cant = cant.Degrees() }] },
            Deployment = (choice % 3) switch
            {
                0 => Deployment.ByApogeeSensor((time / 10).Seconds()),
                1 => Deployment.ByTimer(time.Seconds()),
                _ => Deployment.None,
            },
            LaunchTube = choice == 4 ? new LaunchTube(2.5.Millimetres(), 0.2.Metres()) : null,
        };

    private static readonly Gen<LaunchSite> AnySite =
        from rail in Gen.Double[0.1, 6]
        from elevation in Gen.Double[60, 90]
        from towards in Gen.Double[0, 360]
        from wind in Gen.Double[0, 15]
        from friction in Gen.Double[0, 0.5]
        from seed in Gen.ULong
        select SampleVehicles.Calm with
        {
            Rail = new(rail.Metres()) { Elevation = elevation.Degrees(), Towards = towards.Degrees(), Friction = friction },
            Wind = seed % 2 == 0 ? WindProfile.PowerLaw(wind.MetresPerSecond(), 10.Metres(), @from: (360 - towards).Degrees())
                : WindProfile.Uniform(wind.MetresPerSecond()),
            Gusts = seed % 4 == 0 ? new DrydenTurbulence(wind.MetresPerSecond()).Field(300.Metres(), seed) : null,
        };

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_flight_ends_on_the_ground_or_says_why_not(bool sixDegrees) =>
        Gen.Select(AnyVehicle, AnySite).Sample((vehicle, site) =>
        {
            if (vehicle.Validate(site).Any(f => f.Severity == FindingSeverity.Error)) return;
            var flight = sixDegrees ? vehicle.FlySixDegrees(site) : vehicle.Fly(site);
            if (flight.Status == ResultStatus.Failed)
            {
                Assert.Contains(flight.Findings, f => f.Severity == FindingSeverity.Error && f.Message.Length > 30);
                Assert.Empty(flight.Lines);
                return;
            }

            Assert.Equal(0, flight.Height[^1], 6);
            Assert.True(flight.Figures.ApogeeTime <= flight.Figures.LandingTime);
            Assert.All(flight.Height.Values.Concat(flight.Speed.Values).Concat(flight.Mass.Values), v => Assert.True(double.IsFinite(v)));
            Assert.NotEmpty(flight.Lines);
        }, iter: 60);

    [Fact]
    public void More_pressure_flies_higher() =>
        Gen.Select(Gen.Double[12, 55], Gen.Double[0.5, 5]).Sample((bar, more) =>
        {
            double Apogee(double pressure) => (Trainer with {
                Charge = Trainer.Charge with { Pressure = pressure.BarGauge() } }).Fly(SampleVehicles.Calm).Apogee.Meters;
            Assert.True(Apogee(bar + more) > Apogee(bar));
        }, iter: 25);

    [Fact]
    public void The_whole_flight_turns_with_rail_and_wind() =>
        Gen.Double[0, 360].Sample(turn =>
        {
            FlightFigures Turned(double angle) => Trainer.Fly(SampleVehicles.Calm with
            {
                Rail = new(2.Metres()) { Elevation = 82.Degrees(), Towards = (30 + angle).Degrees() },
                Wind = WindProfile.PowerLaw(4.MetresPerSecond(), 10.Metres(), from: (100 + angle).Degrees()),
            }).Figures;
            var (here, there) = (Turned(0), Turned(turn - 200));
            Tolerance.Relative(here.Apogee.Meters, there.Apogee.Meters, 1e-6);
            Tolerance.Relative(here.Drift.Meters, there.Drift.Meters, 1e-6);
        }, iter: 25);
}

using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Published.Filling;

public class RestrictorCases
{
    private static readonly Temperature Reference = 293.15.Kelvins();
    private static readonly SonicRestrictor Sheet = new(2.LitresPerSecondBar(), 0.3);

    [Fact]
    [PublishedCase("P40", "NACA Report 1135, 1953; F. M. White, Fluid Mechanics: choked flow of air")]
    public void Choked_flow_of_air()
    {
        Tolerance.Relative(0.528281788, Gas.Air.CriticalPressureRatio, 1e-8);
        Tolerance.Relative(0.684731, Gas.Air.ChokedFlowFactor, 1e-6);
        var hole = new Orifice(10.Millimetres(), 1);
        var flow = hole.Flow(30.BarGauge().ToAbsolute(AbsolutePressure.StandardSeaLevel), Reference, AbsolutePressure.StandardSeaLevel,
            Gas.Air);
        Tolerance.Relative(0.574951942, flow.KilogramsPerSecond, 1e-6);
    }

    [Theory]
    [InlineData(1, 0.01896)]
    [InlineData(2.4, 0.01896)]
    [InlineData(6, 0.014523096)]
    [InlineData(8, 0)]
    [PublishedCase("P70", "ISO 6358-1, 2013: C = 2 dm³/(s·bar), b = 0.3, 8 bar")]
    public void Sheet_restrictor_at_8_bar(double downstreamBar, double kilogramsPerSecond)
    {
        var flow = Sheet.Flow(8.BarAbsolute(), Reference, downstreamBar.BarAbsolute(), Gas.Air).KilogramsPerSecond;
        Tolerance.Absolute(kilogramsPerSecond, flow, 1e-8);
    }

    [Fact]
    [PublishedCase("P70", "ISO 6358-1, 2013: the same restrictor in litres a minute of reference air, and at 66 bar")]
    public void Sheet_restrictor_in_reference_litres()
    {
        var choked = Sheet.Flow(8.BarAbsolute(), Reference, 1.BarAbsolute(), Gas.Air).KilogramsPerSecond;
        Tolerance.Relative(960, choked / 1.185 * 60_000, 1e-9);
        Tolerance.Relative(735.3466, Sheet.Flow(8.BarAbsolute(), Reference, 6.BarAbsolute(), Gas.Air).KilogramsPerSecond / 1.185 * 60_000,
            1e-6);
        Tolerance.Relative(0.156451, Sheet.Flow(66.01325.BarAbsolute(), Reference, 1.BarAbsolute(), Gas.Air).KilogramsPerSecond, 5e-6);
    }

    [Fact]
    [PublishedCase("P71", "Equal throat area: ISO 6358-1 C, IEC 60534-1 Kv and Cv")]
    public void Conversions_by_equal_area()
    {
        Tolerance.Relative(0.199194, FlowCapacity.ConductanceOf(1.SquareMillimetres()).LitresPerSecondBar, 5e-6);
        Tolerance.Relative(5.0202, FlowCapacity.AreaOf(1.LitresPerSecondBar()).SquareMillimeters, 2e-5);
        Tolerance.Relative(19.64186, FlowCapacity.AreaOfKv(VolumeFlow.FromCubicMetersPerHour(1)).SquareMillimeters, 1e-6);
        Tolerance.Relative(0.864978, FlowCapacity.KvOfCv(VolumeFlow.FromUsGallonsPerMinute(1)).CubicMetersPerHour, 1e-6);
        Tolerance.Relative(3.9125, FlowCapacity.ConductanceOfKv(VolumeFlow.FromCubicMetersPerHour(1)).LitresPerSecondBar, 2e-5);
        Tolerance.Relative(3.3843,
            FlowCapacity.ConductanceOfKv(FlowCapacity.KvOfCv(VolumeFlow.FromUsGallonsPerMinute(1))).LitresPerSecondBar, 2e-5);
    }
}

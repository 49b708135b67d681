using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Published.Filling;

public class HoseCases
{
    private static readonly Temperature Room = 293.15.Kelvins();

    [Theory]
    [InlineData(0.1, 66.92156)]
    [InlineData(0.2, 14.53327)]
    [InlineData(0.25, 8.48341)]
    [InlineData(0.3, 5.29925)]
    [InlineData(0.5, 1.06906)]
    [InlineData(0.8, 0.07229)]
    [PublishedCase("P75", "Fanno tables, γ = 1.4 (A. H. Shapiro 1953; NACA Report 1135, 1953)")]
    public void Friction_length_to_choking(double mach, double length)
    {
        Tolerance.Absolute(length, FannoFlow.FrictionLength(mach), 6e-6);
        Tolerance.Relative(mach, FannoFlow.InletMach(length), 1e-4);
    }

    // Fanning 0.004 is Darcy 0.016; 20 mm; M 0.1 to 0.5.
    [Fact]
    [PublishedCase("P75", "P. Murugaperumal, Gas Dynamics and Jet Propulsion, example 3.2: 82.316 m")]
    public void Length_of_a_worked_example() =>
        Tolerance.Relative(82.3156, (FannoFlow.FrictionLength(0.1) - FannoFlow.FrictionLength(0.5)) * 0.020 / 0.016, 1e-5);

    // Its example 3.1 prints 42.685 m with 8.537 from a coarse table: 5 m a unit of friction length. With the exact function, M 0.25 has
    // 42.41704 m.
    [Fact]
    [PublishedCase("P75", "P. Murugaperumal, Gas Dynamics and Jet Propulsion, example 3.1, with 8.48341 in place of the printed "
        + "8.537: 42.41704 m")]
    public void Length_of_a_worked_example_that_read_a_coarse_table()
    {
        Tolerance.Relative(42.41704, 42.685 / 8.537 * FannoFlow.FrictionLength(0.25), 1e-6);
        Tolerance.Relative(42.685, 42.685 / 8.537 * FannoFlow.FrictionLength(0.25), 0.01);
    }

    [Theory]
    [InlineData(4, 5, 0.157680, 0.0477764, 8.5089)]
    [InlineData(6, 5, 0.188555, 0.1277284, 10.1104)]
    [InlineData(6, 10, 0.138411, 0.0946826, 7.4946)]
    [InlineData(8, 10, double.NaN, 0.1911055, double.NaN)]
    [PublishedCase("P76", "Choked hose from a reservoir at 60 bar, isentropic inlet, f = 0.02 (Shapiro 1953)")]
    public void Choked_hose(double millimetres, double metres, double mach, double kilogramsPerSecond, double exitBar)
    {
        var hose = new Hose(millimetres.Millimetres(), metres.Metres());
        Tolerance.Relative(kilogramsPerSecond, hose.Flow(60.BarAbsolute(), Room, 1.BarAbsolute(), Gas.Air).KilogramsPerSecond, 2e-6);
        if (millimetres == 4) Tolerance.Relative(0.26845, hose.Conductance.LitresPerSecondBar / new Orifice(4.Millimetres(),
            1).Conductance.LitresPerSecondBar, 2e-5);
        if (double.IsNaN(mach)) return;
        Tolerance.Relative(mach, FannoFlow.InletMach(hose.FrictionLength), 5e-6);
        Tolerance.Relative(exitBar, 60 * hose.CriticalRatio, 1e-5);
    }

    [Theory]
    [InlineData(55, 0.0398033, 0.0403767)]
    [InlineData(50, 0.0549256, 0.0556879)]
    [InlineData(30, 0.0850113, 0.0859530)]
    [PublishedCase("P77", "Unchoked hose 6 mm × 10 m from 60 bar: Fanno from the reservoir, and isothermal")]
    public void Unchoked_hose(double bar, double fanno, double isothermal)
    {
        var hose = new Hose(6.Millimetres(), 10.Metres());
        Tolerance.Relative(fanno, hose.Flow(60.BarAbsolute(), Room, bar.BarAbsolute(), Gas.Air).KilogramsPerSecond, 2e-6);
        Tolerance.Relative(isothermal, hose.IsothermalFlow(60.BarAbsolute(), Room, bar.BarAbsolute(), Gas.Air).KilogramsPerSecond, 2e-6);
    }

    [Fact]
    [PublishedCase("P78", "Darcy-Weisbach: 0.02 kg/s in the same hose at 60 bar")]
    public void Small_flow() =>
        Tolerance.Relative(1.169565, new Hose(6.Millimetres(), 10.Metres()).DarcyDrop(MassFlow.FromKilogramsPerSecond(0.02),
            60.BarAbsolute(), Room, Gas.Air).Bars, 1e-6);

    [Theory]
    [InlineData(1e5, 1e-4, 0.01850)]
    [InlineData(1e6, 1e-3, 0.01993)]
    [PublishedCase("P76", "C. F. Colebrook's formula solved by iteration; S. E. Haaland 1983 claims 2 %")]
    public void Friction_factor(double reynolds, double roughness, double darcy) =>
        Tolerance.Relative(darcy, Hose.FrictionFactor(reynolds, roughness), 0.02);

    [Theory]
    [InlineData(1e5, 0.987299, 0.987710, 0.983720)]
    [InlineData(1e6, 0.993180, 0.995088, 0.988842)]
    [PublishedCase("P72", "ISO 9300:2005 (unverified)")]
    public void Critical_nozzles(double reynolds, double normal, double precise, double cylindrical)
    {
        Tolerance.Absolute(normal, MeteringCoefficients.ToroidalNozzle(reynolds), 6e-7);
        Tolerance.Absolute(precise, MeteringCoefficients.PreciseToroidalNozzle(reynolds), 6e-7);
        Tolerance.Absolute(cylindrical, MeteringCoefficients.CylindricalNozzle(reynolds), 6e-7);
    }

    [Fact]
    [PublishedCase("P73", "ISO 5167-2 and -3:2003 (unverified; the table prints 0.6069)")]
    public void Orifice_plate_and_nozzles()
    {
        Tolerance.Absolute(0.60687, MeteringCoefficients.OrificePlate(0.5, 1e5), 6e-6);
        Tolerance.Absolute(0.59738, MeteringCoefficients.OrificePlate(0.2, 1e6), 6e-6);
        Tolerance.Absolute(0.98824, MeteringCoefficients.IsaNozzle(0.3, 1e6), 6e-6);
        Tolerance.Absolute(0.99292, MeteringCoefficients.LongRadiusNozzle(0.3, 1e6), 6e-6);
    }
}

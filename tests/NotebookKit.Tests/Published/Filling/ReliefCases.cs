using NotebookKit.Filling.Reliefs;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Published.Filling;

public class ReliefCases
{
    [Theory]
    [InlineData(1.00, 0.607)]
    [InlineData(1.10, 0.628)]
    [InlineData(1.20, 0.649)]
    [InlineData(1.30, 0.667)]
    [InlineData(1.40, 0.685)]
    [InlineData(1.50, 0.701)]
    [InlineData(1.60, 0.716)]
    [InlineData(1.66, 0.725)]
    [InlineData(1.70, 0.731)]
    [InlineData(2.00, 0.770)]
    [InlineData(2.20, 0.793)]
    [PublishedCase("L19", "United Nations, Model Regulations, 6.7.2.12.2.1, table of the flow function")]
    public void Flow_function(double ratio, double printed) => Tolerance.Absolute(printed, ReliefValve.FlowFunction(ratio), 5e-4);

    [Theory]
    [InlineData(1.0, 2.3946)]
    [InlineData(1.2, 2.5604)]
    [InlineData(1.3, 2.6344)]
    [InlineData(1.4, 2.7033)]
    [InlineData(1.6, 2.8285)]
    [InlineData(1.66, 2.8632)]
    [PublishedCase("L20", "ISO 4126-1, table of C (from memory), computed with 3.948")]
    public void Coefficient_of_the_standard(double ratio, double coefficient) =>
        Tolerance.Absolute(coefficient, ReliefValve.IsoCoefficient(ratio), 0.005);

    [Fact]
    [PublishedCase("L21", "ISO 4126-1 with 8 mm, K_dr 0.7, 10 bar gauge and 10 %, air at 293.15 K, computed")]
    public void Certified_flow()
    {
        ReliefValve valve = new(10.BarGauge(), Area.FromSquareMillimeters(50.2654825), 0.7);
        Tolerance.Relative(12.01325, valve.Relieving(AbsolutePressure.StandardSeaLevel).Bar, 1e-9);
        Tolerance.Relative(359.1536, valve.Capacity(Gas.Air, 293.15.Kelvins(), AbsolutePressure.StandardSeaLevel).KilogramsPerHour, 1e-4);
    }

    // 24 270 kg/h of a hydrocarbon of 51 g/mol, k 1.11, Z 0.90, at 348 K and 670 kPa, K_d 0.975.
    [Fact]
    [PublishedCase("L18", "API 520-1, worked example 1, critical flow: 3699 mm²")]
    public void Area_of_the_worked_example()
    {
        Tolerance.Relative(3699.046, ReliefValve.AreaFor(MassFlow.FromKilogramsPerHour(24_270), 6.7.BarAbsolute(), 348.Kelvins(),
            MolarMass.FromGramsPerMole(51), 1.11, 0.9, 0.975).SquareMillimeters, 1e-5);
        Tolerance.Relative(0.0248900866, ReliefValve.IsoCoefficient(1.11) / 100, 1e-5);
    }
}

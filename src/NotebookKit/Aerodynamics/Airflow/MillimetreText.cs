using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Aerodynamics.Airflow;

/// <summary>A length in metres as workings show it.</summary>
internal static class MillimetreText
{
    public static string Of(double metres) => Length.FromMeters(metres).Show(LengthUnit.Millimeter, 5);
}

using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Materials;

internal static partial class MaterialsFindings
{
    // Materials/Fluids/HumidAir
    internal static Finding PressureOutOfRange(AbsolutePressure pressure) =>
        Finding.Error(
            $"The pressure is {pressure}; it must be above 0.2 bar absolute, well above the vapour pressure. Check whether "
            + "a gauge pressure was meant.");
}

using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Propulsion;

/// <summary>What must hold before anything is fired.</summary>
internal static class FiringChecks
{
    public static IReadOnlyList<Finding> All(Charge charge, Nozzle nozzle, FlowModel flow, AbsolutePressure ambient)
    {
        List<Finding> all = [.. charge.Validate(), .. nozzle.Validate(), .. flow.Validate()];
        if (nozzle.Throat >= charge.Chamber.Bore)
        {
            all.Add(Finding.Error(
                $"nozzle throat is {nozzle.Throat.Show(4)}; it must be below the vessel's bore of {charge.Chamber.Bore.Show(4)}. A nozzle narrows."));
        }

        var air = new ValidRange<AbsolutePressure>(0.3.BarAbsolute(), 1.1.BarAbsolute()).Find(
            ambient, "air pressure around the vessel", "It is that of open air, from sea level to 9 km; vacuum is another model.");
        if (air is not null) all.Add(air);
        return all;
    }
}

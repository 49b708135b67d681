using NotebookKit.Quantities.Numbers;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Design;
using UnitsNet;

namespace NotebookKit.Vessels.Ends;

/// <summary>What the bond of a plug carries. Source: balance of forces; shear lag as <see cref="ShearLag"/>.</summary>
public static class PlugVerbs
{
    /// <summary>Mean shear in the bond under a pressure. Source: balance of forces, p·d/(4l).</summary>
    /// <param name="plug">The plug.</param>
    /// <param name="pressure">Gauge pressure; any.</param>
    /// <param name="bore">Inner diameter of the vessel; above 0.</param>
    public static Pressure MeanShear(this BondedPlug plug, GaugePressure pressure, Length bore)
    {
        ArgumentNullException.ThrowIfNull(plug);
        return Pressure.FromPascals(Finite.Check(
            pressure.Pascals * bore.Meters / (4 * plug.Overlap.Meters), "mean shear of the bond", "Pa"));
    }
}

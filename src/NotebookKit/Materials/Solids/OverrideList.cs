using UnitsNet;

namespace NotebookKit.Materials.Solids;

/// <summary>Lists which properties of a material a user's value replaced.</summary>
internal static class OverrideList
{
    public static IReadOnlyList<string> Of(string material, params ReadOnlySpan<(object? Property, string Name)> properties)
    {
        var lines = new List<string>();
        foreach (var (property, name) in properties)
        {
            switch (property)
            {
                case Property<double> { IsOverride: true } p: lines.Add(Line(name, p, p.Origin)); break;
                case Property<Pressure> { IsOverride: true } p: lines.Add(Line(name, p, p.Origin)); break;
                case Property<Density> { IsOverride: true } p: lines.Add(Line(name, p, p.Origin)); break;
                case Property<Ratio> { IsOverride: true } p: lines.Add(Line(name, p, p.Origin)); break;
                case Property<Temperature> { IsOverride: true } p: lines.Add(Line(name, p, p.Origin)); break;
                case Property<AreaDensity> { IsOverride: true } p: lines.Add(Line(name, p, p.Origin)); break;
                case Property<LinearDensity> { IsOverride: true } p: lines.Add(Line(name, p, p.Origin)); break;
                case Property<Length> { IsOverride: true } p: lines.Add(Line(name, p, p.Origin)); break;
                case Property<Angle> { IsOverride: true } p: lines.Add(Line(name, p, p.Origin)); break;
                case Property<CoefficientOfThermalExpansion> { IsOverride: true } p: lines.Add(Line(name, p, p.Origin)); break;
            }
        }

        return lines;

        string Line(string name, object value, string origin) => $"{material}: {name} {value} from {origin}";
    }
}

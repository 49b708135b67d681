using UnitsNet;

namespace NotebookKit.Quantities.Numbers;

/// <summary>Refuses numbers that are not numbers before they become quantities.</summary>
internal static class Finite
{
    /// <summary>Returns the value, or throws where it is NaN or infinite.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is NaN or infinite.</exception>
    public static double Check(double value, string name, string unit) =>
        double.IsFinite(value)
            ? value
            : throw new ArgumentOutOfRangeException(nameof(value),
                $"{name} is {value} {unit}; it must be a finite number. Check the value it was computed from.");

    /// <summary>An angle in radians, or a refusal where its unit can't say one: no angle has a sine of 2.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value means no angle.</exception>
    public static double Radians(Angle angle, string name)
    {
        try
        {
            return angle.Radians;
        }
        catch (ArgumentException)
        {
            throw new ArgumentOutOfRangeException(nameof(angle),
                $"{name} is {angle.Value:R} {angle.Unit}, which is no angle. Give it in degrees.");
        }
    }
}

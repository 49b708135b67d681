using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Ends.Modes;

/// <summary>
/// Least thickness of a flat metal head by the pressure-vessel code's form, and the area its opening has to be given back. For
/// comparison.
/// </summary>
/// <remarks>Source: ASME Boiler and Pressure Vessel Code, Section VIII Division 1, UG-34 and UG-39 (unverified).</remarks>
public static class FlatHeadRule
{
    /// <summary>Least thickness of a round flat head without an opening, d·√(C·P/(S·E)). Source: UG-34 (unverified).</summary>
    /// <param name="diameter">Diameter that the head spans, by the code's figure for its fastening; 1 to 2000 mm.</param>
    /// <param name="fastening">Factor of its fastening, C [-]; 0.1 to 0.75: 0.17 to 0.33 in the code's figures.</param>
    /// <param name="pressure">Design pressure; 0 to 2000 bar.</param>
    /// <param name="allowable">Allowable stress; 0.1 to 5000 MPa.</param>
    /// <param name="jointEfficiency">Joint efficiency [-]; 0.1 to 1.</param>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public static Length Thickness(Length diameter, double fastening, GaugePressure pressure, Pressure allowable,
        double jointEfficiency = 1)
    {
        var c = new ValidRange<double>(0.1, 0.75)
            .Check(fastening, "factor of the head's fastening", "Take it from the code's figure for the fastening: 0.17 to 0.33.");
        var e = new ValidRange<double>(0.1, 1).Check(jointEfficiency, "joint efficiency", "1 is a seamless head.");
        var d = Span(diameter);
        return Length.FromMeters(
            d * Math.Sqrt(c * ModeInput.Pressure(pressure) / (ModeInput.Stress(allowable, "allowable stress of the head") * e)));
    }

    /// <summary>Area that reinforces one opening in a flat head, d·t/2. Source: UG-39(b)(1) (unverified).</summary>
    /// <param name="opening">Diameter of the opening, d; above 0, at most half the head's diameter.</param>
    /// <param name="needed">Thickness that the head needs without the opening, t; 0.01 to 2000 mm.</param>
    /// <param name="diameter">Diameter that the head spans; 1 to 2000 mm.</param>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public static Area Replacement(Length opening, Length needed, Length diameter)
    {
        Span(diameter);
        var d = new ValidRange<Length>(0.01.Millimetres(), diameter / 2).Check(
            opening, "opening in the flat head",
                "Above half the head's diameter the rule doesn't hold; compute the head as a plate with a hole.").Meters;
        return Area.FromSquareMeters(
            d * ModeInput.Size(needed, "thickness of the head", "Give what the head needs without the opening.") / 2);
    }

    private static double Span(Length diameter) =>
        new ValidRange<Length>(1.Millimetres(), 2000.Millimetres())
            .Check(diameter, "diameter of the flat head", "Measure to where the rim is held.").Meters;
}

using System.Globalization;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Clearance.Service;

/// <summary>Values as a service record spells them: one unit for each quantity, twelve digits.</summary>
internal static class ServiceText
{
    public static string Of(GaugePressure pressure) => Number(pressure.Bar) + " bar gauge";

    public static string Of(Temperature temperature) => Number(temperature.DegreesCelsius) + " °C";

    public static string Of(Duration duration) => Number(duration.Seconds) + " s";

    public static string Of(Length length) => Number(length.Meters) + " m";

    public static string Of(Mass mass) => Number(mass.Grams) + " g";

    public static string Of(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    public static string Number(double value) => value.ToString("G12", CultureInfo.InvariantCulture);

    /// <summary>What is wrong with a text, if anything.</summary>
    public static Finding? Find(string? text, string name, int longest, bool needed = true)
    {
        if (text is null || (needed && string.IsNullOrWhiteSpace(text))) return ClearanceFindings.TextIsNotGiven(name);
        if (text.Length > longest) return ClearanceFindings.TextTooLong(name, text.Length, longest);
        for (var i = 0; i < text.Length; i++)
        {
            if (!char.IsSurrogate(text[i])) continue;
            if (i + 1 == text.Length || !char.IsSurrogatePair(text[i], text[i + 1]))
                return ClearanceFindings.TextHoldsHalfCharacter(name, i + 1);
            i++;
        }

        return null;
    }
}

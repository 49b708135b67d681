using NotebookKit.Provenance;

namespace NotebookKit.Materials.Solids;

/// <summary>Makes material properties in the words people use of them.</summary>
public static class Property
{
    /// <summary>A typical value of the class of material; not a design value.</summary>
    /// <param name="value">Mean value.</param>
    /// <param name="spread">Coefficient of variation [-]; 0 to 0.6.</param>
    /// <param name="what">The class and where its value is printed.</param>
    public static Property<T> Typical<T>(T value, double spread, string what) where T : struct, IComparable<T> =>
        new(value, spread, new Source("", what, null, "", SourceKind.Typical));

    /// <summary>A value recalled from the literature, text not in hand.</summary>
    /// <param name="value">Mean value.</param>
    /// <param name="spread">Coefficient of variation [-]; 0 to 0.6.</param>
    /// <param name="what">What was recalled.</param>
    public static Property<T> Unverified<T>(T value, double spread, string what) where T : struct, IComparable<T> =>
        new(value, spread, new Source("", what, null, "", SourceKind.Unverified));

    /// <summary>A value from a maker's data sheet.</summary>
    /// <param name="value">Mean value.</param>
    /// <param name="spread">Coefficient of variation [-]; 0 to 0.6.</param>
    /// <param name="sheet">Which sheet.</param>
    public static Property<T> DataSheet<T>(T value, double spread, string sheet) where T : struct, IComparable<T> =>
        new(value, spread, new Source("", sheet, null, "", SourceKind.DataSheet));

    /// <summary>A value the user measured.</summary>
    /// <param name="value">Mean of the measurements.</param>
    /// <param name="spread">Coefficient of variation of the measurements [-]; 0 to 0.6.</param>
    /// <param name="how">How and when it was measured.</param>
    public static Property<T> Measured<T>(T value, double spread, string how) where T : struct, IComparable<T> =>
        new(value, spread, new Source("", how, null, "", SourceKind.Measured), Origin: how);
}

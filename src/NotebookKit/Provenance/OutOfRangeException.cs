namespace NotebookKit.Provenance;

/// <summary>An input is outside the range of the model that was asked.</summary>
public sealed class OutOfRangeException : ArgumentOutOfRangeException
{
    /// <summary>Creates the exception.</summary>
    /// <param name="name">What it is, in the trade's words.</param>
    /// <param name="value">The value with its unit.</param>
    /// <param name="minimum">Smallest value allowed, with unit.</param>
    /// <param name="maximum">Largest value allowed, with unit.</param>
    /// <param name="why">Why, or what to do.</param>
    public OutOfRangeException(string name, string value, string minimum, string maximum, string why)
        : base(name, Sentence(name, value, minimum, maximum, why))
    {
        Quantity = name;
        Value = value;
        Minimum = minimum;
        Maximum = maximum;
        Why = why;
    }

    /// <summary>What was out of range.</summary>
    public string Quantity { get; }

    /// <summary>Its value with unit.</summary>
    public string Value { get; }

    /// <summary>Smallest value allowed, with unit.</summary>
    public string Minimum { get; }

    /// <summary>Largest value allowed, with unit.</summary>
    public string Maximum { get; }

    /// <summary>The sentence alone, without the parameter note that the framework adds.</summary>
    public override string Message => Sentence(Quantity, Value, Minimum, Maximum, Why);

    private string Why { get; }

    internal static string Sentence(string name, string value, string minimum, string maximum, string why) =>
        $"{name} is {value}; it must be {minimum} to {maximum}. {why}".TrimEnd();
}

namespace NotebookKit.Provenance;

/// <summary>A design can't be computed; carries every finding, not only the first.</summary>
public sealed class InvalidDesignException : ArgumentException
{
    /// <summary>Creates the exception from all findings of a validation.</summary>
    /// <param name="subject">What was validated.</param>
    /// <param name="findings">All its findings.</param>
    public InvalidDesignException(string subject, IReadOnlyList<Finding> findings)
        : base($"{subject}: {Finding.Errors(findings)}") =>
        Findings = findings;

    /// <summary>Everything the validation found.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>What is wrong, without what was validated.</summary>
    public string Reasons => Finding.Errors(Findings);

    /// <summary>Throws where a validation holds an error.</summary>
    /// <param name="subject">What was validated.</param>
    /// <param name="findings">Its findings.</param>
    /// <exception cref="InvalidDesignException">At least one finding is an error.</exception>
    public static void ThrowIfAny(string subject, IReadOnlyList<Finding> findings)
    {
        if (findings.Any(f => f.Severity == FindingSeverity.Error)) throw new InvalidDesignException(subject, findings);
    }
}

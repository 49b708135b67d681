namespace NotebookKit.Numerics.Ode;

/// <summary>Error control and limits of an integration.</summary>
public sealed record OdeSettings
{
    private readonly double _relativeTolerance = 1e-6;
    private readonly double _initialStep;
    private readonly double _maximumStep = double.PositiveInfinity;
    private readonly double _minimumStep;
    private readonly int _maximumSteps = 100_000;

    /// <summary>Relative tolerance of 1e-6 and no other limit than 100 000 steps.</summary>
    public static OdeSettings Default { get; } = new();

    /// <summary>Error allowed per step, relative to the size of each unknown [-]; 1e-13 to 0.1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is outside.</exception>
    public double RelativeTolerance
    {
        get => _relativeTolerance;
        init => _relativeTolerance = value is >= 1e-13 and <= 0.1
            ? value
            : throw new ArgumentOutOfRangeException(nameof(value),
                $"relative tolerance is {value}; it must be 1e-13 to 0.1: below that, rounding rules.");
    }

    /// <summary>First step to try [unit of t]; above 0, or 0 to let the method choose.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The step is negative or not finite.</exception>
    public double InitialStep
    {
        get => _initialStep;
        init => _initialStep = value >= 0 && double.IsFinite(value)
            ? value
            : throw new ArgumentOutOfRangeException(nameof(value), $"initial step is {value}; it must be finite, and 0 (chosen) or above.");
    }

    /// <summary>Longest step [unit of t]; above 0, infinity allowed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The step is not above 0.</exception>
    public double MaximumStep
    {
        get => _maximumStep;
        init => _maximumStep = value > 0
            ? value
            : throw new ArgumentOutOfRangeException(nameof(value), $"maximum step is {value}; it must be above 0.");
    }

    /// <summary>Shortest step [unit of t]; 0 or above. A few rounding units of t are always the limit.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The step is negative or not finite.</exception>
    public double MinimumStep
    {
        get => _minimumStep;
        init => _minimumStep = value >= 0 && double.IsFinite(value)
            ? value
            : throw new ArgumentOutOfRangeException(nameof(value), $"minimum step is {value}; it must be finite, and 0 or above.");
    }

    /// <summary>Most steps, accepted and rejected together; 1 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is not above 0.</exception>
    public int MaximumSteps
    {
        get => _maximumSteps;
        init => _maximumSteps = value >= 1
            ? value
            : throw new ArgumentOutOfRangeException(nameof(value), $"maximum number of steps is {value}; it must be 1 or more.");
    }
}

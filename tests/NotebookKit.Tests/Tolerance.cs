namespace NotebookKit.Tests;

/// <summary>Comparisons with a tolerance that the caller has to argue.</summary>
public static class Tolerance
{
    /// <summary>Asserts that a value agrees with a reference within a relative tolerance.</summary>
    public static void Relative(double expected, double actual, double tolerance)
    {
        Assert.True(double.IsFinite(actual), $"expected {expected:G9}, got {actual}");
        var error = Math.Abs(actual - expected) / Math.Abs(expected);
        Assert.True(error <= tolerance, $"expected {expected:G10}, got {actual:G10}: relative error {error:E2} is over {tolerance:E2}");
    }

    /// <summary>Asserts that a value agrees with a reference within an absolute tolerance.</summary>
    public static void Absolute(double expected, double actual, double tolerance)
    {
        Assert.True(double.IsFinite(actual), $"expected {expected:G9}, got {actual}");
        var error = Math.Abs(actual - expected);
        Assert.True(error <= tolerance, $"expected {expected:G10}, got {actual:G10}: error {error:E2} is over {tolerance:E2}");
    }
}

namespace NotebookKit.Numerics.Functions;

/// <summary>Exponential less one and logarithm of one plus, without losing small numbers. Source: W. Kahan's quotient forms.</summary>
internal static class NearZero
{
    public static double ExpLessOne(double x)
    {
        var u = Math.Exp(x);
        return u == 1 ? x : u - 1 == -1 ? -1 : (u - 1) * x / Math.Log(u);
    }

    public static double LogOnePlus(double x)
    {
        var u = 1 + x;
        return u == 1 ? x : Math.Log(u) * x / (u - 1);
    }

    /// <summary>Chance that a thing happens at least once in so many independent tries.</summary>
    public static double AtLeastOnce(double chance, double tries) => -ExpLessOne(tries * LogOnePlus(-chance));
}

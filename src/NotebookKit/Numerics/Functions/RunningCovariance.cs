namespace NotebookKit.Numerics.Functions;

/// <summary>Mean and covariance of points in a plane that pass by one after the other, and of two such sets together.</summary>
/// <remarks>
/// Source: B. P. Welford, Technometrics 4 (1962) 419 (unverified); two sets together: T. F. Chan, G. H. Golub, R. J. LeVeque, Am. Stat. 37
/// (1983) 242 (unverified).
/// </remarks>
internal struct RunningCovariance
{
    public long Count { get; private set; }

    public double MeanX { get; private set; }

    public double MeanY { get; private set; }

    /// <summary>Sum of the squares of what x lies from its mean.</summary>
    public double SumXX { get; private set; }

    /// <summary>Sum of the products of what x and y lie from their means.</summary>
    public double SumXY { get; private set; }

    /// <summary>Sum of the squares of what y lies from its mean.</summary>
    public double SumYY { get; private set; }

    public void Add(double x, double y)
    {
        Count++;
        var (dx, dy) = (x - MeanX, y - MeanY);
        MeanX += dx / Count;
        MeanY += dy / Count;
        SumXX += dx * (x - MeanX);
        SumXY += dx * (y - MeanY);
        SumYY += dy * (y - MeanY);
    }

    /// <summary>Takes another set in.</summary>
    public void Add(in RunningCovariance other)
    {
        if (other.Count == 0) return;
        var count = Count + other.Count;
        var (dx, dy) = (other.MeanX - MeanX, other.MeanY - MeanY);
        var weight = (double)Count / count * other.Count;
        SumXX += other.SumXX + (dx * dx * weight);
        SumXY += other.SumXY + (dx * dy * weight);
        SumYY += other.SumYY + (dy * dy * weight);
        MeanX += dx * other.Count / count;
        MeanY += dy * other.Count / count;
        Count = count;
    }
}

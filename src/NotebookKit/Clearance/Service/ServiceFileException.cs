namespace NotebookKit.Clearance.Service;

/// <summary>A service record can't be opened, or can't be written to.</summary>
public sealed class ServiceFileException : IOException
{
    /// <summary>Creates the exception.</summary>
    /// <param name="reason">What, why and what to do, one sentence.</param>
    /// <param name="inner">What the system said; none where it said nothing.</param>
    public ServiceFileException(string reason, Exception? inner = null) : base(reason, inner)
    {
    }
}

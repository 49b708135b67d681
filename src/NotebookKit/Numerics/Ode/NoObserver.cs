namespace NotebookKit.Numerics.Ode;

/// <summary>Watches nothing.</summary>
internal readonly struct NoObserver : IOdeObserver
{
    /// <inheritdoc/>
    public bool IsActive => false;

    /// <inheritdoc/>
    public void Accepted(in DenseStep step)
    {
    }
}

namespace NotebookKit.Numerics.Ode;

/// <summary>Watches nothing.</summary>
public readonly struct NoObserver : IOdeObserver
{
    /// <inheritdoc/>
    public bool IsActive => false;

    /// <inheritdoc/>
    public void Accepted(in DenseStep step)
    {
    }
}

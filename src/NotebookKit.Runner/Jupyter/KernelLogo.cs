namespace NotebookKit.Runner.Jupyter;

/// <summary>The picture beside the kernel's name: a vessel part-filled with water, our own drawing.</summary>
internal static class KernelLogo
{
    /// <summary>The same in points, for front-ends that take no drawing: names of the files as front-ends look for them, which are those of
    /// the resources.</summary>
    public static IReadOnlyList<string> Pictures { get; } = ["logo-32x32.png", "logo-64x64.png"];

    /// <summary>The drawing.</summary>
    public const string Svg =
        """
        <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 64 64">
          <path d="M22 22 C22 10 28 5 32 3 C36 5 42 10 42 22 V50 H36 V58 H28 V50 H22 Z" fill="#ffffff" stroke="#0b5c7a" stroke-width="3" stroke-linejoin="round"/>
          <path d="M23.5 34 H40.5 V48.5 H34.5 V56.5 H29.5 V48.5 H23.5 Z" fill="#3d9fc4"/>
          <path d="M23.5 26 H40.5" stroke="#0b5c7a" stroke-width="1.5" stroke-dasharray="3 2"/>
        </svg>

        """;

    /// <summary>Writes a picture.</summary>
    /// <param name="picture">One of <see cref="Pictures"/>.</param>
    /// <param name="target">Where to.</param>
    public static void Write(string picture, Stream target)
    {
        using var resource = typeof(KernelLogo).Assembly.GetManifestResourceStream(picture)!;
        resource.CopyTo(target);
    }
}

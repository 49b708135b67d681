namespace NotebookKit.Charts.Pictures;

/// <summary>Sizes of a still picture [px]: a desk and a phone need other widths, but letters of the same height.</summary>
/// <param name="Width">Width of the picture.</param>
/// <param name="PlotHeight">Height of the drawing area.</param>
/// <param name="Text">Height of the letters.</param>
/// <param name="TitleText">Height of the letters of the title.</param>
internal sealed record PictureForm(double Width, double PlotHeight, double Text, double TitleText)
{
    /// <summary>For a desk and for paper.</summary>
    public static PictureForm Wide { get; } = new(720, 380, 13, 17);

    /// <summary>For a phone, where it is shown at its own size.</summary>
    public static PictureForm Narrow { get; } = new(356, 270, 12, 15);

    /// <summary>The smallest drawing area that a live figure is given at its usual size: what is free here is free in every larger
    /// one.</summary>
    public static PictureForm Live { get; } = new(600, 300, 12, 15) { IsOneHeight = true };

    /// <summary>Whether the drawing area is as high for many lying bars as for few.</summary>
    public bool IsOneHeight { get; private init; }

    /// <summary>From one line of text to the next.</summary>
    public double Step => Math.Ceiling(1.25 * Text);
}

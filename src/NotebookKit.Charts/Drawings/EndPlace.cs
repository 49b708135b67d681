namespace NotebookKit.Charts.Drawings;

/// <summary>Where a place of the section stands on paper [mm].</summary>
internal readonly record struct EndPlace(double Left, double Axis, double Scale)
{
    public double X(double along) => Left + (along * Scale);

    public double Y(double radius) => Axis - (radius * Scale);

    public double Mirror(double radius) => Axis + (radius * Scale);
}

using NotebookKit.Charts.Marks;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Engineering;

/// <summary>Flutter margin over fin thickness and span, with the line below which a fin is refused.</summary>
public static class FlutterChart
{
    /// <summary>Draws the map.</summary>
    /// <param name="thickness">Fin thicknesses, rising.</param>
    /// <param name="span">Fin spans, rising.</param>
    /// <param name="margin">Flutter speed over highest flight speed at each pair, row by row; unit "-".</param>
    /// <param name="required">Minimum margin accepted [-]; above 1.</param>
    /// <exception cref="InvalidDesignException">Counts that don't match, or a required margin that isn't above one.</exception>
    public static EngineeringChart Draw(Series thickness, Series span, Series margin, double required)
    {
        if (required is not > 1)
            throw new InvalidDesignException("Flutter map", [Finding.Error($"Required flutter margin is {Digits.Round(required)}; it "
                + "must be above 1, since at 1 the fin flutters at the highest flight speed.")]);
        var field = new Field(thickness, span, margin);
        var chart = new EngineeringChart("Flutter margin", Axis.For(thickness), Axis.For(span)) { Marks = [field] }.Checked();
        var (x, y) = LevelLine.Of(field, required);
        return x.Count == 0
            ? chart with { Remark = margin.Values.All(v => !(v < required))
                ? $"every fin of this map has a margin of {Digits.Round(required, 2)} or more"
                : $"no fin of this map reaches the required margin {Digits.Round(required, 2)}" }
            : chart.With(new Curve(x, y) { Name = $"required margin {Digits.Round(required, 2)}: thinner or longer fins are rejected",
                Slot = 1, Stroke = Stroke.Solid });
    }
}

using NotebookKit.Charts.Drawings;
using NotebookKit.Provenance;
using UnitsNet;

namespace NotebookKit.Charts.Results;

/// <summary>Scale drawings of a vehicle: <c>body.Draw()</c>, <c>airframe.Draw(...)</c>.</summary>
public static class VehicleDrawings
{
    private const int PointsPerPart = 32;

    /// <summary>The outside with its fins and the centre of pressure at low speed.</summary>
    /// <param name="body">The body.</param>
    /// <exception cref="InvalidDesignException">The body can't be drawn; carries all findings.</exception>
    public static Drawing Draw(this FinnedBody body)
    {
        ArgumentNullException.ThrowIfNull(body);
        InvalidDesignException.ThrowIfAny(body.Name, body.Validate());
        return VehicleDrawing.Draw(ModelOf(body));
    }

    /// <summary>The whole vehicle: outside, vessel, water, centres of gravity filled and empty, centre of pressure at low speed.</summary>
    /// <param name="airframe">The airframe.</param>
    /// <param name="waterFraction">Share of the vessel filled with water at launch; 0 to 100 %.</param>
    /// <param name="gas">Mass of the compressed gas at launch; 0 to 10 kg.</param>
    /// <exception cref="InvalidDesignException">The airframe can't be computed; carries all findings.</exception>
    public static Drawing Draw(this Airframe airframe, Ratio waterFraction, Mass gas)
    {
        ArgumentNullException.ThrowIfNull(airframe);
        var stability = airframe.Stability(waterFraction, gas);
        var (tank, fraction) = (airframe.Chamber, waterFraction.DecimalFractions);
        var (aft, fore) = (tank.NozzleEndAt, tank.NozzleEndAt - tank.InsideLength);
        // The nozzle end may stick out of the body; what is drawn ends with it.
        aft = aft > airframe.Body.Length ? airframe.Body.Length : aft;
        return VehicleDrawing.Draw(ModelOf(airframe.Body) with
        {
            Vessel = [new OutlinePoint(fore, Length.Zero), new OutlinePoint(fore, tank.Bore / 2), new OutlinePoint(aft, tank.Bore / 2),
                new OutlinePoint(aft, Length.Zero)],
            WaterLevel = fraction > 0 ? tank.NozzleEndAt - (tank.InsideLength * fraction) : null,
            CentresOfGravity =
            [
                new StationMark("filled", Length.FromMillimeters(stability.CentreOfGravity[0])),
                new StationMark("empty", Length.FromMillimeters(stability.CentreOfGravity.Values[^1])),
            ],
        });
    }

    /// <summary>The whole vehicle as it stands on the pad.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <exception cref="InvalidDesignException">The vehicle can't be computed; carries all findings.</exception>
    public static Drawing Draw(this Vehicle vehicle)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        return vehicle.Airframe.Draw(vehicle.Charge.WaterFraction, vehicle.Charge.GasMass(Quantities.AbsolutePressure.StandardSeaLevel));
    }

    private static DrawingModel ModelOf(FinnedBody body)
    {
        List<OutlinePoint> outline = [];
        List<StationMark> labels = [];
        var fore = Length.Zero;
        foreach (var part in body.Parts)
        {
            var steps = part is Nose ? PointsPerPart : 1;
            // Both ends of a part are drawn: where two parts differ in diameter the step shows.
            for (var i = 0; i <= steps; i++)
            {
                // Points crowd towards the tip, where a blunt nose curves most.
                var along = part.Length * Math.Pow((double)i / steps, 1.6);
                outline.Add(new OutlinePoint(fore + along, part.DiameterAt(along) / 2));
            }
            labels.Add(new StationMark(part.Name.ToLowerInvariant(), fore + (part.Length * 0.5)));
            fore += part.Length;
        }
        var fins = body.Fins.Select(f =>
        {
            var surface = RadiusAt(outline, f.LeadingEdgeAt + (f.Planform.RootLength / 2));
            return new FinOutline(f.Count, [.. f.Planform.Corners.Select(c => new OutlinePoint(f.LeadingEdgeAt + c.Aft, surface + c.Out))],
                f.Thickness);
        });
        return new DrawingModel(body.Name, outline) { Fins = [.. fins], CentreOfPressure = body.NormalForce(0).CentreOfPressure,
            Labels = labels };
    }

    private static Length RadiusAt(List<OutlinePoint> outline, Length station)
        => Length.FromMillimeters(SideView.RadiusAt(outline, station.Millimeters));
}

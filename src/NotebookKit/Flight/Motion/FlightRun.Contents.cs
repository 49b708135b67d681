using NotebookKit.Flight.Drive;
using NotebookKit.Quantities;

namespace NotebookKit.Flight.Motion;

internal ref partial struct FlightRun
{
    /// <summary>Notes what is aboard as the canopy comes out, the stages separate or the ground is reached; always false.</summary>
    private bool Contents<TDrive>(TDrive drive)
        where TDrive : struct, IDrive
    {
        Aboard(drive, _numbers.AirAt(_time, -_state[2]).PressurePa, FreeOwn);
        return false;
    }

    private void Aboard<TDrive>(TDrive drive, double ambientPa, int own)
        where TDrive : struct, IDrive
    {
        Span<double> rates = stackalloc double[DriveState.MostUnknowns];
        var state = drive.Run(ambientPa, 0, 0, _numbers.DryKg, _state[own..], rates);
        (Marks.WaterLeftKg, Marks.GasLeftKg, Marks.LeftGaugePa) = (state.WaterKg, state.GasKg, state.GasPa - ambientPa);
    }

    /// <summary>Time that the water still aboard takes to leave [s].</summary>
    private readonly double EmptyingS() => ChargedLanding.EmptyingS(_numbers.Firing, Marks.WaterLeftKg,
        _numbers.AirAt(_time, 0).PressurePa);

    private readonly string StoppedOnRail() =>
        FormattableString.Invariant($"the vehicle stops on the rail after {_state[0]:0.##} m, {_time:0.##} s after release")
        + (Marks.LeftGaugePa >= ChargedLanding.GonePa ? $" and with {ChargedLanding.Aboard(Marks.WaterLeftKg, Marks.LeftGaugePa)} "
            + "still aboard" : "")
        + ": its thrust doesn't carry it to the end. "
        + (Marks.IsCharged
            ? $"Vent a vehicle that stays under pressure from afar. {ChargedRest.Remedy}"
            : "Use more pressure or a shorter rail.");

    private readonly string DownCharged()
    {
        var risen = Marks.IsPastApogee
            ? $"apogee is at {Marks.ApogeeM.Metres().Show()}, {Marks.ApogeeTime.Seconds().Show()} after release, and the landing "
                + $"{Marks.LandingTime.Seconds().Show()} after release"
            : $"the landing is {Marks.LandingTime.Seconds().Show()} after release, and the vehicle never rose";
        var opened = double.IsNaN(Marks.OpeningTime) ? "" : $" (counted when the canopy came out, {Marks.OpeningTime.Seconds().Show()} "
            + "after release)";
        return
            $"the vehicle comes down under pressure: {risen}, with "
            + $"{ChargedLanding.Aboard(Marks.WaterLeftKg, Marks.LeftGaugePa)} still aboard{opened}. Don't fly like this, and "
            + $"vent a vehicle that comes down under pressure from afar. {ChargedRest.Remedy}";
    }
}

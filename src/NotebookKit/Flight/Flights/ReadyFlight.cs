using NotebookKit.Flight.Design;
using NotebookKit.Flight.Motion;
using NotebookKit.Flight.Site;
using NotebookKit.Provenance;

namespace NotebookKit.Flight.Flights;

/// <summary>A vehicle on a site, looked at and turned into the numbers that its equations of motion run on, so that it can be flown at
/// more than one end of its drag band without doing that again.</summary>
internal sealed class ReadyFlight
{
    private readonly Vehicle _vehicle;
    private readonly LaunchSite _site;
    private readonly IReadOnlyList<Finding> _findings;
    private readonly FlightNumbers _numbers;

    /// <exception cref="InvalidDesignException">Something can't be computed; carries all findings.</exception>
    public ReadyFlight(Vehicle vehicle, LaunchSite site)
    {
        (_vehicle, _site) = (vehicle, site);
        _findings = vehicle.Validate(site);
        InvalidDesignException.ThrowIfAny(vehicle.Name, _findings);
        _numbers = vehicle.Numbers(site);
    }

    private ReadyFlight(ReadyFlight other, DragEnd end)
    {
        (_vehicle, _site, _findings) = (other._vehicle with { DragEnd = end }, other._site, other._findings);
        _numbers = _vehicle.Numbers(_site, other._numbers.Firing);
    }

    /// <summary>The same at an end of its drag band, which nothing that was found depends on.</summary>
    public ReadyFlight At(DragEnd end) => end == _vehicle.DragEnd ? this : new(this, end);

    /// <summary>Flies it in three degrees of freedom, from the pad to the ground.</summary>
    public FlightResult Fly()
    {
        var rows = new FlightRows();
        var marks = FlightRun.Fly(_numbers, null, FlightAccuracy.Recorded, rows);
        return FlightReport.For(_vehicle, _site, marks, rows, hasAttitude: false, [.. _findings, .. _site.WindFindings()]);
    }
}

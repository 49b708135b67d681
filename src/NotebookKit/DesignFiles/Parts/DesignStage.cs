using NotebookKit.Aerodynamics.Bodies;
using NotebookKit.Aerodynamics.FinStructures;
using NotebookKit.Filling.Balances;
using NotebookKit.Filling.Fills;
using NotebookKit.Flight.Design;
using NotebookKit.Flight.Site;
using NotebookKit.Proofing.Plans;
using NotebookKit.Propulsion.Charges;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Recovery;
using NotebookKit.Vessels.Design;
using NotebookKit.Vessels.Ratings;
using NotebookKit.Vessels.Testing;
using UnitsNet;

namespace NotebookKit.DesignFiles.Parts;

/// <summary>One stage of a design: its vessel with what tests have shown of it, and what flies around it.</summary>
public sealed class DesignStage
{
    private readonly StageContent _content;
    private readonly LaunchSite? _site;
    private readonly TestedVessels _twins;
    private readonly Lazy<Rating> _rating;
    private readonly Lazy<IReadOnlyList<Finding>> _found;
    private readonly Lazy<string> _mark;
    private readonly Lazy<MassBudget> _masses;
    private readonly Lazy<Vehicle> _vehicle;

    /// <param name="name">Name.</param>
    /// <param name="content">What the file says of it.</param>
    /// <param name="site">Where it flies.</param>
    /// <param name="isAsRead">Whether no value was changed since the file was read.</param>
    /// <param name="before">The same stage before a value was changed; none where there is none.</param>
    /// <param name="leavesRating">Whether the change left vessel, tests and rules alone, so that its rating is this one's.</param>
    internal DesignStage(string name, StageContent content, LaunchSite? site, bool isAsRead, DesignStage? before = null,
        bool leavesRating = false)
    {
        (Name, _content, _site) = (name, content, site);
        _mark = new(content.Mark, LazyThreadSafetyMode.PublicationOnly);
        _masses = new(LayOut, LazyThreadSafetyMode.PublicationOnly);
        _vehicle = new(Build, LazyThreadSafetyMode.PublicationOnly);
        _twins = before?._twins ?? new();
        if (before is not null && leavesRating)
        {
            (Vessel, Evidence, _rating, _found) = (before.Vessel, before.Evidence, before._rating, before._found);
            return;
        }

        Vessel = content.Vessel(name);
        // A value changed for a run changes no test: what was tested is the vessel of the file.
        Evidence = content.Evidence(Vessel, isAsRead);
        _found = new(() => [.. Vessel.Validate(), .. Evidence.Validate(_twins)], LazyThreadSafetyMode.PublicationOnly);
        // A run that was stopped is no answer to keep.
        _rating = new(() => Vessel.Rate(Rules, WorkingPressure, Evidence, _twins), LazyThreadSafetyMode.PublicationOnly);
    }

    /// <summary>Name: "Curlew", "Godwit booster".</summary>
    public string Name { get; }

    /// <summary>The vessel.</summary>
    public PressureVessel Vessel { get; }

    /// <summary>Mark of the vessel as the design states it: another bore, ply, end or resin has another one.</summary>
    public string Mark => _mark.Value;

    /// <summary>Its tests as they lie in the file, each with a mark of what it says: a list kept elsewhere shows later which test was
    /// taken away or altered.</summary>
    public IReadOnlyList<TestMark> TestMarks => _content.Tests();

    /// <summary>Bursts, held proofs and leaks of vessels of its kind; empty where none is given.</summary>
    public VesselEvidence Evidence { get; }

    /// <summary>All that is wrong with vessel and tests, or worth knowing.</summary>
    internal IReadOnlyList<Finding> FindVessel() => _found.Value;

    /// <summary>Rules it is rated by.</summary>
    public RuleSet Rules => _content.Rules;

    /// <summary>Working pressure that is wanted; none where the highest is wanted that the rules allow.</summary>
    public GaugePressure? WorkingPressure => _content.WorkingPressure;

    /// <summary>Pressure it is to be filled to; none where it isn't given.</summary>
    public GaugePressure? FillPressure => _content.Charge?.Fill;

    /// <summary>Its outside; none where it isn't given.</summary>
    public FinnedBody? Body => _content.Body;

    /// <summary>What its water and air leave through; none where it isn't given.</summary>
    public Nozzle? Nozzle => _content.Nozzle?.Nozzle;

    /// <summary>What it comes down on; none where it isn't given.</summary>
    public Canopy? Canopy => _content.Canopy;

    /// <summary>What the fins are cut from; none where it isn't given.</summary>
    public FinSheet? FinSheet => _content.Fins?.Sheet;

    /// <summary>The fillets that hold the fins; none where they aren't given.</summary>
    public FinBond? FinBond => _content.Fins?.Bond;

    /// <summary>Sideways gust that the fins have to bear; none where it isn't given.</summary>
    public Speed? FinGust => _content.Fins?.Gust;

    /// <summary>How the vessel is filled at the pad, on its rating; none where regulator or restrictor isn't given.</summary>
    /// <exception cref="InvalidDesignException">Charge or site isn't given, or the vessel can't be rated.</exception>
    public PadFill? PadFill
    {
        get
        {
            if (_content.Pad is not { Regulator: { } supply, Passage: { } passage } pad) return null;
            ThrowIfMissing("charge", "site");
            var (chamber, water) = (Vessel.ToChamber(Rating), _content.Charge!.WaterFraction);
            return new()
            {
                Chamber = chamber, Supply = supply, Restrictor = passage, Target = _content.Charge.Fill,
                WaterFraction = water, Port = pad.Port, WaterInLine = pad.WaterInLine, HasCheckValve = pad.HasCheckValve,
                Ambient = _site!.Pressure, Temperature = _site.Temperature, Gas = _content.Charge.Gas, Heat = FillHeat.Wall,
                Wall = FillWall.Of(chamber, water),
            };
        }
    }

    /// <summary>What holds the halves together and the canopy on; none where it isn't given.</summary>
    /// <exception cref="InvalidDesignException">The design gives no canopy, or no masses.</exception>
    public RecoveryGear? RecoveryGear
    {
        get
        {
            if (_content.Gear is not { } gear) return null;
            if (_content.Canopy is not { } canopy)
                throw new InvalidDesignException(Name, [Finding.Error(DesignFilesFindings.GearWithoutCanopy(Name))]);
            return new()
            {
                Canopy = canopy, Cord = gear.Cord, Front = gear.Front, Rear = Masses.MassProperties().Mass - gear.Front,
                Apart = gear.Apart, Anchor = gear.Anchor, Joint = gear.Joint,
            };
        }
    }
    /// <summary>What it is filled with at the pad; none where it isn't given.</summary>
    public PadEquipment? Pad => _content.Pad;

    /// <summary>How it waits in the sun when filled; none where it isn't given.</summary>
    public SunAtPad? Sun => _content.Sun;

    /// <summary>What the design doesn't give and a flight needs, by key; empty where nothing is missing.</summary>
    public IReadOnlyList<string> Missing =>
    [
        .. new (string Key, bool IsGiven)[]
        {
            ("body", _content.Body is not null), ("masses", _content.Masses is not null), ("nozzle", _content.Nozzle is not null),
            ("charge", _content.Charge is not null), ("site", _site is not null || _content.Charge?.GasTemperature is not null),
        }.Where(k => !k.IsGiven).Select(k => k.Key),
    ];

    /// <summary>What the vessel may be used at, on the tests of the file.</summary>
    /// <exception cref="InvalidDesignException">The vessel or a test can't be computed; carries all findings.</exception>
    public Rating Rating => _rating.Value;

    /// <summary>The proof that the rating asks for, held as the file says.</summary>
    /// <exception cref="InvalidDesignException">The rating was refused.</exception>
    public Proof Proof => _content.Proof(Proofing.Plans.Proof.For(Rating));

    /// <summary>What it weighs, part by part; stations that the file leaves out follow from the layout.</summary>
    /// <exception cref="InvalidDesignException">The design gives no body, masses or nozzle.</exception>
    public MassBudget Masses => _masses.Value;

    /// <summary>The vehicle, ready to fly, on its vessel as rated.</summary>
    /// <exception cref="InvalidDesignException">Something is missing, the vessel can't be computed or its rating is refused.</exception>
    public Vehicle Vehicle => _vehicle.Value;

    private MassBudget LayOut()
    {
        ThrowIfMissing("body", "masses", "nozzle");
        return MassLayout.Of(_content.Masses!, Vessel, Body!, _content.Nozzle!.Value.Station);
    }

    private Vehicle Build()
    {
        ThrowIfMissing("body", "masses", "nozzle", "charge", "site");
        var (charge, (nozzle, station)) = (_content.Charge!, _content.Nozzle!.Value);
        var filled = new Charge(Vessel.ToChamber(Rating), charge.WaterFraction, charge.Fill, charge.GasTemperature ?? _site!.Temperature)
        {
            Gas = charge.Gas,
        };
        if (charge.WaterDensity is { } density) filled = filled with { WaterDensity = density };
        return new Vehicle(Name, Body! with { Name = Name }, Masses, filled, nozzle, station)
        {
            LaunchTube = _content.LaunchTube,
            Canopy = _content.Canopy,
            Deployment = _content.Deployment ?? (_content.Canopy is null ? Deployment.None : Deployment.ByApogeeSensor()),
            Surface = _content.Surface,
            DragEnd = _content.DragEnd,
            DragCalibration = _content.DragCalibration,
            Flow = _content.Flow,
        };
    }

    private void ThrowIfMissing(params string[] keys)
    {
        var missing = Missing.Where(keys.Contains).ToList();
        if (missing.Count > 0)
            throw new InvalidDesignException(Name, [Finding.Error(DesignFilesFindings.MissingForVehicle(Name, missing))]);
    }
}

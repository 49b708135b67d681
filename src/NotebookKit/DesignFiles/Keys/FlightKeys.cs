using NotebookKit.Aerodynamics.Drag;
using NotebookKit.DesignFiles.Parts;
using NotebookKit.DesignFiles.Shapes;
using NotebookKit.Flight.Design;
using NotebookKit.Materials.Fluids;
using NotebookKit.Propulsion.Charges;
using NotebookKit.Propulsion.Flow;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Recovery;
using UnitsNet;

namespace NotebookKit.DesignFiles.Keys;

/// <summary>What flies: masses, nozzle, launch tube, charge, recovery, drag.</summary>
internal static class FlightKeys
{
    private static readonly UnitShape<Length> Station = Kinds.Metres(-1, 20, "Measure it aft of the nose tip.");
    private static readonly Func<Length, Nozzle> Rounded = Propulsion.Charges.Nozzle.Rounded;
    private static readonly Func<Length, Nozzle> ShortTube = Propulsion.Charges.Nozzle.ShortTube;
    private static readonly Func<Length, Nozzle> SharpEdged = Propulsion.Charges.Nozzle.SharpEdged;
    private static readonly Func<Length, Nozzle> Conical = Propulsion.Charges.Nozzle.Conical;
    private static readonly NumberShape Share = Kinds.Number(0.3, 1, "A jet isn't faster or wider than the ideal one.");

    private static readonly ObjectShape<MassLine> Mass = new("mass",
        "One part that flies, empty of water and gas; what is left out follows from the layout where \"of\" says of what.", f =>
        {
            var name = f.Needs("name", TextShape.Name, "What it is.");
            var of = f.Part("of", TextShape.Name, "What of the layout it is the mass of: \"vessel\", \"fins\" or the name of a body part.");
            var weighed = f.May("weighed", Kinds.Grams(0.001, 50_000, "Weigh it."), "Its mass as weighed.");
            var estimated = f.May("estimated", Kinds.Grams(0.001, 50_000, "Weigh it as soon as it is there."), "Its mass as estimated.");
            var at = f.May("at", Station, "Its centre of gravity, aft of the nose tip.");
            var extent = f.May("extent", Kinds.Metres(0, 10, "Zero for a point."), "How far it spreads along the axis; 0 unless given.");
            var diameter = f.May("diameter", Kinds.Metres(0, 2, "Zero for a point."),
                "Its diameter, or twice the radius at which its mass sits round the axis; 0 unless given.");
            var solid = f.Has("solid", Kinds.Flag, false, "Whether it fills its diameter.");
            var spread = f.May("spread", Kinds.Percent(0, 50, "It is a standard deviation."),
                "Standard deviation of its mass; 10 % of an estimate, 1 % of a weighed part unless given.");
            f.NotBoth("weighed", "estimated");
            return v =>
            {
                var line = new MassLine(name(v), of(v), weighed(v), estimated(v), at(v), extent(v), diameter(v), solid(v), spread(v));
                if (line is { Of: null, At: null })
                    throw new FormatException(DesignFilesFindings.KeyIsMissing("at", line.Name,
                        "its centre of gravity aft of the nose tip, or say with \"of\" what of the layout it is the mass of."));
                if (line is { Weighed: null, Estimated: null, Of: null })
                    throw new FormatException(DesignFilesFindings.KeyIsMissing("weighed", line.Name, "its mass, or \"estimated\"."));
                return line;
            };
        });

    private static readonly ObjectShape<Canopy> CanopyShape = new("canopy", "What it comes down on.", f =>
    {
        var type = f.Needs("type", new WordShape<CanopyType>("type of canopy", ("flat circular", CanopyType.FlatCircular),
            ("conical", CanopyType.Conical), ("hemispherical", CanopyType.Hemispherical), ("cross", CanopyType.Cross),
            ("extended skirt", CanopyType.ExtendedSkirt), ("annular", CanopyType.Annular), ("flat ribbon", CanopyType.FlatRibbon),
            ("conical ribbon", CanopyType.ConicalRibbon), ("ring slot", CanopyType.RingSlot), ("ringsail", CanopyType.Ringsail),
            ("disc gap band", CanopyType.DiscGapBand)), "Type of canopy.");
        var diameter = f.Needs("diameter", Kinds.Metres(0.1, 30, "Measure the cloth laid flat."),
            "Diameter of the circle that has the area of all its cloth.");
        var count = f.Has("count", Kinds.Count(1, 4, "One to four canopies can be computed."), 1, "Number of equal canopies.");
        var drag = f.May("drag coefficient", Kinds.Number(0.2, 1.2, "It is on the nominal area."),
            "Drag coefficient of its own, from drop tests; the handbook's unless given.");
        var gores = f.May("gores", Kinds.Count(4, 32, "Six to twelve are usual for a small canopy."),
            "Number of gores that one canopy is sewn from; their pattern is then among the templates.");
        return v => new Canopy(type(v), diameter(v)) { Count = count(v), DragCoefficient = drag(v), Gores = gores(v) };
    });

    private static readonly ChoiceShape<Deployment> DeploymentShape = new("deployment", "kind",
        (["none"], "No canopy comes out.", _ => _ => Deployment.None),
        (["apogee sensor"], "At the top of the flight, or some time after it.", f =>
        {
            var delay = f.Has("delay", Kinds.Seconds(0, 60, "By then the vehicle is on the ground."), 0.Seconds(), "Time after apogee.");
            return v => Deployment.ByApogeeSensor(delay(v));
        }),
        (["timer"], "By a timer that the release starts.", f =>
        {
            var time = f.Needs("time", Kinds.Seconds(0.1, 120, "Set it to the expected time of apogee."), "Time from release.");
            return v => Deployment.ByTimer(time(v));
        }));

    public static ListShape<MassLine> Masses { get; } = Kinds.List(Mass, 1, 200);

    public static ObjectShape<NozzleContent> Nozzle { get; } = new("nozzle", "What water and air leave through, and where it is.", f =>
    {
        var entry = f.Has("entry", new WordShape<Func<Length, Nozzle>>("entry", ("rounded", Rounded), ("short tube", ShortTube),
            ("sharp edged", SharpEdged), ("conical", Conical)), Rounded, "Form of the hole, which sets its coefficients.");
        var throat = f.Needs("throat", Kinds.Millimetres(0.5, 100, "It is a diameter; check its unit."), "Narrowest diameter.");
        var station = f.Needs("station", Kinds.Metres(0, 20, "Measure it aft of the nose tip."),
            "Aft end of the vessel's inside, aft of the nose tip; the vessel's mass follows from it.");
        var velocity = f.May("water velocity coefficient", Share, "Jet speed over ideal jet speed, where it was measured.");
        var contraction = f.May("water contraction coefficient", Share, "Jet area over throat area, where it was measured.");
        var air = f.May("air discharge coefficient", Share, "Effective over geometric area for air, where it was measured.");
        var source = f.Else("source", TextShape.Prose, "the design's file, source not given", "Where own coefficients come from.");
        return v =>
        {
            var nozzle = entry(v)(throat(v));
            if (velocity(v) is not null || contraction(v) is not null || air(v) is not null)
            {
                nozzle = nozzle with
                {
                    WaterVelocityCoefficient = velocity(v) ?? nozzle.WaterVelocityCoefficient,
                    WaterContractionCoefficient = contraction(v) ?? nozzle.WaterContractionCoefficient,
                    AirDischargeCoefficient = air(v) ?? nozzle.AirDischargeCoefficient,
                    Source = new("", source(v), null, "", SourceKind.Unverified),
                };
            }

            return new(nozzle, station(v));
        };
    });

    public static ObjectShape<LaunchTube> LaunchTube { get; } = new("launch tube", "A tube on the pad that it rides up first.", f =>
    {
        var diameter = f.Needs("diameter", Kinds.Millimetres(2, 100, "It has to pass the nozzle."), "Outer diameter.");
        var stroke = f.Needs("stroke", Kinds.Millimetres(10, 3000, "It reaches up inside the vessel."), "Length it rides along.");
        var hollow = f.Has("hollow", Kinds.Between(0.Millilitres(), 20.Litres(), "It can't hold more than its outside measures."),
            0.Millilitres(), "Gas space inside a hollow tube that is open to the vessel.");
        return v => new LaunchTube(diameter(v), stroke(v)) { Hollow = hollow(v) };
    });

    public static ObjectShape<ChargeContent> Charge { get; } = new("charge", "What is in the vessel at release.", f =>
    {
        var fill = f.Needs("fill pressure", Kinds.BarGauge(0.1, 300, "It may not pass what the vessel is rated to."),
            "Pressure at release.");
        var water = f.Needs("water fraction", Kinds.Percent(0, 95, "With more water there is no gas left that could drive it out."),
            "Water volume over internal volume.");
        var temperature = f.May("gas temperature", Kinds.Celsius(-20, 60, "Warmer gas softens the vessel's resin."),
            "Temperature of the gas at release; the site's air unless given.");
        var gas = f.Has("gas", new WordShape<Gas>("gas", ("air", Gas.Air), ("nitrogen", Gas.Nitrogen), ("helium", Gas.Helium),
            ("hydrogen", Gas.Hydrogen)), Gas.Air, "The gas.");
        var density = f.May("water density", Kinds.Between(900.KilogramsPerCubicMetre(), 1300.KilogramsPerCubicMetre(),
            "Salt water has up to 1030 kg/m³."), "Density of the water; 1000 kg/m³ unless given.");
        return v => new(fill(v), water(v), temperature(v), gas(v), density(v));
    });

    public static ObjectShape<RecoveryContent> Recovery { get; } = new("recovery", "What brings it back.", f =>
    {
        var canopy = f.Part("canopy", CanopyShape, "What it comes down on; nothing unless given.");
        var deployment = f.Part("deployment", DeploymentShape, "What brings the canopy out; passing the top unless given.");
        var gear = f.Part("gear", EquipmentKeys.Gear, "Cord, anchor and pins; not judged unless given.");
        return v => new(canopy(v), deployment(v), gear(v));
    });

    public static ObjectShape<DragContent> Drag { get; } = new("drag", "What the drag build-up can't know from the shape.", f =>
    {
        var plain = new DragAssumptions();
        var reynolds = Kinds.Number(0, 1e7, "Zero means turbulent from the start.");
        var roughness = f.Has("roughness", Kinds.Between(0.Micrometres(), 500.Micrometres(), "Painted surfaces are near 20 µm."),
            plain.Roughness, "Sand-grain roughness of the surface.");
        var early = f.Has("early transition", reynolds, plain.EarlyTransition, "Reynolds number of transition, early end.");
        var late = f.Has("late transition", reynolds, plain.LateTransition, "Reynolds number of transition, late end.");
        var form = f.Has("body form", new WordShape<FormFactorLaw>("form factor", ("Barrowman", FormFactorLaw.Barrowman),
            ("Hoerner", FormFactorLaw.Hoerner), ("DATCOM", FormFactorLaw.Datcom)), plain.BodyForm, "Which form factor the body takes.");
        var compressible = f.Has("compressible friction", Kinds.Flag, plain.CompressibleFriction,
            "Whether friction falls with Mach number.");
        var protuberance = f.Has("protuberance drag", Kinds.Number(0, 1, "It is on the reference area."), plain.ProtuberanceDrag,
            "Drag coefficient of what sticks out.");
        var end = f.Has("end of band", new WordShape<DragEnd>("end of the band", ("middle", DragEnd.Middle), ("low", DragEnd.Low),
            ("high", DragEnd.High)), DragEnd.Middle, "Which end of the drag band it flies with.");
        var calibration = f.Part("calibration", new ObjectShape<DragCalibration>("drag calibration", "What flights said about its drag.",
            c =>
        {
            var factor = c.Needs("factor", Kinds.Number(0.2, 5, "A factor far from 1 says the model or the log is wrong."),
                "Factor on drag.");
            var doubt = c.Needs("uncertainty", Kinds.Percent(0, 90, "It is a share of the factor."), "How far the factor may be off.");
            var log = c.Needs("log", TextShape.Prose, "Which log, fitted when.");
            return v => new(factor(v), doubt(v), new("", log(v), null, "", SourceKind.Measured));
        }), "What flights said about its drag, in place of the build-up's band.");
        return v => new(new()
        {
            Roughness = roughness(v), EarlyTransition = early(v), LateTransition = late(v), BodyForm = form(v),
            CompressibleFriction = compressible(v), ProtuberanceDrag = protuberance(v),
        }, end(v), calibration(v));
    });

    public static WordShape<FlowModel> Flow { get; } = new("flow model", ("real", FlowModel.Real), ("plain", FlowModel.Plain),
        ("moist", FlowModel.Moist));

    public static ChoiceShape<Separation> Separation { get; } = new("separation", "kind",
        (["pressure latch"], "A latch that opens when the booster's pressure is gone.", f =>
        {
            var delay = f.Has("delay", Kinds.Seconds(0, 30, "By then the stack falls."), 0.Seconds(), "Time after the booster's jet.");
            return v => Flight.Design.Separation.ByPressureLatch(delay(v));
        }),
        (["drag"], "Drag pulls the spent booster off.", f =>
        {
            var joint = f.Needs("joint", Kinds.Metres(0.001, 2, "It is what slides out of the other stage."), "Length that slides out.");
            return v => Flight.Design.Separation.ByDrag(joint(v));
        }),
        (["timer"], "A latch opened by a timer that the release starts.", f =>
        {
            var time = f.Needs("time", Kinds.Seconds(0.05, 60, "Set it to the end of the booster's jet."), "Time from release.");
            return v => Flight.Design.Separation.ByTimer(time(v));
        }));

    internal sealed record NozzleContent(Nozzle Nozzle, Length Station);

    internal sealed record RecoveryContent(Canopy? Canopy, Deployment? Deployment, GearContent? Gear);

    internal sealed record DragContent(DragAssumptions Surface, DragEnd End, DragCalibration? Calibration);
}

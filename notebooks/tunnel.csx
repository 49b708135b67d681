// A sounding rocket at half scale in a wind tunnel, in a short and in a long version: J. C. Ferris, NASA TN D-4013, 1967. Dimensions in inches from its
// drawing; its nose, given by coordinates, as the power series of the same volume; the double-wedge fins as plates of their root thickness; the lip of the
// base left out. The report prints plots, no tables: others read them, the force coefficient to 0.02, the centre of pressure to 0.3 % of the length.
var ferris = new Source("J. C. Ferris", "NASA TN D-4013, a sounding rocket in a wind tunnel", 1967, "read from its plots");
var tunnelCalibre = 2.25.Inches();
FinnedBody TunnelRocket(string name, double cylinderEnds) => new(
    [
        new Nose(NoseShape.Power, 9.375.Inches(), tunnelCalibre, 0.6369),
        new BodyTube((cylinderEnds - 9.375).Inches(), tunnelCalibre),
        new Transition(1.757.Inches(), tunnelCalibre, 1.308.Inches()) { Name = "Boat-tail" },
    ],
    [
        FinSet.Trapezoidal(4, root: 3.38.Inches(), tip: 2.165.Inches(), span: 2.103.Inches(), sweep: 1.215.Inches(), thickness: 0.15.Inches(),
            leadingEdgeAt: (cylinderEnds - 1.84).Inches()) with { LeadingEdge = FinEdge.Sharp, TrailingEdge = FinEdge.Sharp },
    ]) { Name = name };
var (shortRocket, longRocket) = (TunnelRocket("short tunnel rocket", 39.14), TunnelRocket("long tunnel rocket", 51.69));

// Polished steel, the layer of air made turbulent by grit; 9.8 million Reynolds a metre at Mach 0.6.
var polished = new DragAssumptions { Roughness = 5.Micrometres(), LateTransition = 0 };
var tunnelAir = new AirConditions(AbsolutePressure.FromPascals(74_800), 300.Kelvins());
var tunnelSpeed = 208.3.MetresPerSecond();

// The trainer of these tests, invented.
#load "vessel.csx"
var fill = design.Given("fill pressure", 36.BarGauge(), 5.BarGauge(), 60.BarGauge(), "Two bar below the regulator.");
var water = design.Given(why: "Near a third.", name: "water fraction", value: 32.Percent(), minimum: 0.Percent(), maximum: 90.Percent());

var design = new DesignRecordBuilder("Trainer", session.Givens);
var bore = design.Given<Length>("bore", Length.FromMillimeters(66), 5.Centimetres(), 68.Millimetres(), "The liner at hand.");
var working = design.Given("working pressure", 38.BarGauge(), GaugePressure.Zero, 60.BarGauge(), "What the club asks.");
var air = design.Given("air", (-5).Celsius(), (-30).Celsius(), 40.Celsius(), "A cold day.");
var ends = design.Given("ends", 2, 1, 3, "Two.");
var long1 = design.Given("length", bore * 10, 300.Millimetres(), 800.Millimetres(), "Ten bores.");

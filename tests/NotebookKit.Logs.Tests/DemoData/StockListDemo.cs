namespace NotebookKit.Logs.Tests.DemoData;

/// <summary>An invented shelf: sleeves, cloths, resins, sheets. Not drawn at random; the seed is there because every file says one.</summary>
internal static class StockListDemo
{
    public const ulong Seed = 0;

    public static string Text()
    {
        var csv = new DemoCsv(
            Seed,
            "what lies on the shelf of the Saltmarsh Model Rocketry Circle; values typical for the class of material, not a maker's",
            "a cell is empty where it doesn't apply; diameter is the sleeve's at 45°, tex the linear density of one tow");
        csv.Line("item [text]", "kind [text]", "fibre [text]", "length [m]", "width [mm]", "diameter [mm]", "tows [-]", "tex [g/km]", "areal weight [g/m²]", "mass [g]", "pot life [min]", "hardener ratio [-]", "cost [-]");
        csv.Line("sleeve A", "sleeve", "carbon", "6.0", "", "60", "96", "200", "", "", "", "", "14");
        csv.Line("sleeve B", "sleeve", "carbon", "4.5", "", "76", "144", "200", "", "", "", "", "19");
        csv.Line("sleeve C", "sleeve", "carbon", "3.0", "", "76", "144", "400", "", "", "", "", "27");
        csv.Line("sleeve D", "sleeve", "glass", "8.0", "", "70", "120", "300", "", "", "", "", "8");
        csv.Line("cloth A", "cloth", "carbon", "2.0", "1000", "", "", "", "160", "", "", "", "31");
        csv.Line("cloth B", "cloth", "glass", "5.0", "1000", "", "", "", "80", "", "", "", "6");
        csv.Line("cloth C", "cloth", "glass", "3.0", "1000", "", "", "", "163", "", "", "", "7");
        csv.Line("veil", "veil", "glass", "10.0", "500", "", "", "", "30", "", "", "", "2");
        csv.Line("resin A slow", "resin", "", "", "", "", "", "", "", "1800", "60", "0.30", "24");
        csv.Line("resin A fast", "resin", "", "", "", "", "", "", "", "700", "20", "0.30", "24");
        csv.Line("resin B", "resin", "", "", "", "", "", "", "", "450", "35", "0.42", "33");
        csv.Line("sheet A", "sheet", "glass", "0.60", "300", "", "", "", "", "", "", "", "12");
        return csv.ToString();
    }
}

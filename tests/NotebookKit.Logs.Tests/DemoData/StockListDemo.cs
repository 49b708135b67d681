namespace NotebookKit.Logs.Tests.DemoData;

/// <summary>An invented shelf: sleeves, cloths, tape, veil, resin, sheet, ends, canopy.
/// Nothing in it is drawn at random; the seed is there because every
/// file says one.</summary>
internal static class StockListDemo
{
    public const ulong Seed = 0;

    public static string Text()
    {
        var csv = new DemoCsv(
            Seed,
            "what lies on the shelf of the Saltmarsh Model Rocketry Circle",
            "an item's name is the one the material library knows it by; a cell is empty where it doesn't apply; prices are invented, too");
        csv.Line("item [text]", "kind [text]", "length [m]", "width [mm]", "mass [g]", "pot life [min]", "hardener [%]", "pieces [-]",
             "price [text]");
        csv.Line("carbon sleeve 65 mm light", "sleeve", "6.0", "", "", "", "", "", "11.40 EUR/m");
        csv.Line("carbon sleeve 65 mm heavy", "sleeve", "3.5", "", "", "", "", "", "18.60 EUR/m");
        csv.Line("carbon sleeve 76 mm", "sleeve", "2.0", "", "", "", "", "", "16.20 EUR/m");
        csv.Line("glass sleeve 65 mm", "sleeve", "8.0", "", "", "", "", "", "4.90 EUR/m");
        csv.Line("carbon plain 93 g", "cloth", "1.5", "1000", "", "", "", "", "27.50 EUR/m");
        csv.Line("carbon twill 200 g", "cloth", "2.0", "1000", "", "", "", "", "24.00 EUR/m");
        csv.Line("glass plain 80 g", "cloth", "5.0", "1000", "", "", "", "", "6.80 EUR/m");
        csv.Line("carbon tape 150 g", "tape", "30.0", "50", "", "", "", "", "2.30 EUR/m");
        csv.Line("glass veil 30 g", "veil", "10.0", "500", "", "", "", "", "2.10 EUR/m");
        csv.Line("laminating epoxy", "resin", "", "", "1850", "40", "30", "", "31.00 EUR/kg");
        csv.Line("glass twill 163 g", "sheet", "0.60", "300", "", "", "", "", "");
        csv.Line("PET tube bore 66 mm wall 0.4 mm", "part", "", "", "", "", "", "", "3.20 EUR/m");
        csv.Line("PET tube bore 80 mm wall 0.4 mm", "part", "", "", "", "", "", "", "3.90 EUR/m");
        csv.Line("PET tube bore 50 mm wall 0.4 mm", "part", "", "", "", "", "", "", "2.60 EUR/m");
        csv.Line("domed closure aluminium 6061-T6 3 mm", "part", "", "", "", "", "", "1", "24.00 EUR each");
        csv.Line("domed closure aluminium 6061-T6 2 mm", "part", "", "", "", "", "", "", "19.00 EUR each");
        csv.Line("threaded fitting", "part", "", "", "", "", "", "2", "12.50 EUR each");
        csv.Line("O-ring", "part", "", "", "", "", "", "2", "0.90 EUR each");
        csv.Line("laminating epoxy hardener", "hardener", "", "", "", "", "", "", "38.00 EUR/kg");
        csv.Line("fin sheet 2 mm", "fin sheet", "0.60", "300", "", "", "", "2", "9.80 EUR each");
        csv.Line("fin sheet 3 mm", "fin sheet", "0.60", "300", "", "", "", "0", "14.20 EUR each");
        csv.Line("canopy cloth", "canopy", "3.0", "1500", "", "", "", "", "8.50 EUR/m");
        return csv.ToString();
    }
}

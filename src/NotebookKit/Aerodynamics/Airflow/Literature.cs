using NotebookKit.Provenance;

namespace NotebookKit.Aerodynamics.Airflow;

/// <summary>The works this domain rests on, named once.</summary>
internal static class Literature
{
    public static readonly Source BarrowmanThesis = new("J. S. Barrowman",
        "The Practical Calculation of the Aerodynamic Characteristics of Slender Finned Vehicles (M.S. thesis, re-issued as "
            + "NASA/TM-2001-209983)",
        1967, "ch. 3", SourceKind.Unverified);

    public static readonly Source BarrowmanDrag = BarrowmanThesis with { Where = "ch. 4" };

    public static readonly Source BarrowmanReport = new("J. S. and J. A. Barrowman",
        "The Theoretical Prediction of the Center of Pressure", 1966, "", SourceKind.Unverified);

    public static readonly Source Munk = new("M. M. Munk", "The aerodynamic forces on airship hulls, NACA TR 184", 1924, "",
        SourceKind.Unverified);

    public static readonly Source Diederich = new("F. W. Diederich",
        "A plan-form parameter for correlating certain aerodynamic characteristics of swept wings, NACA TN 2335", 1951, "",
            SourceKind.Unverified);

    public static readonly Source AllenPerkins = new("H. J. Allen, E. W. Perkins",
        "A study of effects of viscosity on flow over slender inclined bodies of revolution, NACA TR 1048", 1951, "",
            SourceKind.Unverified);

    public static readonly Source Jorgensen = new("L. H. Jorgensen",
        "Prediction of static aerodynamic characteristics for space-shuttle-like and other bodies, NASA TR R-474", 1977, "",
            SourceKind.Unverified);

    public static readonly Source White = new("F. M. White", "Fluid Mechanics", 2011, "table of drag of short cylinders",
        SourceKind.Unverified);

    public static readonly Source Drachinsky = new("A. Drachinsky, D. E. Raveh",
        "flutter of a thin flexible wing at a root angle, in a low-speed tunnel",
        2022, "", SourceKind.Published);

    public static readonly Source Schlichting = new("H. Schlichting", "Boundary-Layer Theory", 1979, "ch. XXI", SourceKind.Unverified);

    public static readonly Source Hoerner = new("S. F. Hoerner", "Fluid-Dynamic Drag", 1965, "ch. II, III, VIII", SourceKind.Unverified);

    public static readonly Source Fleeman = new("E. Fleeman", "Tactical Missile Design", 2001, "base drag, M below 1",
        SourceKind.Unverified);

    public static readonly Source StandardAtmosphere = new("NOAA, NASA, USAF",
        "U.S. Standard Atmosphere 1976, NASA-TM-X-74335", 1976, "eq. 33, 42, 50, 51", SourceKind.Standard);

    public static readonly Source Martin = new("D. J. Martin",
        "Summary of flutter experiences as a guide to the preliminary design of lifting surfaces on missiles, NACA TN 4197", 1958, "eq. 18",
        SourceKind.Unverified);

    public static readonly Source Bisplinghoff = new("R. L. Bisplinghoff, H. Ashley, R. L. Halfman", "Aeroelasticity", 1955, "ch. 8",
        SourceKind.Unverified);

    public static readonly Source Yates = new("E. C. Yates",
        "AGARD standard aeroelastic configurations for dynamic response, NASA TM-100492", 1987,
        "wing 445.6, weakened model 3 in air", SourceKind.Unverified);

    public static readonly Source Jones = new("R. M. Jones", "Mechanics of Composite Materials", 1999, "ch. 2 and 4", SourceKind.Published);

    public static readonly Source Gere = new("J. M. Gere", "Mechanics of Materials", 2004, "beam bending and direct shear",
        SourceKind.Unverified);
}

namespace NotebookKit.Filling.Fills;

/// <summary>What a run of a fill left behind, in SI.</summary>
internal sealed record FillTrace(double[] Seconds, double[] Pascals, double[] Kelvins, double[] WallKelvins, double[] CylinderPascals)
{
    /// <summary>Row at which the valve was shut for good.</summary>
    public int ShutAt { get; init; } = Seconds.Length - 1;

    /// <summary>Temperature of the water, K; empty where it isn't followed.</summary>
    public double[] WaterKelvins { get; init; } = [];

    /// <summary>Mass of gas at the start, kg.</summary>
    public double FirstMass { get; init; }

    /// <summary>Mass of gas at the end, kg.</summary>
    public double LastMass { get; init; }

    /// <summary>Pressure after cooling to the surroundings, Pa.</summary>
    public double SettledPascals { get; init; }

    /// <summary>Right-hand sides computed; 0 where the fill was summed in closed form.</summary>
    public int Evaluations { get; init; }

    /// <summary>Number of the criterion by which the jet stirs, row by row while gas flows in; empty where no inlet is given.</summary>
    public double[] MixingNumbers { get; init; } = [];

    /// <summary>Why it didn't end as wanted; none where it did.</summary>
    public string? Trouble { get; init; }
}

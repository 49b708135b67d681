using NotebookKit.Materials.Solids;
using NotebookKit.Vessels.Laminates;

namespace NotebookKit.Vessels.Bursting;

/// <summary>What one family of fibres in the wall is made of, SI, before a sample's factors are put on.</summary>
internal readonly struct LayerSeed
{
    private readonly double _fibreAxial, _fibreTransverse, _fibreShear, _fibrePoisson, _fibreStrength;
    private readonly double _resinModulus, _resinPoisson, _resinTension, _resinCompression, _resinShear;
    private readonly double _fraction, _angle, _fibreThickness;
    private readonly bool _isSleeve;

    public LayerSeed(Fibre fibre, Resin resin, double fraction, double angle, double fibreThickness, int ply, bool isSleeve,
        double radius)
    {
        _fibreAxial = fibre.LongitudinalModulus.Value.Pascals;
        _fibreTransverse = fibre.TransverseModulus.Value.Pascals;
        _fibreShear = fibre.ShearModulus.Value.Pascals;
        _fibrePoisson = fibre.PoissonRatio.Value;
        _fibreStrength = fibre.TensileStrength.Value.Pascals;
        _resinModulus = resin.Modulus.Value.Pascals;
        _resinPoisson = resin.PoissonRatio.Value;
        _resinTension = resin.TensileStrength.Value.Pascals;
        _resinCompression = resin.CompressiveStrength.Value.Pascals;
        _resinShear = resin.ShearStrength.Value.Pascals;
        _fraction = fraction;
        _angle = angle;
        _fibreThickness = fibreThickness;
        _isSleeve = isSleeve;
        Ply = ply;
        Radius = radius;
    }

    /// <summary>Which ply of the design it belongs to.</summary>
    public int Ply { get; }

    /// <summary>Radius of the middle of its ply [m].</summary>
    public double Radius { get; }

    /// <summary>Whether it belongs to a sleeve, which can be carried over an end.</summary>
    public bool IsSleeve => _isSleeve;

    /// <summary>The layer with a sample's factors on it.</summary>
    public WallLayer Grow(in LayerFactors factors)
    {
        var fraction = Math.Clamp(_fraction + factors.FractionShift, 0.05, 0.785);
        var ef = _fibreAxial * factors.FibreModulus;
        var em = _resinModulus;
        var gm = em / (2 * (1 + _resinPoisson));
        var strength = factors.Efficiency * factors.FibreStrength * _fibreStrength;
        var along = MicromechanicsFormulas.LongitudinalStrength(strength, ef, em, fraction);
        var across = MicromechanicsFormulas.MatrixStrength(1, _fibreTransverse, em, fraction) * factors.ResinStrength;
        var shear = MicromechanicsFormulas.MatrixStrength(1, _fibreShear, gm, fraction) * factors.ResinStrength;
        return new WallLayer
        {
            E1 = MicromechanicsFormulas.Mixtures(ef, em, fraction),
            E2 = MicromechanicsFormulas.Chamis(_fibreTransverse, em, fraction),
            G12 = MicromechanicsFormulas.Chamis(_fibreShear, gm, fraction),
            Nu12 = MicromechanicsFormulas.Mixtures(_fibrePoisson, _resinPoisson, fraction),
            Strength = new StrengthPascals(along, Composite.CompressionShare * along, across * _resinTension, across * _resinCompression,
                shear * _resinShear),
            Angle = _isSleeve ? Math.Clamp(_angle + factors.AngleShift, 0.01, Math.PI / 2 - 0.01) : _angle,
            Thickness = _fibreThickness * factors.FibreThickness / fraction,
            Ply = Ply,
            NettingStrength = strength * fraction,
        };
    }
}

namespace NotebookKit.Vessels.Laminates;

/// <summary>How much of its strength a ply uses, 1 at failure; grows in proportion with the stress for every criterion.</summary>
internal readonly record struct Utilisation(double Value, FailureMode Mode)
{
    public static Utilisation Of(FailureCriterion criterion, in StrengthPascals strength, double s1, double s2, double t, bool matrixIntact)
    {
        var fibre = new Utilisation(s1 >= 0 ? s1 / strength.Xt : -s1 / strength.Xc,
            s1 >= 0 ? FailureMode.FibreTension : FailureMode.FibreCompression);
        // With the resin cracked only the fibres are left to fail, each on its own.
        if (!matrixIntact) return fibre;
        return criterion switch
        {
            FailureCriterion.MaximumStress => MaximumStress(fibre, strength, s2, t),
            FailureCriterion.TsaiHill => TsaiHill(fibre, strength.Xt, strength.Xt, strength.Yt, strength.S, s1, s2, t),
            FailureCriterion.ModifiedTsaiHill => TsaiHill(
                fibre, s1 >= 0 ? strength.Xt : strength.Xc, s2 >= 0 ? strength.Xt : strength.Xc, s2 >= 0 ? strength.Yt : strength.Yc,
                    strength.S, s1, s2, t),
            FailureCriterion.TsaiWu => TsaiWu(fibre, strength, s1, s2, t),
            _ => Hashin(fibre, strength, s1, s2, t),
        };
    }

    private static Utilisation MaximumStress(Utilisation fibre, in StrengthPascals strength, double s2, double t)
    {
        var matrix = Math.Max(s2 >= 0 ? s2 / strength.Yt : -s2 / strength.Yc, Math.Abs(t) / strength.S);
        return matrix > fibre.Value ? new(matrix, FailureMode.Matrix) : fibre;
    }

    private static Utilisation TsaiHill(Utilisation fibre, double x1, double x2, double y, double s, double s1, double s2, double t)
    {
        var along = s1 / x1;
        var across = s2 / y;
        var shear = t / s;
        // The product term takes the strength along the fibres by the sign of the stress across: (σ1/X2)·(σ2/X2).
        var index = along * along - s1 / x2 * (s2 / x2) + across * across + shear * shear;
        return new(Math.Sqrt(Math.Max(index, 0)), along * along > across * across + shear * shear ? fibre.Mode : FailureMode.Matrix);
    }

    private static Utilisation TsaiWu(Utilisation fibre, in StrengthPascals strength, double s1, double s2, double t)
    {
        var f11 = 1 / (strength.Xt * strength.Xc);
        var f22 = 1 / (strength.Yt * strength.Yc);
        var quadratic = f11 * s1 * s1 + f22 * s2 * s2 + t * t / (strength.S * strength.S) - Math.Sqrt(f11 * f22) * s1 * s2;
        var linear = (1 / strength.Xt - 1 / strength.Xc) * s1 + (1 / strength.Yt - 1 / strength.Yc) * s2;
        // The reserve R solves quadratic·R² + linear·R = 1; its inverse needs no division by a vanishing quadratic.
        var value = 0.5 * (linear + Math.Sqrt(linear * linear + 4 * Math.Max(quadratic, 0)));
        var across = s2 >= 0 ? s2 / strength.Yt : -s2 / strength.Yc;
        return new(value, fibre.Value * fibre.Value > across * across + t * t / (strength.S * strength.S) ? fibre.Mode
            : FailureMode.Matrix);
    }

    private static Utilisation Hashin(Utilisation fibre, in StrengthPascals strength, double s1, double s2, double t)
    {
        var shear = t * t / (strength.S * strength.S);
        var along = s1 >= 0 ? Math.Sqrt(fibre.Value * fibre.Value + shear) : fibre.Value;
        double matrix;
        if (s2 >= 0)
        {
            matrix = Math.Sqrt(s2 * s2 / (strength.Yt * strength.Yt) + shear);
        }
        else
        {
            // (Yc/2ST)² − 1 vanishes with ST = Yc/2.
            matrix = Math.Sqrt(s2 * s2 / (strength.Yc * strength.Yc) + shear);
        }

        return matrix >= along ? new(matrix, FailureMode.Matrix) : new(along, fibre.Mode);
    }
}

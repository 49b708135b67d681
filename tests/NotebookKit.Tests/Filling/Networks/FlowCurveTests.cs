using NotebookKit.Filling.Networks;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Filling.Networks;

public class FlowCurveTests
{
    // A curve is read off a polynomial: against the restrictor's own law at every ratio above the linear part.
    [Fact]
    public void A_curve_passes_what_its_restrictor_passes()
    {
        foreach (IRestrictor restrictor in (IRestrictor[])[new Orifice(1.Millimetres(), 0.8),
            new SonicRestrictor(0.1.LitresPerSecondBar(), 0.35), new Hose(4.Millimetres(),
            5.Metres()),
            new RestrictorChain(new Hose(4.Millimetres(), 5.Metres()), new Orifice(1.Millimetres(), 0.8))])
        {
            var curve = FlowCurve.Of(restrictor, Gas.Air);
            for (var ratio = 0.05; ratio < 0.9985; ratio += 0.0237)
                Tolerance.Relative(restrictor.KilogramsPerSecond(4e6, 280, ratio * 4e6, Gas.Air), curve.Flow(4e6, 280, ratio * 4e6), 1e-8);
        }
    }
}

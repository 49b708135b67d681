namespace NotebookKit.Propulsion.Phases;

/// <summary>Fills what every gas phase has in common: motion and the mass budget.</summary>
internal static class AirBudget
{
    public const int Length = 6;

    public static void Move<TMount>(TMount mount, ReadOnlySpan<double> y, Span<double> dydt, double thrustN, double dragN, double massKg)
        where TMount : struct, IMount
    {
        if (mount.IsHeld)
        {
            dydt[0] = 0;
            dydt[1] = 0;
            return;
        }

        dydt[0] = y[1];
        dydt[1] = (thrustN - dragN) / massKg - mount.Gravity;
    }

    public static void Book(
        Span<double> ledger, double thrustN, double dragN, double speed, double massFlow, double enthalpy, double heatW, double exitSpeed)
    {
        ledger[0] = thrustN;
        ledger[1] = enthalpy * massFlow;
        ledger[2] = heatW;
        ledger[3] = 0.5 * exitSpeed * exitSpeed * massFlow;
        ledger[4] = 0.5 * (speed - exitSpeed) * (speed - exitSpeed) * massFlow;
        ledger[5] = dragN * speed;
    }
}

using NotebookKit.Quantities;

namespace NotebookKit.Proofing.Plans;

/// <summary>Turns a planned proof into lines to print and tick.</summary>
internal static class ProofChecklist
{
    public static IReadOnlyList<string> For(ProofPlan plan) =>
    [
        $"Proof of {plan.Proof.Vessel}: {plan.ProofPressure} with water, for a working pressure of {plan.Proof.WorkingPressure}.",
        .. plan.Cautions.Select(c => $"CAUTION. {c}"),
        .. Before(plan).Select(Ticked),
        .. plan.Steps.Select((_, i) => Ticked(Pressed(plan, i))),
        .. After(plan).Select(Ticked),
    ];

    /// <summary>What is done before any pressure is raised.</summary>
    public static IReadOnlyList<string> Before(ProofPlan plan)
    {
        var proof = plan.Proof;
        return
        [
            $"Everybody at least {plan.StandOff.Distance.Show()} away and behind cover; nobody in line of a closure.",
            "Inspect: no cut, no soft or white spot, no moved closure. On doubt: stop.",
            "Weigh the vessel dry.",
            $"Fill with water of about {proof.Water.Temperature.Show()}; let vessel and water stand until both have one "
                + "temperature. Note it.",
            "Vent at the highest point; rock and bleed until no bubble comes. Trapped air no more than "
                + $"{ProofPlan.Millilitres(proof.Volume * proof.TrappedAirLimit.DecimalFractions)}.",
            plan.LongestSpan is { } span ? $"If it lies: supports no more than {ProofPlan.Centimetres(span)} apart, free to grow."
                : "If it lies: support it along its length, free to grow.",
            $"Gauge reads to at least {(plan.ProofPressure * 1.3).ToString()}; relief valve or burst disc no more than 10 % above "
                + "proof; remote release tried.",
            $"Zero the measure. To reach proof it should take {ProofPlan.Millilitres(plan.WaterToPump)}; well over that is a leak, "
                + "air, or a wall that yields: depressurise.",
        ];
    }

    /// <summary>One step of pressure, with what to expect and to write down.</summary>
    public static string Pressed(ProofPlan plan, int step)
    {
        var (at, down) = (plan.Steps[step], IsDown(plan, step));
        return $"{(down ? "Down to" : "Up to")} {at.Pressure}; hold {ProofPlan.Seconds(at.Hold)}; expect "
            + $"{ProofPlan.Millilitres(at.WaterToPump)} in. Pumped ____ mL, at end of hold ____ bar, ____ °C.";
    }

    /// <summary>Whether a step is on the way down.</summary>
    public static bool IsDown(ProofPlan plan, int step) => step > 0 && plan.Steps[step].Pressure < plan.Steps[step - 1].Pressure;

    /// <summary>What is minded while pressure is held, and done after it.</summary>
    public static IReadOnlyList<string> After(ProofPlan plan) =>
    [
        HoldBand.Sentence(plan),
        $"At proof the lowest reading of the hold counts, less the gauge's error: pump a little past {plan.ProofPressure}, "
            + "by no more than 2 %, so that it stays above to the end.",
        $"While holding: 1 mL lost is {Digits.Round(plan.DropPerMillilitre.Bars)} bar, 1 K of cooling "
            + $"{Digits.Round(plan.RisePerKelvin.Bars)} bar. Look for drops with a glass from afar, never by going near.",
        $"Depressurise fully. Water that stays in: ____ mL. Accepted if no more than {plan.Proof.Rule.PermanentLimit.Show()} of "
            + "the total expansion at proof.",
        "Dry, inspect again inside and out, write the record, mark the vessel with date and proof pressure, and its label with the "
            + "mark that \"vessel proved\" names.",
    ];

    private static string Ticked(string step) => $"[ ] {step}";
}

using NotebookKit.Quantities;

namespace NotebookKit.Proofing;

/// <summary>Turns a planned proof into lines to print and tick.</summary>
internal static class ProofChecklist
{
    public static IReadOnlyList<string> For(ProofPlan plan)
    {
        var proof = plan.Proof;
        List<string> lines =
        [
            $"Proof of {proof.Vessel}: {plan.ProofPressure} with water, for a working pressure of {proof.WorkingPressure}.",
            .. plan.Cautions.Select(c => $"CAUTION. {c}"),
            $"[ ] Everybody at least {plan.StandOff.Distance.Show()} away or behind cover; nobody in line of a closure.",
            "[ ] Inspect: no cut, no soft or white spot, no moved closure. On doubt: stop.",
            "[ ] Weigh the vessel dry.",
            $"[ ] Fill with water of about {proof.Water.Temperature.Show()}; let vessel and water stand until both have one "
                + "temperature. Note it.",
            "[ ] Vent at the highest point; rock and bleed until no bubble comes. Trapped air no more than "
                + $"{ProofPlan.Millilitres(proof.Volume * proof.TrappedAirLimit.DecimalFractions)}.",
            plan.LongestSpan is { } span ? $"[ ] If it lies: supports no more than {ProofPlan.Centimetres(span)} apart, free to grow."
                : "[ ] If it lies: support it along its length, free to grow.",
            $"[ ] Gauge reads to at least {(plan.ProofPressure * 1.3).ToString()}; relief valve or burst disc no more than 10 % above "
                + "proof; remote release tried.",
            $"[ ] Zero the measure. To reach proof it should take {ProofPlan.Millilitres(plan.WaterToPump)}; well over that is a leak, "
                + "air, or a wall that yields: depressurise.",
        ];
        for (var i = 0; i < plan.Steps.Count; i++)
        {
            var step = plan.Steps[i];
            var down = i > 0 && step.Pressure < plan.Steps[i - 1].Pressure;
            lines.Add(
                $"[ ] {(down ? "Down to" : "Up to")} {step.Pressure}; hold {ProofPlan.Seconds(step.Hold)}; expect "
                    + $"{ProofPlan.Millilitres(step.WaterToPump)} in. Pumped ____ mL, at end of hold ____ bar, ____ °C.");
        }

        lines.Add($"[ ] At proof the lowest reading of the hold counts, less the gauge's error: pump a little past {plan.ProofPressure}, "
            + "by no more than 2 %, so that it stays above to the end.");
        lines.Add($"[ ] While holding: 1 mL lost is {Digits.Round(plan.DropPerMillilitre.Bars)} bar, 1 K of cooling "
            + $"{Digits.Round(plan.RisePerKelvin.Bars)} bar. Look for drops with a glass from afar, never by going near.");
        lines.Add($"[ ] Depressurise fully. Water that stays in: ____ mL. Accepted if no more than {proof.Rule.PermanentLimit.Show()} of "
            + "the total expansion at proof.");
        lines.Add("[ ] Dry, inspect again inside and out, write the record, mark the vessel with date and proof pressure.");
        return lines;
    }
}
